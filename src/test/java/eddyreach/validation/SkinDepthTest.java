package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.materials.Material;
import org.junit.jupiter.api.Test;

/** Skin depths quoted in the literature (read). */
class SkinDepthTest {

    private static double skinDepth(double sigma, double frequency) {
        return new Material("m", "metal", sigma, 0, 1, 0, "test").skinDepth(2 * Math.PI * frequency, 20);
    }

    @Test
    void quotedValues() {
        assertThat(skinDepth(1.4e6, 100e3)).isCloseTo(1.35e-3, within(0.5e-5));
        assertThat(skinDepth(58e6, 1e6)).isCloseTo(66.085e-6, within(0.5e-9));
    }
}
