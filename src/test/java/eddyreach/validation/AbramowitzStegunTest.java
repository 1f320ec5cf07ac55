package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.numerics.Bessel;
import eddyreach.numerics.ComplexBessel;
import eddyreach.numerics.Elliptic;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), tables 9.5 and 17.1. Printed values. */
class AbramowitzStegunTest {

    @Test
    void firstZeros() {
        var solver = new BrentSolver(1e-14);
        assertThat(solver.solve(100, Bessel::j0, 2, 3)).isCloseTo(2.4048255577, within(0.5e-10));
        assertThat(solver.solve(100, Bessel::j1, 3, 4)).isCloseTo(3.8317059702, within(0.5e-10));
    }

    /** The argument is the parameter m, not the modulus. */
    @Test
    void completeEllipticIntegrals() {
        assertThat(Elliptic.k(0.5)).isCloseTo(1.854074677301372, within(0.5e-15));
        assertThat(Elliptic.e(0.5)).isCloseTo(1.350643881047675, within(0.6e-15));
    }

    /** Kelvin functions, table 9.12, values from memory; {@code ber x + j bei x = J0(x exp(3 pi j/4))} (9.9.1). */
    @ParameterizedTest
    @CsvSource({"1, 0.9843817812, 0.2495660400", "5, -6.2300824787, 0.1160343816"})
    void kelvinFunctions(double x, double ber, double bei) {
        double c = x * Math.sqrt(0.5);
        Complex value = ComplexBessel.j0(new Complex(-c, c));
        assertThat(value.getReal()).isCloseTo(ber, within(6e-11));
        assertThat(value.getImaginary()).isCloseTo(bei, within(6e-11));
    }
}
