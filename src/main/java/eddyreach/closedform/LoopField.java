package eddyreach.closedform;

import eddyreach.numerics.Elliptic;
import eddyreach.numerics.GaussLegendre;
import org.apache.commons.math3.complex.Complex;

/** Magnetic field H in air of a circular loop and of a coil of rectangular section, in A/m. */
public final class LoopField {

    /** A field vector: radial and axial component, A/m. */
    public record Vector(double r, double z) {}

    private static final GaussLegendre RULE = GaussLegendre.of(16, 0, 1);
    private static final double GRADING = 0.15;
    private static final int PANELS = 12;

    private LoopField() {}

    /**
     * Field of a loop of radius a in the plane z = 0 (Smythe, Static and Dynamic Electricity, 1950, 7.10; m = 4 a r / alpha^2):
     *
     * <pre>
     *   Hz = I/(2 pi alpha) [K(m) + (a^2 - r^2 - z^2)/beta^2 E(m)]
     *   Hr = I z/(2 pi r alpha) [-K(m) + (a^2 + r^2 + z^2)/beta^2 E(m)],  alpha^2 = (a + r)^2 + z^2,  beta^2 = (a - r)^2 + z^2
     * </pre>
     *
     * <p>Accuracy about 1e-14 of the field's magnitude.
     *
     * @param a loop radius, m
     * @param r radius of the point, m, not negative
     * @param z axial position of the point, m
     * @param current current, A
     * @throws IllegalArgumentException on the wire itself
     */
    public static Vector loop(double a, double r, double z, double current) {
        double alpha2 = (a + r) * (a + r) + z * z;
        double beta2 = Args.positive("squared distance to the wire, m2", (a - r) * (a - r) + z * z);
        double alpha = Math.sqrt(alpha2);
        double k = Elliptic.kOfComplement(beta2 / alpha2);
        double e = Elliptic.eOfComplement(beta2 / alpha2);
        double scale = current / (2 * Math.PI * alpha);
        double hz = scale * (k + (a * a - r * r - z * z) / beta2 * e);
        double hr = r == 0 ? 0 : scale * z / r * ((a * a + r * r + z * z) / beta2 * e - k);
        return new Vector(hr, hz);
    }

    /**
     * Field of a coil, inside or outside its winding. Axially the thin solenoid in closed form (Derby and Olbert, Am. J. Phys. 78,
     * 2010, 229), radially Gauss panels graded towards the point's radius. Accuracy about 1e-9 of the largest field.
     *
     * @param coil coil of length above 0, its lower end at z = 0
     * @param r radius of the point, m, not negative
     * @param z axial position of the point, m
     * @param current current per turn, A
     */
    public static Vector coil(RectangularCoil coil, double r, double z, double current) {
        Args.positive("length, m", coil.length());
        double r1 = coil.innerRadius();
        double r2 = coil.outerRadius();
        double split = Math.max(r1, Math.min(r2, r));
        double[] h = new double[2];
        addGraded(split, r1, coil.length(), r, z, h);
        addGraded(split, r2, coil.length(), r, z, h);
        double scale = current * coil.turns() / (coil.length() * (r2 - r1));
        return new Vector(scale * h[0], scale * h[1]);
    }

    /**
     * Field at the centre of a loop lying on a conducting non-magnetic half-space, A/m (Ward and Hohmann, in Electromagnetic Methods
     * in Applied Geophysics, 1988, eq. 4.98): {@code Hz = -I/(k^2 a^3) [3 - (3 + 3 j k a - k^2 a^2) exp(-j k a)]}, k = (1 - j)/delta.
     * Below a = delta/100 the bracket loses digits.
     *
     * @param a loop radius, m
     * @param skinDepth skin depth of the half-space, m
     * @param current current, A
     */
    public static Complex centreOnHalfSpace(double a, double skinDepth, double current) {
        Complex ka = new Complex(1, -1).multiply(a / skinDepth);
        Complex square = ka.multiply(ka);
        Complex jka = ka.multiply(Complex.I);
        Complex bracket = new Complex(3)
                .subtract(jka.multiply(3)
                        .add(3)
                        .subtract(square)
                        .multiply(jka.negate().exp()));
        return bracket.divide(square).multiply(-current / a);
    }

    /** Adds the integral over sheet radii from near to far (in either order), panels shrinking towards near. */
    private static void addGraded(double near, double far, double length, double r, double z, double[] h) {
        double outer = far - near;
        if (outer == 0) {
            return;
        }
        for (int panel = 0; panel < PANELS; panel++) {
            double inner = panel == PANELS - 1 ? 0 : outer * GRADING;
            for (int i = 0; i < RULE.size(); i++) {
                double a = near + inner + (outer - inner) * RULE.node(i);
                addSheet(Math.abs(outer - inner) * RULE.weight(i), a, length, r, z, h);
            }
            outer = inner;
        }
    }

    /** Thin solenoid of radius a from z = 0 to the length, one ampere per metre, times the weight. */
    private static void addSheet(double weight, double a, double length, double r, double z, double[] h) {
        double gamma = (a - r) / (a + r);
        double hr = 0;
        double hz = 0;
        for (int end = 0; end < 2; end++) {
            double sign = end == 0 ? 1 : -1;
            double s = end == 0 ? z : z - length;
            double root = Math.hypot(s, a + r);
            double kc = Math.hypot(s, a - r) / root;
            hr += sign * a / root * Elliptic.cel(kc, 1, 1, -1);
            hz += sign * s / root * Elliptic.cel(kc, gamma * gamma, 1, gamma);
        }
        h[0] += weight / Math.PI * hr;
        h[1] += weight / Math.PI * a / (a + r) * hz;
    }
}
