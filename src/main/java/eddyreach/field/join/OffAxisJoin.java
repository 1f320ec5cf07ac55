package eddyreach.field.join;

import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.orders.AzimuthalOrders;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import org.apache.commons.math3.complex.Complex;

/**
 * A switch at one frequency, ready to be joined with targets whose axis is parallel to its own and some way beside it.
 *
 * <p>About either axis the potential in the gap is a sum of azimuthal orders,
 *
 * <pre>psi = sum_m exp(jm phi) int [b_m exp(-kz) + a_m exp(kz)] J_m(kr) dk</pre>
 *
 * and by Graf's addition theorem (Abramowitz and Stegun 1964, 9.1.79) an offset d turns orders m about one axis into orders n about the
 * other, each wavenumber by itself: {@code b'_n = sum_m J_(m-n)(kd) b_m}, {@code a_m = sum_n J_(m-n)(kd) a'_n}. The plane through both
 * axes is one of symmetry, {@code b_-m = (-1)^m b_m}, so that orders from 0 up suffice; with factors sqrt 2 on all but order 0 the
 * shift stays a symmetric pair, G and its transpose:
 *
 * <pre>
 *   G_00 = J_0,   G_n0 = (-1)^n sqrt 2 J_n,   G_0m = sqrt 2 J_m,   G_nm = J_(m-n) + (-1)^n J_(m+n)   (n, m of 1 or more)
 *   b = s + S a,   a = E G^T T G E b,   E = exp(-kg)
 * </pre>
 *
 * with S and T block-diagonal over the orders. Only order 0 sees the coil. All orders are here in the convention of order 0
 * ({@link TargetField#at(int, double)}).
 *
 * <p>One instance holds scratch space and serves one thread.
 */
public final class OffAxisJoin {

    private final WaveBasis basis;
    private final double omega;
    private final double tolerance;
    private final double[][] link;
    private final AzimuthalOrders orders;
    private final double[][][] responses = new double[FieldAccuracy.HIGHEST_ORDER + 1][][];
    private final Join axial;

    OffAxisJoin(
            WaveBasis basis,
            double omega,
            double[][] response,
            double[][] link,
            AzimuthalOrders orders,
            double tolerance) {
        this.tolerance = tolerance;
        this.basis = basis;
        this.omega = omega;
        this.link = link;
        this.orders = orders;
        responses[0] = response;
        axial = new Join(basis, omega, response, link);
    }

    /**
     * A target at an offset; what depends on the offset alone is computed here.
     *
     * @param target the target
     * @param offset distance of the two axes, m, not negative
     * @throws SelfCheckException if a computation fails its own checks
     */
    public OffAxisResponse at(TargetField target, double offset) {
        return at(target, offset, 0);
    }

    /**
     * The same with no more azimuthal orders nearer to the face than a given distance needs: those that matter in contact alone are many.
     *
     * @param target the target
     * @param offset distance of the two axes, m, not negative
     * @param nearest distance from which on all orders that matter are taken in, m
     * @throws SelfCheckException if a computation fails its own checks
     */
    public OffAxisResponse at(TargetField target, double offset, double nearest) {
        if (!(offset >= 0) || Double.isInfinite(offset)) {
            throw new IllegalArgumentException("offset " + offset + " m, must be finite and not negative");
        }
        return new OffAxisResponse(this, target, offset, nearest);
    }

    /** Angular frequency, rad/s. */
    public double omega() {
        return omega;
    }

    public double tolerance() {
        return tolerance;
    }

    public WaveBasis basis() {
        return basis;
    }

    /** The join on the axis. */
    Join axial() {
        return axial;
    }

    /** Emitted waves with square roots of the weights. */
    public double[][] link() {
        return link;
    }

    /**
     * Response of the switch in an order, in the convention of order 0.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public double[][] response(int order) {
        if (responses[order] == null) {
            responses[order] = negated(orders.response(order, omega));
        }
        return responses[order];
    }

    static double[][] negated(double[][] m) {
        double[][] out = new double[2][m[0].length];
        for (int part = 0; part < 2; part++) {
            for (int i = 0; i < out[part].length; i++) {
                out[part][i] = -m[part][i];
            }
        }
        return out;
    }

    public Complex scaled(double re, double im) {
        return axial.scaled(re, im);
    }
}
