package eddyreach.surface;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * A section cut into triangles, small at its sharp corners and along its border.
 *
 * <p>A section whose sides all run along u or v is cut by a grid through its corners; any other one must be seen as a whole from its
 * centre, and is cut into rings around it.
 */
final class SectionMesh {

    /** Corners that turn by less than this belong to a round border, rad. */
    private static final double SHARP = Math.PI / 6;

    private static final double SAME = 1e-9;

    final List<double[]> nodes = new ArrayList<>();
    final List<int[]> triangles = new ArrayList<>();
    private final Outline outline;
    private final Fineness fine;

    SectionMesh(Outline outline, Fineness fine) {
        this.outline = outline;
        this.fine = fine;
        if (alongAxes(outline.outer()) && outline.holes().stream().allMatch(SectionMesh::alongAxes)) {
            grid();
        } else {
            rings();
        }
    }

    /** Sides that belong to one triangle alone, the section on their left. */
    List<int[]> border() {
        Map<Long, int[]> open = new HashMap<>();
        for (int[] t : triangles) {
            for (int e = 0; e < 3; e++) {
                int a = t[e];
                int b = t[(e + 1) % 3];
                if (open.remove(key(b, a)) == null) {
                    open.put(key(a, b), new int[] {a, b});
                }
            }
        }
        return new ArrayList<>(open.values());
    }

    private static long key(int a, int b) {
        return (long) a << 32 | b;
    }

    private static boolean alongAxes(double[][] c) {
        for (int i = 0; i < c.length; i++) {
            double[] q = c[(i + 1) % c.length];
            double u = Math.abs(q[0] - c[i][0]);
            double v = Math.abs(q[1] - c[i][1]);
            if (Math.min(u, v) > SAME * Math.max(u, v)) {
                return false;
            }
        }
        return true;
    }

    private void grid() {
        double[] us = lines(0);
        double[] vs = lines(1);
        int[][] node = new int[us.length][vs.length];
        for (int[] column : node) {
            java.util.Arrays.fill(column, -1);
        }
        for (int i = 0; i + 1 < us.length; i++) {
            for (int j = 0; j + 1 < vs.length; j++) {
                if (outline.contains((us[i] + us[i + 1]) / 2, (vs[j] + vs[j + 1]) / 2)) {
                    for (int q = 0; q < 4; q++) {
                        int a = i + (q & 1);
                        int b = j + (q >> 1);
                        if (node[a][b] < 0) {
                            node[a][b] = add(us[a], vs[b]);
                        }
                    }
                    quad(node[i][j], node[i + 1][j], node[i + 1][j + 1], node[i][j + 1]);
                }
            }
        }
    }

    /** Grid lines through all corners, close together beside them. */
    private double[] lines(int axis) {
        TreeSet<Double> at = new TreeSet<>();
        List<double[][]> all = new ArrayList<>(outline.holes());
        all.add(outline.outer());
        double eps = SAME * outline.size();
        for (double[][] loop : all) {
            for (double[] p : loop) {
                Double near = at.ceiling(p[axis] - eps);
                if (near == null || near > p[axis] + eps) {
                    at.add(p[axis]);
                }
            }
        }
        List<Double> out = new ArrayList<>();
        Double last = null;
        for (double x : at) {
            if (last == null) {
                out.add(x);
            } else {
                double[] cells = fine.between(last, x, true, true);
                for (int i = 1; i < cells.length; i++) {
                    out.add(cells[i]);
                }
            }
            last = x;
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void rings() {
        if (!outline.holes().isEmpty()) {
            throw new IllegalArgumentException(
                    "holes are possible in outlines whose sides all run along two directions at right angles");
        }
        List<double[]> rim = rim();
        double[] c = centre();
        double inner = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rim.size(); i++) {
            double[] p = rim.get(i);
            double[] q = rim.get((i + 1) % rim.size());
            double side = Math.hypot(q[0] - p[0], q[1] - p[1]);
            double height = ((p[0] - c[0]) * (q[1] - p[1]) - (p[1] - c[1]) * (q[0] - p[0])) / side;
            if (!(height > SAME * outline.size())) {
                throw new IllegalArgumentException(
                        "an outline that is not seen as a whole from its centre needs sides along two directions at right angles");
            }
            inner = Math.min(inner, height);
        }
        double[] levels = fine.between(0, inner, false, true);
        int[] previous = null;
        for (int l = levels.length - 1; l > 0; l--) {
            int[] ring = new int[rim.size()];
            double s = levels[l] / inner;
            for (int i = 0; i < ring.length; i++) {
                ring[i] = add(c[0] + s * (rim.get(i)[0] - c[0]), c[1] + s * (rim.get(i)[1] - c[1]));
            }
            for (int i = 0; previous != null && i < ring.length; i++) {
                int j = (i + 1) % ring.length;
                quad(previous[i], previous[j], ring[j], ring[i]);
            }
            previous = ring;
        }
        int middle = add(c[0], c[1]);
        for (int i = 0; i < previous.length; i++) {
            triangles.add(new int[] {previous[i], previous[(i + 1) % previous.length], middle});
        }
    }

    /** The border's corners and the points between them. */
    private List<double[]> rim() {
        double[][] c = outline.outer();
        List<double[]> rim = new ArrayList<>();
        for (int i = 0; i < c.length; i++) {
            double[] p = c[i];
            double[] q = c[(i + 1) % c.length];
            double side = Math.hypot(q[0] - p[0], q[1] - p[1]);
            double[] t = fine.between(0, side, sharp(i), sharp((i + 1) % c.length));
            for (int k = 0; k + 1 < t.length; k++) {
                double s = t[k] / side;
                rim.add(new double[] {p[0] + s * (q[0] - p[0]), p[1] + s * (q[1] - p[1])});
            }
        }
        return rim;
    }

    private boolean sharp(int i) {
        double[][] c = outline.outer();
        double[] a = c[(i + c.length - 1) % c.length];
        double[] b = c[i];
        double[] d = c[(i + 1) % c.length];
        double turn = Math.atan2(d[1] - b[1], d[0] - b[0]) - Math.atan2(b[1] - a[1], b[0] - a[0]);
        return Math.abs(Math.IEEEremainder(turn, 2 * Math.PI)) > SHARP;
    }

    /** Centre of area. */
    private double[] centre() {
        double[][] c = outline.outer();
        double area = 0;
        double u = 0;
        double v = 0;
        for (int i = 0; i < c.length; i++) {
            double[] q = c[(i + 1) % c.length];
            double a = c[i][0] * q[1] - q[0] * c[i][1];
            area += a;
            u += a * (c[i][0] + q[0]);
            v += a * (c[i][1] + q[1]);
        }
        return new double[] {u / (3 * area), v / (3 * area)};
    }

    private int add(double u, double v) {
        nodes.add(new double[] {u, v});
        return nodes.size() - 1;
    }

    /** Two triangles, cut so that mirror images are cut alike. */
    private void quad(int a, int b, int c, int d) {
        if (Math.max(far(a), far(c)) > Math.max(far(b), far(d))) {
            triangles.add(new int[] {a, b, c});
            triangles.add(new int[] {a, c, d});
        } else {
            triangles.add(new int[] {b, c, d});
            triangles.add(new int[] {b, d, a});
        }
    }

    private double far(int i) {
        double[] p = nodes.get(i);
        // any two factors do that make ties of unlike corners unlikely
        return 1.37 * Math.abs(p[0]) + 0.73 * Math.abs(p[1]) + 0.31 * Math.hypot(p[0], p[1]);
    }
}
