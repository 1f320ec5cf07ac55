package eddyreach.linalg;

/**
 * Solves small dense complex systems by LU with partial pivoting, in place and without allocation.
 *
 * <p>Columns are separate arrays, real and imaginary parts apart, as in {@link SmallSymmetric}.
 */
public final class SmallGeneral {

    private final int n;
    private final double[][] re;
    private final double[][] im;

    /** @param n order of the systems */
    public SmallGeneral(int n) {
        this.n = n;
        re = new double[n][n];
        im = new double[n][n];
    }

    /** Column j, real parts, to be filled. */
    public double[] columnRe(int j) {
        return re[j];
    }

    /** Column j, imaginary parts, to be filled. */
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
            exchange(k, pivot(k), xr, xi);
            eliminate(k);
            SmallSymmetric.rankOne(k + 1, n, xr, xi, re[k], im[k], xr[k], xi[k]);
        }
        for (int k = n - 1; k >= 0; k--) {
            double a = re[k][k];
            double b = im[k][k];
            double q = a * a + b * b;
            double x = xr[k];
            double y = xi[k];
            xr[k] = (x * a + y * b) / q;
            xi[k] = (y * a - x * b) / q;
            SmallSymmetric.rankOne(0, k, xr, xi, re[k], im[k], xr[k], xi[k]);
        }
    }

    private void eliminate(int k) {
        double[] kr = re[k];
        double[] ki = im[k];
        double a = kr[k];
        double b = ki[k];
        double q = a * a + b * b;
        if (!(q > 0)) {
            throw new SingularMatrixException("pivot " + k + " of " + n + " vanishes");
        }
        for (int i = k + 1; i < n; i++) {
            double x = kr[i];
            double y = ki[i];
            kr[i] = (x * a + y * b) / q;
            ki[i] = (y * a - x * b) / q;
        }
        for (int j = k + 1; j < n; j++) {
            SmallSymmetric.rankOne(k + 1, n, re[j], im[j], kr, ki, re[j][k], im[j][k]);
        }
    }

    private int pivot(int k) {
        int best = k;
        double size = -1;
        for (int i = k; i < n; i++) {
            double s = Math.abs(re[k][i]) + Math.abs(im[k][i]);
            if (s > size) {
                size = s;
                best = i;
            }
        }
        return best;
    }

    private void exchange(int k, int p, double[] xr, double[] xi) {
        if (p == k) {
            return;
        }
        for (int j = k; j < n; j++) {
            swap(re[j], k, p);
            swap(im[j], k, p);
        }
        swap(xr, k, p);
        swap(xi, k, p);
    }

    private static void swap(double[] x, int i, int j) {
        double t = x[i];
        x[i] = x[j];
        x[j] = t;
    }
}
