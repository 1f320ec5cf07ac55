package eddyreach.report.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lines of equal value on a rectangular grid by marching squares, joined to polylines.
 *
 * <p>Crossings are interpolated linearly along the grid's edges; in a saddle cell the mean of the corners decides. Cells
 * with a corner that is not a number are left out.
 */
public final class Contours {

    private final double[] x;
    private final double[] y;
    private final double[][] f;
    private final int[] first;
    private final int[] second;
    private final double level;

    private Contours(double[] x, double[] y, double[][] f, double level) {
        this.x = x;
        this.y = y;
        this.f = f;
        this.level = level;
        int edges = 2 * x.length * y.length;
        first = new int[edges];
        second = new int[edges];
        Arrays.fill(first, -1);
        Arrays.fill(second, -1);
    }

    /**
     * The contour of one level.
     *
     * @param x ascending abscissae
     * @param y ascending ordinates
     * @param f values, indexed {@code [iy][ix]}
     * @param level value of the contour
     * @return polylines as {@code {x0, y0, x1, y1, ...}}; closed ones end where they start
     */
    public static List<double[]> lines(double[] x, double[] y, double[][] f, double level) {
        Contours c = new Contours(x, y, f, level);
        c.march();
        return c.join();
    }

    private int horizontal(int i, int j) {
        return j * x.length + i;
    }

    private int vertical(int i, int j) {
        return x.length * y.length + j * x.length + i;
    }

    private void march() {
        for (int j = 0; j + 1 < y.length; j++) {
            for (int i = 0; i + 1 < x.length; i++) {
                double a = f[j][i];
                double b = f[j][i + 1];
                double c = f[j + 1][i + 1];
                double d = f[j + 1][i];
                if (Double.isNaN(a + b + c + d)) {
                    continue;
                }
                int bits = (a >= level ? 1 : 0) | (b >= level ? 2 : 0) | (c >= level ? 4 : 0) | (d >= level ? 8 : 0);
                if (bits == 0 || bits == 15) {
                    continue;
                }
                int bottom = horizontal(i, j);
                int right = vertical(i + 1, j);
                int top = horizontal(i, j + 1);
                int left = vertical(i, j);
                switch (bits) {
                    case 1, 14 -> link(left, bottom);
                    case 2, 13 -> link(bottom, right);
                    case 4, 11 -> link(right, top);
                    case 8, 7 -> link(top, left);
                    case 3, 12 -> link(left, right);
                    case 6, 9 -> link(bottom, top);
                    default -> {
                        boolean middle = (a + b + c + d) / 4 >= level;
                        if (middle == (bits == 5)) {
                            link(left, top);
                            link(bottom, right);
                        } else {
                            link(left, bottom);
                            link(right, top);
                        }
                    }
                }
            }
        }
    }

    private void link(int p, int q) {
        attach(p, q);
        attach(q, p);
    }

    private void attach(int p, int q) {
        if (first[p] < 0) {
            first[p] = q;
        } else {
            second[p] = q;
        }
    }

    private List<double[]> join() {
        List<double[]> lines = new ArrayList<>();
        for (int e = 0; e < first.length; e++) {
            if (first[e] >= 0 && second[e] < 0) {
                lines.add(follow(e));
            }
        }
        for (int e = 0; e < first.length; e++) {
            if (first[e] >= 0) {
                lines.add(follow(e));
            }
        }
        return lines;
    }

    /** Walks from an edge to the other end, or round and back to the start, unlinking what it has passed. */
    private double[] follow(int start) {
        double[] line = new double[64];
        int n = 0;
        int e = start;
        while (e >= 0) {
            if (n + 2 > line.length) {
                line = Arrays.copyOf(line, 2 * line.length);
            }
            n = crossing(e, line, n);
            int next = first[e] >= 0 ? first[e] : second[e];
            first[e] = -1;
            second[e] = -1;
            if (next >= 0) {
                if (first[next] == e) {
                    first[next] = -1;
                } else if (second[next] == e) {
                    second[next] = -1;
                }
            }
            e = next;
        }
        return Arrays.copyOf(line, n);
    }

    private int crossing(int edge, double[] line, int n) {
        int cells = x.length * y.length;
        boolean horizontal = edge < cells;
        int k = horizontal ? edge : edge - cells;
        int i = k % x.length;
        int j = k / x.length;
        double a = f[j][i];
        double b = horizontal ? f[j][i + 1] : f[j + 1][i];
        double t = (level - a) / (b - a);
        line[n] = horizontal ? x[i] + t * (x[i + 1] - x[i]) : x[i];
        line[n + 1] = horizontal ? y[j] : y[j] + t * (y[j + 1] - y[j]);
        return n + 2;
    }
}
