package eddyreach.linalg;

import java.util.Arrays;

/**
 * A dense complex symmetric matrix of which the first columns are eliminated, K = L D L^T, without pivoting.
 *
 * <p>No pivoting is needed for the matrices met here: real and imaginary part are positive semidefinite and one of them
 * definite, for which the growth of the elements is below 3 (Higham, Math. Comp. 67 (1998) 1591). A vanishing or
 * non-finite pivot is an error all the same.
 *
 * <p>Columns are separate arrays, real and imaginary parts apart, and the inner loop runs over the same index in five of
 * them: the just-in-time compiler turns exactly this form into vector instructions (with nine arrays in one loop it gives up, at a third of
 * the speed). The fused multiply-add doubles the rate.
 */
final class Front {

    /** Columns eliminated before the rest is updated: keeps them in the cache. */
    private static final int PANEL = 24;

    /** Order of the matrix at hand, at most the capacity. */
    private int n;

    /** Real parts: column j holds its rows n - 1 down to j, so that one index means the same row in all columns. */
    final double[][] re;

    /** Imaginary parts in the same order. */
    final double[][] im;

    /** @param capacity largest order: one front serves many matrices in turn, which spares the memory's keeper much work */
    Front(int capacity) {
        re = new double[capacity][];
        im = new double[capacity][];
        for (int j = 0; j < capacity; j++) {
            re[j] = new double[capacity - j];
            im[j] = new double[capacity - j];
        }
    }

    /** Starts a matrix of order n, all zeros. */
    void clear(int order) {
        n = order;
        for (int j = 0; j < n; j++) {
            Arrays.fill(re[j], 0, n - j, 0);
            Arrays.fill(im[j], 0, n - j, 0);
        }
    }

    /** Copies columns from one up to another (excluded) one after the other into arrays, starting at an index. */
    void copyColumns(int from, int to, double[] toRe, double[] toIm, int start) {
        int at = start;
        for (int j = from; j < to; j++) {
            System.arraycopy(re[j], 0, toRe, at, n - j);
            System.arraycopy(im[j], 0, toIm, at, n - j);
            at += n - j;
        }
    }

    /** Place of row i within any column. */
    int at(int row) {
        return n - 1 - row;
    }

    /**
     * Eliminates the first m columns. Afterwards column j below m holds L below its diagonal; the trailing block holds the Schur
     * complement.
     */
    void eliminate(int m) {
        double[] pivotRe = new double[m];
        double[] pivotIm = new double[m];
        for (int p0 = 0; p0 < m; p0 += PANEL) {
            int p1 = Math.min(m, p0 + PANEL);
            for (int j = p0; j < p1; j++) {
                update(j, p0, j, pivotRe, pivotIm);
                pivotRe[j] = re[j][at(j)];
                pivotIm[j] = im[j][at(j)];
                scale(j);
            }
            for (int j = p1; j < n; j++) {
                update(j, p0, p1, pivotRe, pivotIm);
            }
        }
    }

    /** Divides column j by its pivot. */
    private void scale(int j) {
        double[] cr = re[j];
        double[] ci = im[j];
        double a = cr[at(j)];
        double b = ci[at(j)];
        double q = a * a + b * b;
        if (!(q > 0) || Double.isInfinite(q)) {
            throw new SingularMatrixException(
                    "pivot " + a + " + " + b + "j in column " + j + " of a front of order " + n);
        }
        double pr = a / q;
        double pi = -b / q;
        for (int i = 0; i < at(j); i++) {
            double x = cr[i];
            double y = ci[i];
            cr[i] = x * pr - y * pi;
            ci[i] = x * pi + y * pr;
        }
    }

    /** Subtracts from column j the contributions L_k D_k L_jk of the eliminated columns k0 to k1, two at a time. */
    private void update(int j, int k0, int k1, double[] pivotRe, double[] pivotIm) {
        double[] cr = re[j];
        double[] ci = im[j];
        int row = at(j);
        int k = k0;
        for (; k + 2 <= k1; k += 2) {
            double[] ar = re[k];
            double[] ai = im[k];
            double[] br = re[k + 1];
            double[] bi = im[k + 1];
            double vr = ai[row] * pivotIm[k] - ar[row] * pivotRe[k];
            double vi = -ar[row] * pivotIm[k] - ai[row] * pivotRe[k];
            double wr = bi[row] * pivotIm[k + 1] - br[row] * pivotRe[k + 1];
            double wi = -br[row] * pivotIm[k + 1] - bi[row] * pivotRe[k + 1];
            add(row + 1, cr, ar, vr, ai, -vi, br, wr, bi, -wi);
            add(row + 1, ci, ar, vi, ai, vr, br, wi, bi, wr);
        }
        if (k < k1) {
            double[] ar = re[k];
            double[] ai = im[k];
            double vr = ai[row] * pivotIm[k] - ar[row] * pivotRe[k];
            double vi = -ar[row] * pivotIm[k] - ai[row] * pivotRe[k];
            add(row + 1, cr, ar, vr, ai, -vi);
            add(row + 1, ci, ar, vi, ai, vr);
        }
    }

    private static void add(
            int count,
            double[] c,
            double[] a,
            double p,
            double[] b,
            double q,
            double[] d,
            double r,
            double[] e,
            double s) {
        for (int i = 0; i < count; i++) {
            c[i] = Math.fma(e[i], s, Math.fma(d[i], r, Math.fma(b[i], q, Math.fma(a[i], p, c[i]))));
        }
    }

    private static void add(int count, double[] c, double[] a, double p, double[] b, double q) {
        for (int i = 0; i < count; i++) {
            c[i] = Math.fma(b[i], q, Math.fma(a[i], p, c[i]));
        }
    }
}
