package eddyreach.field.orders;

import eddyreach.fem.MixedForms.Kind;
import eddyreach.fem.Shape;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.axial.WaveTables;
import eddyreach.mesh.Axis;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;

/**
 * One-dimensional integrals of the incoming potentials u = J_m(kr) exp(dkz) of one order, times the taper of {@link OrderLayout},
 * against the functions of each element; v shape functions, l Legendre polynomials. One axis at a time: R(r) stands for the taper
 * times J_m(kr), Z(z) for the taper times exp(dkz).
 *
 * <p>Arrays are indexed {@code [wave][element][function]}; elements without loads hold null.
 */
final class OrderWaves {

    /** int R v r dr, or int Z v dz. */
    final double[][][] value;

    /** int (R' v' + m^2/r^2 R v) r dr, or int Z' v' dz. */
    final double[][][] slope;

    /**
     * The same with the flux R' v r or Z' v out of the box of a lifted potential through its faces, in the elements beside them: inside the
     * potential has no sources, so that this flux is all that its gradient makes there of a test function.
     */
    final double[][][] outflow;

    /** int R v r^2 dr; null along z. */
    final double[][][] square;

    /** int R' l r^2 dr, or int Z' l dz. */
    final double[][][] inner;

    /** Products of the waves themselves: int R R r dr, or int Z Z dz; {@code [wave][wave]}. */
    final double[][] products;

    /** int (R' R' + m^2/r^2 R R) r dr, or int Z' Z' dz. */
    final double[][] slopeProducts;

    private final double[] k;

    private OrderWaves(double[] k, Axis axis, boolean radial) {
        this.k = k;
        int n = k.length;
        value = new double[n][axis.elements()][];
        slope = new double[n][axis.elements()][];
        outflow = new double[n][axis.elements()][];
        square = radial ? new double[n][axis.elements()][] : null;
        inner = new double[n][axis.elements()][];
        products = new double[n][n];
        slopeProducts = new double[n][n];
    }

    /** The radial integrals of order m, 1 or more, on the elements in use. */
    static OrderWaves radial(WaveBasis basis, int m, Axis r, Taper taper, boolean[] use) {
        OrderWaves t = new OrderWaves(basis.k(), r, true);
        double[] bessel = new double[m + 2];
        Wave wave = (k, x, out) -> {
            Bessel.orders(m + 1, k * x, bessel);
            out[0] = bessel[m];
            out[1] = k * (bessel[m - 1] - bessel[m + 1]) / 2;
        };
        for (int e = 0; e < use.length; e++) {
            if (use[e]) {
                t.element(r, e, m, taper, wave);
                t.faces(r, e, taper, wave);
            }
        }
        return t;
    }

    /** The axial integrals, which are the same for all orders. */
    static OrderWaves axial(WaveBasis basis, int direction, Axis z, Taper taper, boolean[] use) {
        OrderWaves t = new OrderWaves(basis.k(), z, false);
        Wave wave = (k, x, out) -> {
            out[0] = Math.exp(direction * k * x);
            out[1] = direction * k * out[0];
        };
        for (int e = 0; e < use.length; e++) {
            if (use[e]) {
                t.element(z, e, 0, taper, wave);
                t.faces(z, e, taper, wave);
            }
        }
        return t;
    }

    /** Value and derivative of a wave of wavenumber k at x. */
    private interface Wave {
        void at(double k, double x, double[] out);
    }

    /** Beside the lower face of the box the upper vertex function is 1 on it, beside the upper face the lower one. */
    private void faces(Axis axis, int e, Taper taper, Wave wave) {
        boolean outside = !taper.full(axis.middle(e));
        boolean below = outside && e + 1 < axis.elements() && taper.full(axis.middle(e + 1));
        boolean above = outside && e > 0 && taper.full(axis.middle(e - 1));
        double face = axis.end(below ? e + 1 : e);
        double[] both = new double[2];
        for (int i = 0; i < k.length; i++) {
            outflow[i][e] = slope[i][e];
            if (below || above) {
                wave.at(k[i], face, both);
                outflow[i][e] = slope[i][e].clone();
                outflow[i][e][below ? 1 : 0] += (below ? -1 : 1) * both[1] * (square != null ? face : 1);
            }
        }
    }

    private void element(Axis axis, int e, int m, Taper taper, Wave wave) {
        boolean radial = square != null;
        int p = axis.degree(e);
        double half = axis.length(e) / 2;
        // a wave grows like r^m up to r = m/k: the more points, the more the radius changes over the element
        int more = m == 0 ? 0 : (int) Math.ceil(m / 2.0 * axis.length(e) / (axis.end(e) + axis.end(e + 1)));
        GaussLegendre rule = GaussLegendre.of(WaveTables.points(p, k[k.length - 1], axis.length(e)) + more, -1, 1);
        double[] v = new double[p + 1];
        double[] d = new double[p + 1];
        double[] l = new double[p + 1];
        double[] both = new double[2];
        double[] u = new double[k.length];
        double[] du = new double[k.length];
        for (int i = 0; i < k.length; i++) {
            value[i][e] = new double[p + 1];
            slope[i][e] = new double[p + 1];
            inner[i][e] = new double[p];
            if (radial) {
                square[i][e] = new double[p + 1];
            }
        }
        for (int q = 0; q < rule.size(); q++) {
            double x = axis.middle(e) + half * rule.node(q);
            double w = rule.weight(q) * half * (radial ? x : 1);
            double over = radial ? m * m / (x * x) : 0;
            Shape.values(p, rule.node(q), v);
            Shape.derivatives(p, rule.node(q), d);
            Kind.INNER.at(p, rule.node(q), x, half, l, l);
            for (int i = 0; i < k.length; i++) {
                wave.at(k[i], x, both);
                u[i] = both[0] * taper.value(x);
                du[i] = both[1] * taper.value(x) + both[0] * taper.slope(x);
                for (int a = 0; a <= p; a++) {
                    value[i][e][a] += w * u[i] * v[a];
                    slope[i][e][a] += w * (du[i] * d[a] / half + over * u[i] * v[a]);
                    if (radial) {
                        square[i][e][a] += w * x * u[i] * v[a];
                    }
                }
                for (int a = 0; a < p; a++) {
                    inner[i][e][a] += w * (radial ? x : 1) * du[i] * l[a];
                }
                for (int j = 0; j <= i; j++) {
                    products[i][j] += w * u[i] * u[j];
                    slopeProducts[i][j] += w * (du[i] * du[j] + over * u[i] * u[j]);
                }
            }
        }
        for (int i = 0; i < k.length; i++) {
            for (int j = 0; j < i; j++) {
                products[j][i] = products[i][j];
                slopeProducts[j][i] = slopeProducts[i][j];
            }
        }
    }
}
