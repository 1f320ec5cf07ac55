package eddyreach.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.special.BesselJ;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComplexBesselTest {

    /** Made with mpmath 30-digit besselj(0, z), besselj(1, z): both branches and the seam between them. */
    @ParameterizedTest
    @CsvSource({
        "3, -4, -8.8121437936979055, 4.5984378997430351, 3.6541102814142644, 8.4031042565830872",
        "24, -5, -2.9577481482156499, -11.597794100259235, -11.612069040803768, 2.7130965771161778",
        "26, -5, 11.346272264715276, 1.9731565902279551, 2.1775334767898329, -11.269969607346507",
        "-60, 30, -505332345664.9747, 126619756169.14985, -122819782842.48785, -504503468746.42209",
        "70.71067811865475244, -70.71067811865475244, 7.3687068780949573e28, 1.9069114093623798e29,"
                + " 1.9027841390403489e29, -7.2749956827163378e28",
        "20, 0, 0.16702466434058315, 0, 0.066833124175850046, 0",
        "0, 2, 2.2795853023360673, 0, 0, 1.5906368546373291"
    })
    void agreesWithThirtyDigitArithmetic(double x, double y, double j0x, double j0y, double j1x, double j1y) {
        Complex z = new Complex(x, y);
        assertClose(ComplexBessel.j0(z), new Complex(j0x, j0y), 1e-13);
        assertClose(ComplexBessel.j1(z), new Complex(j1x, j1y), 1e-13);
    }

    /** The trapezoidal rule is exact to rounding for Bessel's integral (A and S 9.1.21). */
    @Test
    void agreesWithBesselsIntegral() {
        Random random = new Random(1);
        for (int i = 0; i < 300; i++) {
            double modulus = 60 * random.nextDouble();
            double angle = Math.PI * (2 * random.nextDouble() - 1);
            Complex z = new Complex(modulus * Math.cos(angle), modulus * Math.sin(angle));
            Complex j0 = Complex.ZERO;
            Complex j1 = Complex.ZERO;
            int n = 256;
            for (int k = 0; k < n; k++) {
                double theta = 2 * Math.PI * k / n;
                Complex wave =
                        Complex.I.multiply(z).multiply(Math.sin(theta)).exp().multiply(1.0 / n);
                j0 = j0.add(wave);
                j1 = j1.add(wave.multiply(new Complex(0, -theta).exp()));
            }
            double scale = Math.exp(Math.abs(z.getImaginary()));
            // the integral itself loses to rounding, which is relative to the largest of its terms
            assertThat(ComplexBessel.j0(z).subtract(j0).abs()).as("J0 %s", z).isLessThan(1e-13 * scale);
            assertThat(ComplexBessel.j1(z).subtract(j1).abs()).as("J1 %s", z).isLessThan(1e-13 * scale);
        }
    }

    @Test
    void agreesWithTheRealFunctionOnTheRealAxis() {
        for (double x = 0.1; x < 60; x += 0.37) {
            assertThat(ComplexBessel.j0(new Complex(x)).getReal()).isCloseTo(BesselJ.value(0, x), within(2e-14));
            assertThat(ComplexBessel.j1(new Complex(-x)).getReal()).isCloseTo(-BesselJ.value(1, x), within(2e-14));
        }
    }

    @Test
    void ratiosAgreeWithTheFunctionsAndTheRecurrence() {
        for (double x = 0.5; x < 100; x *= 1.3) {
            Complex z = new Complex(x, -x);
            Complex j0 = ComplexBessel.j0(z);
            Complex j1 = ComplexBessel.j1(z);
            assertClose(ComplexBessel.ratio10(z), j1.divide(j0), 1e-12);
            assertClose(ComplexBessel.ratio10(z.negate()), j1.divide(j0).negate(), 1e-12);
            Complex j2 = j1.multiply(2).divide(z).subtract(j0);
            assertThat(ComplexBessel.ratio20(z).subtract(j2.divide(j0)).abs()).isLessThan(1e-13);
            assertClose(ComplexBessel.ratio20(z.negate()), ComplexBessel.ratio20(z), 1e-15);
        }
    }

    @Test
    void ratiosKeepTheirLeadingTermAndDoNotOverflow() {
        Complex tiny = new Complex(1e-8, -1e-8);
        assertClose(ComplexBessel.ratio10(tiny), tiny.multiply(0.5), 1e-15);
        assertClose(ComplexBessel.ratio20(tiny), tiny.multiply(tiny).multiply(0.125), 1e-15);
        assertClose(ComplexBessel.ratio10(new Complex(1e5, -1e5)), new Complex(0, -1), 1e-5);
        assertThat(ComplexBessel.j0(Complex.ZERO)).isEqualTo(Complex.ONE);
        assertThat(ComplexBessel.j1(Complex.ZERO).abs()).isZero();
        assertThat(ComplexBessel.ratio20(Complex.ZERO).abs()).isZero();
    }

    @Test
    void rejectsWhatIsNoNumber() {
        assertThatIllegalArgumentException().isThrownBy(() -> ComplexBessel.j0(Complex.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> ComplexBessel.ratio10(Complex.INF));
    }

    private static Offset<Double> within(double d) {
        return Offset.offset(d);
    }

    private static void assertClose(Complex actual, Complex expected, double relative) {
        assertThat(actual.subtract(expected).abs())
                .as("%s against %s", actual, expected)
                .isLessThanOrEqualTo(relative * expected.abs());
    }
}
