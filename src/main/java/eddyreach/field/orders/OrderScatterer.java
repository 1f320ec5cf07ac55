package eddyreach.field.orders;

import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Media;
import eddyreach.field.axial.Residual;
import eddyreach.field.axial.SelfCheck;
import eddyreach.field.axial.WaveProducts;
import eddyreach.linalg.FrontalFactor;
import eddyreach.numerics.SelfCheckException;
import java.util.Arrays;

/**
 * Parts that scatter incoming potentials of one azimuthal order m of 1 or more at one frequency.
 *
 * <p>With u_i = J_m(k_i r) exp(dk_i z) the incoming potential and x_i the scattered field, K x_i = -dK u_i, the response is
 *
 * <pre>S_ij = -1/2 u_i^T dK (u_j + x_j)</pre>
 *
 * since K_air x = -dK (u + x) and 1/(4 pi |r - r'|) = sum_m exp(jm(phi - phi')) int J_m(kr) J_m(kr') exp(-k|z - z'|) dk / (4 pi).
 *
 * <p>With a lifted potential w = x + theta u ({@link OrderLayout#lifted}) the same form, which is stationary at x, reads
 *
 * <pre>S_ij = -1/2 (theta u_i^T K_air theta u_j - f_i^T K^-1 f_j),   K w = f = K theta u - dK u</pre>
 *
 * Either way the Schur complement on the loads is the second term.
 */
final class OrderScatterer {

    private final double[][] re;
    private final double[][] im;

    /**
     * Solves.
     *
     * @param layout the problem without its order and frequency
     * @param media what its parts are made of at this frequency
     * @param loads incoming waves of this order
     * @param order azimuthal order m
     * @param omega angular frequency, rad/s
     * @throws SelfCheckException if the solution would gain power, is not finite or (order 1) does not satisfy the equations
     */
    OrderScatterer(OrderLayout layout, Media media, OrderLoads loads, int order, double omega) {
        Layout base = layout.base;
        OrderLayout.Pattern pattern = layout.pattern(loads.count());
        OrderSystem system = new OrderSystem(layout, media, loads, order);
        boolean check = order == 1;
        FrontalFactor factor = new FrontalFactor(pattern.plan(), system, check);
        double[][][] direct = layout.lifted
                ? new double[][][] {loads.gradients(), new double[loads.count()][loads.count()]}
                : WaveProducts.scattering(loads.picked(base.basis), base.direction, order, base.parts, media);
        double[][] pickedRe = combined(direct[0], factor.schurRe());
        double[][] pickedIm = combined(direct[1], factor.schurIm());
        SelfCheck.passive(pickedRe, pickedIm, order, omega, layout.unknowns);
        re = loads.all(pickedRe);
        im = loads.all(pickedIm);
        if (check) {
            double[][] y = new double[2][loads.count()];
            Arrays.fill(y[0], 1);
            SelfCheck.residual(Residual.of(pattern.elements(), layout.unknowns, system, factor.extend(y)), omega);
        }
    }

    private static double[][] combined(double[][] direct, double[][] schur) {
        int n = direct.length;
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                out[i][j] = -0.5 * (direct[i][j] + schur[i][j]);
            }
        }
        return out;
    }

    /** Real part of the response in potentials, waves without weights. */
    double[][] re() {
        return re;
    }

    /** Imaginary part. */
    double[][] im() {
        return im;
    }
}
