package eddyreach.linalg;

import eddyreach.numerics.SelfCheckException;
import java.util.Arrays;

/**
 * Solves complex systems given as a product with vectors by the method of generalised minimal residuals (Saad and Schultz, SIAM J.
 * Sci. Stat. Comput. 7 (1986) 856), without restart: for operators close to the identity, which need few steps.
 */
public final class Gmres {

    private final int n;
    private final double[][] basisRe;
    private final double[][] basisIm;

    /** The triangle that the rotations make of the Hessenberg matrix, {@code [column][row]}. */
    private final double[][] hRe;

    private final double[][] hIm;
    private final double[] cos;
    private final double[] sinRe;
    private final double[] sinIm;
    private final double[] gRe;
    private final double[] gIm;

    /** y = A x. */
    public interface Operator {

        /** Writes the product of the matrix and x into y. */
        void apply(double[] xRe, double[] xIm, double[] yRe, double[] yIm);
    }

    /**
     * @param n number of unknowns
     * @param steps most steps to take
     */
    public Gmres(int n, int steps) {
        this.n = n;
        // filled as steps are taken: most systems need few
        basisRe = new double[steps + 1][];
        basisIm = new double[steps + 1][];
        hRe = new double[steps][];
        hIm = new double[steps][];
        cos = new double[steps];
        sinRe = new double[steps];
        sinIm = new double[steps];
        gRe = new double[steps + 1];
        gIm = new double[steps + 1];
    }

    /**
     * Solves A x = b.
     *
     * @param a the operator
     * @param bRe right-hand side, real part
     * @param bIm imaginary part
     * @param xRe a first guess, overwritten by the solution
     * @param xIm its imaginary part
     * @param tolerance largest residual, relative to the right-hand side
     * @return number of steps
     * @throws SelfCheckException if the steps do not suffice
     */
    public int solve(Operator a, double[] bRe, double[] bIm, double[] xRe, double[] xIm, double tolerance) {
        double goal = tolerance * norm(bRe, bIm);
        basisRe[0] = new double[n];
        basisIm[0] = new double[n];
        a.apply(xRe, xIm, basisRe[0], basisIm[0]);
        for (int i = 0; i < n; i++) {
            basisRe[0][i] = bRe[i] - basisRe[0][i];
            basisIm[0][i] = bIm[i] - basisIm[0][i];
        }
        double size = norm(basisRe[0], basisIm[0]);
        Arrays.fill(gRe, 0);
        Arrays.fill(gIm, 0);
        gRe[0] = size;
        int k = 0;
        while (!(size <= goal)) {
            if (k == cos.length || !Double.isFinite(size)) {
                throw new SelfCheckException("no solution in " + k + " steps: residual " + size + " of " + goal);
            }
            scale(basisRe[k], basisIm[k], 1 / norm(basisRe[k], basisIm[k]));
            basisRe[k + 1] = new double[n];
            basisIm[k + 1] = new double[n];
            hRe[k] = new double[k + 2];
            hIm[k] = new double[k + 2];
            a.apply(basisRe[k], basisIm[k], basisRe[k + 1], basisIm[k + 1]);
            orthogonalise(k);
            size = rotate(k);
            k++;
        }
        combine(k, xRe, xIm);
        return k;
    }

    private void orthogonalise(int k) {
        double[] wr = basisRe[k + 1];
        double[] wi = basisIm[k + 1];
        for (int j = 0; j <= k; j++) {
            double[] vr = basisRe[j];
            double[] vi = basisIm[j];
            double re = 0;
            double im = 0;
            for (int i = 0; i < n; i++) {
                re += vr[i] * wr[i] + vi[i] * wi[i];
                im += vr[i] * wi[i] - vi[i] * wr[i];
            }
            hRe[k][j] = re;
            hIm[k][j] = im;
            for (int i = 0; i < n; i++) {
                wr[i] -= re * vr[i] - im * vi[i];
                wi[i] -= re * vi[i] + im * vr[i];
            }
        }
        hRe[k][k + 1] = norm(wr, wi);
        hIm[k][k + 1] = 0;
    }

    /** Brings column k to triangular form by Givens rotations; returns the residual. */
    private double rotate(int k) {
        double[] r = hRe[k];
        double[] m = hIm[k];
        for (int j = 0; j < k; j++) {
            turn(j, r, m);
        }
        double size = Math.hypot(r[k], m[k]);
        double all = Math.hypot(size, r[k + 1]);
        if (size == 0) {
            cos[k] = 0;
            sinRe[k] = 1;
            sinIm[k] = 0;
        } else {
            cos[k] = size / all;
            sinRe[k] = r[k] / size * r[k + 1] / all;
            sinIm[k] = m[k] / size * r[k + 1] / all;
        }
        turn(k, r, m);
        turn(k, gRe, gIm);
        return Math.hypot(gRe[k + 1], gIm[k + 1]);
    }

    /** Rotation j: the rows j and j + 1 become c x + s y and c y - s* x. */
    private void turn(int j, double[] r, double[] m) {
        double xr = r[j];
        double xi = m[j];
        double yr = r[j + 1];
        double yi = m[j + 1];
        r[j] = cos[j] * xr + sinRe[j] * yr - sinIm[j] * yi;
        m[j] = cos[j] * xi + sinRe[j] * yi + sinIm[j] * yr;
        r[j + 1] = cos[j] * yr - sinRe[j] * xr - sinIm[j] * xi;
        m[j + 1] = cos[j] * yi - sinRe[j] * xi + sinIm[j] * xr;
    }

    private void combine(int k, double[] xRe, double[] xIm) {
        for (int j = k - 1; j >= 0; j--) {
            double re = gRe[j];
            double im = gIm[j];
            double q = hRe[j][j] * hRe[j][j] + hIm[j][j] * hIm[j][j];
            double yr = (re * hRe[j][j] + im * hIm[j][j]) / q;
            double yi = (im * hRe[j][j] - re * hIm[j][j]) / q;
            for (int i = 0; i < j; i++) {
                gRe[i] -= hRe[j][i] * yr - hIm[j][i] * yi;
                gIm[i] -= hRe[j][i] * yi + hIm[j][i] * yr;
            }
            for (int i = 0; i < n; i++) {
                xRe[i] += basisRe[j][i] * yr - basisIm[j][i] * yi;
                xIm[i] += basisRe[j][i] * yi + basisIm[j][i] * yr;
            }
        }
    }

    private static void scale(double[] re, double[] im, double f) {
        for (int i = 0; i < re.length; i++) {
            re[i] *= f;
            im[i] *= f;
        }
    }

    private double norm(double[] re, double[] im) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += re[i] * re[i] + im[i] * im[i];
        }
        return Math.sqrt(sum);
    }
}
