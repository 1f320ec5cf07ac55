package eddyreach.geometry;

/**
 * A rectangle in the (r, z) half-plane; revolved about the axis it is a ring or, with r0 = 0, a disc. Its inner side may lean outwards, as
 * that of a countersink does.
 *
 * @param r0 inner radius at the lower end, m, not negative
 * @param r1 outer radius, m, above r0
 * @param z0 lower end, m
 * @param z1 upper end, m, above z0
 * @param flare by how much the inner radius grows from the lower to the upper end, m, not negative
 */
public record Section(double r0, double r1, double z0, double z1, double flare) {

    public Section {
        if (!(r0 >= 0
                && flare >= 0
                && r1 > r0 + flare
                && z1 > z0
                && Double.isFinite(r1)
                && Double.isFinite(z0)
                && Double.isFinite(z1))) {
            throw new IllegalArgumentException(
                    "inverted or unbounded section r " + r0 + " + " + flare + ".." + r1 + " z " + z0 + ".." + z1);
        }
    }

    /** A rectangle. */
    public Section(double r0, double r1, double z0, double z1) {
        this(r0, r1, z0, z1, 0);
    }

    /** Inner radius at a height, m; beyond an end that of the end. */
    public double innerAt(double z) {
        return flare == 0 ? r0 : r0 + flare * Math.max(0, Math.min(1, (z - z0) / (z1 - z0)));
    }

    /** Length of the inner side over its height: 1 where it runs along the axis. */
    public double steepness() {
        return Math.hypot(1, flare / (z1 - z0));
    }

    /** Height in the middle, m. */
    public double middle() {
        return (z0 + z1) / 2;
    }

    /** The same section moved along the axis by dz metres. */
    public Section shifted(double dz) {
        return new Section(r0, r1, z0 + dz, z1 + dz, flare);
    }

    /** Area, m2. */
    public double area() {
        return (r1 - r0 - flare / 2) * (z1 - z0);
    }

    /** True when the interiors share more than a rounding error; of two that flare, the rectangles around them. */
    public boolean overlaps(Section o) {
        double eps = 1e-9 * Math.max(Math.max(r1, o.r1), Math.max(z1 - z0, o.z1 - o.z0));
        double low = Math.max(z0, o.z0);
        return Math.min(r1, o.r1) - Math.max(innerAt(low), o.innerAt(low)) > eps && Math.min(z1, o.z1) - low > eps;
    }

    /** True when the two share a stretch of border, or overlap, beyond a rounding error. */
    public boolean touches(Section o) {
        double eps = 1e-9 * Math.max(Math.max(r1, o.r1), Math.max(z1 - z0, o.z1 - o.z0));
        double radial = Math.min(r1, o.r1) - Math.max(r0, o.r0);
        double axial = Math.min(z1, o.z1) - Math.max(z0, o.z0);
        return radial > -eps && axial > -eps && (radial > eps || axial > eps);
    }

    /** True when the point (r, z) lies inside or on the border. */
    public boolean contains(double r, double z) {
        return r >= innerAt(z) && r <= r1 && z >= z0 && z <= z1;
    }
}
