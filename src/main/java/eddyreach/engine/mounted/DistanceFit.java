package eddyreach.engine.mounted;

import org.apache.commons.math3.complex.Complex;

/**
 * A complex function of the distance through a few values of it: its logarithm as a polynomial in the logarithm of the distance, both of which
 * are smooth where the function falls by orders of magnitude.
 *
 * <p>The distances are the extrema of a Chebyshev polynomial; those of half as many intervals are every other one of them.
 */
final class DistanceFit {

    private final double from;
    private final double to;
    private final double soft;
    private final Complex[] log;

    /**
     * @param from least distance, m
     * @param to largest distance, m
     * @param soft what is added to the distance under the logarithm, m
     * @param values values at {@link #node}, from the least distance to the largest, at least three
     */
    DistanceFit(double from, double to, double soft, Complex[] values) {
        this.from = from;
        this.to = to;
        this.soft = soft;
        log = new Complex[values.length];
        for (int i = 0; i < log.length; i++) {
            Complex l = values[i].log();
            // the phase goes on smoothly from one distance to the next
            double turns = i == 0 ? 0 : Math.rint((log[i - 1].getImaginary() - l.getImaginary()) / (2 * Math.PI));
            log[i] = new Complex(l.getReal(), l.getImaginary() + 2 * Math.PI * turns);
        }
    }

    /** A distance at which a value is asked for, m: number i of intervals + 1. */
    static double node(double from, double to, double soft, int i, int intervals) {
        double share = (1 - Math.cos(Math.PI * i / intervals)) / 2;
        return i == 0
                ? from
                : i == intervals ? to : (from + soft) * Math.pow((to + soft) / (from + soft), share) - soft;
    }

    /** The function at a distance, m. */
    Complex at(double distance) {
        int n = log.length - 1;
        double x = 2 * Math.log((distance + soft) / (from + soft)) / Math.log((to + soft) / (from + soft)) - 1;
        Complex sum = Complex.ZERO;
        double weights = 0;
        for (int i = 0; i <= n; i++) {
            double off = x + Math.cos(Math.PI * i / n);
            if (off == 0) {
                return log[i].exp();
            }
            double w = (i % 2 == 0 ? 1 : -1) * (i == 0 || i == n ? 0.5 : 1) / off;
            sum = sum.add(log[i].multiply(w));
            weights += w;
        }
        return sum.divide(weights).exp();
    }

    /** What it may be wrong by, relative: the last two coefficients of the polynomial, which those left out are smaller than. */
    double error() {
        return coefficient(log.length - 1) + coefficient(log.length - 2);
    }

    /** Modulus of a Chebyshev coefficient. */
    private double coefficient(int k) {
        int n = log.length - 1;
        Complex sum = Complex.ZERO;
        for (int i = 0; i <= n; i++) {
            sum = sum.add(log[i].multiply((i == 0 || i == n ? 0.5 : 1) * Math.cos(Math.PI * k * i / n)));
        }
        return sum.abs() * (k == n ? 1.0 : 2.0) / n;
    }
}
