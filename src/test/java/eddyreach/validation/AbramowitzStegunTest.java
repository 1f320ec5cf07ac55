package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.numerics.Bessel;
import eddyreach.numerics.Elliptic;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

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
}
