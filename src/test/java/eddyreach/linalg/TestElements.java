package eddyreach.linalg;

import java.util.Random;
import org.apache.commons.math3.complex.Complex;

/** Small symmetric matrices kept in memory, with the plain operations of the matrix that they add up to. */
public final class TestElements implements ElementMatrices {

    private final int unknowns;
    private final int[][] elements;
    private final double[][] re;
    private final double[][] im;

    /** Elements of zeros. */
    public TestElements(int unknowns, int[][] elements) {
        this.unknowns = unknowns;
        this.elements = elements;
        re = new double[elements.length][];
        im = new double[elements.length][];
        for (int e = 0; e < elements.length; e++) {
            int n = elements[e].length;
            re[e] = new double[n * (n + 1) / 2];
            im[e] = new double[n * (n + 1) / 2];
        }
    }

    /** Adds to each element a random matrix: real part positive definite times a, imaginary part of rank one times b. */
    public TestElements randomise(Random random, double[] a, double[] b) {
        for (int e = 0; e < elements.length; e++) {
            int n = elements[e].length;
            double[][] g = gaussian(random, n, n);
            double[][] h = gaussian(random, n, 1);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++) {
                    double real = i == j ? 0.1 : 0;
                    for (int k = 0; k < n; k++) {
                        real += g[i][k] * g[j][k] / n;
                    }
                    set(e, i, j, a[e] * real, b[e] * h[i][0] * h[j][0]);
                }
            }
        }
        return this;
    }

    private static double[][] gaussian(Random random, int rows, int columns) {
        double[][] g = new double[rows][columns];
        for (double[] row : g) {
            for (int j = 0; j < columns; j++) {
                row[j] = random.nextGaussian();
            }
        }
        return g;
    }

    /** Sets entry (i, j) of an element, in local numbers, j not above i. */
    public void set(int e, int i, int j, double real, double imaginary) {
        re[e][i * (i + 1) / 2 + j] = real;
        im[e][i * (i + 1) / 2 + j] = imaginary;
    }

    public int[][] lists() {
        return elements;
    }

    @Override
    public void fill(int element, double[] r, double[] i) {
        System.arraycopy(re[element], 0, r, 0, re[element].length);
        System.arraycopy(im[element], 0, i, 0, im[element].length);
    }

    /** Receives the entries of the sum, in no order, one place possibly more than once. */
    interface Entries {
        void add(int row, int column, double re, double im);
    }

    void forEach(Entries out) {
        for (int e = 0; e < elements.length; e++) {
            int at = 0;
            for (int i = 0; i < elements[e].length; i++) {
                for (int j = 0; j <= i; j++, at++) {
                    out.add(elements[e][i], elements[e][j], re[e][at], im[e][at]);
                    if (i != j) {
                        out.add(elements[e][j], elements[e][i], re[e][at], im[e][at]);
                    }
                }
            }
        }
    }

    Complex[][] dense() {
        Complex[][] k = new Complex[unknowns][unknowns];
        for (Complex[] row : k) {
            java.util.Arrays.fill(row, Complex.ZERO);
        }
        forEach((i, j, a, b) -> k[i][j] = k[i][j].add(new Complex(a, b)));
        return k;
    }

    /**
     * Normwise backward error of the first rows of K x = 0: largest residual over the largest row sum of |K| |x|.
     *
     * @param xr real part of x
     * @param xi imaginary part of x
     * @param rows number of leading equations that should hold
     */
    double backwardError(double[] xr, double[] xi, int rows) {
        double[] r = new double[unknowns];
        double[] s = new double[unknowns];
        double[] sum = new double[unknowns];
        double largest = 0;
        forEach((i, j, a, b) -> {
            r[i] += a * xr[j] - b * xi[j];
            s[i] += a * xi[j] + b * xr[j];
            sum[i] += Math.hypot(a, b);
        });
        double norm = 0;
        for (int i = 0; i < unknowns; i++) {
            norm = Math.max(norm, Math.hypot(xr[i], xi[i]));
        }
        double scale = 0;
        for (int i = 0; i < rows; i++) {
            largest = Math.max(largest, Math.hypot(r[i], s[i]));
            scale = Math.max(scale, sum[i] * norm);
        }
        return largest / scale;
    }

    /** Componentwise backward error (Oettli and Prager 1964): the largest residual over (|K| |x|) of the same row. */
    double componentwiseError(double[] xr, double[] xi, int rows) {
        double[] r = new double[unknowns];
        double[] s = new double[unknowns];
        double[] scale = new double[unknowns];
        forEach((i, j, a, b) -> {
            r[i] += a * xr[j] - b * xi[j];
            s[i] += a * xi[j] + b * xr[j];
            scale[i] += Math.hypot(a, b) * Math.hypot(xr[j], xi[j]);
        });
        double worst = 0;
        for (int i = 0; i < rows; i++) {
            worst = Math.max(worst, Math.hypot(r[i], s[i]) / scale[i]);
        }
        return worst;
    }
}
