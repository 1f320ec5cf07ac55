package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.UnworkableException;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class TrimTest {

    private static final double FREE = 50e-6;

    private static final DoubleUnaryOperator CURVE = g -> 50e-6 + 400e-6 * Math.exp(-g / 2e-3);

    @Test
    void takesTheThresholdsFromTheStandardTarget() {
        Trim trim = Trim.atFactory(CURVE, FREE, 5e-3, 0.1);
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

    /** A curve that falls up to 5.3 mm and is back at its first value at 5.6 mm can be trimmed with up to 12 %. */
    @Test
    void tellsTheTravelsThatCanBeTrimmed() {
        DoubleUnaryOperator valley = g -> 1e-4 + Math.pow(g - 5.3e-3, 2);
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> Trim.ofSignal("the loss conductance", valley, 5e-3, 0.2))
                .satisfies(e -> {
                    assertThat(e.quantity()).isEqualTo("differential travel");
                    assertThat(e.value()).isEqualTo(0.2);
                    assertThat(e.low()).isZero();
                    assertThat(e.high()).isCloseTo(0.12, within(0.0021));
                    assertThat(Trim.ofSignal("the loss conductance", valley, 5e-3, e.high()))
                            .isNotNull();
                });
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> Trim.ofSignal("the loss conductance", CURVE, 5e-3, 1.2))
                .withMessage("differential travel 1.200: must be at least 0 and at most 1");
    }

    /** The loss without a target is above that with the standard target at the switch-off distance, here by shielding. */
    @Test
    void rejectsASwitchThatWouldNeverRelease() {
        double off = CURVE.applyAsDouble(5.5e-3);
        assertThat(Trim.atFactory(CURVE, 0.999 * off, 5e-3, 0.1).off()).isEqualTo(off);
        assertThatExceptionOfType(NoTrimException.class)
                .isThrownBy(() -> Trim.atFactory(CURVE, off, 5e-3, 0.1))
                .withMessage(
                        "the switch cannot be trimmed to 5.000 mm: with the standard target at the switch-off distance of 5.500 mm its"
                                + " tank loses no more than without a target (75.5711 uS), so the output would never release; first lower"
                                + " the rated distance or bring the coil nearer to the face");
    }

    @Test
    void rejectsACurveThatDoesNotFall() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> Trim.ofSignal("the loss conductance", g -> 1e-4 + g, 5e-3, 0.1))
                .withMessage(
                        "the switch cannot be trimmed: before its standard target the loss conductance should fall from 5.00000 mm to the"
                                + " switch-off distance of 5.50000 mm, but it does not; differential travel 0.1000: no value works")
                .matches(e -> !e.anyWorks());
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> Trim.ofSignal("the loss conductance", g -> 1e-4, 5e-3, 0.1));
        assertThatExceptionOfType(NoTrimException.class)
                .isThrownBy(() -> Trim.atFactory(g -> 1e-4 + g / 100, FREE, 5e-3, 0.1))
                .withMessage(
                        "the switch cannot be trimmed to 5.000 mm: its standard target adds no more loss there (150.000 uS) than at the"
                                + " switch-off distance of 5.500 mm (155.000 uS); first lower the rated distance");
        assertThatExceptionOfType(NoTrimException.class).isThrownBy(() -> Trim.atFactory(g -> 1e-4, FREE, 5e-3, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Trim.atFactory(CURVE, FREE, 5e-3, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Trim(1e-4, Double.NaN));
    }

    @Test
    void thresholdsMayNotCoincide() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Trim(1e-4, 1e-4));
        assertThat(new Trim(1e-4, Math.nextDown(1e-4)).off()).isLessThan(1e-4);
    }
}
