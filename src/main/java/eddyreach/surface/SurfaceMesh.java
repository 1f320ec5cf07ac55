package eddyreach.surface;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The surface of bodies as flat triangles, and the planes about which it is its own mirror image.
 *
 * <p>Planes looked for are x = 0, y = 0 and z = {@link #middle}. Only the panels on the positive side of all of them are kept; the
 * others are their images.
 */
final class SurfaceMesh {

    private static final double SAME = 1e-7;

    /** Kept panels. */
    final List<Panel> panels = new ArrayList<>();

    /** Nodes of each kept panel: its corners, then the middles of the edges opposite them. */
    final List<int[]> corners = new ArrayList<>();

    /** Body of each kept panel. */
    final List<Integer> body = new ArrayList<>();

    /** Whether a kept panel is an end of an upright body, so that another lies behind it at the body's thickness. */
    final List<Boolean> face = new ArrayList<>();

    /** Nodes of kept panels. */
    final List<double[]> nodes = new ArrayList<>();

    /** Whether the surface is its own image in x = 0, y = 0, z = middle. */
    final boolean[] mirror = new boolean[3];

    /** Height of the middle, m. */
    final double middle;

    /** Largest extent, m. */
    final double size;

    /** Number of panels with their images. */
    final int all;

    private final Map<String, Integer> index = new HashMap<>();

    SurfaceMesh(List<Prism> bodies, Fineness fine) {
        List<double[][]> triangles = new ArrayList<>();
        List<Integer> owner = new ArrayList<>();
        List<Boolean> ends = new ArrayList<>();
        for (int b = 0; b < bodies.size(); b++) {
            add(bodies.get(b), fine, triangles, ends);
            while (owner.size() < triangles.size()) {
                owner.add(b);
            }
        }
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (double[][] t : triangles) {
            for (double[] p : t) {
                for (int c = 0; c < 3; c++) {
                    low[c] = Math.min(low[c], p[c]);
                    high[c] = Math.max(high[c], p[c]);
                }
            }
        }
        middle = (low[2] + high[2]) / 2;
        size = Math.max(high[0] - low[0], Math.max(high[1] - low[1], high[2] - low[2]));
        all = triangles.size();
        findMirrors(triangles);
        keep(triangles, owner, ends);
    }

    private static void add(Prism p, Fineness fine, List<double[][]> triangles, List<Boolean> ends) {
        SectionMesh section = new SectionMesh(p.section(), fine);
        double[] levels = fine.between(0, p.length(), true, true);
        for (int[] t : section.triangles) {
            double[][] low = new double[3][];
            double[][] high = new double[3][];
            for (int i = 0; i < 3; i++) {
                double[] q = section.nodes.get(t[i]);
                low[2 - i] = p.place(q[0], q[1], 0);
                high[i] = p.place(q[0], q[1], p.length());
            }
            triangles.add(low);
            triangles.add(high);
            ends.add(!p.lying());
            ends.add(!p.lying());
        }
        for (int[] side : section.border()) {
            double[] a = section.nodes.get(side[0]);
            double[] b = section.nodes.get(side[1]);
            for (int l = 0; l + 1 < levels.length; l++) {
                double[][] q = {
                    p.place(a[0], a[1], levels[l]),
                    p.place(b[0], b[1], levels[l]),
                    p.place(b[0], b[1], levels[l + 1]),
                    p.place(a[0], a[1], levels[l + 1])
                };
                boolean first = cutThrough(a, b, levels, l, p.length());
                triangles.add(first ? new double[][] {q[0], q[1], q[2]} : new double[][] {q[1], q[2], q[3]});
                triangles.add(first ? new double[][] {q[0], q[2], q[3]} : new double[][] {q[1], q[3], q[0]});
                ends.add(false);
                ends.add(false);
            }
        }
    }

    /** Whether a rim's quadrangle is cut from a low to b high: alike in mirror images. */
    private static boolean cutThrough(double[] a, double[] b, double[] levels, int l, double length) {
        double low = Math.abs(levels[l] - length / 2);
        double high = Math.abs(levels[l + 1] - length / 2);
        double farA = 1.37 * Math.abs(a[0]) + 0.73 * Math.abs(a[1]);
        double farB = 1.37 * Math.abs(b[0]) + 0.73 * Math.abs(b[1]);
        return farA > farB == low > high;
    }

    private void findMirrors(List<double[][]> triangles) {
        for (int plane = 0; plane < 3; plane++) {
            Set<String> found = new HashSet<>();
            for (int i = 0; i < triangles.size(); i++) {
                found.add(name(triangles.get(i), -1));
            }
            boolean same = true;
            for (int i = 0; i < triangles.size() && same; i++) {
                same = found.contains(name(triangles.get(i), plane));
            }
            mirror[plane] = same;
        }
    }

    private String name(double[][] t, int plane) {
        String[] s = new String[3];
        for (int i = 0; i < 3; i++) {
            s[i] = name(reflected(t[i], plane));
        }
        java.util.Arrays.sort(s);
        return String.join("|", s);
    }

    private String name(double[] p) {
        double unit = SAME * size;
        return Math.round(p[0] / unit) + "," + Math.round(p[1] / unit) + "," + Math.round((p[2] - middle) / unit);
    }

    private double[] reflected(double[] p, int plane) {
        return switch (plane) {
            case 0 -> new double[] {-p[0], p[1], p[2]};
            case 1 -> new double[] {p[0], -p[1], p[2]};
            case 2 -> new double[] {p[0], p[1], 2 * middle - p[2]};
            default -> p;
        };
    }

    private void keep(List<double[][]> triangles, List<Integer> owner, List<Boolean> ends) {
        for (int i = 0; i < triangles.size(); i++) {
            double[][] t = triangles.get(i);
            Panel p = new Panel(t[0], t[1], t[2]);
            boolean positive = (!mirror[0] || p.centre[0] > 0)
                    && (!mirror[1] || p.centre[1] > 0)
                    && (!mirror[2] || p.centre[2] > middle);
            if (positive) {
                panels.add(p);
                int[] six = new int[6];
                for (int e = 0; e < 3; e++) {
                    six[e] = node(t[e], owner.get(i));
                    six[3 + e] = node(between(t[(e + 1) % 3], t[(e + 2) % 3]), owner.get(i));
                }
                corners.add(six);
                body.add(owner.get(i));
                face.add(ends.get(i));
            }
        }
    }

    private static double[] between(double[] a, double[] b) {
        return new double[] {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2};
    }

    private int node(double[] p, int owner) {
        return index.computeIfAbsent(owner + ":" + name(p), key -> {
            nodes.add(p);
            return nodes.size() - 1;
        });
    }

    /** Whether a node lies in a mirror plane. */
    boolean on(int node, int plane) {
        double[] p = nodes.get(node);
        return Math.abs(plane == 2 ? p[2] - middle : p[plane]) < SAME * size;
    }
}
