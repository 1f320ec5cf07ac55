package eddyreach.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachKind;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyReaderTest {

    @TempDir
    private Path folder;

    private Path studies;

    @BeforeEach
    void folders() throws IOException {
        studies = Files.createDirectories(folder.resolve("studies"));
        Files.createDirectories(folder.resolve("models"));
    }

    private ApproachInput read(String text) {
        return (ApproachInput) StudyReader.read(ModelFiles.write(studies, "s.yaml", text), new Library(folder));
    }

    private String failure(String text) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(text));
        return e == null ? "" : ModelFiles.message(e, folder);
    }

    @Test
    void approach() {
        ApproachInput input = read("""
                eddyreach: study
                name: foil
                kind: approach
                switch: p14-reference
                targets:
                  - {name: foil, material: aluminium-foil, thickness: 10 um}
                distances: {from: 0.5 mm, to: 10 mm, points: 40}
                """);
        assertThat(input.id()).isEqualTo("s");
        assertThat(input.kind()).isEqualTo(ApproachKind.APPROACH);
        assertThat(input.switchModel().id()).isEqualTo("p14-reference");
        assertThat(input.targets()).hasSize(1);
        assertThat(input.targets().get(0).sheet().orElseThrow().outline()).isEqualTo(new Target.Outline.Square(18e-3));
        assertThat(input.firstDistance()).isEqualTo(0.5e-3);
        assertThat(input.lastDistance()).isEqualTo(10e-3);
        assertThat(input.points()).isEqualTo(40);
        assertThat(input.accuracy()).as("0.02 mm at an M18").isEqualTo(20e-6);
        assertThat(input.standard().layers().get(0).material().id()).isEqualTo("fe360");
        assertThat(input.fieldPictures()).isTrue();
    }

    @Test
    void materialsWithTheirShapeAndOneMoreTarget() {
        ApproachInput input = read("""
                eddyreach: study
                name: factors
                kind: materials
                switch: p14-reference
                materials: [fe360, copper]
                thickness: 2 mm
                shape: disc
                diameter: 20 mm
                targets:
                  - {name: foil, material: aluminium-foil, thickness: 10 um}
                distances: {from: 0 mm, to: 10 mm, points: 40}
                accuracy: 20 um
                field pictures: no
                """);
        assertThat(input.targets()).extracting(Target::id).containsExactly("fe360", "copper", "foil");
        assertThat(input.targets().get(1).sheet().orElseThrow().outline()).isEqualTo(new Target.Outline.Disc(20e-3));
        assertThat(input.targets().get(1).thickness()).isEqualTo(2e-3);
        assertThat(input.accuracy()).isEqualTo(20e-6);
        assertThat(input.fieldPictures()).isFalse();
    }

    @Test
    void distancesAreOptionalAndBandsBelongToStandardTargets() {
        ApproachInput input = read("""
                eddyreach: study
                name: usual
                kind: materials
                switch: p14-reference
                materials: [copper]
                targets:
                  - {name: foil, material: copper, thickness: 35 um}
                """);
        assertThat(input.firstDistance()).isZero();
        assertThat(input.lastDistance()).isEqualTo(12.5e-3);
        assertThat(input.usualFactors()).containsOnlyKeys("copper");
        assertThat(input.usualFactors().get("copper").low()).isEqualTo(0.16);
    }

    @Test
    void theProblemsOfStudyAndSwitchAreToldTogether() {
        String broken = ModelFiles.referenceWithShortNote().replace("turns: 80", "turns: none");
        ModelFiles.write(folder.resolve("models"), "broken.yaml", broken);
        assertThat(failure("""
                        eddyreach: study
                        name: x
                        kind: materials
                        switch: ../models/broken.yaml
                        materials: [fe360, coper, fe360]
                        distances: {from: 5 mm, to: 2 mm, points: 1}
                        """)).isEqualTo("""
                        models/broken.yaml:21:10 winding.turns: got none, needs a whole number from 1 to 5000
                        studies/s.yaml:5:20 materials[2]: unknown material "coper", did you mean "copper"?
                        studies/s.yaml:5:27 materials[3]: "fe360" stands twice in the list
                        studies/s.yaml:6:29 distances.to: 2 mm must be larger than from, 5 mm
                        studies/s.yaml:6:43 distances.points: got 1, needs a whole number from 11 to 10000""");
    }

    @Test
    void aSwitchThatIsNotThereIsToldAtItsName() {
        String text = """
                eddyreach: study
                name: x
                kind: approach
                switch: SWITCH
                targets: [{name: a, material: fe360}]
                distances: {from: 1 mm, to: 2 mm, points: 12}
                """;
        assertThat(failure(text.replace("SWITCH", "p14-referenz")))
                .isEqualTo("studies/s.yaml:4:9 switch: p14-referenz: there is no switch of this name; did you mean"
                        + " p14-reference?");
        assertThat(failure(text.replace("SWITCH", "./none.yaml")))
                .isEqualTo("studies/s.yaml:4:9 switch: studies/none.yaml: file not found");
        assertThat(failure(text.replace("SWITCH", "./s.yaml")))
                .isEqualTo("studies/s.yaml:1:12 eddyreach: got a file of kind \"study\", needs switch");
        assertThat(failure(text.replace("kind: approach", "kind: approch")))
                .contains(
                        "studies/s.yaml:3:7 kind: got \"approch\", needs approach, background, conductivity, disturbance, hysteresis, layers, materials, mount, neighbour, pass, principles, recess, series, size, speed, temperature, thickness or zone");
    }
}
