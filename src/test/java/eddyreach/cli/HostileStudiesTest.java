package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachResult;
import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.linalg.MemoryException;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.report.words.ReasonText;
import eddyreach.studies.StudyReader;
import eddyreach.study.ResultFiles;
import eddyreach.study.TextReport;
import eddyreach.switching.NoTrimException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Input inside the readers' limits but far from anything that is built: it ends in a result that keeps the books of its
 * energy, in a place with exit code 2, or in a failed computation told in plain words; never in an internal error.
 */
class HostileStudiesTest {

    private static final int STUDIES = 60;

    /** A budget and the impedance come from the same solution, so that they differ by rounding and quadrature only. */
    private static final double BALANCE = 1e-3;

    private enum End {
        RESULT,
        REFUSED,
        FAILED
    }

    @TempDir
    private Path folder;

    /** Fast ones of the sixty: results, a switch that cannot be trimmed, a tank without resonance. */
    @ParameterizedTest
    @ValueSource(longs = {13, 16, 22, 44, 57})
    void aFewRandomStudies(long seed) throws IOException {
        end(RandomStudy.of(seed));
    }

    @Tag("long")
    @Test
    void randomStudies() throws IOException {
        List<End> ends = new ArrayList<>();
        for (long seed = 1; seed <= STUDIES; seed++) {
            ends.add(end(RandomStudy.of(seed)));
        }
        assertThat(ends).contains(End.FAILED);
        assertThat(ends.stream().filter(e -> e == End.RESULT).count()).isGreaterThan(STUDIES / 2);
    }

