package eddyreach.field.axial;

import eddyreach.numerics.GaussLegendre;

/**
 * The wavenumbers through which switch and target see each other across the gap: quadrature nodes of
 *
 * <pre>A(r, z) = int [b(k) exp(-kz) + a(k) exp(kz)] J1(kr) dk</pre>
 *
 * <p>Gauss-Legendre in t with k = kmax t^1.5, which crowds the nodes where the spectrum of a coil of that size lives.
 *
 * @param k nodes, 1/m, ascending
 * @param w weights, 1/m
 */
public record WaveBasis(double[] k, double[] w) {

    /**
     * @param count number of nodes
     * @param kmax upper end, 1/m: waves above it must have died out over the gap
     */
    public static WaveBasis of(int count, double kmax) {
        GaussLegendre rule = GaussLegendre.of(count, -1, 1);
        double[] k = new double[count];
        double[] w = new double[count];
        for (int i = 0; i < count; i++) {
            double t = (1 + rule.node(i)) / 2;
            k[i] = kmax * t * Math.sqrt(t);
            w[i] = kmax * 1.5 * Math.sqrt(t) * rule.weight(i) / 2;
        }
        return new WaveBasis(k, w);
    }

    /** Number of nodes. */
    public int size() {
        return k.length;
    }
}
