package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.materials.Material;
import eddyreach.materials.PermeabilityRange;
import eddyreach.model.yaml.InputException;
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

    @ParameterizedTest
    @CsvSource({
        "steel, fe360",
        "Mild Steel, fe360",
        "S235, fe360",
        "St 37, fe360",
        "1.0037, fe360",
        "1.4301, stainless-304",
        "304, stainless-304",
        "AISI304, stainless-304",
        "1.4404, stainless-316",
        "316l, stainless-316",
        "aluminum, aluminium",
        "CuZn37, brass",
        "PE, plastic",
        "brass, brass"
    })
    void whatPeopleCallThem(String name, String id) {
        assertThat(MATERIALS.get(name).id()).isEqualTo(id);
    }

    @Test
    void aNameStandsForOneMaterial() {
        String text = """
                eddyreach: materials
                materials:
                  a: {name: a, conductivity: 1 MS/m, source: x, also: [b, A 1]}
                  b: {name: b, conductivity: 1 MS/m, source: x, also: [a-1, 17]}
                """;
        InputException e = catchThrowableOfType(
                InputException.class, () -> Materials.read(ModelFiles.write(folder, "m.yaml", text)));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("""
                        m.yaml:3:56 materials.a.also[1]: already stands for b
                        m.yaml:4:56 materials.b.also[1]: already stands for a""");
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

    @Test
    void aRangeOfPermeability() {
        Materials read = Materials.read(ModelFiles.write(folder, "m.yaml", """
                eddyreach: materials
                materials:
                  a: {name: a, conductivity: 4 MS/m, permeability: 10 to 40, source: guess}
                """));
        Material a = read.get("a");
        assertThat(a.range()).contains(new PermeabilityRange(10, 40));
        assertThat(a.muReal()).isEqualTo(20);
        assertThat(a.heldAt(70).range()).isEqualTo(a.range());
        InputException e = catchThrowableOfType(
                InputException.class, () -> Materials.read(ModelFiles.write(folder, "m.yaml", """
                eddyreach: materials
                materials:
                  a: {name: a, conductivity: 4 MS/m, permeability: 300 to 10, source: guess}
                  b: {name: b, conductivity: 4 MS/m, permeability: 0.5 to 10, source: guess}
                  c: {name: c, conductivity: 4 MS/m, permeability: 10 to 10, source: guess}
                  d: {name: d, conductivity: 4 MS/m, permeability: 10 to many, source: guess}
                """)));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("""
                        m.yaml:3:52 materials.a.permeability: the range must rise, such as 10 to 300
                        m.yaml:4:52 materials.b.permeability: out of range, needs 1 to 1e6
                        m.yaml:5:52 materials.c.permeability: the range must rise, such as 10 to 20
                        m.yaml:6:52 materials.d.permeability: many: does not start with a number, needs a plain number such as 1.5""");
    }
}
