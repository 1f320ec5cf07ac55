package eddyreach.field.axial;

import eddyreach.linalg.ElementMatrices;
import java.util.Arrays;

/** How well a field satisfies the discrete equations. */
public final class Residual {

    private Residual() {}

    /**
     * Largest residual over the unknowns of the mesh, relative to the largest sum of the magnitudes of its terms.
     *
     * @param elements unknowns of each element, the kept ones last
     * @param unknowns number of unknowns without the kept ones
     * @param system the matrices of the elements
     * @param x real and imaginary part of the unknowns, the kept ones included
     */
    public static double of(int[][] elements, int unknowns, ElementMatrices system, double[][] x) {
        double[] re = new double[unknowns];
        double[] im = new double[unknowns];
        double[] size = new double[unknowns];
        int longest = 0;
        for (int[] u : elements) {
            longest = Math.max(longest, u.length);
        }
        double[] kr = new double[longest * (longest + 1) / 2];
        double[] ki = new double[kr.length];
        for (int e = 0; e < elements.length; e++) {
            int[] u = elements[e];
            system.fill(e, kr, ki);
            for (int i = 0; i < u.length; i++) {
                addRow(u, i, kr, ki, x, re, im, size);
            }
        }
        double worst = 0;
        for (int i = 0; i < unknowns; i++) {
            worst = Math.max(worst, Math.hypot(re[i], im[i]));
        }
        return worst == 0 ? 0 : worst / Arrays.stream(size).max().orElse(1);
    }

    /** What row i of an element's matrix adds by itself and, the matrix being symmetric, as a column. */
    private static void addRow(
            int[] u, int i, double[] kr, double[] ki, double[][] x, double[] re, double[] im, double[] size) {
        int at = i * (i + 1) / 2;
        for (int j = 0; j < i; j++, at++) {
            add(u[i], u[j], kr[at], ki[at], x, re, im, size);
            add(u[j], u[i], kr[at], ki[at], x, re, im, size);
        }
        add(u[i], u[i], kr[at], ki[at], x, re, im, size);
    }

    private static void add(
            int row, int column, double kr, double ki, double[][] x, double[] re, double[] im, double[] size) {
        if (row < re.length) {
            double a = x[0][column];
            double b = x[1][column];
            re[row] += kr * a - ki * b;
            im[row] += kr * b + ki * a;
            size[row] += (Math.abs(kr) + Math.abs(ki)) * (Math.abs(a) + Math.abs(b));
        }
    }
}
