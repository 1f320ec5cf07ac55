package eddyreach.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;

/** All orders at once, against an independent library and against what defines them. */
class BesselOrdersTest {

    @Test
    void againstAnIndependentLibrary() {
        double[] j = new double[61];
        for (double x : new double[] {1e-3, 0.3, 1, 4.7, 12, 33, 90}) {
            Bessel.orders(60, x, j);
            for (int n = 0; n <= 60; n++) {
                double expected = BesselJ.value(n, x);
                assertThat(j[n]).as("J_%d(%s)", n, x).isCloseTo(expected, within(1e-12 * Math.abs(expected) + 1e-14));
            }
        }
    }

    /** J0^2 + 2 (J1^2 + J2^2 + ...) = 1 (Abramowitz and Stegun 1964, 9.1.76). */
    @Test
    void sumOfSquares() {
        double[] j = new double[161];
        for (double x : new double[] {0, 1e-9, 1e-6, 0.5, 7, 40, 110}) {
            Bessel.orders(160, x, j);
            double sum = j[0] * j[0];
            for (int n = 1; n <= 160; n++) {
                sum += 2 * j[n] * j[n];
            }
            assertThat(sum).isCloseTo(1, within(1e-13));
        }
    }

    /** Leading term (x/2)^n / n! with full relative accuracy. */
    @Test
    void smallArguments() {
        for (double x : new double[] {1e-9, 1.1e-7, 1e-4}) {
            double[] j = new double[31];
            Bessel.orders(30, x, j);
            double term = 1;
            for (int n = 0; n <= 30; n++) {
                assertThat(j[n] / (term * (1 - x * x / 4 / (n + 1)))).isCloseTo(1, within(1e-12));
                term *= x / 2 / (n + 1);
            }
        }
    }
}
