package eddyreach.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpecimenTest {

    private static final Material METAL = new Material("metal", "metal", 36e6, 0.004, 1, 0, "made up");

    /** 180 K above 20 degrees at 0.4 % per kelvin: a resistivity 1.72 times as large. */
    @Test
    void heatLeavesTheTableValueAlone() {
        Material hot = METAL.heldAt(200);
        assertThat(hot.conductivity20()).isEqualTo(36e6);
        assertThat(hot.conductivity(-25)).isCloseTo(36e6 / 1.72, within(1.0));
        assertThat(hot.conductivity(70)).isEqualTo(hot.conductivity(-25));
        assertThat(METAL.conductivity(200)).isEqualTo(hot.conductivity(23));
        assertThat(hot.heldAt(20)).isSameAs(hot);
    }

    @Test
    void aSheetFactorActsOnTheConductivityInEffect() {
        Material mesh = METAL.in("mesh", "mesh", "made up", new Specimen(Double.NaN, 0.25));
        assertThat(mesh.conductivity20()).isEqualTo(36e6);
        assertThat(mesh.conductivity(20)).isEqualTo(9e6);
        assertThat(mesh.heldAt(200).conductivity(20)).isCloseTo(9e6 / 1.72, within(1.0));
        assertThat(mesh.skinDepth(1e6, 20)).isCloseTo(2 * METAL.skinDepth(1e6, 20), within(1e-12));
    }

    @Test
    void refusesAFactorThatIsNone() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Specimen(20, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Specimen(20, Double.NaN));
    }
}
