package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.HardLimiter;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * R. Adler, A study of locking phenomena in oscillators, Proc. IRE 34 (1946) 351: an oscillation of amplitude E follows an injected
 * tone E1 within {@code (f0/2Q)(E1/E)} of its free frequency, and outside beats with it at {@code sqrt(offset^2 - range^2)}. Printed
 * formulas, numbers quoted from memory: 1 MHz, Q 50, E1/E 0.05 give 500 Hz, and an offset of 1000 Hz beats at 866.0254 Hz.
 *
 * <p>Here the whole circuit is integrated in time: a tank, a hard limiter and an injected current, whose ratio to the tank's loss
 * current is E1/E. The offset counts from the free frequency of that circuit, which harmonics move by some 1/Q^2. Adler takes the
 * amplitude as constant; it follows the beat by E1/E, and late by the beat over the tank's half bandwidth f0/2Q of 10 kHz. The theory
 * is therefore good to their product, {@code 0.05 * 0.1 = 0.5 %} of the beat, and to (E1/E)^2 = 0.25 % of the range.
 */
class Adler1946Test {

    private static final double F0 = 1e6;
    private static final double Q = 50;
    private static final double RATIO = 0.05;
    private static final double C = 1e-9;
    private static final double OMEGA = 2 * Math.PI * F0;
    private static final double L = 1 / (OMEGA * OMEGA * C);
    private static final double G = OMEGA * C / Q;
    private static final HardLimiter LIMITER = new HardLimiter(0.5e-3);
    private static final double AMPLITUDE = LIMITER.amplitude(G);
    private static final double TOLERANCE = 1e-9;

    /** Turns of the phase of the oscillation against a tone that lies above the free frequency by an offset, over time. */
    private record Slip(double[] time, double[] turns) {

        static Slip of(double offset, int cycles) {
            double free = 1
                    / LimitCycle.of(C, L, (v, sign) -> LIMITER.current() * sign - G * v, AMPLITUDE, 200)
                            .period();
            double tone = free + offset;
            double injected = RATIO * G * AMPLITUDE;
            List<Double> rises = Waveform.of(
                            C,
                            L,
                            (t, v, sign) ->
                                    LIMITER.current() * sign - G * v + injected * Math.sin(2 * Math.PI * tone * t),
                            AMPLITUDE,
                            cycles,
                            TOLERANCE)
                    .rises();
            double[] time = new double[rises.size()];
            double[] turns = new double[rises.size()];
            for (int i = 0; i < time.length; i++) {
                time[i] = rises.get(i);
                turns[i] = tone * (time[i] - time[0]) - i;
            }
            return new Slip(time, turns);
        }

        double total() {
            return turns[turns.length - 1];
        }

        double inTheSecondHalf() {
            return total() - turns[turns.length / 2];
        }

        /** Time at which the phase has turned so far. */
        double reaches(double turn) {
            int i = 1;
            while (Math.abs(turns[i]) < Math.abs(turn)) {
                i++;
            }
            double share = (turn - turns[i - 1]) / (turns[i] - turns[i - 1]);
            return time[i - 1] + share * (time[i] - time[i - 1]);
        }
    }

    @Test
    void beatOutsideTheRange() {
        for (double offset : new double[] {1000, -1000}) {
            double way = Math.signum(offset);
            Slip slip = Slip.of(offset, 2600);
            // the first tenth of a turn holds the transient, a few of the tank's 16 us
            double beat = 1 / (slip.reaches(1.1 * way) - slip.reaches(0.1 * way));
            assertThat(beat).isCloseTo(866.0254, within(0.005 * 866.0254));
        }
    }

    /**
     * 4 % on either side of the half range, where the phase settles with, or slips at, 140 Hz: after half of the 8 ms it stands still to
     * exp(-3.5), or turns on and on.
     */
    @Test
    void rangeOfLocking() {
        assertThat(F0 / (2 * Q) * RATIO).isCloseTo(500, within(1e-9));
        assertThat(Slip.of(480, 8000).inTheSecondHalf()).isCloseTo(0, within(0.03));
        assertThat(Slip.of(520, 8000).total()).isGreaterThan(1);
    }
}
