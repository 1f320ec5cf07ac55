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
