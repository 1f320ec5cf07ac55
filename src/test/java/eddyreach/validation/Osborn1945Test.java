package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.SmallBodies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** J. A. Osborn, Demagnetizing factors of the general ellipsoid, Phys. Rev. 67 (1945) 351. */
class Osborn1945Test {

    @Test
    void sphereAndPlateLimits() {
        assertThat(SmallBodies.ellipsoidDemagnetising(1)).isEqualTo(1 / 3.0);
        assertThat(SmallBodies.ellipsoidDemagnetising(1e-6)).isCloseTo(1, within(2e-6));
        for (double m : new double[] {Math.sqrt(1.001), Math.sqrt(0.999)}) {
            double inside = SmallBodies.ellipsoidDemagnetising(1 + (m - 1) * (1 - 1e-9));
            double outside = SmallBodies.ellipsoidDemagnetising(1 + (m - 1) * (1 + 1e-9));
            assertThat(inside).isCloseTo(outside, within(1e-12));
        }
    }

    /** The transverse factor by quadrature of Osborn's integral, and the three add up to 1. */
    @ParameterizedTest
    @CsvSource({"0.2", "0.9", "3"})
    void factorsAddUpToOne(double m) {
        // N_x = (m/2) int_0^inf ds / ((s + 1)^2 sqrt(s + m^2)), s = t/(1-t) with midpoints
        int n = 400_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double t = (i + 0.5) / n;
            double s = t / (1 - t);
            sum += m / 2 / Math.sqrt(s + m * m) / n;
        }
        assertThat(SmallBodies.ellipsoidDemagnetising(m) + 2 * sum).isCloseTo(1, within(1e-5));
    }
}
