package eddyreach.proof;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.core.Progress;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class ProofTest {

    private static CheckList list() {
        return new CheckList("group").from(Provenance.LAW, "source");
    }

    private static boolean passes(CheckList list) {
        return new Proof(list.list()).run(Progress.NONE).passed();
    }

    @Test
    void halfAUnitOfTheLastPrintedDigit() {
        assertThat(passes(list().value("q", "1.50", () -> 1.5049))).isTrue();
        assertThat(passes(list().value("q", "1.50", () -> 1.5051))).isFalse();
        assertThat(passes(list().value("q", "1.50", () -> 1.4949))).isFalse();
        assertThat(passes(list().value("q", "18", () -> 18.4))).isTrue();
        assertThat(passes(list().value("q", "18", () -> 18.6))).isFalse();
    }

    @Test
    void otherAllowances() {
        assertThat(passes(list().value("q", "1.50", 0.1, "why", () -> 1.59))).isTrue();
        assertThat(passes(list().value("q", "1.50", 0.1, "why", () -> 1.61))).isFalse();
        assertThat(passes(list().within(0.01, "q", "-200", "why", () -> -201.9)))
                .isTrue();
        assertThat(passes(list().within(0.01, "q", "-200", "why", () -> -202.1)))
                .isFalse();
        assertThat(passes(list().within(0.1, "q", "3.0", "-4.0", "why", () -> new Complex(3, -4.54))))
                .isTrue();
        assertThat(passes(list().within(0.1, "q", "3.0", "-4.0", "why", () -> new Complex(3, -4.56))))
                .isFalse();
        assertThat(passes(list().range("q", 1, 2, "why", () -> 2))).isTrue();
        assertThat(passes(list().range("q", 1, 2, "why", () -> 2.01))).isFalse();
        assertThat(passes(list().atMost(1, "q", "why", () -> -7))).isTrue();
        assertThat(passes(list().atMost(1, "q", "why", () -> 1.01))).isFalse();
        assertThat(passes(list().atLeast(1, "q", "why", () -> 0.99))).isFalse();
    }

    @Test
    void whatIsNotANumberFails() {
        assertThat(passes(list().value("q", "1", () -> Double.NaN))).isFalse();
        assertThat(passes(list().within(1, "q", "1", "1", "why", () -> Complex.NaN)))
                .isFalse();
        assertThat(passes(list().range("q", -0.5, 0.5, "why", () -> Double.NaN)))
                .isFalse();
        assertThat(passes(list().atMost(1, "q", "why", () -> Double.NEGATIVE_INFINITY)))
                .isFalse();
    }

    /** The same list with every expectation moved by two allowances, or a range past its end, must fail throughout. */
    @Test
    void aWrongExpectationIsFoundInEveryCheckThatNeedsNoField() {
        List<Check> wrong = new ArrayList<>();
        for (List<Check> group : List.of(
                SpecialFunctionChecks.all(), InductanceChecks.all(), MaterialChecks.all(), OscillatorChecks.all())) {
            for (Check c : group) {
                if (c.expected() instanceof Expected.Value v) {
                    wrong.add(new Check(
                            c.group(),
                            c.quantity(),
                            c.source(),
                            c.expected(),
                            c.reason(),
                            () -> c.computation().get().add(2.01 * v.allowed())));
                }
            }
        }
        assertThat(wrong).hasSizeGreaterThan(60);
        ProofResult result = new Proof(wrong).run(Progress.NONE);
        assertThat(result.passed()).isFalse();
        assertThat(result.failures()).hasSameSizeAs(wrong);
    }

    @Test
    void everyAllowanceBesideTheDigitsHasAReason() {
        for (Check c : new Proof().checks()) {
            boolean digits = c.expected() instanceof Expected.Value v && v.equals(Expected.Value.printed(v.text()));
            assertThat(c.reason().isEmpty()).as(c.toString()).isEqualTo(digits);
            assertThat(c.source().name()).isNotBlank();
        }
        assertThat(new Proof().checks().stream().map(c -> c + c.source().name() + c.expected()))
                .doesNotHaveDuplicates();
    }

    @Test
    void tellsHowFarItIs() {
        List<String> told = new ArrayList<>();
        new Proof(list().value("a", "1", () -> 1).value("b", "1", () -> 1).list())
                .run((stage, done, total) -> told.add(stage + " " + done + "/" + total));
        assertThat(told).containsExactly("check values 0/2", "check values 1/2");
    }
}
