package eddyreach.kinds.recess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.values.Mount;
import eddyreach.model.yaml.InputException;
import eddyreach.studies.StudyReader;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecessReaderTest {

    private static final String HEAD = """
            eddyreach: study
            name: test
            kind: recess
            switch: m18-non-flush
            """;

    @TempDir
    private Path folder;

    private RecessInput read(String more) {
        return (RecessInput) StudyReader.read(ModelFiles.write(folder, "s.yaml", HEAD + more), new Library(folder));
    }

    private String problems(String more) {
        return catchThrowableOfType(InputException.class, () -> read(more)).getMessage();
    }

    @Test
    void theShortestStudyHasAMapOf12By10() {
        RecessInput study = read("wall: {materials: [fe360], thickness: 25 mm}\n");
        assertThat(study.diameters().points()).isEqualTo(12);
        assertThat(study.depths().points()).isEqualTo(10);
        assertThat(study.depths().last()).isLessThan(25e-3);
        assertThat(study.target().id()).isEqualTo(study.standard().id());
        Mount mount = study.recess(study.materials().get(0)).with(40e-3, 6e-3);
        assertThat(mount.surface()).isZero();
        assertThat(mount.wall().orElseThrow().openings()).containsExactly(new Mount.Opening(40e-3, 40e-3, 0, 6e-3));
    }

    @Test
    void atTheBottomTheFaceGoesWithTheDepth() {
        RecessInput study = read("""
                wall: {materials: [fe360], thickness: 25 mm}
                at the bottom: yes
                """);
        assertThat(study.recess(study.materials().get(0)).with(40e-3, 6e-3).surface())
                .isEqualTo(6e-3);
    }

    @Test
    void everythingThatDoesNotFitIsToldAtOnceWithBothDimensions() {
        String all = problems("""
                wall: {materials: [fe360, fe360], thickness: 90 mm, diameter: 50 mm, bore: 12 mm}
                diameters: {from: 10 mm, to: 60 mm, points: 1}
                depths: {to: 95 mm}
                recess: {diameter: 11 mm, depth: 92 mm}
                targets: [{name: a, material: fe360, thickness: 1 mm, shape: standard}, {name: b, material: fe360, thickness: 1 mm, shape: standard}]
                """);
        assertThat(all)
                .contains("s.yaml:5:")
                .contains("\"fe360\" stands twice")
                .contains("12 mm is narrower than the body of the switch, 17.35 mm")
                .contains("10 mm is not wider than the bore, 12 mm")
                .contains("60 mm is not narrower than the wall, 50 mm")
                .contains("points")
                .contains("95 mm: the recess is not shallower than the wall is thick, 90 mm")
                .contains("11 mm is not wider than the bore, 12 mm")
                .contains("92 mm reaches 92 mm behind the active face, but the switch ends at")
                .contains("one target, got 2");
        assertThat(problems("""
                wall: {materials: [fe360], thickness: 25 mm}
                at the bottom: yes
                sunk by: 3 mm
                """)).contains("stands beside sunk by 3 mm");
    }
}
