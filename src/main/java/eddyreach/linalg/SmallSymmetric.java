package eddyreach.linalg;

/**
 * Solves small dense complex symmetric systems by L D L^T without pivoting, in place and without allocation.
 *
 * <p>Meant for I - S with S small against I, where no pivoting is needed; {@link #solve} reports a vanishing pivot.
 */
public final class SmallSymmetric {

    private final int n;
    private final double[][] re;
    private final double[][] im;
    private final double[] wr;
    private final double[] wi;

    /** @param n order of the systems */
    public SmallSymmetric(int n) {
        this.n = n;
        re = new double[n][n];
        im = new double[n][n];
        wr = new double[n];
        wi = new double[n];
    }

    /** Column j of the lower triangle, real parts, to be filled from index j on. */
    public double[] columnRe(int j) {
        return re[j];
    }

    /** Column j of the lower triangle, imaginary parts, to be filled from index j on. */
    public double[] columnIm(int j) {
        return im[j];
    }

    /**
     * Factorises what the columns hold and solves; the columns are overwritten.
     *
     * @param xr real part of the right-hand side, overwritten by the solution
     * @param xi imaginary part
     * @throws SingularMatrixException if a pivot vanishes
     */
    public void solve(double[] xr, double[] xi) {
        for (int k = 0; k < n; k++) {
            double a = re[k][k];
            double b = im[k][k];
            double q = a * a + b * b;
            if (!(q > 0)) {
                throw new SingularMatrixException("pivot " + k + " of " + n + " vanishes");
            }
            double pr = a / q;
            double pi = -b / q;
            double[] kr = re[k];
            double[] ki = im[k];
            for (int i = k + 1; i < n; i++) {
                wr[i] = kr[i];
                wi[i] = ki[i];
                kr[i] = wr[i] * pr - wi[i] * pi;
                ki[i] = wr[i] * pi + wi[i] * pr;
            }
            for (int j = k + 1; j < n; j++) {
                rankOne(j, n, re[j], im[j], kr, ki, wr[j], wi[j]);
            }
            rankOne(k + 1, n, xr, xi, kr, ki, xr[k], xi[k]);
            double x = xr[k];
            double y = xi[k];
            xr[k] = x * pr - y * pi;
            xi[k] = x * pi + y * pr;
        }
        for (int k = n - 1; k >= 0; k--) {
            double sr = xr[k];
            double si = xi[k];
            for (int i = k + 1; i < n; i++) {
                sr -= re[k][i] * xr[i] - im[k][i] * xi[i];
                si -= re[k][i] * xi[i] + im[k][i] * xr[i];
            }
            xr[k] = sr;
            xi[k] = si;
        }
    }

    /** Subtracts w times the column l from the column c. */
    static void rankOne(int from, int to, double[] cr, double[] ci, double[] lr, double[] li, double wr, double wi) {
        for (int i = from; i < to; i++) {
            cr[i] = Math.fma(li[i], wi, Math.fma(-lr[i], wr, cr[i]));
            ci[i] = Math.fma(-li[i], wr, Math.fma(-lr[i], wi, ci[i]));
        }
    }
}
