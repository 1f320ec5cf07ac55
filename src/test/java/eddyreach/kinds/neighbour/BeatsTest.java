package eddyreach.kinds.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.Pulling;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** The pulling itself is proved in PullingTest and Adler1946Test. */
class BeatsTest {

    private static final double HERTZ = 2 * Math.PI;
    private static final double RELAXATION = 2200;

    private static Beats beats(Complex onFirst, Complex onSecond) {
        return new Beats(new Pulling(0.8, onFirst, onSecond, HERTZ * RELAXATION, HERTZ * 3000), 5e3);
    }

    @Test
    void theDifferenceNeededGivesTheDepthAllowed() {
        Beats beats = beats(new Complex(20, -700), new Complex(15, -600));
        for (double allowed : new double[] {0.03, 0.01, 1e-3}) {
            double difference = beats.difference(allowed);
            // the difference is searched to 1e-4 of the demodulator's corner and of the reach
            assertThat(beats.depth(difference)).isCloseTo(allowed, within(2e-3 * allowed));
            assertThat(beats.depth(1.1 * difference)).isLessThan(allowed);
        }
        assertThat(beats.difference(1))
                .as("even locked, the level is off by less")
                .isZero();
    }

    /** Locked, the deviation is what the other induces, over the rate at which the amplitude returns. */
    @Test
    void lockedTheLevelIsOff() {
        Beats beats = beats(new Complex(0, -500), new Complex(0, -500));
        assertThat(beats.beat(0)).isZero();
        assertThat(beats.depth(0)).isCloseTo(500 / 0.8 / (HERTZ * RELAXATION), within(1e-9));
    }

    /** The less favourable sign counts: the one that beats more slowly. */
    @Test
    void theSlowerOfBothSignsCounts() {
        Beats beats = beats(new Complex(300, -800), new Complex(-200, -700));
        Pulling p = beats.pulling();
        double far = 4 * beats.locking();
        double slower = Math.min(p.beat(HERTZ * far), p.beat(-HERTZ * far)) / HERTZ;
        assertThat(beats.beat(far)).isCloseTo(slower, within(1e-9 * slower));
    }

    /** Strongly coupled, the range is the most that both can do, and the beat that of amplitudes that stay. */
    @Test
    void stronglyCoupledTheRangeIsABound() {
        Beats beats = beats(new Complex(0, -20e3), new Complex(0, -10e3));
        double most = (0.8 * 10e3 + 20e3 / 0.8) / HERTZ;
        assertThat(beats.locking()).isCloseTo(most, within(1e-9 * most));
        assertThat(beats.beat(0.99 * most)).isZero();
        assertThat(beats.beat(2 * most)).isCloseTo(Math.sqrt(3) * most, within(1e-9 * most));
        double difference = beats.difference(0.02);
        assertThat(beats.depth(difference)).isCloseTo(0.02, within(2e-3 * 0.02));
    }
}
