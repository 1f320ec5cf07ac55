package eddyreach.oscillator;

import eddyreach.numerics.Require;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Differential pair with a hyperbolic-tangent transfer: {@code i = I0 tanh(gm v/I0)}.
 *
 * <p>With {@code x = gm A/I0} the describing function is {@code Gm(A) = gm h(x)},
 * {@code h(x) = (4/(pi x)) int_0^{pi/2} tanh(x sin t) sin t dt}, which falls from 1 to 0. It is computed
 *
 * <ul>
 *   <li>up to x = 16 by the trapezoidal rule over the period, whose error falls as {@code exp(-n asinh(pi/(2x)))}
 *       with n points since the integrand is periodic and its nearest pole lies that far from the real axis;
 *   <li>beyond by {@code tanh y = 1 - 2/(exp(2y) + 1)} and Watson's expansion in powers of 1/x^2 with the
 *       Fermi integrals {@code int u^(2m+1)/(e^u + 1) du = (2m+1)! eta(2m+2)}; what it neglects is of the order exp(-2x).
 * </ul>
 *
 * Relative error below 1e-12. The amplitude is bracketed by {@code h >= 1 - x^2/4} (from tanh y at least y - y^3/3)
 * and {@code h < 4/(pi x)} (the hard limiter). References: A. Gelb and W. E. Vander Velde, Multiple-Input Describing
 * Functions, 1968 (definition); L. N. Trefethen and J. A. C. Weideman, SIAM Review 56 (2014) 385 (trapezoidal rule).
 *
 * @param current tail current I0, A, peak of the saturated output
 * @param transconductance slope gm at the origin, S
 */
public record TanhPair(double current, double transconductance) implements ActiveElement {

    private static final double SERIES_FROM = 16;
    private static final int MAX_EVALUATIONS = 100;

    /** sin(pi i/(2n)) for each number n of points that an argument below that of the series needs. */
    private static final double[][] SINES = sines(points(SERIES_FROM));

    /** (2m+1)! eta(2m+2) binomial(2m, m)/16^m for m = 0, 1, ...: coefficients of x^-2m, eta being Dirichlet's. */
    private static final double[] SERIES = seriesCoefficients();

    public TanhPair {
        Require.positive("tail current", current, "A");
        Require.positive("transconductance", transconductance, "S");
    }

    @Override
    public String name() {
        return "tanh pair";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(
                new Parameter("current", current, "A"), new Parameter("transconductance", transconductance, "S"));
    }

    @Override
    public double conductance(double amplitude) {
        return transconductance * h(transconductance * Require.positive("amplitude", amplitude, "V") / current);
    }

    @Override
    public double smallSignalConductance() {
        return transconductance;
    }

    @Override
    public double amplitude(double tankConductance) {
        double share = Require.positive("tank conductance", tankConductance, "S") / transconductance;
        if (share >= 1) {
            return 0;
        }
        double low = 2 * Math.sqrt(1 - share);
        double high = 4 / (Math.PI * share);
        // at either end of the range a bound is the root to rounding
        double x;
        if (h(low) <= share) {
            x = low;
        } else if (h(high) >= share) {
            x = high;
        } else {
            x = new BrentSolver(1e-13, 1e-13 * low, 1e-17 * share).solve(MAX_EVALUATIONS, t -> h(t) - share, low, high);
        }
        return x * current / transconductance;
    }

    private static double h(double x) {
        return x < SERIES_FROM ? trapezoidal(x) : series(x);
    }

    private static double trapezoidal(double x) {
        int n = points(x);
        double sum = Math.tanh(x) / 2;
        double[] sines = SINES[n];
        for (int i = 1; i < n; i++) {
            double s = sines[i];
            // the exponential is several times as fast as the library's tanh, and exact enough where tanh is not small
            sum += (x < 1 ? Math.tanh(x * s) : 1 - 2 / (Math.exp(2 * x * s) + 1)) * s;
        }
        return 2 * sum / (n * x);
    }

    private static int points(double x) {
        double y = Math.PI / (2 * x);
        double strip = Math.log(y + Math.sqrt(1 + y * y));
        // a quarter period carries the whole by symmetry; 31 is -ln of 3e-14, 6 points are enough for any small x
        return Math.max(6, (int) Math.ceil(31 / (4 * strip)));
    }

    private static double[][] sines(int most) {
        double[][] table = new double[most + 1][];
        for (int n = 1; n <= most; n++) {
            table[n] = new double[n];
            for (int i = 0; i < n; i++) {
                table[n][i] = Math.sin(Math.PI * i / (2 * n));
            }
        }
        return table;
    }

    private static double series(double x) {
        double correction = 0;
        double power = 1;
        double last = Double.POSITIVE_INFINITY;
        for (double c : SERIES) {
            double term = c * power;
            if (term > last) {
                break;
            }
            correction += term;
            last = term;
            power /= x * x;
        }
        return 4 / (Math.PI * x) * (1 - correction / (2 * x * x));
    }

    private static double[] seriesCoefficients() {
        double[] c = new double[14];
        double factor = 1;
        for (int m = 0; m < c.length; m++) {
            if (m > 0) {
                // binomial(2m, m)/4^m grows by (2m-1)/(2m), (2m+1)! by 2m (2m+1), and (2x)^-2 gives 1/4
                factor *= (2 * m - 1) / (2.0 * m) * (2 * m) * (2 * m + 1) / 4;
            }
            c[m] = factor * eta(2 * m + 2);
        }
        return c;
    }

    /** 1 - 2^-s + 3^-s - ...; for s = 2 its closed value. */
    private static double eta(int s) {
        if (s == 2) {
            return Math.PI * Math.PI / 12;
        }
        if (s == 4) {
            return 7 * Math.pow(Math.PI, 4) / 720;
        }
        double sum = 0;
        for (int k = 400; k > 0; k--) {
            sum += (k % 2 == 1 ? 1 : -1) * Math.pow(k, -s);
        }
        return sum;
    }
}
