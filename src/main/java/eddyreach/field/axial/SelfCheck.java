package eddyreach.field.axial;

import eddyreach.materials.Material;
import eddyreach.numerics.SelfCheckException;
import java.util.Locale;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;

/**
 * What every solved field problem must obey, checked each time at little cost: a wrong number is never silent.
 *
 * <ul>
 *   <li>Passivity: no combination of waves and coil current gains power. With S the response, s the emitted waves and R0 the loss
 *       without waves, the real symmetric matrix of the form
 *       {@code -2 c* Im(S) c - 4 Re(c* Im(s) I) + mu0 R0 |I|^2 / (2 pi w)}, which is the power lost in the parts, has no negative
 *       eigenvalue. Tested by a Cholesky factorisation of the scaled matrix with a small shift.
 *   <li>Residual: the field for all loads at once satisfies the equations, see {@link Scatterer}; of the azimuthal orders above 0,
 *       which share mesh and elimination, order 1 stands for all.
 *   <li>Finite: no entry is NaN or infinite.
 * </ul>
 */
public final class SelfCheck {

    private SelfCheck() {}

    /**
     * Checks that all is finite and that nothing gains power.
     *
     * @param s the solved problem
     * @throws SelfCheckException with what is wrong
     */
    public static void passive(Scatterer s) {
        boolean coil = s.impedance().getImaginary() != 0;
        int waves = s.responseIm().length;
        int n = waves + (coil ? 1 : 0);
        if (n == 0) {
            return;
        }
        DMatrixRMaj m = new DMatrixRMaj(n, n);
        for (int i = 0; i < waves; i++) {
            for (int j = 0; j < waves; j++) {
                finite(s.omega(), s.responseRe()[i][j], s.responseIm()[i][j]);
                m.set(i, j, -2 * s.responseIm()[i][j]);
            }
            if (coil) {
                finite(s.omega(), s.linkRe()[i], s.linkIm()[i]);
                m.set(i, waves, -2 * s.linkIm()[i]);
                m.set(waves, i, -2 * s.linkIm()[i]);
            }
        }
        if (coil) {
            finite(s.omega(), s.impedance().getReal(), s.impedance().getImaginary());
            m.set(waves, waves, Material.MU0 * s.impedance().getReal() / (2 * Math.PI * s.omega()));
        }
        double[] size = new double[n];
        for (int i = 0; i < n; i++) {
            size[i] = i < waves
                    ? 2 * Math.hypot(s.responseRe()[i][i], s.responseIm()[i][i])
                    : Material.MU0 * s.impedance().abs() / (2 * Math.PI * s.omega());
        }
        if (!positive(m, size)) {
            throw new SelfCheckException(gain("", s.omega(), s.unknowns()));
        }
    }

    /**
     * The same for the response of an azimuthal order of 1 or more in potentials, whose imaginary part has the other sign: the loss
     * is w mu0 pi times 2 c* Im(S) c.
     *
     * @param re real part of the response
     * @param im imaginary part
     * @param order azimuthal order
     * @param omega angular frequency, rad/s
     * @param unknowns number of unknowns of the field problem
     * @throws SelfCheckException with what is wrong
     */
    public static void passive(double[][] re, double[][] im, int order, double omega, int unknowns) {
        int n = re.length;
        DMatrixRMaj m = new DMatrixRMaj(n, n);
        double[] size = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                finite(omega, re[i][j], im[i][j]);
                m.set(i, j, 2 * im[i][j]);
            }
            size[i] = 2 * Math.hypot(re[i][i], im[i][i]);
        }
        if (!positive(m, size)) {
            throw new SelfCheckException(gain(" of azimuthal order " + order, omega, unknowns));
        }
    }

    /**
     * The equations must hold for all loads at once; an element's matrix is asked for again, so a wrong assembly shows too.
     *
     * @param residual largest residual relative to the terms it is the sum of
     * @param omega angular frequency, rad/s
     * @throws SelfCheckException if it is too large or no number
     */
    public static void residual(double residual, double omega) {
        if (!(residual <= FieldAccuracy.RESIDUAL)) {
            throw new SelfCheckException("the field equations are met only to " + residual + " of their terms at "
                    + omega / (2 * Math.PI) + " Hz: the factorisation has lost its accuracy");
        }
    }

    private static String gain(String what, double omega, int unknowns) {
        return String.format(
                Locale.ROOT,
                "the field solution%s at %.4g kHz would gain power (%d unknowns): the mesh does not resolve the problem",
                what,
                omega / (2e3 * Math.PI),
                unknowns);
    }

    private static void finite(double omega, double re, double im) {
        if (!Double.isFinite(re) || !Double.isFinite(im)) {
            throw new SelfCheckException(String.format(
                    Locale.ROOT, "the field solution at %.4g kHz is not finite", omega / (2e3 * Math.PI)));
        }
    }

    /** True when the matrix, scaled by the size of the response in each wave, has no eigenvalue below minus the tolerance. */
    private static boolean positive(DMatrixRMaj m, double[] size) {
        int n = m.numRows;
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            scale[i] = size[i] > FieldAccuracy.UNDERFLOW ? 1 / Math.sqrt(size[i]) : 0;
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                m.set(i, j, m.get(i, j) * scale[i] * scale[j]);
            }
            m.add(i, i, FieldAccuracy.PASSIVITY);
        }
        return DecompositionFactory_DDRM.chol(n, true).decompose(m);
    }
}
