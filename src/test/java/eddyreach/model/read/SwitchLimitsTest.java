package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.model.values.MetricThread;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Switch files just within what is possible, and just beyond it. */
class SwitchLimitsTest {

    private static final Materials MATERIALS = ModelFiles.materials();
    private static final String TEXT = ModelFiles.referenceWithShortNote();

    @TempDir
    private Path folder;

    private SwitchModel read(String before, String after) {
        assertThat(TEXT).contains(before);
        return SwitchReader.read(
                ModelFiles.write(folder, "s.yaml", TEXT.replace(before, after.replace(";", "\n"))), MATERIALS);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rated distance: 5 mm | rated distance: 5 mm;effective distance: 4.5 mm",
                "rated distance: 5 mm | rated distance: 5 mm;effective distance: 5.5 mm",
                "active face: 18 mm | active face: 14 mm",
                "front: 0.8 mm | front: 0 mm",
                "back: 3.1 mm | back: 3.4 mm",
                "inner diameter: 6.6 mm | inner diameter: 6 mm",
                "outer diameter: 11 mm | outer diameter: 11.6 mm",
                "inner diameter: 16 mm | inner diameter: 14 mm",
                "height: 4.2 mm | height: 2.9 mm",
                "travel: 5 % | travel: 20 %",
                "travel: 5 % | travel: 0.01 %",
                "frequency: 200 kHz | frequency: 1 kHz",
                "frequency: 200 kHz | frequency: 10 MHz",
                "turns: 80 | turns: 1",
                "copper diameter: 0.1 mm, strands: 3 | copper diameter: 0.25 mm, strands: 1",
            })
    void justPossible(String before, String after) {
        assertThatCode(() -> read(before, after)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rated distance: 5 mm | rated distance: 5 mm;effective distance: 4.49 mm | 4.49 mm is out of range, needs 4.5 mm to 5.5 mm",
                "rated distance: 5 mm | rated distance: 5 mm;effective distance: 5.51 mm | 5.51 mm is out of range, needs 4.5 mm to 5.5 mm",
                "rated distance: 5 mm | rated distance: 0.05 mm;effective distance: 5 mm | rated distance: 0.05 mm is out of range",
                "active face: 18 mm | active face: 13.9 mm | active face: 13.9 mm is smaller than the coil behind it, 14 mm across",
                "back: 3.1 mm | back: 3.5 mm | the winding (diameter 6.6 mm to 11 mm, depth 0.8 mm to 3.5 mm) does not fit",
                "inner diameter: 6.6 mm | inner diameter: 5.9 mm | does not fit the core's window",
                "outer diameter: 11 mm | outer diameter: 11.7 mm | does not fit the core's window",
                "back: 3.1 mm | back: 0.8 mm | winding.back: 0.8 mm must be larger than front, 0.8 mm",
                "inner diameter: 6.6 mm | inner diameter: 11 mm | outer diameter: 11 mm must be larger than inner diameter, 11 mm",
                "height: 4.2 mm | height: 2.8 mm | core.height: 2.8 mm must be larger than window depth, 2.8 mm",
                "post diameter: 6 mm | post diameter: 6 mm;  hole diameter: 6 mm | core.post diameter: 6 mm must be larger than hole diameter, 6 mm",
                "outer diameter: 14 mm | outer diameter: 11.6 mm | core.outer diameter: 11.6 mm must be larger than window outer diameter, 11.6 mm",
                "name: tube | name: winding | \"winding\" names another part already",
                "name: tube | name: core back | \"core back\" names another part already",
                "material: ferrite-mnzn | material: ferrit-mnzn | core.material: unknown material \"ferrit-mnzn\"",
                "behind face: 0.6 mm | behind face: -0.6 mm | core.behind face: -0.6 mm lies in front of the active face",
                "element: tanh pair | element: tanh pear | got \"tanh pear\"",
                "current: 50 uA | current: 2 A | current: 2 A is out of range, needs 1 nA to 1 A",
                "transconductance: 200 uS | transconductance: 11 S | transconductance: 11 S is out of range, needs 1 nS to 10 S",
                "output: normally open | output: open | output: got \"open\", needs normally closed or normally open",
                "copper diameter: 0.1 mm, strands: 3 | copper diameter: 0.252 mm, strands: 1 | the wire does not fit",
                "copper diameter: 0.1 mm, strands: 3 | copper diameter: 0.1 mm, strands: 0 | strands: got 0, needs a whole number from 1 to 10000",
                "active face: 18 mm | active face: 18 mm;thread: M18 | \"M18\" is not a metric thread such as M18 x 1",
                "active face: 18 mm | active face: 18 mm;thread: M20 x 1 | M20 x 1 but the housing measures 18 mm: it is taken as a smooth tube of the"
                        + " pitch diameter, between 18.9175 mm and 20 mm",
                "active face: 18 mm | active face: 18 mm;thread: M16 x 1 | M16 x 1 but the housing measures 18 mm",
            })
    void justNot(String before, String after, String message) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(before, after));
        assertThat(ModelFiles.message(e, folder)).contains(message);
        assertThat(e.problems()).allMatch(p -> p.line() > 0 && p.column() > 0);
    }

    @Test
    void whatIsMissingIsToldWithWhatItNeeds() {
        int core = TEXT.indexOf("core:\n");
        int winding = TEXT.indexOf("winding:\n");
        String without = TEXT.substring(0, core) + TEXT.substring(winding);
        InputException e = catchThrowableOfType(
                InputException.class, () -> SwitchReader.read(ModelFiles.write(folder, "s.yaml", without), MATERIALS));
        assertThat(ModelFiles.message(e, folder))
                .isEqualTo("s.yaml:2:1 core: missing, needs a group of keys, or \"core: none\" for an air coil");
        String word = TEXT.substring(0, core) + "core: pot\n" + TEXT.substring(winding);
        e = catchThrowableOfType(
                InputException.class, () -> SwitchReader.read(ModelFiles.write(folder, "s.yaml", word), MATERIALS));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("s.yaml:11:7 core: got \"pot\", needs a group of keys");
        String wireless = TEXT.replaceFirst("(?s)  wire:\n.*?\n\n", "\n");
        e = catchThrowableOfType(
                InputException.class, () -> SwitchReader.read(ModelFiles.write(folder, "s.yaml", wireless), MATERIALS));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("s.yaml:21:3 winding.wire: missing, needs a group of keys");
    }

    /** The housing over a coil without a core, which fills no window. */
    @Test
    void aHousingMustNotCutTheWinding() {
        int core = TEXT.indexOf("core:\n");
        String air = TEXT.substring(0, core) + "core: none\n" + TEXT.substring(TEXT.indexOf("winding:"));
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> SwitchReader.read(
                        ModelFiles.write(
                                folder, "s.yaml", air.replace("inner diameter: 16 mm", "inner diameter: 10 mm")),
                        MATERIALS));
        assertThat(ModelFiles.message(e, folder))
                .endsWith(
                        "\"tube\" (diameter 10 mm to 18 mm, depth 0 mm to 40 mm) overlaps the winding (diameter 6.6 mm"
                                + " to 11 mm, depth 0.8 mm to 3.1 mm)");
    }

    @Test
    void aThreadFitsBetweenItsMinorAndItsNominalDiameter() {
        assertThat(read("active face: 18 mm", "active face: 18 mm;thread: M18 x 1")
                        .thread()
                        .map(MetricThread::text))
                .contains("M18 x 1");
        assertThat(read("active face: 18 mm", "active face: 18 mm").thread()).isEmpty();
    }
}
