package eddyreach.field.axial;

import eddyreach.fem.Shape;
import eddyreach.mesh.Axis;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;

/**
 * Integrals of the incoming waves u = J1(kr) exp(d k z) against the shape functions of each element. The waves are products of
 * a function of r and one of z, so tables per axis suffice.
 *
 * <p>Arrays are indexed {@code [wave][element][local function]}; elements without any part hold null.
 */
public final class WaveTables {

    /** int J1(kr) v r dr. */
    final double[][][] radial;

    /** int k J0(kr) (v/r + v') r dr, from (1/r) d(r J1(kr))/dr = k J0(kr). */
    final double[][][] radialCurl;

    /** int exp(dkz) v dz. */
    final double[][][] axial;

    /** int d k exp(dkz) v' dz. */
    final double[][][] axialSlope;

    public WaveTables(WaveBasis basis, int direction, Axis r, Axis z, boolean[] useR, boolean[] useZ) {
        int n = basis.size();
        radial = new double[n][r.elements()][];
        radialCurl = new double[n][r.elements()][];
        axial = new double[n][z.elements()][];
        axialSlope = new double[n][z.elements()][];
        for (int e = 0; e < r.elements(); e++) {
            if (useR[e]) {
                radialElement(basis, r, e);
            }
        }
        for (int e = 0; e < z.elements(); e++) {
            if (useZ[e]) {
                axialElement(basis, direction, z, e);
            }
        }
    }

    /** Points that integrate a wave of the largest wavenumber times a polynomial to rounding. */
    public static int points(int degree, double k, double length) {
        return degree + 6 + (int) Math.ceil(k * length);
    }

    private void radialElement(WaveBasis basis, Axis r, int e) {
        int p = r.degree(e);
        double half = r.length(e) / 2;
        GaussLegendre rule = GaussLegendre.of(points(p, basis.k()[basis.size() - 1], r.length(e)), -1, 1);
        double[] v = new double[p + 1];
        double[] d = new double[p + 1];
        for (int i = 0; i < basis.size(); i++) {
            radial[i][e] = new double[p + 1];
            radialCurl[i][e] = new double[p + 1];
        }
        for (int q = 0; q < rule.size(); q++) {
            Shape.values(p, rule.node(q), v);
            Shape.derivatives(p, rule.node(q), d);
            double x = r.middle(e) + half * rule.node(q);
            double w = rule.weight(q) * half;
            for (int i = 0; i < basis.size(); i++) {
                double k = basis.k()[i];
                double j1 = Bessel.j1(k * x) * w * x;
                double j0 = Bessel.j0(k * x) * w * k;
                addRadial(radial[i][e], radialCurl[i][e], v, d, j1, j0, x, half);
            }
        }
    }

    /** The innermost loop by itself: compiled once and early, not again with each loop around it. */
    private static void addRadial(
            double[] value, double[] curl, double[] v, double[] d, double j1, double j0, double x, double half) {
        for (int a = 0; a < v.length; a++) {
            value[a] += j1 * v[a];
            curl[a] += j0 * (v[a] + x * d[a] / half);
        }
    }

    private void axialElement(WaveBasis basis, int direction, Axis z, int e) {
        int p = z.degree(e);
        double half = z.length(e) / 2;
        GaussLegendre rule = GaussLegendre.of(points(p, basis.k()[basis.size() - 1], z.length(e)), -1, 1);
        double[] v = new double[p + 1];
        double[] d = new double[p + 1];
        for (int i = 0; i < basis.size(); i++) {
            axial[i][e] = new double[p + 1];
            axialSlope[i][e] = new double[p + 1];
        }
        for (int q = 0; q < rule.size(); q++) {
            Shape.values(p, rule.node(q), v);
            Shape.derivatives(p, rule.node(q), d);
            double x = z.middle(e) + half * rule.node(q);
            double w = rule.weight(q) * half;
            for (int i = 0; i < basis.size(); i++) {
                double k = direction * basis.k()[i];
                double f = w * Math.exp(k * x);
                addAxial(axial[i][e], axialSlope[i][e], v, d, f, k, half);
            }
        }
    }

    private static void addAxial(
            double[] value, double[] slope, double[] v, double[] d, double f, double k, double half) {
        for (int a = 0; a < v.length; a++) {
            value[a] += f * v[a];
            slope[a] += f * k * d[a] / half;
        }
    }
}
