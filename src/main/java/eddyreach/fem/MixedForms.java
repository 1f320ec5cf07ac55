package eddyreach.fem;

import eddyreach.mesh.Axis;
import eddyreach.numerics.GaussLegendre;

/**
 * One-dimensional bilinear forms between different kinds of functions on an axis: the continuous shape functions, the Legendre
 * polynomials of one degree less that live inside single elements, and what the operators of a vector field make of them.
 *
 * <p>The space of a vector component that may jump across an interface has Legendre polynomials along its own direction and shape
 * functions across it (Nedelec, Numer. Math. 35 (1980) 315, on tensor meshes).
 */
public final class MixedForms {

    private static final int EXTRA = 4;

    private MixedForms() {}

    /** Functions on an element of degree p. */
    public enum Kind {
        /** Shape functions v, p + 1 of them. */
        VALUE(1),
        /** Their derivatives v'. */
        SLOPE(1),
        /** v + x v', the derivative of x v. */
        MOMENT(1),
        /** Legendre polynomials of degree 0 to p - 1. */
        INNER(0);

        private final int more;

        Kind(int more) {
            this.more = more;
        }

        /** Number of functions on an element of degree p. */
        public int count(int p) {
            return p + more;
        }

        /**
         * Values at a point.
         *
         * @param p degree of the element
         * @param t reference coordinate in [-1, 1]
         * @param x the coordinate itself
         * @param half half the length of the element
         * @param out receives the values, at least p + 1 long
         * @param scratch as long
         */
        public void at(int p, double t, double x, double half, double[] out, double[] scratch) {
            switch (this) {
                case VALUE -> Shape.values(p, t, out);
                case SLOPE -> {
                    Shape.derivatives(p, t, out);
                    for (int a = 0; a <= p; a++) {
                        out[a] /= half;
                    }
                }
                case MOMENT -> {
                    Shape.values(p, t, out);
                    Shape.derivatives(p, t, scratch);
                    for (int a = 0; a <= p; a++) {
                        out[a] += x * scratch[a] / half;
                    }
                }
                case INNER -> {
                    out[0] = 1;
                    for (int k = 1; k < p; k++) {
                        out[k] = k == 1 ? t : ((2 * k - 1) * t * out[k - 1] - (k - 1) * out[k - 2]) / k;
                    }
                }
            }
        }
    }

    /**
     * Integrals of the products of two kinds of functions times a power of x. Meaningless for the function that is 1 at x = 0 if
     * the power is negative.
     *
     * @return {@code [element][a * count(right) + b]}
     */
    public static double[][] of(Axis axis, Kind left, Kind right, int power) {
        double[][] out = new double[axis.elements()][];
        for (int e = 0; e < out.length; e++) {
            int p = axis.degree(e);
            int m = left.count(p);
            int n = right.count(p);
            double half = axis.length(e) / 2;
            GaussLegendre rule = GaussLegendre.of(p + EXTRA, -1, 1);
            double[] u = new double[p + 1];
            double[] v = new double[p + 1];
            double[] scratch = new double[p + 1];
            out[e] = new double[m * n];
            for (int q = 0; q < rule.size(); q++) {
                double x = axis.middle(e) + half * rule.node(q);
                double w = rule.weight(q) * half * Math.pow(x, power);
                left.at(p, rule.node(q), x, half, u, scratch);
                right.at(p, rule.node(q), x, half, v, scratch);
                for (int a = 0; a < m; a++) {
                    for (int b = 0; b < n; b++) {
                        out[e][a * n + b] += w * u[a] * v[b];
                    }
                }
            }
        }
        return out;
    }
}
