package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.assure.Reason;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.FactorBand;
import eddyreach.report.words.Labels;
import eddyreach.report.words.ReasonText;
import eddyreach.study.TextReport;
import eddyreach.units.Texts;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TextReportTest {

    private static final ApproachResult RESULT = SampleResult.of();

    private static ApproachResult with(TargetResult target) {
        ApproachResult r = RESULT;
        return new ApproachResult(r.header(), r.trimmed(), List.of(target), List.of(), List.of(), List.of());
    }

    private static String line(SwitchDistance distance, double factor, double error, Optional<FactorBand> band) {
        TargetResult t = RESULT.targets().get(1);
        TargetResult changed = new TargetResult(
                t.target(), t.curve(), distance, factor, error, band, t.budget(), t.reason(), List.of());
        return TextReport.of(with(changed), Optional.empty(), false)
                .lines()
                .filter(l -> l.startsWith(t.target().id()))
                .findFirst()
                .orElseThrow();
    }

    private static SwitchDistance switches(double on, double off, double error) {
        return new SwitchDistance(SwitchDistance.Outcome.SWITCHES, on, off, error, error);
    }

    @Test
    void noLineIsLongerThanEightyColumns() {
        String text = TextReport.of(RESULT, Optional.of(Path.of("results", "derating")), false);
        assertThat(text.lines()).allMatch(l -> l.length() <= 80).noneMatch(l -> l.endsWith(" "));
        assertThat(text).contains("Files: " + Path.of("results", "derating")).endsWith("\n");
        RESULT.targets()
                .forEach(t -> assertThat(text.replaceAll("\\s+", " "))
                        .contains(ReasonText.of(t.reason()))
                        .contains(Texts.capitalised(t.target().label())));
        assertThat(text.replaceAll("\\s+", " "))
                .contains("Note, relative permeability assumed (mild steel 150): ")
                .contains("confirm it on the machine")
                .contains("Not for safety functions or explosive atmospheres");
    }

    @Test
    void longNamesAndReasonsStayInside() {
        TargetResult t = RESULT.targets().get(0);
        String word = "x".repeat(200);
        TargetResult wide = new TargetResult(
                new eddyreach.model.values.Target(
                        word, word + " " + word, t.target().body()),
                t.curve(),
                switches(99.99e-3, 105.2e-3, 12.34e-3),
                12.345,
                0.1,
                Optional.of(new FactorBand(10, 12.4, "made up")),
                t.budget(),
                new Reason(
                        SwitchDistance.Outcome.SWITCHES,
                        1,
                        0,
                        new Reason.Thick(new Reason.Metal(word, false, 1e-3, 1), 1)),
                t.warnings());
        assertThat(TextReport.of(with(wide), Optional.empty(), false).lines()).allMatch(l -> l.length() <= 80);
    }

    @Test
    void errorIsRoundedUpAndDigitsAreFew() {
        String line = line(
                switches(4.1249e-3, 4.4e-3, 0.0021e-3), 0.8254, 0.001, Optional.of(new FactorBand(0.6, 1, "trade")));
        assertThat(line).contains("4.12 ± 0.01").contains("4.40 ± 0.01").contains("0.83 0.60-1.00 typical");
    }

    @Test
    void verdictsFollowOutcomeAndBand() {
        SwitchDistance d = switches(4e-3, 4.4e-3, 1e-5);
        Optional<FactorBand> band = Optional.of(new FactorBand(0.6, 0.8, "trade"));
        assertThat(line(d, 0.59, 0.005, band)).endsWith("below typical");
        assertThat(line(d, 0.599, 0.005, band)).endsWith(" typical");
        assertThat(line(d, 0.81, 0.005, band)).endsWith("above typical");
        assertThat(line(d, 0.81, 0.005, Optional.empty())).endsWith(" switches");
        double nan = Double.NaN;
        assertThat(line(new SwitchDistance(SwitchDistance.Outcome.NEVER_ON, nan, nan, nan, nan), nan, nan, band))
                .endsWith("never on")
                .contains(" - ");
        assertThat(line(new SwitchDistance(SwitchDistance.Outcome.NEVER_OFF, 4e-3, nan, 1e-5, nan), 0.7, 0.01, band))
                .endsWith("does not release")
                .contains("4.00 ± 0.01");
    }

    @Test
    void colourOnlyAddsTerminalCodes() {
        String plain = TextReport.of(RESULT, Optional.empty(), false);
        String coloured = TextReport.of(RESULT, Optional.empty(), true);
        assertThat(plain).doesNotContain("\u001b");
        assertThat(coloured).contains("\u001b[31mnever on\u001b[0m");
        assertThat(coloured.replaceAll("\u001b\\[[0-9]*m", "")).isEqualTo(plain);
    }

    @Test
    void numbersKnowNoLocaleAndNoMinusZero() {
        assertThat(Labels.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(Labels.fixed(-1234.5, 1)).isEqualTo("-1234.5");
        assertThat(Labels.significant(0.000123456, 3)).isEqualTo("0.000123");
        assertThat(Labels.significant(-2.5e-9, 3)).isEqualTo("-2.5E-9");
        assertThat(Labels.significant(200000, 4)).isEqualTo("200000");
        assertThat(Labels.frequency(1.25e6)).isEqualTo("1.25 MHz");
        assertThat(Labels.length(10e-6)).isEqualTo("10 µm");
    }
}
