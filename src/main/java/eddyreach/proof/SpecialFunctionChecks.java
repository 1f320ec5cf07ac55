package eddyreach.proof;

import eddyreach.numerics.Bessel;
import eddyreach.numerics.ComplexBessel;
import eddyreach.numerics.Elliptic;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.complex.Complex;

/** Bessel functions and elliptic integrals, on which the closed forms stand. */
final class SpecialFunctionChecks {

    private SpecialFunctionChecks() {}

    static List<Check> all() {
        return new CheckList("Special functions")
                .from(
                        Provenance.PRINTED,
                        "M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions (1964), tables 9.5, 9.12"
                                + " and 17.1")
                .value("first zero of J0", "2.4048255577", () -> root(Bessel::j0, 2, 3))
                .value("first zero of J1", "3.8317059702", () -> root(Bessel::j1, 3, 4))
                .value("K, parameter m = 0.5", "1.854074677301372", () -> Elliptic.k(0.5))
                .value("E, parameter m = 0.5", "1.350643881047675", () -> Elliptic.e(0.5))
                .value("ber 1", "0.9843817812", () -> kelvin(1).getReal())
                .value("bei 1", "0.2495660400", () -> kelvin(1).getImaginary())
                .value("ber 5", "-6.2300824787", () -> kelvin(5).getReal())
                .value("bei 5", "0.1160343816", () -> kelvin(5).getImaginary())
                .list();
    }

    private static double root(UnivariateFunction f, double low, double high) {
        return new BrentSolver(1e-14).solve(100, f, low, high);
    }

    /** ber x + j bei x = J0(x exp(3 pi j/4)), Abramowitz and Stegun 9.9.1. */
    private static Complex kelvin(double x) {
        double c = x * Math.sqrt(0.5);
        return ComplexBessel.j0(new Complex(-c, c));
    }
}
