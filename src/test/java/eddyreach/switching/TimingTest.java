package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.Detector;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.TanhPair;
import eddyreach.oscillator.UnworkableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class TimingTest {

    private static final double C = 2e-9;
    private static final Trim TRIM = new Trim(100e-6, 90e-6);

    private static Timing timing(ActiveElement element, double tau, double delay) {
        return new Timing(new Detector(element, C, 1e-5, tau), OutputStage.of(TRIM, element, delay));
    }

    /** Hard limiter without a filter: exponentials from one steady amplitude to the other. */
    @Test
    void timesOfAHardLimiter() {
        Random random = new Random(31);
        HardLimiter limiter = new HardLimiter(0.3e-3);
        for (int i = 0; i < 100; i++) {
            double free = 30e-6 + 55e-6 * random.nextDouble();
            double damped = 105e-6 + 300e-6 * random.nextDouble();
            double delay = 1e-3 * random.nextDouble();
            Timing timing = timing(limiter, 0, delay);
            double high = limiter.amplitude(free);
            double low = limiter.amplitude(damped);
            double on = limiter.amplitude(TRIM.on());
            double off = limiter.amplitude(TRIM.off());
            double onTime = 2 * C / damped * Math.log((high - low) / (on - low)) + delay;
            double offTime = 2 * C / free * Math.log((high - low) / (high - off)) + delay;
            assertThat(timing.onTime(free, damped)).isCloseTo(onTime, within(1e-7 * onTime));
            assertThat(timing.offTime(damped, free)).isCloseTo(offTime, within(1e-7 * offTime));
        }
    }

    /** Linear growth up to the clip level, which lies below the off level here. */
    @Test
    void startUpTakesTheLogarithmOfTheNoise() {
        ClippedStage stage = new ClippedStage(150e-6, 1);
        double free = 50e-6;
        double growth = 2 * C / (150e-6 - free);
        double last = 0;
        for (double noise : new double[] {1e-3, 1e-5, 1e-7}) {
            Timing timing = new Timing(new Detector(stage, C, noise, 0), OutputStage.of(TRIM, stage, 0));
            double t = timing.startUp(free);
            if (last > 0) {
                assertThat(t - last).isCloseTo(growth * Math.log(100), within(1e-6 * t));
            }
            last = t;
        }
    }

    /** Nearer to the threshold a switch takes longer; a filter and a delay add. */
    @Test
    void slowsTowardsTheThreshold() {
        for (ActiveElement element : List.of(new TanhPair(0.3e-3, 200e-6), new ClippedStage(120e-6, 2))) {
            double last = 0;
            for (double damped : new double[] {400e-6, 200e-6, 110e-6, 101e-6, 100.1e-6}) {
                double t = timing(element, 0, 0).onTime(50e-6, damped);
                assertThat(t).isGreaterThan(last);
                assertThat(timing(element, 20e-6, 0).onTime(50e-6, damped)).isGreaterThan(t);
                assertThat(timing(element, 0, 1e-3).onTime(50e-6, damped)).isCloseTo(t + 1e-3, within(1e-12));
                last = t;
            }
        }
    }

    /** A sudden target in a longer course is the same target. */
    @Test
    void changesAgreeWithTheTimes() {
        Timing timing = timing(new TanhPair(0.3e-3, 200e-6), 30e-6, 50e-6);
        double free = 60e-6;
        double damped = 180e-6;
        List<OutputStage.Change> changes = timing.changes(t -> t > 1e-3 && t < 3e-3 ? damped : free, 5e-3, 100e-6);
        assertThat(changes).extracting(OutputStage.Change::on).containsExactly(true, false);
        assertThat(changes.get(0).time() - 1e-3).isCloseTo(timing.onTime(free, damped), within(1e-9));
        // after 2 ms the amplitude has settled
        assertThat(changes.get(1).time() - 3e-3).isCloseTo(timing.offTime(damped, free), within(1e-9));
    }

    /** Random courses of the conductance: the whole chain stepped through time by the classical Runge-Kutta method. */
    @Test
    void agreesWithTheChainSteppedThroughTime() {
        Random random = new Random(32);
        int changes = 0;
        for (int i = 0; i < 12; i++) {
            ActiveElement element = i % 2 == 0 ? new HardLimiter(0.3e-3) : new ClippedStage(180e-6, 1.2);
            double tau = 20e-6 + 100e-6 * random.nextDouble();
            double delay = 30e-6 * random.nextInt(3);
            double swing = 10e-6 + 50e-6 * random.nextDouble();
            double slow = 4e3 + 8e3 * random.nextDouble();
            double fast = 3e4 + 3e4 * random.nextDouble();
            DoubleUnaryOperator g = t ->
                    95e-6 + swing * (0.6 * Math.sin(slow * t) + 0.4 * Math.sin(fast * t)) - 30e-6 * Math.exp(-t / 2e-4);
            Timing timing = timing(element, tau, delay);
            List<OutputStage.Change> found = timing.changes(g, 4e-3, 20e-6);
            List<OutputStage.Change> stepped = stepped(timing, g, 4e-3);
            assertThat(found).hasSameSizeAs(stepped);
            for (int k = 0; k < found.size(); k++) {
                assertThat(found.get(k).on()).isEqualTo(stepped.get(k).on());
                // comparator and delay are each late by up to a step of 0.2 us
                assertThat(found.get(k).time()).isCloseTo(stepped.get(k).time(), within(0.41e-6));
            }
            changes += found.size();
        }
        assertThat(changes).isGreaterThan(30);
    }

    private static List<OutputStage.Change> stepped(Timing timing, DoubleUnaryOperator g, double duration) {
        Detector detector = timing.detector();
        double h = 0.2e-6;
        double a = detector.element().amplitude(g.applyAsDouble(0));
        double d = a;
        boolean comparator = timing.output().compare(d, false);
        boolean output = comparator;
        double since = -1;
        List<OutputStage.Change> changes = new ArrayList<>();
        for (int n = 0; n * h < duration; n++) {
            double t = n * h;
            double[] k1 = rates(detector, g, t, a, d);
            double[] k2 = rates(detector, g, t + h / 2, a + h / 2 * k1[0], d + h / 2 * k1[1]);
            double[] k3 = rates(detector, g, t + h / 2, a + h / 2 * k2[0], d + h / 2 * k2[1]);
            double[] k4 = rates(detector, g, t + h, a + h * k3[0], d + h * k3[1]);
            a += h / 6 * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
            d += h / 6 * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
            boolean now = timing.output().compare(d, comparator);
            if (now != comparator) {
                comparator = now;
                since = t + h;
            }
            if (output != comparator && t + h >= since + timing.output().delay()) {
                output = comparator;
                changes.add(new OutputStage.Change(t + h, output));
            }
        }
        return changes;
    }

    private static double[] rates(Detector detector, DoubleUnaryOperator g, double t, double a, double d) {
        double gain = detector.element().conductance(a) - g.applyAsDouble(t);
        return new double[] {gain * a / (2 * detector.capacitance()), (a - d) / detector.timeConstant()};
    }

    @Test
    void tellsWhatDoesNotWork() {
        Timing timing = timing(new ClippedStage(120e-6, 2), 0, 0);
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> timing.onTime(50e-6, 99e-6))
                .satisfies(e -> {
                    assertThat(e.value()).isEqualTo(99e-6);
                    assertThat(e.low()).isCloseTo(100e-6, within(1e-15));
                    assertThat(e.high()).isInfinite();
                });
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> timing.onTime(95e-6, 200e-6))
                .satisfies(e -> assertThat(e.high()).isCloseTo(90e-6, within(1e-15)));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> timing.offTime(80e-6, 50e-6));
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> timing.startUp(130e-6))
                .withMessageStartingWith("the oscillator never starts; loss conductance of the tank 0.0001300 S");
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> timing.startUp(95e-6))
                .withMessageStartingWith("the output does not go off; ");
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new Timing(new Detector(new HardLimiter(1e-3), C, 2, 0), new OutputStage(1, 1.5, 0)))
                .matches(e -> e.high() == 1);
    }
}
