package eddyreach.fem;

import eddyreach.mesh.Axis;
import eddyreach.numerics.GaussLegendre;

/**
 * One-dimensional bilinear forms on each element of an axis. On a tensor mesh every two-dimensional element matrix is a
 * sum of products of these.
 *
 * <p>Matrices are stored as {@code [element][a * (p + 1) + b]}.
 */
public final class LineForms {

    /** Points beyond the degree that make the rules exact for polynomials and converge fast for the 1/x terms. */
    private static final int EXTRA = 4;

    private LineForms() {}

    /** A product of two functions, given their values and derivatives at x. */
    private interface Integrand {
        double at(double u, double du, double v, double dv, double x);
    }

    /** Integral of u v. */
    public static double[][] mass(Axis axis) {
        return form(axis, (u, du, v, dv, x) -> u * v);
    }

    /** Integral of u' v'. */
    public static double[][] stiffness(Axis axis) {
        return form(axis, (u, du, v, dv, x) -> du * dv);
    }

    /** Integral of u v x. */
    public static double[][] radialMass(Axis axis) {
        return form(axis, (u, du, v, dv, x) -> u * v * x);
    }

    /**
     * Integral of (u/x + u') (v/x + v') x, the radial part of the curl of an azimuthal field. Meaningless for the function that is
     * 1 on the axis x = 0, which is excluded from the space.
     */
    public static double[][] radialCurl(Axis axis) {
        return form(axis, (u, du, v, dv, x) -> (u / x + du) * (v / x + dv) * x);
    }

    /** Integral of v, {@code [element][a]}. */
    public static double[][] mean(Axis axis) {
        return loads(axis, false);
    }

    /** Integral of v x, {@code [element][a]}. */
    public static double[][] radialMean(Axis axis) {
        return loads(axis, true);
    }

    private static double[][] loads(Axis axis, boolean weighted) {
        double[][] out = new double[axis.elements()][];
        for (int e = 0; e < out.length; e++) {
            int p = axis.degree(e);
            double half = axis.length(e) / 2;
            GaussLegendre rule = GaussLegendre.of(p + EXTRA, -1, 1);
            double[] v = new double[p + 1];
            out[e] = new double[p + 1];
            for (int q = 0; q < rule.size(); q++) {
                Shape.values(p, rule.node(q), v);
                double x = axis.middle(e) + half * rule.node(q);
                double w = rule.weight(q) * half * (weighted ? x : 1);
                for (int a = 0; a <= p; a++) {
                    out[e][a] += w * v[a];
                }
            }
        }
        return out;
    }

    private static double[][] form(Axis axis, Integrand f) {
        double[][] out = new double[axis.elements()][];
        for (int e = 0; e < out.length; e++) {
            out[e] = element(axis, e, f);
        }
        return out;
    }

    private static double[] element(Axis axis, int e, Integrand f) {
        int p = axis.degree(e);
        int n = p + 1;
        double half = axis.length(e) / 2;
        GaussLegendre rule = GaussLegendre.of(p + EXTRA, -1, 1);
        double[] v = new double[n];
        double[] d = new double[n];
        double[] m = new double[n * n];
        for (int q = 0; q < rule.size(); q++) {
            double t = rule.node(q);
            Shape.values(p, t, v);
            Shape.derivatives(p, t, d);
            double x = axis.middle(e) + half * t;
            double w = rule.weight(q) * half;
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    m[a * n + b] += w * f.at(v[a], d[a] / half, v[b], d[b] / half, x);
                }
            }
        }
        return m;
    }
}
