package eddyreach.surface;

import eddyreach.numerics.Require;

/**
 * A straight body of constant section.
 *
 * <p>Upright, the section lies parallel to the face, (u, v) = (x, y), and the body goes from z to z + length. Lying, its length runs
 * along x from -length/2 to length/2, and (u, v) = (y, z). Then it is turned about the vertical axis and moved.
 *
 * @param section the section, m
 * @param length thickness of an upright body, length of a lying one, m
 * @param lying whether its length is parallel to the face
 * @param turn angle about the vertical axis, rad, from x to y
 * @param x shift along x, m
 * @param y shift along y, m
 * @param z shift away from the face, m
 */
public record Prism(Outline section, double length, boolean lying, double turn, double x, double y, double z) {

    public Prism {
        Require.positive("length", length, "m");
        if (!(Double.isFinite(turn) && Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z))) {
            throw new IllegalArgumentException("turn, x, y and z must be finite");
        }
    }

    /** A plate or block of an outline with its lower face at z = 0. */
    public static Prism upright(Outline section, double thickness) {
        return new Prism(section, thickness, false, 0, 0, 0, 0);
    }

    /** A bar of a section along x, its section's lowest point at z = 0. */
    public static Prism lying(Outline section, double length) {
        return new Prism(section, length, true, 0, 0, 0, -lowest(section));
    }

    private static double lowest(Outline section) {
        double low = Double.POSITIVE_INFINITY;
        for (double[] p : section.outer()) {
            low = Math.min(low, p[1]);
        }
        return low;
    }

    /** The same turned by an angle more about the vertical axis through the origin of its section, rad. */
    public Prism turned(double angle) {
        return new Prism(section, length, lying, turn + angle, x, y, z);
    }

    /** The same moved, m. */
    public Prism moved(double dx, double dy, double dz) {
        return new Prism(section, length, lying, turn, x + dx, y + dy, z + dz);
    }

    /** Height of its lowest point, m. */
    double lowest() {
        return z + (lying ? lowest(section) : 0);
    }

    /** True when a point lies within. */
    boolean contains(double[] p) {
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        double a = cos * (p[0] - x) + sin * (p[1] - y);
        double b = -sin * (p[0] - x) + cos * (p[1] - y);
        double c = p[2] - z;
        double along = lying ? a + length / 2 : c;
        return along > 0 && along < length && (lying ? section.contains(b, c) : section.contains(a, b));
    }

    /** A point of section and length, the length counted from 0, in space. */
    double[] place(double u, double v, double w) {
        double a = lying ? w - length / 2 : u;
        double b = lying ? u : v;
        double c = lying ? v : w;
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        return new double[] {x + cos * a - sin * b, y + sin * a + cos * b, z + c};
    }
}
