package eddyreach.kinds.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.materials.Material;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SweepReaderTest {

    private static final String HEAD = """
            eddyreach: study
            name: x
            switch: p14-reference
            """;

    @TempDir
    private Path folder;

    private StudyInput read(String text) {
        return StudyReader.read(ModelFiles.write(folder, "s.yaml", HEAD + text), new Library(folder));
    }

    private String failure(String text) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(text));
        return e == null ? "" : ModelFiles.message(e, folder);
    }

    @Test
    void thickness() {
        SweepInput.Thickness usual = (SweepInput.Thickness) read("""
                kind: thickness
                materials: [aluminium, copper]
                """);
        assertThat(usual.materials()).extracting(Material::id).containsExactly("aluminium", "copper");
        assertThat(usual.thicknesses()).isEqualTo(new ValueRange(50e-9, 5e-3, 61));
        assertThat(usual.outline()).isEqualTo(new Target.Outline.Square(18e-3));
        assertThat(usual.reach()).as("2.5 times 5 mm").isEqualTo(12.5e-3);
        assertThat(usual.accuracy()).as("twice that of a single distance").isEqualTo(40e-6);
        SweepInput.Thickness given = (SweepInput.Thickness) read("""
                kind: thickness
                materials: [aluminium]
                shape: plate
                thicknesses: {from: 1 um, to: 2 mm, points: 2}
                reach: 8 mm
                accuracy: 10 um
                """);
        assertThat(given.thicknesses()).isEqualTo(new ValueRange(1e-6, 2e-3, 2));
        assertThat(given.outline()).isEqualTo(new Target.Outline.Endless());
        assertThat(given.reach()).isEqualTo(8e-3);
        assertThat(given.accuracy()).isEqualTo(10e-6);
        assertThat(given.target(given.materials().get(0), 3e-6).thickness()).isEqualTo(3e-6);
    }

    @Test
    void size() {
        SweepInput.Size input = (SweepInput.Size) read("""
                kind: size
                materials: [fe360]
                outline: disc
                """);
        assertThat(input.sizes().first()).isEqualTo(0.1 * 18e-3);
        assertThat(input.sizes().last()).isEqualTo(2 * 18e-3);
        assertThat(input.thickness()).isEqualTo(1e-3);
        assertThat(input.target(input.materials().get(0), 5e-3)
                        .sheet()
                        .orElseThrow()
                        .outline())
                .isEqualTo(new Target.Outline.Disc(5e-3));
    }

    @Test
    void conductivityTakesTheConductorsOfTheLibrary() {
        SweepInput.Conductivity input = (SweepInput.Conductivity) read("""
                kind: conductivity
                conductivities: {from: 10 MS/m, to: 100 %IACS}
                permeabilities: {from: 1, to: 20}
                """);
        assertThat(input.conductivities().last()).isEqualTo(58e6);
        assertThat(input.materials())
                .extracting(Material::id)
                .as("those beyond the map's edges are named on it")
                .contains("copper", "brass", "fe360", "carbon-fibre")
                .doesNotContain("paper");
        assertThat(input.materials())
                .allSatisfy(m -> assertThat(m.conductivity20()).isPositive());
    }

    @Test
    void coating() {
        SweepInput.Layers input = (SweepInput.Layers) read("""
                kind: layers
                base: {layers: [{material: paper, thickness: 0.3 mm}, {material: fe360, thickness: 1 mm}]}
                coatings: [aluminium-foil]
                coating thickness: {to: 30 um}
                """);
        assertThat(input.base()).extracting(l -> l.material().id()).containsExactly("paper", "fe360");
        assertThat(input.thicknesses()).isEqualTo(new ValueRange(0, 30e-6, 31));
        Material foil = input.coatings().get(0);
        assertThat(input.target(foil, 0).layers()).isEqualTo(input.base());
        assertThat(input.target(foil, 1e-6).layers()).hasSize(3);
        assertThat(input.thicknesses().crowded()).startsWith(0).endsWith(30e-6).isSorted();
    }

    @Test
    void everythingThatIsWrongIsToldAtOnce() {
        assertThat(failure("""
                kind: thickness
                materials: [aluminun, copper, copper]
                thicknesses: {from: 5 mm, to: 50 nm, points: 1}
                thickness: 1 mm
                reach: 2 m
                """)).isEqualTo("""
                s.yaml:5:13 materials[1]: unknown material "aluminun", did you mean "aluminium"?
                s.yaml:5:31 materials[3]: "copper" stands twice in the list of materials
                s.yaml:6:31 thicknesses.to: the range from 5 mm to 50 nm is empty or reversed, to must be larger than from
                s.yaml:6:46 thicknesses.points: got 1, needs a whole number from 2 to 1000
                s.yaml:7:1 thickness: unknown key, did you mean "thicknesses"?
                s.yaml:8:8 reach: 2 m is out of range, needs 10 um to 1 m""");
        assertThat(failure("""
                kind: thickness
                materials: [copper]
                thicknesses: {from: 1 um, to: 200 mm}
                """)).isEqualTo("s.yaml:6:31 thicknesses.to: 200 mm is out of range, needs 1 nm to 100 mm");
        assertThat(failure("""
                kind: size
                materials: [copper]
                sizes: {from: 1 mm, to: 2 m}
                """)).isEqualTo("s.yaml:6:25 sizes.to: 2 m is out of range, needs 0.1 mm to 1 m");
        assertThat(failure("""
                kind: conductivity
                conductivities: {from: 5 S/m, to: 200 MS/m}
                permeabilities: {from: 0.5, to: 100}
                """)).isEqualTo("""
                s.yaml:5:24 conductivities.from: 5 S/m is out of range, needs 0.001 MS/m to 100 MS/m
                s.yaml:5:35 conductivities.to: 200 MS/m is out of range, needs 0.001 MS/m to 100 MS/m
                s.yaml:6:24 permeabilities.from: 0.5 is out of range, needs 1 to 100000""");
        assertThat(failure("""
                kind: layers
                base: {material: fe360, thickness: 1 mm}
                coatings: [zinc]
                coating thickness: {from: 0 mm, to: 0 mm}
                """))
                .isEqualTo(
                        "s.yaml:7:37 coating thickness.to: the range from 0 mm to 0 mm is empty or reversed, to must be"
                                + " larger than from");
        assertThat(failure("""
                kind: layers
                base: {material: fe360}
                coatings: []
                """)).isEqualTo("""
                s.yaml:5:7 base.thickness: missing, needs a length such as 0.6 mm
                s.yaml:6:11 coatings: the list is empty; give an entry or leave the key out""");
    }
}
