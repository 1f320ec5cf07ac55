package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.Detector;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.TanhPair;
import eddyreach.oscillator.UnworkableException;
import eddyreach.switching.SpeedLimit.Stage;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpeedSearchTest {

    private static final double FREE = 60e-6;
    private static final double DAMPED = 160e-6;
    private static final double PITCH = 54e-3;
    private static final HardLimiter LIMITER = new HardLimiter(0.3e-3);
    private static final Trim TRIM = new Trim(110e-6, 95e-6);

    /** Targets of a third of the pitch that damp as soon as they come. */
    private static final Teeth SQUARE = new Teeth(x -> x < PITCH / 3 ? DAMPED : FREE, PITCH);

    private static Timing timing(ActiveElement element, double c, double tau, double delay) {
        return new Timing(new Detector(element, c, 1e-5, tau), OutputStage.of(TRIM, element, delay));
    }

    private static SpeedLimit.Limited limit(Timing timing, double shortest) {
        return (SpeedLimit.Limited) new SpeedSearch(SQUARE, shortest).limit(timing);
    }

    /** Highest frequency at which the periodic exponentials between the two steady amplitudes still pass both thresholds. */
    private static double exponentials(double tauDamped, double tauFree) {
        double high = LIMITER.amplitude(FREE);
        double low = LIMITER.amplitude(DAMPED);
        double fails = 0;
        double period = 100 * Math.max(tauDamped, tauFree);
        for (int i = 0; i < 60; i++) {
            double trial = (fails + period) / 2;
            double a = Math.exp(-trial / 3 / tauDamped);
            double b = Math.exp(-2 * trial / 3 / tauFree);
            double top = (high * (1 - b) + low * (1 - a) * b) / (1 - a * b);
            double bottom = low + (top - low) * a;
            if (bottom > LIMITER.amplitude(TRIM.on()) || top < LIMITER.amplitude(TRIM.off())) {
                fails = trial;
            } else {
                period = trial;
            }
        }
        return 1 / period;
    }

    @Test
    void oscillatorAlone() {
        double c = 2e-9;
        SpeedLimit.Limited limit = limit(timing(LIMITER, c, 0, 0), 0);
        double expected = exponentials(2 * c / DAMPED, 2 * c / FREE);
        assertThat(limit.frequency()).isCloseTo(expected, within(2e-3 * expected));
        assertThat(limit.limiting()).isEqualTo(Stage.OSCILLATOR);
        assertThat(limit.below().clean()).isTrue();
        assertThat(limit.above().clean()).isFalse();
        assertThat(limit.above().frequency()).isLessThanOrEqualTo(1.001 * limit.frequency());
    }

    @Test
    void demodulatorAlone() {
        SpeedLimit.Limited limit = limit(timing(LIMITER, 0, 50e-6, 0), 0);
        double expected = exponentials(50e-6, 50e-6);
        assertThat(limit.frequency()).isCloseTo(expected, within(2e-3 * expected));
        assertThat(limit.limiting()).isEqualTo(Stage.DEMODULATOR);
        assertThat(limit.shares().get(Stage.DEMODULATOR)).isCloseTo(1 / limit.frequency(), within(1e-9));
    }

    /** A pulse shorter than the delay is lost: a third of the pitch at 1/(3 delay). */
    @Test
    void delayAlone() {
        SpeedLimit.Limited limit = limit(timing(LIMITER, 0, 0, 100e-6), 0);
        assertThat(limit.frequency()).isCloseTo(1 / 300e-6, within(2e-3 / 300e-6));
        assertThat(limit.limiting()).isEqualTo(Stage.DELAY);
        assertThat(limit.above().fault()).contains(PulseTrain.Fault.NEVER_ON);
    }

    /** The shortest pulse asked for, 50 us, takes a third of the pitch. */
    @Test
    void geometryAlone() {
        SpeedLimit.Limited limit = limit(timing(LIMITER, 0, 0, 0), 50e-6);
        assertThat(limit.frequency()).isCloseTo(1 / 150e-6, within(2e-3 / 150e-6));
        assertThat(limit.limiting()).isEqualTo(Stage.GEOMETRY);
        assertThat(limit.above().fault()).contains(PulseTrain.Fault.SHORT_ON);
        assertThat(limit.below().duty()).isCloseTo(1.0 / 3, within(1e-6));
        assertThat(new SpeedSearch(SQUARE, 0).limit(timing(LIMITER, 0, 0, 0))).isInstanceOf(SpeedLimit.Unlimited.class);
    }

    /**
     * The output's delay, twice the shortest pulse asked for, is what limits this switch; the oscillator does not, for its slow return lengthens the pulse that is too short.
     */
    @Test
    void aLagMayHelp() {
        Teeth smooth = new Teeth(x -> FREE + 100e-6 * Math.exp(-Math.pow((x - PITCH / 2) / 8e-3, 2)), PITCH);
        SpeedSearch search = new SpeedSearch(smooth, 50e-6);
        SpeedLimit.Limited with = (SpeedLimit.Limited) search.limit(timing(LIMITER, 2e-9, 50e-6, 100e-6));
        SpeedLimit.Limited without = (SpeedLimit.Limited) search.limit(timing(LIMITER, 0, 50e-6, 100e-6));
        assertThat(without.frequency()).isLessThan(with.frequency());
        assertThat(with.shares().get(Stage.OSCILLATOR)).isZero();
        assertThat(with.limiting()).isEqualTo(Stage.DELAY);
    }

    /** Random switches before smooth teeth: whatever is taken away, the rest is no slower, and what is added makes it no faster. */
    @Test
    void eachStageCosts() {
        Random random = new Random(41);
        for (int i = 0; i < 3; i++) {
            ActiveElement element = i > 0 ? LIMITER : new TanhPair(0.3e-3, 300e-6);
            double width = PITCH * (0.1 + 0.1 * random.nextDouble());
            Teeth teeth = new Teeth(x -> FREE + 100e-6 * Math.exp(-Math.pow((x - PITCH / 2) / width, 2)), PITCH);
            double tau = 100e-6 * random.nextDouble();
            double delay = 100e-6 * random.nextDouble();
            double c = 3e-9 * (0.2 + 0.8 * random.nextDouble());
            SpeedSearch search = new SpeedSearch(teeth, 50e-6);
            SpeedLimit.Limited limit = (SpeedLimit.Limited) search.limit(timing(element, c, tau, delay));
            assertThat(limit.shares()).hasSize(4);
            double period = 1 / limit.frequency();
            assertThat(limit.shares().values()).allMatch(s -> s >= -2e-3 * period && s <= period);
            PulseTrain slow = PulseTrain.of(timing(element, c, tau, delay), teeth, limit.frequency() / 10, 50e-6);
            assertThat(slow.clean()).isTrue();
            assertThat(slow.shortestOn() + slow.shortestOff())
                    .isCloseTo(1 / slow.frequency(), within(1e-3 / slow.frequency()));
            if (i > 1) {
                SpeedLimit.Limited later = (SpeedLimit.Limited) search.limit(timing(element, c, tau, delay + 100e-6));
                assertThat(later.frequency()).isLessThanOrEqualTo(1.002 * limit.frequency());
            }
        }
    }

    @Test
    void tellsWhyNoRowIsClean() {
        assertThat(never(new Teeth(x -> FREE, PITCH))).isEqualTo(PulseTrain.Fault.NEVER_ON);
        assertThat(never(new Teeth(x -> x < PITCH / 3 ? DAMPED : 100e-6, PITCH)))
                .isEqualTo(PulseTrain.Fault.NEVER_OFF);
        assertThat(never(new Teeth(x -> DAMPED, PITCH))).isEqualTo(PulseTrain.Fault.NEVER_OFF);
        assertThat(never(new Teeth(x -> 110e-6 + 50e-6 * Math.sin(6 * Math.PI * x / PITCH), PITCH)))
                .isEqualTo(PulseTrain.Fault.SEVERAL);
        PulseTrain fast = PulseTrain.of(timing(LIMITER, 2e-9, 0, 0), SQUARE, 60e3, 0);
        assertThat(fast.fault()).isPresent();
        assertThat(fast.shortestOn()).isZero();
        assertThat(fast.duty()).isZero();
    }

    private static PulseTrain.Fault never(Teeth teeth) {
        SpeedLimit limit = new SpeedSearch(teeth, 50e-6).limit(timing(LIMITER, 2e-9, 10e-6, 0));
        return ((SpeedLimit.NeverClean) limit).train().fault().orElseThrow();
    }

    @Test
    void tellsWhatDoesNotWork() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new Teeth(x -> FREE, -1))
                .withMessage("pitch -1 m: must be positive");
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> PulseTrain.of(timing(LIMITER, 2e-9, 0, 0), SQUARE, 0, 0));
    }
}
