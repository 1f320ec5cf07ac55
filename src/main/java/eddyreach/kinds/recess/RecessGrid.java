package eddyreach.kinds.recess;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/** The numbers under a map of recesses. */
final class RecessGrid {

    private RecessGrid() {}

    /** A quantity of each cell, row by row; not a number where a cell is missing. */
    static double[][] of(RecessResult.Panel panel, ToDoubleFunction<RecessCell> value) {
        return panel.rows().stream()
                .map(row -> row.stream()
                        .mapToDouble(c -> c.map(value::applyAsDouble).orElse(Double.NaN))
                        .toArray())
                .toArray(double[][]::new);
    }

    /** What is not a number takes the mean of its neighbours, so that shades reach the edge of what is known. */
    static double[][] filled(double[][] f) {
        double[][] g = Arrays.stream(f).map(double[]::clone).toArray(double[][]::new);
        boolean open = true;
        while (open) {
            open = false;
            boolean found = false;
            double[][] next = Arrays.stream(g).map(double[]::clone).toArray(double[][]::new);
            for (int j = 0; j < g.length; j++) {
                for (int i = 0; i < g[j].length; i++) {
                    if (Double.isNaN(g[j][i])) {
                        next[j][i] = neighbours(g, i, j);
                        open |= Double.isNaN(next[j][i]);
                        found |= !Double.isNaN(next[j][i]);
                    }
                }
            }
            g = next;
            open &= found;
        }
        return g;
    }

    private static double neighbours(double[][] g, int i, int j) {
        double sum = 0;
        int n = 0;
        for (int[] d : new int[][] {{-1, 0}, {1, 0}, {0, -1}, {0, 1}}) {
            int x = i + d[0];
            int y = j + d[1];
            if (y >= 0 && y < g.length && x >= 0 && x < g[y].length && !Double.isNaN(g[y][x])) {
                sum += g[y][x];
                n++;
            }
        }
        return n == 0 ? Double.NaN : sum / n;
    }

    /** The middles of n even steps between the ends of an axis. */
    static double[] even(double[] axis, int n, boolean down) {
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            double share = (i + 0.5) / n;
            values[i] = axis[0] + (down ? 1 - share : share) * (axis[axis.length - 1] - axis[0]);
        }
        return values;
    }
}
