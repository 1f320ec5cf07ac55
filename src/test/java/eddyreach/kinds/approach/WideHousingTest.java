package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.Resolution;
import eddyreach.geometry.Part;
import eddyreach.model.read.Library;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Housings far wider than the core reflect waves as wide targets do, and need as many wavenumbers. */
class WideHousingTest {

    private static final String RING = """
            housing:
              - {name: far ring, material: copper, inner diameter: %s mm, outer diameter: %s mm, front: 0 mm, back: 5 mm}
            """;

    @TempDir
    private Path folder;

    /** A foil of 10 um before the shipped switch with one more ring. */
    private ApproachInput study(String inner, String outer) throws IOException {
        String text = Files.readString(Path.of("models/m18-flush.yaml"));
        String more = RING.formatted(inner, outer);
        Files.writeString(
                folder.resolve("wide.yaml"),
                text.replaceFirst("(?m)^thread:.*\\R", "").replaceFirst("(?m)^housing:\\R", more));
        Path file = Files.writeString(folder.resolve("s.yaml"), """
                eddyreach: study
                name: foil
                kind: approach
                switch: wide.yaml
                field pictures: no
                targets:
                  - {name: foil, material: aluminium-foil, thickness: 10 um}
                """);
        return (ApproachInput) StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")));
    }

    private static SwitchDistance found(ApproachInput study) {
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), study.targets(), Progress.NONE);
        return study.approach(ladder.step(ResolutionLadder.FIRST), ladder.step(0))
                .of(study.targets().get(0))
                .distance();
    }

    /** So far away it does not matter: within the bars the distance is that without it. */
    @Test
    void aRingFarAwayChangesNothing() throws IOException {
        SwitchDistance with = found(study("300", "315"));
        Library library = new Library(Path.of(""));
        Path file = Files.writeString(
                folder.resolve("plain.yaml"),
                Files.readString(folder.resolve("s.yaml")).replace("wide.yaml", "m18-flush"));
        SwitchDistance without = found((ApproachInput) StudyReader.read(new SourceFile.OnDisk(file), library));
        assertThat(Math.abs(with.on() - without.on())).isLessThanOrEqualTo(with.onError() + without.onError());
    }

    /** A flange of 35 mm radius, where few waves are wrong by 3 to 5 %: switch and target in one field problem. */
    @Test
    void aFlangeAgainstEverythingInOneProblem() throws IOException {
        ApproachInput study = study("18.5", "70");
        Target target = study.standard();
        SolvedSwitch solved = new SolvedSwitch(study.switchModel(), Resolution.FINE, List.of(target), bytes -> {});
        double omega = solved.free().omega();
        for (double g : new double[] {0.5e-3, 3e-3}) {
            Complex joined = solved.effect(solved.target(target)).change(omega, g);
            List<Part> parts = target.parts().stream().map(p -> p.shifted(g)).toList();
            Complex direct = new DirectSolve(
                            solved.parts(),
                            solved.coil(omega),
                            parts,
                            omega,
                            solved.celsius(),
                            Resolution.FINE,
                            solved.scale())
                    .change();
            assertThat(joined.subtract(direct).abs())
                    .as("at %.1f mm: joined %s, direct %s", g * 1e3, joined, direct)
                    .isLessThan(3e-3 * direct.abs());
        }
    }
}
