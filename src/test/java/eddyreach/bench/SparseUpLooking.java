package eddyreach.solved;

import java.util.Arrays;

/**
 * The plain sparse version: K = L D L^T of a complex symmetric matrix row by row (up-looking, Davis, ACM Trans. Math. Software 31
 * (2005) 587), on one thread, without blocks. It shows what the dense fronts are worth.
 */
final class SparseUpLooking {

    private final int n;
    private final int[] start;
    private final int[] row;
    private final double[] lr;
    private final double[] li;
    final double[] dr;
    final double[] di;

    /**
     * @param n order
     * @param columnStart where each column of the upper triangle begins
     * @param rows rows of its entries, at most the column
     * @param re real parts
     * @param im imaginary parts
     */
    SparseUpLooking(int n, int[] columnStart, int[] rows, double[] re, double[] im) {
        this.n = n;
        int[] parent = new int[n];
        int[] count = new int[n];
        int[] flag = new int[n];
        for (int k = 0; k < n; k++) {
            parent[k] = -1;
            flag[k] = k;
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                for (int i = rows[p]; i < k && flag[i] != k; i = parent[i]) {
                    if (parent[i] == -1) {
                        parent[i] = k;
                    }
                    count[i]++;
                    flag[i] = k;
                }
            }
        }
        start = new int[n + 1];
        for (int k = 0; k < n; k++) {
            start[k + 1] = start[k] + count[k];
        }
        row = new int[start[n]];
        lr = new double[start[n]];
        li = new double[start[n]];
        dr = new double[n];
        di = new double[n];
        numeric(columnStart, rows, re, im, parent, flag);
    }

    private void numeric(int[] columnStart, int[] rows, double[] re, double[] im, int[] parent, int[] flag) {
        double[] yr = new double[n];
        double[] yi = new double[n];
        int[] filled = new int[n];
        int[] pattern = new int[n];
        Arrays.fill(flag, -1);
        for (int k = 0; k < n; k++) {
            int top = n;
            flag[k] = k;
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                yr[rows[p]] += re[p];
                yi[rows[p]] += im[p];
                int length = 0;
                for (int i = rows[p]; flag[i] != k; i = parent[i]) {
                    pattern[length++] = i;
                    flag[i] = k;
                }
                while (length > 0) {
                    pattern[--top] = pattern[--length];
                }
            }
            dr[k] = yr[k];
            di[k] = yi[k];
            yr[k] = 0;
            yi[k] = 0;
            for (; top < n; top++) {
                int i = pattern[top];
                double ar = yr[i];
                double ai = yi[i];
                yr[i] = 0;
                yi[i] = 0;
                int end = start[i] + filled[i];
                for (int p = start[i]; p < end; p++) {
                    yr[row[p]] -= lr[p] * ar - li[p] * ai;
                    yi[row[p]] -= lr[p] * ai + li[p] * ar;
                }
                double q = dr[i] * dr[i] + di[i] * di[i];
                double fr = (ar * dr[i] + ai * di[i]) / q;
                double fi = (ai * dr[i] - ar * di[i]) / q;
                dr[k] -= fr * ar - fi * ai;
                di[k] -= fr * ai + fi * ar;
                row[end] = k;
                lr[end] = fr;
                li[end] = fi;
                filled[i]++;
            }
        }
    }
}
