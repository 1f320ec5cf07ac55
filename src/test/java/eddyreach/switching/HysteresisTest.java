package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.Detector;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.UnworkableException;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class HysteresisTest {

    private static final Hysteresis H = new Hysteresis(5e-3, 5.5e-3);

    @Test
    void verdicts() {
        assertThat(H.verdict(2e-3, 9e-3, 0.1e-3))
                .isInstanceOfSatisfying(
                        Hysteresis.Clean.class, c -> assertThat(c.reserve()).isCloseTo(0.3e-3, within(1e-12)));
        assertThat(H.verdict(2e-3, 9e-3, 0.3e-3)).isInstanceOfSatisfying(Hysteresis.Chatters.class, c -> {
            assertThat(c.nearest()).isCloseTo(5.2e-3, within(1e-12));
            assertThat(c.farthest()).isCloseTo(5.3e-3, within(1e-12));
            assertThat(c.leastTravel()).isCloseTo(0.6e-3, within(1e-12));
            assertThat(c.changes(50, 1e-3)).isCloseTo(1 + 2 * 50 * 0.1, within(1e-9));
        });
        assertThat(H.verdict(5.2e-3, 9e-3, 0))
                .isInstanceOfSatisfying(
                        Hysteresis.NeverOn.class, n -> assertThat(n.excess()).isCloseTo(0.2e-3, within(1e-12)));
        assertThat(H.verdict(2e-3, 5.3e-3, 0)).isInstanceOfSatisfying(Hysteresis.NeverOff.class, n -> {
            assertThat(n.excess()).isCloseTo(0.2e-3, within(1e-12));
            assertThat(n.mostTravel()).isCloseTo(0.3e-3, within(1e-12));
        });
    }

    /** A target that goes out slowly and comes back while it shakes, stepped through a comparator of distance, gives what the verdict says. */
    @Test
    void agreesWithAPassageStepByStep() {
        Random random = new Random(51);
        int chatters = 0;
        for (int i = 0; i < 60; i++) {
            double near = 4e-3 + 1.5e-3 * random.nextDouble();
            double far = 5.2e-3 + 3e-3 * random.nextDouble();
            double vibration = 0.5e-3 * random.nextDouble();
            if (near + vibration > far - vibration) {
                continue;
            }
            Hysteresis.Verdict verdict = H.verdict(near, far, vibration);
            double frequency = 50;
            double speed = 2e-3;
            double duration = (far - near) / speed;
            int steps = 40_000;
            boolean on = near <= H.onDistance();
            boolean onAtNear = on;
            int changes = 0;
            for (int n = 0; n <= steps; n++) {
                double t = duration * n / steps;
                double x = near + speed * t;
                double shaken = x + vibration * Math.sin(2 * Math.PI * frequency * t);
                boolean now = on ? shaken < H.offDistance() : shaken <= H.onDistance();
                if (now != on) {
                    on = now;
                    changes++;
                }
            }
            if (verdict instanceof Hysteresis.Clean) {
                assertThat(onAtNear).isTrue();
                assertThat(on).isFalse();
                assertThat(changes).isEqualTo(1);
            } else if (verdict instanceof Hysteresis.Chatters c) {
                boolean whole = c.nearest() > near && c.farthest() < far;
                if (whole && c.farthest() - c.nearest() > 0.05e-3) {
                    assertThat((double) changes).isCloseTo(c.changes(frequency, speed), within(3.0));
                    chatters++;
                }
            } else if (verdict instanceof Hysteresis.NeverOn) {
                assertThat(onAtNear).isFalse();
            } else if (vibration == 0) {
                assertThat(on).isTrue();
            }
        }
        assertThat(chatters).isGreaterThan(5);
    }

    @Test
    void travelsBetweenVibrationAndDeadZone() {
        assertThat(H.travels(7e-3, 0.2e-3).least()).isCloseTo(0.4e-3, within(1e-12));
        assertThat(H.travels(7e-3, 0.2e-3).most()).isCloseTo(2e-3, within(1e-12));
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> H.travels(6e-3, 0.7e-3))
                .satisfies(e -> {
                    assertThat(e.value()).isEqualTo(0.7e-3);
                    assertThat(e.high()).isCloseTo(0.5e-3, within(1e-12));
                });
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> H.verdict(5e-3, 4e-3, 0));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> H.verdict(1e-3, 4e-3, -1e-6));
        assertThatIllegalArgumentException().isThrownBy(() -> new Hysteresis(5e-3, 5e-3));
    }

    /** A slow vibration chatters where the verdict says; one far above the demodulator's corner does not. */
    @Test
    void fastVibrationIsFilteredOut() {
        DoubleUnaryOperator curve = g -> 50e-6 + 400e-6 * Math.exp(-g / 2e-3);
        Trim trim = new Trim(curve.applyAsDouble(H.onDistance()), curve.applyAsDouble(H.offDistance()));
        HardLimiter limiter = new HardLimiter(0.3e-3);
        Timing timing = new Timing(new Detector(limiter, 2e-9, 1e-5, 50e-6), OutputStage.of(trim, limiter, 0));
        Hysteresis.Chatters c = (Hysteresis.Chatters) H.verdict(2e-3, 9e-3, 0.4e-3);
        double middle = (c.nearest() + c.farthest()) / 2;
        Vibration slow = new Vibration(0.4e-3, 50);
        assertThat(slow.changesPerCycle(timing, curve, middle)).isEqualTo(2);
        assertThat(slow.changesPerCycle(timing, curve, c.nearest() + 0.01e-3)).isEqualTo(2);
        assertThat(slow.changesPerCycle(timing, curve, c.farthest() - 0.01e-3)).isEqualTo(2);
        assertThat(slow.changesPerCycle(timing, curve, c.nearest() - 0.02e-3)).isZero();
        assertThat(slow.changesPerCycle(timing, curve, c.farthest() + 0.02e-3)).isZero();
        assertThat(new Vibration(0.2e-3, 50).changesPerCycle(timing, curve, middle))
                .isZero();
        assertThat(new Vibration(0.4e-3, 20e3).changesPerCycle(timing, curve, middle))
                .isZero();
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> new Vibration(0.4e-3, 0));
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> slow.changesPerCycle(timing, curve, 0.3e-3))
                .matches(e -> e.low() == 0.4e-3);
    }

    /** Expected range of normal samples (control charts, L. H. C. Tippett 1925), printed values from memory. */
    @Test
    void expectedRanges() {
        assertThat(RepeatAccuracy.expectedRange(2)).isCloseTo(1.128, within(5e-4));
        assertThat(RepeatAccuracy.expectedRange(2)).isCloseTo(2 / Math.sqrt(Math.PI), within(1e-8));
        assertThat(RepeatAccuracy.expectedRange(5)).isCloseTo(2.326, within(5e-4));
        assertThat(RepeatAccuracy.expectedRange(10)).isCloseTo(3.078, within(5e-4));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> RepeatAccuracy.expectedRange(1));
    }

    /** Noise added to the amplitude moves the on distance: scatter over many approaches. */
    @Test
    void scatterOfManyApproaches() {
        DoubleUnaryOperator curve = g -> 50e-6 + 400e-6 * Math.exp(-g / 2e-3);
        Trim trim = Trim.ofSignal("the loss conductance", curve, 5e-3, 0.1);
        HardLimiter limiter = new HardLimiter(0.3e-3);
        Crossing on =
                new SwitchPointFinder(trim, 20e-3, 100).find(curve, 50e-6).on().orElseThrow();
        double noise = 0.01;
        RepeatAccuracy repeat = RepeatAccuracy.of(noise, limiter, trim.on(), on);
        Random random = new Random(52);
        double sum = 0;
        double squares = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            // the amplitude is compared with its level plus the noise
            double conductance = limiter.conductance(trim.onAmplitude(limiter) + noise * random.nextGaussian());
            double distance = -2e-3 * Math.log((conductance - 50e-6) / 400e-6);
            sum += distance;
            squares += distance * distance;
        }
        double deviation = Math.sqrt(squares / n - sum / n * (sum / n));
        // the sample deviation scatters by 1/sqrt(2n) = 0.5 %
        assertThat(repeat.deviation()).isCloseTo(deviation, within(0.015 * deviation));
        assertThat(repeat.range(10)).isCloseTo(3.0775 * repeat.deviation(), within(1e-3 * repeat.range(10)));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> new RepeatAccuracy(-1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new RepeatAccuracy(1, 0));
    }
}
