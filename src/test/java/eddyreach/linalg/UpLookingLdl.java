package eddyreach.linalg;

import org.apache.commons.math3.complex.Complex;

/**
 * K = L D L^T of a dense complex symmetric matrix, row by row in plain words: the readable version against which the fast one is
 * held (up-looking: Davis, Direct Methods for Sparse Linear Systems, 2006, section 4.7, without the conjugates).
 */
final class UpLookingLdl {

    private final int m;
    private final Complex[][] l;
    private final Complex[] d;

    /**
     * @param k the matrix; only its lower triangle is read
     * @param m number of leading unknowns to eliminate
     */
    UpLookingLdl(Complex[][] k, int m) {
        this.m = m;
        int n = k.length;
        l = new Complex[n][];
        d = new Complex[m];
        for (int i = 0; i < n; i++) {
            l[i] = new Complex[Math.min(i, m)];
            for (int j = 0; j < l[i].length; j++) {
                l[i][j] = remainder(k, i, j, j).divide(d[j]);
            }
            if (i < m) {
                d[i] = remainder(k, i, i, i);
            }
        }
    }

    private Complex remainder(Complex[][] k, int i, int j, int columns) {
        Complex sum = k[i][j];
        for (int c = 0; c < columns; c++) {
            sum = sum.subtract(l[i][c].multiply(d[c]).multiply(l[j][c]));
        }
        return sum;
    }

    /** Schur complement on the unknowns from m on. */
    Complex[][] schur(Complex[][] k) {
        int rest = k.length - m;
        Complex[][] s = new Complex[rest][rest];
        for (int i = 0; i < rest; i++) {
            for (int j = 0; j <= i; j++) {
                s[i][j] = remainder(k, m + i, m + j, m);
                s[j][i] = s[i][j];
            }
        }
        return s;
    }

    /** Values of the first m unknowns for given values y of the others, so that the first m equations hold with zero load. */
    Complex[] extend(Complex[] y) {
        Complex[] x = new Complex[m];
        for (int j = m - 1; j >= 0; j--) {
            Complex sum = Complex.ZERO;
            for (int i = j + 1; i < l.length; i++) {
                sum = sum.subtract(l[i][j].multiply(i < m ? x[i] : y[i - m]));
            }
            x[j] = sum;
        }
        return x;
    }
}
