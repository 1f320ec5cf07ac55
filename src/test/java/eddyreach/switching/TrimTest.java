package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.HardLimiter;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class TrimTest {

    private static final DoubleUnaryOperator CURVE = g -> 50e-6 + 400e-6 * Math.exp(-g / 2e-3);

    @Test
    void takesTheThresholdsFromTheStandardTarget() {
        Trim trim = Trim.atFactory(CURVE, 5e-3, 0.1);
        assertThat(trim.on()).isEqualTo(CURVE.applyAsDouble(5e-3));
        assertThat(trim.off()).isCloseTo(CURVE.applyAsDouble(5.5e-3), within(1e-15));
    }

    @Test
    void amplitudesFollowFromTheElement() {
        Trim trim = new Trim(100e-6, 80e-6);
        assertThat(trim.onAmplitude(new HardLimiter(0.5e-3))).isCloseTo(6.366198, within(1e-6));
        assertThat(trim.offAmplitude(new HardLimiter(0.5e-3))).isCloseTo(7.957747, within(1e-6));
        assertThat(trim.onAmplitude(new ClippedStage(90e-6, 1))).isZero();
        assertThat(trim.offAmplitude(new ClippedStage(90e-6, 1))).isGreaterThan(1);
    }

    @Test
    void rejectsACurveThatDoesNotFall() {
        assertThatExceptionOfType(ArithmeticException.class)
                .isThrownBy(() -> Trim.atFactory(g -> 1e-4 + g, 5e-3, 0.1))
                .withMessage("the switch cannot be trimmed: its standard target should damp the tank less at the"
                        + " switch-off distance of 5.50000 mm than at 5.00000 mm, but the loss conductance does not"
                        + " fall");
        assertThatExceptionOfType(ArithmeticException.class).isThrownBy(() -> Trim.atFactory(g -> 1e-4, 5e-3, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Trim.atFactory(CURVE, 5e-3, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Trim(1e-4, Double.NaN));
    }

    @Test
    void thresholdsMayNotCoincide() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Trim(1e-4, 1e-4));
        assertThat(new Trim(1e-4, Math.nextDown(1e-4)).off()).isLessThan(1e-4);
    }
}
