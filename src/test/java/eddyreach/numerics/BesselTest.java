package eddyreach.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BesselTest {

    private static double amplitude(double x) {
        return x < 1 ? 1 : Math.sqrt(2 / (Math.PI * x));
    }

    /** Reference: 40-digit values by mpmath, from its hypergeometric series. */
    @ParameterizedTest
    @CsvSource({
        "0.001, 0.9999997500000156, 0.0004999999375000026, 1.6666665416666704e-10",
        "0.5, 0.9384698072408129, 0.2422684576748739, 0.020445603025638602",
        "2.4, 0.002507683297243813, 0.520185268181931, 1.464275554999373",
        "3.8, -0.4025564101785642, 0.012821002926731627, 2.6346821595443015",
        "5.0, -0.1775967713143383, -0.32757913759146523, 1.6032957743564593",
        "7.99, 0.17399001312793264, 0.23320071425350175, -0.18116158612667912",
        "8.0, 0.1716508071375539, 0.23463634685391463, -0.1624596222699811",
        "8.01, 0.1692973691105429, 0.23604710363083403, -0.14362033910743682",
        "12.0, 0.047689310796833535, -0.2234471044906276, 0.2018504602076714",
        "25.5, 0.14406215754684787, -0.062048536491484105, -2.7411634081578815",
        "100.0, 0.019985850304223122, -0.07714535201411216, -1.0759224734621462",
        "1234.5, -0.013550379618035721, 0.0182175083373925, 17.746172111238327",
        "100000.0, -0.0017192011162359723, 0.0018467575628825677, 172.92195839835193",
    })
    void fortyDigitValues(double x, double j0, double j1, double moment) {
        double amplitude = amplitude(x);
        assertThat(Bessel.j0(x)).isCloseTo(j0, within(1.5e-15 * amplitude));
        assertThat(Bessel.j1(x)).isCloseTo(j1, within(1.5e-15 * Math.min(amplitude, x)));
        assertThat(Bessel.moment1(x)).isCloseTo(moment, within(1e-14 * (x < 8 ? Math.abs(moment) : x * amplitude)));
    }

    @Test
    void agreesWithCommonsMathEverywhere() {
        for (double x = 0.013; x < 300; x += 0.237) {
            double allowed = 4e-15 * amplitude(x) * Math.max(1, x / 20);
            assertThat(Bessel.j0(x)).as("J0(%s)", x).isCloseTo(BesselJ.value(0, x), within(allowed));
            assertThat(Bessel.j1(x)).as("J1(%s)", x).isCloseTo(BesselJ.value(1, x), within(allowed));
        }
    }

    @Test
    void parityAndOrigin() {
        assertThat(Bessel.j0(0)).isCloseTo(1, within(2e-15));
        assertThat(Bessel.j1(0)).isZero();
        assertThat(Bessel.j1(-9.5)).isEqualTo(-Bessel.j1(9.5));
        assertThat(Bessel.j1(-0.5)).isEqualTo(-Bessel.j1(0.5));
        assertThat(Bessel.j0(-9.5)).isEqualTo(Bessel.j0(9.5));
        assertThat(Bessel.jn(3, -4)).isEqualTo(-Bessel.jn(3, 4));
        assertThat(Bessel.jn(4, -4)).isEqualTo(Bessel.jn(4, 4));
        assertThat(Bessel.jn(5, 0)).isZero();
    }

    /** Reference: 40-digit values by mpmath. */
    @ParameterizedTest
    @CsvSource({
        "2, 0.1, 0.0012489586587999188",
        "5, 0.1, 2.603081790964441e-09",
        "20, 0.1, 3.9194377208586175e-45",
        "2, 3, 0.4860912605858911",
        "7, 3, 0.0025472944518046938",
        "20, 15, 0.007360234079223486",
        "20, 25, 0.05199404922830323",
        "13, 13, 0.19014887604197098",
        "9, 200, -0.056290364341528495",
    })
    void higherOrders(int n, double x, double expected) {
        assertThat(Bessel.jn(n, x)).isCloseTo(expected, within(2e-14 * Math.abs(expected)));
    }

    @Test
    void recurrenceHoldsAcrossBothMethods() {
        for (int n = 1; n < 20; n++) {
            for (double x = 1e-7; x < 60; x = x * 1.3 + 0.01) {
                double left = Bessel.jn(n - 1, x) + Bessel.jn(n + 1, x);
                double right = 2 * n / x * Bessel.jn(n, x);
                double scale = Math.max(Math.abs(Bessel.jn(n - 1, x)), Math.min(1, right));
                assertThat(left).as("n %d x %s", n, x).isCloseTo(right, within(1e-13 * Math.abs(scale) + 1e-300));
            }
        }
    }

    @Test
    void orderOutOfRangeIsRefused() {
        assertThatThrownBy(() -> Bessel.jn(21, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("order n = 21, must be 0 to 20");
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0, 1",
        "300, 2.5, 5.5",
        "3000, 0.0025, 0.0055",
        "1e-3, 0.01, 0.02",
        "40, 1, 1.1",
        "4, 1, 2.99",
        "4, 1, 3.01"
    })
    void radialIntegralAgreesWithFineQuadrature(double k, double r1, double r2) {
        int panels = 1 + (int) (k * (r2 - r1) / 3);
        double sum = 0;
        for (int p = 0; p < panels; p++) {
            double step = (r2 - r1) / panels;
            GaussLegendre rule = GaussLegendre.of(12, r1 + p * step, r1 + (p + 1) * step);
            for (int i = 0; i < rule.size(); i++) {
                sum += rule.weight(i) * rule.node(i) * BesselJ.value(1, k * rule.node(i));
            }
        }
        double amplitude = Math.max(Math.abs(sum), k * r2 > 8 ? Math.sqrt(r2) * Math.pow(k, -1.5) : 0);
        // the rounding of k r shifts the phase by up to 1e-16 k r
        double allowed = (5e-14 + 3e-16 * k * r2) * amplitude;
        assertThat(Bessel.integralRJ1(k, r1, r2)).isCloseTo(sum, within(allowed));
    }

    @Test
    void radialIntegralOfThinSectionKeepsItsDigits() {
        double r = 0.01;
        double dr = 1e-12;
        assertThat(Bessel.integralRJ1(500, r, r + dr) / ((r + dr) - r))
                .isCloseTo(r * Bessel.j1(500 * r), within(1e-9 * r));
    }
}
