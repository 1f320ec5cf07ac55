package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What every active element must keep to; its static characteristic is integrated here by brute force. */
abstract class ActiveElementContract {

    abstract ActiveElement element();

    /** Current fed to the tank at an instantaneous voltage, A. */
    abstract double current(double voltage);

    /** A voltage about which the characteristic bends, V. */
    abstract double knee();

    @Test
    void conductanceIsTheFundamentalOfTheCurrent() {
        for (double a = knee() / 30; a < 300 * knee(); a *= 1.7) {
            int n = 200_000;
            double sum = 0;
            for (int i = 0; i < n; i++) {
                double s = Math.sin(Math.PI / 2 * (i + 0.5) / n);
                sum += current(a * s) * s;
            }
            double expected = 2 * sum / (n * a);
            // the mid-point rule across a kink is good to about 1/n^2
            assertThat(element().conductance(a)).as("A = %s", a).isCloseTo(expected, within(1e-9 * expected));
        }
    }

    @Test
    void conductanceFallsFromTheSmallSignalValue() {
        double last = element().smallSignalConductance();
        for (double a = knee() / 1000; a < 1e4 * knee(); a *= 1.1) {
            double g = element().conductance(a);
            // equal within rounding where the characteristic is straight
            assertThat(g).as("A = %s", a).isPositive().isLessThanOrEqualTo(last * (1 + 1e-13));
            last = g;
        }
    }

    @Test
    void amplitudeIsTheRoot() {
        double top = Math.min(element().smallSignalConductance(), element().conductance(knee() / 100));
        for (double share = 1e-6; share < 0.9999; share += share < 0.01 ? share : 0.0137) {
            double a = element().amplitude(share * top);
            assertThat(a).isPositive();
            assertThat(element().conductance(a))
                    .as("share %s", share)
                    .isCloseTo(share * top, within(1e-10 * share * top));
        }
    }

    @Test
    void dampingLowersTheAmplitude() {
        double top = element().conductance(knee());
        double last = Double.POSITIVE_INFINITY;
        for (double share = 0.001; share < 1; share *= 1.05) {
            double a = element().amplitude(share * top);
            assertThat(a).isLessThan(last);
            last = a;
        }
    }

    @Test
    void doesNotOscillateAboveTheSmallSignalConductance() {
        double small = element().smallSignalConductance();
        if (Double.isFinite(small)) {
            assertThat(element().amplitude(small)).isZero();
            assertThat(element().amplitude(1.0001 * small)).isZero();
            assertThat(element().amplitude(0.999999 * small)).isPositive();
        } else {
            assertThat(element().amplitude(1e6)).isPositive();
        }
    }

    @Test
    void rejectsNonsense() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> element().conductance(bad));
            assertThatIllegalArgumentException().isThrownBy(() -> element().amplitude(bad));
        }
    }
}
