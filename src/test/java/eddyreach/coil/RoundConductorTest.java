package eddyreach.coil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import eddyreach.materials.Material;
import eddyreach.numerics.ComplexBessel;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundConductorTest {

    private static final double SIGMA = 58e6;

    /** Made with mpmath 30-digit Bessel functions from the two formulas. */
    @ParameterizedTest
    @CsvSource({
        "0.01, 1.000000000052083, 1.562499999552409e-10",
        "0.5, 1.000325436086668, 0.0009748173540787915",
        "10, 3.798576052182256, 1.640600972203563",
        "24.9, 9.058791588651402, 4.275854799240022",
        "25.1, 9.129460144164824, 4.311217147389115",
        "100, 35.60666470624329, 17.55244859435539"
    })
    void agreesWithThirtyDigitArithmetic(double x, double f, double g) {
        assertThat(RoundConductor.skinFactor(x)).isCloseTo(f, within(1e-12 * f));
        assertThat(RoundConductor.proximityFactor(x)).isCloseTo(g, within(1e-12 * g));
    }

    /** Ohmic loss density |J|^2/(2 sigma) summed over the section, against the power taken from the field. */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.7, 2, 6, 15})
    void proximityLossIsTheOhmicLossInTheSection(double x) {
        double a = 0.1e-3;
        double omega = x * x / (a * a * Material.MU0 * SIGMA);
        double h = 730;
        Complex k = new Complex(x / a * Math.sqrt(0.5), -x / a * Math.sqrt(0.5));
        // J = -j w sigma E J1(kr) sin(phi), E = 2 mu0 H / (k J0(ka)); the square of the sine gives pi
        double e = new Complex(2 * Material.MU0 * h)
                .divide(k.multiply(ComplexBessel.j0(k.multiply(a))))
                .abs();
        double integral = new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-10)
                .integrate(
                        100_000,
                        r -> Math.pow(
                                        omega
                                                * SIGMA
                                                * e
                                                * ComplexBessel.j1(k.multiply(r))
                                                        .abs(),
                                        2)
                                * r
                                * Math.PI
                                / (2 * SIGMA),
                        0,
                        a);
        double power = 8 * Math.PI / SIGMA * RoundConductor.proximityFactor(x) * h * h;
        assertThat(power).isCloseTo(integral, withinPercentage(1e-7));
    }

    /** The current density J0(kr) summed over the section: loss over that of the same current spread evenly. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 2, 8})
    void skinFactorIsTheOhmicLossInTheSection(double x) {
        Complex k = new Complex(x * Math.sqrt(0.5), -x * Math.sqrt(0.5));
        IterativeLegendreGaussIntegrator gauss = new IterativeLegendreGaussIntegrator(20, 1e-10, 1e-10);
        double loss = gauss.integrate(
                10_000, r -> Math.pow(ComplexBessel.j0(k.multiply(r)).abs(), 2) * r, 0, 1);
        double re = gauss.integrate(10_000, r -> ComplexBessel.j0(k.multiply(r)).getReal() * r, 0, 1);
        double im = gauss.integrate(10_000, r -> ComplexBessel.j0(k.multiply(r)).getImaginary() * r, 0, 1);
        assertThat(RoundConductor.skinFactor(x)).isCloseTo(loss / (2 * (re * re + im * im)), withinPercentage(1e-7));
    }

    /** At low frequency the eddy current density is sigma w B x: pi w^2 mu0^2 sigma d^4 H^2 / 128 per length. */
    @Test
    void lowFrequencyLimitOfTheProximityLoss() {
        double d = 0.2e-3;
        double omega = 2 * Math.PI * 1e3;
        double x = d / 2 * Math.sqrt(omega * Material.MU0 * SIGMA);
        double expected = Math.PI * Math.pow(omega * Material.MU0, 2) * SIGMA * Math.pow(d, 4) / 128;
        assertThat(8 * Math.PI / SIGMA * RoundConductor.proximityFactor(x)).isCloseTo(expected, withinPercentage(1e-4));
    }

    /** Flat-surface limit: the field at the surface of a perfect cylinder is 2 H sin(phi), the loss H^2/(2 sigma delta). */
    @Test
    void highFrequencyLimits() {
        double x = 5000;
        assertThat(RoundConductor.skinFactor(x)).isCloseTo(x / (2 * Math.sqrt(2)) + 0.25, withinPercentage(1e-3));
        // 8 pi G = 2 pi a / delta = pi x sqrt 2
        assertThat(RoundConductor.proximityFactor(x)).isCloseTo(x * Math.sqrt(2) / 8, withinPercentage(0.1));
    }

    @Test
    void directCurrentAndNonsense() {
        assertThat(RoundConductor.skinFactor(0)).isEqualTo(1);
        assertThat(RoundConductor.proximityFactor(0)).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> RoundConductor.skinFactor(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> RoundConductor.proximityFactor(Double.NaN));
    }
}
