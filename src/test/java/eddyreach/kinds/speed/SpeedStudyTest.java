package eddyreach.kinds.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.field.axial.Resolution;
import eddyreach.kinds.offaxis.PassResult;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import eddyreach.switching.SpeedLimit;
import eddyreach.switching.Teeth;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpeedStudyTest {

    private static final String TOOTH =
            "targets: [{name: a, material: fe360, shape: disc, diameter: 12 mm, thickness: 1 mm}]\n";

    private static final String STUDY = """
            eddyreach: study
            name: teeth
            kind: speed
            switch: m18-flush
            distance: 2 mm
            """ + TOOTH;

    @TempDir
    private Path folder;

    private StudyInput read(String text) {
        return StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(Path.of("")));
    }

    private String failure(String text) {
        return ModelFiles.message(catchThrowableOfType(InputException.class, () -> read(text)), folder);
    }

    /** At rest a row far apart is a pass of one tooth, which another kind of study computes. */
    @Test
    @Tag("long")
    void aRowAtRestIsAPass() {
        SpeedInput study = (SpeedInput) read(STUDY + "pitch: 50 mm\n");
        ResolutionLadder.Step step = ResolutionLadder.trimmed(
                study.switchModel(),
                study.standard(),
                Resolution.FINE.withoutFields(),
                List.of(study.standard(), study.tooth().beside(27e-3)),
                bytes -> {});
        Teeth teeth = new Row(step, study.tooth(), 50e-3, 2e-3).teeth();
        PassResult pass =
                (PassResult) read(STUDY.replace("kind: speed", "kind: pass") + "offsets: {to: 14 mm, points: 11}\n")
                        .run();
        double on = crossing(teeth, step.trim().on());
        double off = crossing(teeth, step.trim().off());
        assertThat(on + off).isCloseTo(pass.targets().get(0).onLength(), within(0.1e-3));
    }

    private static double crossing(Teeth teeth, double threshold) {
        return new BrentSolver(1e-9)
                .solve(100, x -> teeth.conductance().applyAsDouble(x) - threshold, 0, teeth.pitch() / 2);
    }

    /**
     * Where all but the delay is fast, a pulse that is shorter than the delay is lost, so that the limit is the shorter share of the pitch at rest over
     * the delay; the oscillator, which falls faster than it returns, shifts that by up to 0.1 ms in 20. The share comes from a pass of the same disc, another kind of study.
     */
    @Test
    @Tag("long")
    void aLongDelayLimitsByTheShareAtRest() {
        SpeedResult row = (SpeedResult) read(STUDY
                        + "pitch: 30 mm\nspeed: 3 m/s\ndemodulator: 30 kHz\noutput delay: 10 ms\nshortest pulse: 0 us\n")
                .run();
        PassResult pass = (PassResult) read(STUDY.replace("kind: speed", "kind: pass") + "offsets: {points: 11}\n")
                .run();
        double on = pass.targets().get(0).onLength() / 30e-3;
        double expected = Math.min(on, 1 - on) / 10e-3;
        assertThat(row.frequency()).isCloseTo(expected, within(0.02 * expected));
        assertThat(((SpeedLimit.Limited) row.limit()).limiting()).isEqualTo(SpeedLimit.Stage.DELAY);
        assertThat(row.asked().orElseThrow().frequency()).isCloseTo(100, within(1e-9));
        assertThat(row.presentation().answer())
                .startsWith("No, the speed is too high by a factor of ")
                .endsWith("the delay of the output limits it.");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThat(failure(STUDY + "pitch: 12 mm\ndemodulator: -5 kHz\noutput delay: -1 us\nspeed: 0 m/s\n")
                        .lines())
                .hasSize(4)
                .anyMatch(l -> l.contains("pitch: teeth 12 mm wide touch at a pitch of 12 mm, needs more than 12 mm"))
                .anyMatch(l -> l.contains("demodulator: -5 kHz is out of range, needs"))
                .anyMatch(l -> l.contains("output delay: -1 us is out of range, needs"))
                .anyMatch(l -> l.contains("speed: 0 m/s is out of range, needs"));
        assertThat(failure(STUDY + "wheel: {teeth: 24, diameter: 80 mm}\n"))
                .contains("wheel.diameter: teeth 12 mm wide touch at a pitch of 10.47")
                .contains("needs more than 91.67");
        assertThat(failure(
                        STUDY.replace(TOOTH, "targets: [{name: a, material: zinc, shape: plate, thickness: 1 mm}]\n")))
                .contains("targets: an endless plate is no tooth");
    }
}
