package eddyreach.linalg;

/**
 * A dense complex symmetric matrix of which the first columns are eliminated, K = L D L^T, without pivoting.
 *
 * <p>No pivoting is needed for the matrices met here: real and imaginary part are positive semidefinite and one of them
 * definite, for which the growth of the elements is below 3 (Higham, Math. Comp. 67 (1998) 1591). A vanishing or
 * non-finite pivot is an error all the same.
 *
 * <p>Columns are separate arrays, real and imaginary parts apart, and inner loops run over the same index in all of them:
 * the just-in-time compiler turns exactly this form into vector instructions. The fused multiply-add doubles their rate.
 */
final class Front {

    private static final int PANEL = 24;

    final int n;
    final double[][] re;
    final double[][] im;

    Front(int n) {
        this.n = n;
        re = new double[n][n];
        im = new double[n][n];
    }

    /**
     * Eliminates the first m columns. Afterwards column j below m holds L below its diagonal and the pivot's inverse on it; the
     * trailing block holds the Schur complement.
     */
    void eliminate(int m) {
        double[] wr = new double[PANEL];
        double[] wi = new double[PANEL];
        for (int p0 = 0; p0 < m; p0 += PANEL) {
            int p1 = Math.min(m, p0 + PANEL);
            for (int j = p0; j < p1; j++) {
                update(j, p0, j, wr, wi);
                scale(j);
            }
            for (int j = p1; j < n; j++) {
                update(j, p0, p1, wr, wi);
            }
        }
    }

    /** Divides column j by its pivot; keeps the pivot's inverse on the diagonal. */
    private void scale(int j) {
        double[] cr = re[j];
        double[] ci = im[j];
        double a = cr[j];
        double b = ci[j];
        double q = a * a + b * b;
        if (!(q > 0) || Double.isInfinite(q)) {
            throw new SingularMatrixException(
                    "pivot " + a + " + " + b + "j in column " + j + " of a front of order " + n);
        }
        double pr = a / q;
        double pi = -b / q;
        for (int i = j + 1; i < n; i++) {
            double x = cr[i];
            double y = ci[i];
            cr[i] = x * pr - y * pi;
            ci[i] = x * pi + y * pr;
        }
        cr[j] = pr;
        ci[j] = pi;
    }

    /** Subtracts from column j the contributions of the eliminated columns k0 to k1. */
    private void update(int j, int k0, int k1, double[] wr, double[] wi) {
        for (int k = k0; k < k1; k++) {
            // D_k L_jk = L_jk / (1 / D_k)
            double pr = re[k][k];
            double pi = im[k][k];
            double q = pr * pr + pi * pi;
            double lr = re[k][j];
            double li = im[k][j];
            wr[k - k0] = (lr * pr + li * pi) / q;
            wi[k - k0] = (li * pr - lr * pi) / q;
        }
        int k = k0;
        for (; k + 4 <= k1; k += 4) {
            four(
                    j,
                    n,
                    re[j],
                    im[j],
                    re[k],
                    im[k],
                    re[k + 1],
                    im[k + 1],
                    re[k + 2],
                    im[k + 2],
                    re[k + 3],
                    im[k + 3],
                    wr[k - k0],
                    wi[k - k0],
                    wr[k + 1 - k0],
                    wi[k + 1 - k0],
                    wr[k + 2 - k0],
                    wi[k + 2 - k0],
                    wr[k + 3 - k0],
                    wi[k + 3 - k0]);
        }
        for (; k < k1; k++) {
            one(j, n, re[j], im[j], re[k], im[k], wr[k - k0], wi[k - k0]);
        }
    }

    private static void four(
            int from,
            int to,
            double[] cr,
            double[] ci,
            double[] ar,
            double[] ai,
            double[] br,
            double[] bi,
            double[] dr,
            double[] di,
            double[] er,
            double[] ei,
            double awr,
            double awi,
            double bwr,
            double bwi,
            double dwr,
            double dwi,
            double ewr,
            double ewi) {
        for (int i = from; i < to; i++) {
            double x = cr[i];
            double y = ci[i];
            x = Math.fma(-ar[i], awr, x);
            y = Math.fma(-ar[i], awi, y);
            x = Math.fma(ai[i], awi, x);
            y = Math.fma(-ai[i], awr, y);
            x = Math.fma(-br[i], bwr, x);
            y = Math.fma(-br[i], bwi, y);
            x = Math.fma(bi[i], bwi, x);
            y = Math.fma(-bi[i], bwr, y);
            x = Math.fma(-dr[i], dwr, x);
            y = Math.fma(-dr[i], dwi, y);
            x = Math.fma(di[i], dwi, x);
            y = Math.fma(-di[i], dwr, y);
            x = Math.fma(-er[i], ewr, x);
            y = Math.fma(-er[i], ewi, y);
            x = Math.fma(ei[i], ewi, x);
            y = Math.fma(-ei[i], ewr, y);
            cr[i] = x;
            ci[i] = y;
        }
    }

    private static void one(
            int from, int to, double[] cr, double[] ci, double[] ar, double[] ai, double wr, double wi) {
        for (int i = from; i < to; i++) {
            cr[i] = Math.fma(ai[i], wi, Math.fma(-ar[i], wr, cr[i]));
            ci[i] = Math.fma(-ai[i], wr, Math.fma(-ar[i], wi, ci[i]));
        }
    }
}
