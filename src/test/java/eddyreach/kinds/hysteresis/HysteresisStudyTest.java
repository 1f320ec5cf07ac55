package eddyreach.kinds.hysteresis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import eddyreach.switching.Hysteresis;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HysteresisStudyTest {

    private static final String STUDY = """
            eddyreach: study
            name: slide
            kind: hysteresis
            switch: m18-flush
            """;

    @TempDir
    private Path folder;

    private StudyInput read(String text) {
        return StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(Path.of("")));
    }

    /** The trim puts the loop of the standard target at 5.00 and 5.40 mm; all else follows by hand. */
    @Test
    void theLoopOfTheStandardTarget() throws Exception {
        HysteresisResult r = (HysteresisResult) read(STUDY
                        + "differential travel: 8 %\nnear: 3 mm\nfar: 7 mm\namplitude noise: 2 mV\n"
                        + "vibration: {amplitude: 0.25 mm, frequency: 20 Hz}\nspeed: 4 mm/s\n")
                .run();
        Loop loop = r.loops().get(0);
        assertThat(loop.distance().on()).isCloseTo(5e-3, within(1e-9));
        assertThat(loop.distance().off()).isCloseTo(5.4e-3, within(1e-9));
        Hysteresis.Chatters chatter = (Hysteresis.Chatters) loop.verdict().orElseThrow();
        assertThat(chatter.nearest()).isCloseTo(5.15e-3, within(1e-9));
        assertThat(chatter.farthest()).isCloseTo(5.25e-3, within(1e-9));
        assertThat(loop.inTime().orElseThrow()).isEqualTo(2);
        assertThat(loop.travels().orElseThrow().most()).isCloseTo(2e-3, within(1e-9));
        // the amplitude rises from one threshold to the other within the loop; the tangent at its near end is a little
        // steeper than this chord
        double chord = (r.trimmed().offAmplitude() - r.trimmed().onAmplitude()) / loop.travel();
        assertThat(loop.repeat().orElseThrow().deviation()).isBetween(0.85 * 2e-3 / chord, 2e-3 / chord);
        assertThat(r.presentation().answer())
                .isEqualTo(
                        "No: mild steel Fe 360, 1 mm goes on at 5.00 mm and off at 5.40 mm, a differential travel of 8 % of sr; it"
                                + " chatters while the target passes between 5.15 and 5.25 mm, and needs more than 0.5 mm of travel,"
                                + " about 10 % of sr for the standard target.");
        for (Picture picture : r.presentation().pictures()) {
            assertThat(DrawnTexts.of(picture).faults()).as(picture.name()).isEmpty();
        }
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> read(STUDY + "differential travel: 120 %\nnear: 7 mm\nfar: 3 mm\nvibration: {amplitude: -1 um}\n"
                        + "amplitude noise: 2 mA\nrepeats: 1\n"));
        assertThat(ModelFiles.message(e, folder).lines())
                .hasSize(5)
                .anyMatch(l -> l.contains("differential travel: 120 % is out of range, needs 0.1 % to 100 %"))
                .anyMatch(l -> l.contains("far: 3 mm must be beyond near, 7 mm"))
                .anyMatch(l -> l.contains("vibration.amplitude: -1 um is out of range"))
                .anyMatch(l -> l.contains("amplitude noise: "))
                .anyMatch(l -> l.contains("repeats: got 1, needs"));
    }
}