    /**
     * One extreme at a time, on a switch that is in order otherwise. At 1 kHz the copper's own resistance outweighs all
     * others, so that steel, which raises the inductance, lowers the conductance R C/L: no trim is possible.
     */
    @Tag("long")
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    very thin wire             | copper diameter: 0.1 mm | copper diameter: 0.01 mm         | RESULT
                    very many turns            | turns: 80~copper diameter: 0.1 mm~strands: 3 | turns: 5000~copper diameter: 0.03 mm~strands: 1 | RESULT
                    one turn                   | turns: 80               | turns: 1                         | RESULT
                    10 MHz                     | frequency: 200 kHz      | frequency: 10 MHz                | RESULT
                    1 kHz                      | frequency: 200 kHz      | frequency: 1 kHz                 | FAILED
                    steel tube                 | brass-tube              | fe360                            | RESULT
                    solid steel at 10 MHz      | frequency: 200 kHz~brass-tube | frequency: 10 MHz~fe360    | RESULT
                    copper core                | ferrite-mnzn            | copper                           | RESULT
                    core of air                | ferrite-mnzn            | air                              | RESULT
                    smallest current           | current: 50 uA         | current: 1 nA                    | RESULT
                    weakest oscillator         | transconductance: 200 uS | transconductance: 1 nS          | RESULT
                    smallest travel            | differential travel: 5 % | differential travel: 0.01 %     | RESULT
                    largest travel             | differential travel: 5 % | differential travel: 20 %       | RESULT
                    very near                  | rated distance: 5 mm    | rated distance: 0.1 mm           | RESULT
                    very far                   | rated distance: 5 mm    | rated distance: 200 mm           | FAILED
                    """)
    void extremeSwitches(String what, String before, String after, End expected) throws IOException {
        String text = Files.readString(Path.of("models/p14-reference.yaml"));
        String[] old = before.split("~");
        String[] changed = after.split("~");
        for (int i = 0; i < old.length; i++) {
            assertThat(text).as(what).contains(old[i]);
            text = text.replace(old[i], changed[i]);
        }
        assertThat(end(new RandomStudy(text, study("shape: standard, material: fe360"))))
                .as(what)
                .isEqualTo(expected);
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(
            strings = {
                "shape: plate, material: aluminium, thickness: 1 nm",
                "shape: disc, diameter: 20 mm, material: aluminium, thickness: 1 nm",
                "shape: disc, diameter: 0.1 mm, material: fe360, thickness: 1 m",
                "shape: disc, diameter: 10 m, material: fe360, thickness: 1 m",
                "shape: disc, diameter: 80 mm, material: silver, thickness: 1 m",
                "shape: square, side: 0.1 mm, material: copper, thickness: 1 nm",
                "shape: disc, diameter: 20 mm, material: air, thickness: 1 mm",
                "shape: plate, material: ferrite-mnzn-high, thickness: 5 mm",
                "shape: disc, diameter: 20 mm, material: ferrite-mnzn-high, thickness: 5 mm",
                "shape: disc, diameter: 20 mm, material: brine, thickness: 1 m",
                "shape: sphere, diameter: 0.1 mm, material: copper",
                "shape: sphere, diameter: 200 mm, material: fe360",
                "shape: sphere, diameter: 50 mm, material: ferrite-mnzn-high",
                "shape: washer, outer: 1 m, inner: 0.01 mm, thickness: 1 m, material: copper",
                "shape: washer, outer: 10 mm, inner: 4 mm, thickness: 1 nm, material: copper, slit: yes",
                "shape: washer, outer: 10 mm, inner: 4 mm, thickness: 2 mm, material: ferrite-mnzn-high, slit: yes",
                "shape: tube, outer: 8 mm, wall: 1 nm, length: 1 m, material: silver",
                "shape: tube, outer: 200 mm, wall: 1 mm, length: 1 m, material: silver, slit: yes",
                "shape: cylinder, diameter: 5 mm, length: 5 mm, material: fe360, coating: {material: gold, thickness: 1 nm}",
                "shape: disc, diameter: 18 mm, LAYERS",
                "shape: plate, LAYERS"
            })
    void extremeTargets(String target) throws IOException {
        List<String> layers = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            layers.add("{material: " + (i % 2 == 0 ? "zinc" : "fe360") + ", thickness: " + (i + 1) + " um}");
        }
        String model = Files.readString(Path.of("models/p14-reference.yaml"));
        String study = study(target.replace("LAYERS", "layers: [" + String.join(", ", layers) + "]"));
        assertThat(end(new RandomStudy(model, study))).isEqualTo(End.RESULT);
    }

    /**
     * The same switch 1.8 mm and 450 mm wide, as far as wire and barrel stay inside the limits; so small a
     * coil needs a higher frequency, or copper alone takes all loss.
     */
    @Tag("long")
    @ParameterizedTest
    @CsvSource({"0.1, 5 MHz", "25, 300 kHz"})
    void extremeSizes(double scale, String frequency) throws IOException {
        String text = Files.readString(Path.of("models/m18-non-flush-no-core.yaml"))
                .replace("frequency: 300 kHz", "frequency: " + frequency);
        String scaled = Pattern.compile("([0-9.]+) mm(?=\n)")
                .matcher(text)
                .replaceAll(m -> Double.parseDouble(m.group(1)) * scale + " mm");
        assertThat(end(new RandomStudy(scaled, study("shape: standard, material: copper"))))
                .isEqualTo(End.RESULT);
    }

    private static String study(String target) {
        return """
                eddyreach: study
                name: hostile
                kind: approach
                switch: ./x-switch.yaml
                targets:
                  - {name: part, %s}
                distances: {points: 11}
                field pictures: no
                """.formatted(target);
    }

    private End end(RandomStudy files) throws IOException {
        Files.writeString(folder.resolve("x-switch.yaml"), files.switchFile());
        Path file = Files.writeString(folder.resolve("x.yaml"), files.studyFile());
        String shown = files.switchFile() + files.studyFile();
        try {
            ApproachInput input = (ApproachInput) StudyReader.read(new SourceFile.OnDisk(file), new Library(folder));
            ApproachResult result = ApproachRunner.run(input);
            check(result, shown);
            checkBudgetsOnTheCurve(input, result, shown);
            return End.RESULT;
        } catch (InputException e) {
            assertThat(e.problems()).as(shown).allMatch(p -> p.line() > 0 && p.column() > 0);
            return End.REFUSED;
        } catch (SelfCheckException | MemoryException | NoTrimException | NoOscillationException e) {
            assertThat(e.getMessage())
                    .as(shown)
                    .matches("(?s).*[a-z]+ [a-z]+ [a-z]+ .*")
                    .doesNotContainPattern("NaN|null|Exception|[0-9]\\.[0-9]{8}");
            return End.FAILED;
        } catch (RuntimeException e) {
            throw new AssertionError("internal error with\n" + shown, e);
        }
    }

    private void check(ApproachResult result, String shown) throws IOException {
        finite(
                shown,
                result.trimmed().onConductance(),
                result.trimmed().offConductance(),
                result.trimmed().onAmplitude(),
                result.trimmed().offAmplitude());
        assertThat(result.trimmed().onConductance())
                .as(shown)
                .isGreaterThan(result.trimmed().offConductance());
        Operating free = result.undamped();
        finite(shown, free.resistance(), free.inductance(), free.frequency(), free.conductance(), free.amplitude());
        balanced(result.trimmed().freeBudget(), free.resistance(), shown);
        for (TargetResult t : result.targets()) {
            Curve c = t.curve();
            finite(shown, c.lossResistance());
            finite(shown, c.inductanceChange());
            for (double[] positive : List.of(c.resistance(), c.inductance(), c.frequency(), c.conductance())) {
                finite(shown, positive);
                assertThat(positive).as(shown).matches(a -> Arrays.stream(a).allMatch(x -> x > 0));
            }
            finite(shown, c.amplitude());
            SwitchDistance d = t.distance();
            if (d.outcome() == SwitchDistance.Outcome.SWITCHES) {
                finite(shown, d.on(), d.off(), d.onError(), d.offError());
                assertThat(d.on()).as(shown).isBetween(0.0, d.off());
                assertThat(d.off()).as(shown).isGreaterThan(d.on());
            }
            assertThat(ReasonText.of(t.reason()))
                    .as(shown)
                    .doesNotContain("NaN", "Infinity", "null")
                    .isNotBlank();
        }
        assertThat(TextReport.of(result, Optional.empty(), false)).as(shown).doesNotContain("NaN", "Infinity");
        ResultFiles.write(result, folder.resolve("out"), Set.of());
        for (String name : List.of("distances.csv", "impedance.csv", "result.json")) {
            assertThat(Files.readString(folder.resolve("out").resolve(name)))
                    .as(shown)
                    .doesNotContain("NaN", "Infinity");
        }
    }

    /** A second run whose curve begins where the last target switches, so that its budget lies on a point of the curve. */
    private static void checkBudgetsOnTheCurve(ApproachInput s, ApproachResult result, String shown) {
        double at = result.targets().get(result.targets().size() - 1).budget().distance();
        ApproachInput shifted = new ApproachInput(
                s.header(), s.targets(), s.usualFactors(), at, Math.max(s.lastDistance(), 2 * at), s.points(), false);
        List<TargetResult> targets =
                at == 0 ? result.targets() : ApproachRunner.run(shifted).targets();
        for (TargetResult t : targets) {
            for (int i = 0; i < t.curve().size(); i++) {
                if (t.curve().distance(i) == t.budget().distance()) {
                    balanced(t.budget(), t.curve().resistance(i), shown);
                }
            }
        }
    }

    private static void balanced(LossBudget budget, double resistance, String shown) {
        assertThat(budget.total()).as(shown).isCloseTo(resistance, within(BALANCE * resistance));
        assertThat(budget.shares()).as(shown).allMatch(s -> s.resistance() >= -BALANCE * resistance);
    }

    private static void finite(String shown, double... values) {
        assertThat(values).as(shown).matches(a -> Arrays.stream(a).allMatch(Double::isFinite));
    }
}
