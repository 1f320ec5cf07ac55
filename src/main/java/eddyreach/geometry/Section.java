package eddyreach.geometry;

/**
 * A rectangle in the (r, z) half-plane; revolved about the axis it is a ring or, with r0 = 0, a disc.
 *
 * @param r0 inner radius, m, not negative
 * @param r1 outer radius, m, above r0
 * @param z0 lower end, m
 * @param z1 upper end, m, above z0
 */
public record Section(double r0, double r1, double z0, double z1) {

    public Section {
        if (!(r0 >= 0 && r1 > r0 && z1 > z0 && Double.isFinite(r1) && Double.isFinite(z0) && Double.isFinite(z1))) {
            throw new IllegalArgumentException(
                    "inverted or unbounded section r " + r0 + ".." + r1 + " z " + z0 + ".." + z1);
        }
    }

    /** The same section moved along the axis by dz metres. */
    public Section shifted(double dz) {
        return new Section(r0, r1, z0 + dz, z1 + dz);
    }

    /** Area of the rectangle, m2. */
    public double area() {
        return (r1 - r0) * (z1 - z0);
    }

    /** True when the interiors share more than a rounding error. */
    public boolean overlaps(Section o) {
        double eps = 1e-9 * Math.max(Math.max(r1, o.r1), Math.max(z1 - z0, o.z1 - o.z0));
        return Math.min(r1, o.r1) - Math.max(r0, o.r0) > eps && Math.min(z1, o.z1) - Math.max(z0, o.z0) > eps;
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
        return r >= r0 && r <= r1 && z >= z0 && z <= z1;
    }
}
