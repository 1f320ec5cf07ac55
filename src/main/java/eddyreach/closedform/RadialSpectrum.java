package eddyreach.closedform;

import eddyreach.materials.Material;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;
import org.apache.commons.math3.complex.Complex;

/**
 * Integrals int_0^inf P(k)^2 g(k) dk over a coil's radial weight P(k) = int r J1(k r) dr / (r2 - r1), or a J1(k a) for a loop, with
 * g smooth on a logarithmic scale.
 *
 * <p>Gauss panels of 24 points, doubling in width from zero until they hold 24 rad of the fastest phase 2 k r2. Where g decays by a
 * lift-off the range ends when exp(-k d) is lost. Otherwise P^2 is faded out smoothly over one octave, which removes the oscillating
 * part of the rest to rounding, and the rest is the integral of the mean of P^2 over its phase, (r1 + r2)/(pi k^3 (r2 - r1)^2) for
 * k r1 large. Converged to better than 1e-9 relative.
 */
final class RadialSpectrum {

    /** Smooth complex factor g(k): fills re and im for all k. */
    interface Factor {
        void fill(double[] k, double[] re, double[] im);
    }

    private static final GaussLegendre RULE = GaussLegendre.of(24, 0, 1);
    private static final double FIRST_PANEL = 1e-6;
    private static final double PHASE_PER_PANEL = 24;
    private static final double LOST = 42;
    private static final int TAIL_OCTAVES = 40;

    private final double r1;
    private final double r2;

    RadialSpectrum(double r1, double r2) {
        this.r1 = r1;
        this.r2 = r2;
    }

    /**
     * The impedance j w pi mu0 N^2 int P^2 g dk of a coil in its own reflected field.
     *
     * @param omega angular frequency, rad/s
     * @param turns turns
     * @param decay length d with g going as exp(-k d) at large k, m; 0 if it does not
     * @param g factor
     */
    Complex impedance(double omega, double turns, double decay, Factor g) {
        return integrate(decay, g).multiply(new Complex(0, omega * Math.PI * Material.MU0 * turns * turns));
    }

    Complex integrate(double decay, Factor g) {
        double fadeFrom = fadeFrom();
        boolean fades = !(decay > 0) || LOST / decay > 2 * fadeFrom;
        double end = fades ? 2 * fadeFrom : LOST / decay;
        double widest = PHASE_PER_PANEL / (2 * r2);
        Sum sum = new Sum(g);
        double from = 0;
        double width = FIRST_PANEL / r2;
        while (from < end) {
            double to = Math.min(end, from + width);
            sum.add(from, to, fades ? fadeFrom : Double.POSITIVE_INFINITY);
            from = to;
            width = Math.min(widest, 2 * width);
        }
        if (fades) {
            sum.addMean(fadeFrom);
        }
        return new Complex(sum.re, sum.im);
    }

    private double radial(double k) {
        return r2 > r1 ? Bessel.integralRJ1(k, r1, r2) / (r2 - r1) : r2 * Bessel.j1(k * r2);
    }

    /** Far enough out for the mean of P^2, see {@link #meanSquare}, to hold. */
    private double fadeFrom() {
        double build = r2 > r1 ? r2 - r1 : r2;
        double inner = r1 > 0 ? Math.min(200 / r1, 6000 / r2) : 0;
        return Math.max(400 / build, inner);
    }

    /** Mean of P^2 over its phase; without a bore the constant 1 in F (see Bessel.moment1) stays. */
    private double meanSquare(double k) {
        if (r2 == r1) {
            return r2 / (Math.PI * k);
        }
        double k4 = k * k * k * k;
        double build = r2 - r1;
        return ((r1 + r2) * k / Math.PI + (r1 == 0 ? 1 : 0)) / (k4 * build * build);
    }

    /** Smooth step from 1 at from to 0 at 2 from, three derivatives continuous. */
    private static double fade(double k, double from) {
        if (k <= from) {
            return 1;
        }
        double s = Math.min(1, k / from - 1);
        return 1 - s * s * s * s * (35 + s * (-84 + s * (70 - 20 * s)));
    }

    private final class Sum {
        private final Factor g;
        private final double[] k = new double[RULE.size()];
        private final double[] gRe = new double[RULE.size()];
        private final double[] gIm = new double[RULE.size()];
        private double re;
        private double im;

        Sum(Factor g) {
            this.g = g;
        }

        void add(double from, double to, double fadeFrom) {
            fillFactor(from, to);
            for (int i = 0; i < k.length; i++) {
                double p = radial(k[i]);
                accumulate(i, (to - from) * p * p * fade(k[i], fadeFrom));
            }
        }

        void addMean(double fadeFrom) {
            for (int octave = 0; octave < TAIL_OCTAVES; octave++) {
                double from = fadeFrom * Math.pow(2, octave);
                double to = 2 * from;
                fillFactor(from, to);
                for (int i = 0; i < k.length; i++) {
                    accumulate(i, (to - from) * meanSquare(k[i]) * (1 - fade(k[i], fadeFrom)));
                }
            }
        }

        private void fillFactor(double from, double to) {
            for (int i = 0; i < k.length; i++) {
                k[i] = from + (to - from) * RULE.node(i);
            }
            g.fill(k, gRe, gIm);
        }

        private void accumulate(int i, double scale) {
            re += RULE.weight(i) * scale * gRe[i];
            im += RULE.weight(i) * scale * gIm[i];
        }
    }
}
