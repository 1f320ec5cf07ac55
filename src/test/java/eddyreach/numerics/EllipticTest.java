package eddyreach.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;

class EllipticTest {

    @Test
    void agreesWithCarlsonForms() {
        for (double m = 0; m < 1; m += 0.0213) {
            assertThat(Elliptic.k(m))
                    .as("K(%s)", m)
                    .isCloseTo(LegendreEllipticIntegral.bigK(m), Percentage.withPercentage(4e-13));
            assertThat(Elliptic.e(m))
                    .as("E(%s)", m)
                    .isCloseTo(LegendreEllipticIntegral.bigE(m), Percentage.withPercentage(4e-13));
        }
    }

    /** Abramowitz and Stegun 1964, 17.4.17 and 17.4.18. */
    @Test
    void negativeParameter() {
        for (double m = 0.1; m < 50; m *= 1.7) {
            double root = Math.sqrt(1 + m);
            assertThat(Elliptic.k(-m)).isCloseTo(Elliptic.k(m / (1 + m)) / root, Percentage.withPercentage(4e-13));
            assertThat(Elliptic.e(-m)).isCloseTo(Elliptic.e(m / (1 + m)) * root, Percentage.withPercentage(4e-13));
        }
    }

    @Test
    void differenceKeepsItsDigits() {
        assertThat(Elliptic.kMinusE(0.6, 0.4)).isCloseTo(Elliptic.k(0.6) - Elliptic.e(0.6), within(1e-15));
        // A&S 17.3.11 and 17.3.12: K - E = pi/4 (m + 3 m^2/8 + ...)
        double m = 1e-7;
        assertThat(Elliptic.kMinusE(m, 1 - m))
                .isCloseTo(Math.PI / 4 * (m + 3 * m * m / 8), Percentage.withPercentage(1e-12));
    }

    @Test
    void generalIntegralAgreesWithQuadrature() {
        for (double kc : new double[] {0.05, 0.4, 1, 2}) {
            for (double p : new double[] {0.1, 1, 3}) {
                // the integrand is periodic: the midpoint rule converges geometrically
                int n = 2000;
                double sum = 0;
                for (int i = 0; i < n; i++) {
                    double t = (i + 0.5) * Math.PI / 2 / n;
                    double c2 = Math.cos(t) * Math.cos(t);
                    double s2 = 1 - c2;
                    sum += (1.3 * c2 - 0.7 * s2) / ((c2 + p * s2) * Math.sqrt(c2 + kc * kc * s2));
                }
                assertThat(Elliptic.cel(kc, p, 1.3, -0.7)).isCloseTo(sum * Math.PI / 2 / n, within(1e-12));
            }
        }
        assertThat(Elliptic.cel(Math.sqrt(0.3), 1, 1, 1)).isCloseTo(Elliptic.k(0.7), within(1e-15));
        assertThat(Elliptic.cel(Math.sqrt(0.3), 1, 1, 0.3)).isCloseTo(Elliptic.e(0.7), within(1e-15));
    }

    @Test
    void legendreRelation() {
        for (double m = 0.01; m < 1; m += 0.07) {
            double sum = Elliptic.e(m) * Elliptic.k(1 - m)
                    + Elliptic.e(1 - m) * Elliptic.k(m)
                    - Elliptic.k(m) * Elliptic.k(1 - m);
            assertThat(sum).isCloseTo(Math.PI / 2, within(1e-14));
        }
    }

    @Test
    void endsOfTheRange() {
        assertThat(Elliptic.k(0)).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(Elliptic.e(0)).isCloseTo(Math.PI / 2, within(1e-15));
        assertThat(Elliptic.e(1)).isEqualTo(1);
        // A&S 17.3.26: K goes as ln(16/m1)/2
        assertThat(Elliptic.kOfComplement(1e-20)).isCloseTo(Math.log(16e20) / 2, within(1e-13));
        assertThat(Elliptic.eOfComplement(1e-20)).isCloseTo(1, within(1e-14));
        assertThatThrownBy(() -> Elliptic.k(1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Elliptic.k(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
