package eddyreach.surface;

import java.util.List;
import java.util.Locale;

/**
 * A flat region bounded by straight sides, with holes; the section of a {@link Prism}.
 *
 * @param outer corners of the border, {@code [corner][u, v]}, m, in either sense of rotation
 * @param holes corners of each hole
 */
public record Outline(double[][] outer, List<double[][]> holes) {

    /** Lengths below this share of the size count as none. */
    private static final double SAME = 1e-6;

    /**
     * Checks the outline and turns the border anticlockwise, holes clockwise.
     *
     * @throws IllegalArgumentException if corners are too few, repeated or not finite, sides cross or touch, or holes lie outside
     */
    public Outline {
        outer = turned(checked(outer, "the outline"), true);
        double size = size(outer);
        holes = holes.stream().map(h -> turned(checked(h, "a hole"), false)).toList();
        crossings(outer, outer, size, "the outline");
        for (int i = 0; i < holes.size(); i++) {
            double[][] hole = holes.get(i);
            crossings(hole, hole, size, "a hole");
            crossings(outer, hole, size, "the outline and a hole");
            if (!inside(outer, hole[0][0], hole[0][1])) {
                throw new IllegalArgumentException(
                        "the hole with a corner at " + place(hole[0]) + " lies outside the outline");
            }
            for (int j = 0; j < i; j++) {
                double[][] other = holes.get(j);
                crossings(other, hole, size, "two holes");
                if (inside(other, hole[0][0], hole[0][1]) || inside(hole, other[0][0], other[0][1])) {
                    throw new IllegalArgumentException(
                            "the hole with a corner at " + place(hole[0]) + " overlaps the one at " + place(other[0]));
                }
            }
        }
    }

    /** An outline without holes. */
    public static Outline of(double[][] corners) {
        return new Outline(corners, List.of());
    }

    /** A rectangle about the origin; sides along u and v, m. */
    public static Outline rectangle(double u, double v) {
        return of(new double[][] {{-u / 2, -v / 2}, {u / 2, -v / 2}, {u / 2, v / 2}, {-u / 2, v / 2}});
    }

    /**
     * A regular polygon about the origin with a corner on the u axis.
     *
     * @param corners number of corners
     * @param radius distance of the corners from the origin, m
     */
    public static Outline regular(int corners, double radius) {
        double[][] c = new double[corners][2];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            c[i][0] = radius * Math.cos(angle);
            c[i][1] = radius * Math.sin(angle);
        }
        return of(c);
    }

    /**
     * A polygon of many corners with the area of a circle.
     *
     * @param corners number of corners
     * @param radius radius of the circle, m
     */
    public static Outline round(int corners, double radius) {
        double angle = 2 * Math.PI / corners;
        return regular(corners, radius * Math.sqrt(angle / Math.sin(angle)));
    }

    /** Area without the holes, m2. */
    public double area() {
        double sum = area(outer);
        for (double[][] h : holes) {
            sum += area(h);
        }
        return sum;
    }

    /** Largest extent along u or v, m. */
    public double size() {
        return size(outer);
    }

    /** True when a point lies within the border and in no hole. */
    public boolean contains(double u, double v) {
        if (!inside(outer, u, v)) {
            return false;
        }
        for (double[][] h : holes) {
            if (inside(h, u, v)) {
                return false;
            }
        }
        return true;
    }

    private static double[][] checked(double[][] c, String what) {
        if (c.length < 3) {
            throw new IllegalArgumentException(what + " has " + c.length + " corners, needs at least 3");
        }
        for (double[] p : c) {
            if (p.length != 2 || !Double.isFinite(p[0]) || !Double.isFinite(p[1])) {
                throw new IllegalArgumentException(what + " has a corner that is no pair of finite numbers");
            }
        }
        double size = size(c);
        for (int i = 0; i < c.length; i++) {
            for (int j = 0; j < i; j++) {
                if (Math.hypot(c[i][0] - c[j][0], c[i][1] - c[j][1]) <= SAME * size) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "%s has the corner %s twice, as number %d and %d",
                            what,
                            place(c[j]),
                            j + 1,
                            i + 1));
                }
            }
        }
        return c;
    }

    private static double[][] turned(double[][] c, boolean anticlockwise) {
        double[][] out = new double[c.length][];
        boolean keep = area(c) > 0 == anticlockwise;
        for (int i = 0; i < c.length; i++) {
            out[i] = c[keep ? i : c.length - 1 - i].clone();
        }
        return out;
    }

    private static void crossings(double[][] a, double[][] b, double size, String what) {
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                boolean neighbours = a == b && (i == j || (i + 1) % a.length == j || (j + 1) % a.length == i);
                if (!neighbours && touch(a[i], a[(i + 1) % a.length], b[j], b[(j + 1) % b.length], SAME * size)) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "sides of %s cross or touch: %s to %s and %s to %s",
                            what,
                            place(a[i]),
                            place(a[(i + 1) % a.length]),
                            place(b[j]),
                            place(b[(j + 1) % b.length])));
                }
            }
        }
        for (int i = 0; a == b && i < a.length; i++) {
            double[] p = a[i];
            double[] q = a[(i + 1) % a.length];
            double[] r = a[(i + 2) % a.length];
            double along = (q[0] - p[0]) * (r[0] - q[0]) + (q[1] - p[1]) * (r[1] - q[1]);
            if (along < 0 && Math.abs(side(p, q, r)) <= SAME * size * Math.hypot(q[0] - p[0], q[1] - p[1])) {
                throw new IllegalArgumentException(
                        "the sides at the corner " + place(q) + " of " + what + " lie on each other");
            }
        }
    }

    /** True when two segments cross or come nearer than a tolerance. */
    private static boolean touch(double[] p, double[] q, double[] r, double[] s, double eps) {
        boolean cross = side(p, q, r) > 0 != side(p, q, s) > 0 && side(r, s, p) > 0 != side(r, s, q) > 0;
        return cross || near(p, r, s, eps) || near(q, r, s, eps) || near(r, p, q, eps) || near(s, p, q, eps);
    }

    private static boolean near(double[] x, double[] p, double[] q, double eps) {
        double du = q[0] - p[0];
        double dv = q[1] - p[1];
        double t = Math.max(0, Math.min(1, ((x[0] - p[0]) * du + (x[1] - p[1]) * dv) / (du * du + dv * dv)));
        return Math.hypot(x[0] - p[0] - t * du, x[1] - p[1] - t * dv) <= eps;
    }

    private static double side(double[] p, double[] q, double[] r) {
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
    }

    static boolean inside(double[][] c, double u, double v) {
        boolean in = false;
        for (int i = 0, j = c.length - 1; i < c.length; j = i++) {
            if (c[i][1] > v != c[j][1] > v && u < (c[j][0] - c[i][0]) * (v - c[i][1]) / (c[j][1] - c[i][1]) + c[i][0]) {
                in = !in;
            }
        }
        return in;
    }

    private static double area(double[][] c) {
        double sum = 0;
        for (int i = 0; i < c.length; i++) {
            double[] q = c[(i + 1) % c.length];
            sum += c[i][0] * q[1] - q[0] * c[i][1];
        }
        return sum / 2;
    }

    private static double size(double[][] c) {
        double size = 0;
        for (int axis = 0; axis < 2; axis++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double[] p : c) {
                low = Math.min(low, p[axis]);
                high = Math.max(high, p[axis]);
            }
            size = Math.max(size, high - low);
        }
        return size;
    }

    private static String place(double[] p) {
        return String.format(Locale.ROOT, "(%.4g, %.4g) mm", 1e3 * p[0], 1e3 * p[1]);
    }
}
