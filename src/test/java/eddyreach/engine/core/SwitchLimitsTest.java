package eddyreach.engine.core;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.read.Library;
import eddyreach.model.values.SwitchModel;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is told of a switch before any answer. */
class SwitchLimitsTest {

    private static final SwitchModel MODEL = new Library(Path.of("")).switchModel("m18-flush");

    /** 100 uS without a target, a resistance of 10 ohm; quality and amplitude as given. */
    private static List<Warning.Kind> kinds(double quality, double on, double amplitude) {
        double frequency = 100e3;
        double inductance = quality * 10 / (2 * Math.PI * frequency);
        Operating free = new Operating(10, inductance, frequency, 100e-6, amplitude);
        TrimmedSwitch trimmed =
                new TrimmedSwitch(1e-9, free, on, on * 0.999, 1, 1, new LossBudget(Double.NaN, List.of()));
        return ValidityLimits.ofSwitch(MODEL, trimmed).stream()
                .map(Warning::kind)
                .toList();
    }

    @Test
    void aSoundSwitchIsNotWarnedOf() {
        assertThat(kinds(20, 110e-6, 3)).isEmpty();
    }

    @Test
    void aStandardTargetThatChangesNextToNothing() {
        assertThat(kinds(20, 100.9e-6, 3)).containsExactly(Warning.Kind.TRIM_WEAK);
        assertThat(kinds(20, 101.1e-6, 3)).isEmpty();
    }

    @Test
    void aCoilOfTooMuchLoss() {
        assertThat(kinds(4.9, 110e-6, 3)).containsExactly(Warning.Kind.QUALITY_LOW);
        assertThat(kinds(0.03, 100.5e-6, 0))
                .containsExactly(Warning.Kind.NOT_OSCILLATING, Warning.Kind.QUALITY_LOW, Warning.Kind.TRIM_WEAK);
    }
}
