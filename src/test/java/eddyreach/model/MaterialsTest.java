package eddyreach.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.materials.Material;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialsTest {

    private static final Materials MATERIALS = ModelFiles.materials();

    @TempDir
    private Path folder;

    @Test
    void enoughMaterialsEachWithASource() {
        assertThat(MATERIALS.all()).hasSizeGreaterThanOrEqualTo(34).allSatisfy(m -> {
            assertThat(m.source()).isNotBlank();
            assertThat(m.name()).isNotBlank();
        });
        assertThat(MATERIALS.all().stream().map(Material::name)).doesNotHaveDuplicates();
    }

    /** A permeability of steel, iron or plating nickel is never known well: the file must say so. */
    @Test
    void assumedPermeabilitiesAreMarked() {
        assertThat(MATERIALS.all())
                .filteredOn(m -> m.muReal() > 1 && m.conductivity20() > 0)
                .hasSizeGreaterThanOrEqualTo(6)
                .allSatisfy(m -> assertThat(m.source()).contains("ASSUMED"));
    }

    /**
     * Conductivity as resistivity in 1e-8 ohm m at 20 C: CRC Handbook after Matula 1979 and Desai 1984 for Cu, Al, W,
     * brass 70/30, Ag; ASTM E1004 for 100 %IACS; the others from memory of CRC and ASM. Tolerance: printed digits.
     */
    @ParameterizedTest
    @CsvSource({
        "copper, 1.7241, 0.0001",
        "copper-pure, 1.678, 0.0005",
        "aluminium-pure, 2.650, 0.0005",
        "tungsten, 5.28, 0.005",
        "brass-70-30, 6.08, 0.005",
        "silver, 1.587, 0.0005",
        "iron-pure, 9.61, 0.005",
        "nickel, 6.93, 0.005",
        "zinc, 5.90, 0.005",
        "tin, 11.5, 0.05",
        "lead, 20.8, 0.05",
        "titanium-grade-2, 54, 0.5",
        "stainless-304, 72, 0.5",
        "stainless-316, 74, 0.5",
        "stainless-430, 60, 0.5",
        "carbon-steel, 15.65, 2.05"
    })
    void resistivities(String id, double expected, double tolerance) {
        assertThat(1e8 / MATERIALS.get(id).conductivity20()).isCloseTo(expected, within(tolerance));
    }

    /** Resistivity at 100 C in 1e-8 ohm m, same source; a linear law within 2 %. */
    @ParameterizedTest
    @CsvSource({"copper-pure, 2.22", "aluminium-pure, 3.56", "tungsten, 7.18", "brass-70-30, 6.91", "silver, 2.07"})
    void temperatureCoefficients(String id, double hot) {
        assertThat(1e8 / MATERIALS.get(id).conductivity(100)).isCloseTo(hot, within(0.02 * hot));
    }

    @Test
    void standardSteelAndFriends() {
        Material steel = MATERIALS.get(Materials.STANDARD_STEEL);
        assertThat(steel.conductivity20()).isEqualTo(6e6);
        assertThat(steel.muReal()).isEqualTo(150);
        assertThat(MATERIALS.get("copper").temperatureCoefficient()).isEqualTo(0.00393);
        assertThat(MATERIALS.get("plastic").hasEffect()).isFalse();
        assertThat(MATERIALS.get("ferrite-nizn").muImag()).isPositive();
        assertThatThrownBy(() -> MATERIALS.get("cooper"))
                .hasMessage("unknown material \"cooper\", did you mean \"copper\"?");
    }

    @Test
    void errorsInAMaterialsFile() {
        String text = """
                eddyreach: materials
                materials:
                  a:
                    name: a
                    conductivity: 5 mm
                    resistivity: 1 ohm m
                    source: x
                  B b:
                    name: b
                    conductivity: -1 S/m
                  c: 5
                  d:
                    name: d
                    conductivity: 1.68e-8 ohm m
                    permeability: 0.5
                    source: x
                """;
        InputException e = catchThrowableOfType(
                InputException.class, () -> Materials.read(ModelFiles.write(folder, "m.yaml", text)));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("""
                        m.yaml:6:18 materials.a.resistivity: stands beside conductivity, give one of the two
                        m.yaml:9:5 materials.B b: an id has 1 to 40 small letters, digits and hyphens
                        m.yaml:9:5 materials.B b.source: missing, needs a text
                        m.yaml:10:19 materials.B b.conductivity: -1 S/m is out of range, needs 0 MS/m to 100 MS/m
                        m.yaml:11:6 materials.c: got "5", needs a group of keys
                        m.yaml:15:19 materials.d.permeability: 0.5 is out of range, needs 1 to 1e6""");
    }
}
