package eddyreach.report.draw;

import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;

/**
 * Values shown as shades from near white to a mid blue, darker meaning more: monotonic in lightness, so it reads in grey,
 * and never so dark that lines on it disappear.
 *
 * @param low value of the lightest shade (its logarithm to base 10 when logarithmic)
 * @param high value of the darkest shade
 * @param logarithmic whether values are shaded by their logarithm
 */
public record ShadeScale(double low, double high, boolean logarithmic) {

    private static final int STEPS = 256;
    private static final double DECADES = 4;
    private static final double[][] STOPS = {{252, 253, 253}, {214, 229, 240}, {148, 187, 216}, {66, 126, 173}};
    private static final int[] TABLE = table();

    /** A logarithmic scale of at most four decades below the largest values, the outermost half percent apart. */
    public static ShadeScale decades(List<double[][]> grids) {
        int n = 0;
        for (double[][] grid : grids) {
            n += grid.length * grid[0].length;
        }
        double[] all = new double[n];
        n = 0;
        for (double[][] grid : grids) {
            for (double[] row : grid) {
                for (double v : row) {
                    if (v > 0 && Double.isFinite(v)) {
                        all[n++] = v;
                    }
                }
            }
        }
        if (n == 0) {
            return new ShadeScale(0, 1, true);
        }
        all = Arrays.copyOf(all, n);
        Arrays.sort(all);
        double high = Math.ceil(2 * Math.log10(all[(int) (0.995 * (all.length - 1))])) / 2;
        double low = Math.floor(Math.log10(all[(int) (0.005 * (all.length - 1))]));
        return new ShadeScale(Math.max(low, Math.ceil(high - DECADES)), high, true);
    }

    /** A linear scale from zero to the largest value. */
    static ShadeScale linear(double[][] grid) {
        double high = 0;
        for (double[] row : grid) {
            for (double v : row) {
                high = Double.isFinite(v) ? Math.max(high, v) : high;
            }
        }
        return new ShadeScale(0, high > 0 ? high : 1, false);
    }

    private static int[] table() {
        int[] table = new int[STEPS];
        for (int i = 0; i < STEPS; i++) {
            double t = i * (STOPS.length - 1.0) / (STEPS - 1);
            int k = Math.min((int) t, STOPS.length - 2);
            int rgb = 0;
            for (int c = 0; c < 3; c++) {
                rgb = rgb << 8 | (int) Math.round(STOPS[k][c] + (t - k) * (STOPS[k + 1][c] - STOPS[k][c]));
            }
            table[i] = rgb;
        }
        return table;
    }

    /** Shade of a value already on the scale, as 0xRRGGBB. */
    private static int rgb(double fraction) {
        return TABLE[(int) (Math.max(0, Math.min(1, fraction)) * (STEPS - 1) + 0.5)];
    }

    /**
     * The grid as an image, interpolated bilinearly (of the logarithm, on a logarithmic scale).
     *
     * @param x ascending abscissae of the grid
     * @param y ascending ordinates of the grid
     * @param f values, indexed {@code [iy][ix]}
     * @param columns abscissa of each column of pixels; outside the grid the border value holds
     * @param rows ordinate of each row of pixels
     */
    public BufferedImage image(double[] x, double[] y, double[][] f, double[] columns, double[] rows) {
        double span = high > low ? high - low : 1;
        double[][] s = new double[y.length][x.length];
        for (int j = 0; j < y.length; j++) {
            for (int i = 0; i < x.length; i++) {
                double v = logarithmic ? Math.log10(Math.max(f[j][i], 1e-300)) : f[j][i];
                s[j][i] = Double.isFinite(v) ? Math.max(0, Math.min(1, (v - low) / span)) : 0;
            }
        }
        int[] cell = new int[columns.length];
        double[] weight = new double[columns.length];
        for (int c = 0; c < columns.length; c++) {
            cell[c] = cell(x, columns[c]);
            weight[c] = weight(x, cell[c], columns[c]);
        }
        BufferedImage image = new BufferedImage(columns.length, rows.length, BufferedImage.TYPE_INT_RGB);
        int[] line = new int[columns.length];
        for (int r = 0; r < rows.length; r++) {
            int j = cell(y, rows[r]);
            double v = weight(y, j, rows[r]);
            double[] a = s[j];
            double[] b = s[j + 1];
            for (int c = 0; c < line.length; c++) {
                int i = cell[c];
                double u = weight[c];
                line[c] = rgb((1 - v) * ((1 - u) * a[i] + u * a[i + 1]) + v * ((1 - u) * b[i] + u * b[i + 1]));
            }
            image.setRGB(0, r, line.length, 1, line, 0, line.length);
        }
        return image;
    }

    private static int cell(double[] x, double value) {
        int k = Arrays.binarySearch(x, value);
        return Math.max(0, Math.min(x.length - 2, k >= 0 ? k : -k - 2));
    }

    private static double weight(double[] x, int i, double value) {
        return Math.max(0, Math.min(1, (value - x[i]) / (x[i + 1] - x[i])));
    }

    /** The legend: a bar with ticks at decades, or at round values times a unit factor. */
    public void legend(Graphics2D g, Rectangle2D bar, String label, double unit) {
        int n = 64;
        for (int i = 0; i < n; i++) {
            g.setColor(new Color(rgb((i + 0.5) / n)));
            double y = bar.getMaxY() - (i + 1) * bar.getHeight() / n;
            g.fill(new Rectangle2D.Double(bar.getX(), y, bar.getWidth(), bar.getHeight() / n + (i > 0 ? 0.6 : 0)));
        }
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.line(0.7));
        g.draw(bar);
        double top = logarithmic ? high : high * unit;
        double bottom = logarithmic ? low : low * unit;
        double step = logarithmic ? 1 : Ruler.step(top - bottom, 5);
        for (int k = (int) Math.ceil(bottom / step - 1e-9); k * step <= top + 1e-9 * step; k++) {
            double y = bar.getMaxY() - (k * step - bottom) / (top - bottom) * bar.getHeight();
            g.setColor(Theme.MUTED);
            g.draw(new Line2D.Double(bar.getMaxX(), y, bar.getMaxX() + 4, y));
            g.setColor(Theme.INK);
            String text = Labels.significant(logarithmic ? Math.pow(10, k) : k * step, 6);
            Picture.fitted(g, Theme.text(10), text, bar.getMaxX() + 7, y + 3.5, 60, 0);
        }
        g.setColor(Theme.INK);
        Picture.fitted(g, Theme.text(10.5), label, bar.getX() - 4, bar.getMinY() - 10, 150, 0);
    }
}
