package eddyreach.mesh;

import eddyreach.geometry.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Builds the tensor mesh for a set of parts: element ends at all their faces, elements refined geometrically towards the faces of
 * everything that has a singular corner, and inside conductors towards the skin.
 */
public final class MeshMaker {

    /**
     * How fine a mesh is.
     *
     * @param degree polynomial degree
     * @param corner size of the elements at corners, relative to the scale or to the part if that is smaller
     * @param skin size of the elements at a conductor's surface, in skin depths
     * @param growth ratio of the lengths of neighbouring elements
     * @param cap largest elements among the parts, relative to the scale; further out they grow with the distance
     * @param far distance of the outer boundary from the parts, relative to the scale
     */
    public record Fineness(int degree, double corner, double skin, double growth, double cap, double far) {}

    private static final double ANY = Double.POSITIVE_INFINITY;

    /** Length of an element outside the parts over its distance from them. */
    private static final double OUTWARD = 0.7;

    /** Length of an element in the far part of a mount over its distance from the near one. */
    private static final double RELAXED = 0.25;

    private final Fineness fine;
    private final double scale;
    private final Slant slant;
    private final List<Section> cones = new ArrayList<>();
    private final Grading r;
    private final Grading z;
    private double outer;
    private double deepest;
    private double near = ANY;
    private double deep = -ANY;
    private double bottom;
    private double top;

    /**
     * @param fine how fine
     * @param scale radius of the coil or whatever sets the size of the field, m
     */
    public MeshMaker(Fineness fine, double scale) {
        this(fine, scale, Slant.NONE);
    }

    /** The same with upright lines that lean. */
    public MeshMaker(Fineness fine, double scale, Slant slant) {
        this.fine = fine;
        this.scale = scale;
        this.slant = slant;
        outer = scale;
        deepest = -scale;
        r = new Grading(scale);
        z = new Grading(scale);
        r.mark(0, ANY, ANY);
    }

    /**
     * Lets elements grow, whatever asks for small ones, beyond a radius and below a height: there the fields of coil and target are
     * smooth and weak. To be called before any part is added.
     *
     * @param radius radius from which they may grow, m
     * @param height height below which they may grow, m
     */
    public void relaxBeyond(double radius, double height) {
        near = radius;
        deep = height;
    }

    private void markRadius(double x, double height, double below, double above) {
        double least = RELAXED * (x - near);
        double line = slant.line(x, height);
        r.mark(line, across(x, line, height, -Math.max(least, below)), across(x, line, height, Math.max(least, above)));
    }

    /** Difference of the names of lines as far apart as a signed length, m. */
    private double across(double x, double line, double height, double length) {
        return slant.none() || Double.isInfinite(length)
                ? Math.abs(length)
                : Math.abs(slant.line(x + length, height) - line);
    }

    private void markHeight(double x, double below, double above) {
        double least = RELAXED * (deep - x);
        z.mark(x, Math.max(least, below), Math.max(least, above));
    }

    /**
     * Adds a part: its corners are singular, and fields decay over its skin depth.
     *
     * @param s its section
     * @param skinDepth its skin depth, m, infinite for an insulator
     */
    public void add(Section s, double skinDepth) {
        double outside = fine.corner * Math.min(scale, s.r1());
        double inside = Math.min(outside, fine.skin * skinDepth);
        double height = s.middle();
        if (s.r0() > 0) {
            double steep = s.steepness();
            markRadius(s.innerAt(height), height, steep * outside, steep * inside);
        }
        markRadius(s.r1(), height, inside, outside);
        if (s.flare() > 0) {
            cones.add(s);
        }
        markHeight(s.z0(), outside, inside);
        markHeight(s.z1(), inside, outside);
        extend(s);
    }

    /** Adds a region whose faces must be element ends but are smooth. */
    public void addSmooth(Section s) {
        r.mark(slant.line(s.r0(), s.middle()), ANY, ANY);
        r.mark(slant.line(s.r1(), s.middle()), ANY, ANY);
        z.mark(s.z0(), ANY, ANY);
        z.mark(s.z1(), ANY, ANY);
        // a coil may lie deep behind the metal that stands above its face
        deepest = Math.min(deepest, s.z0());
        extend(s);
    }

    private void extend(Section s) {
        outer = Math.max(outer, s.r1());
        bottom = Math.min(bottom, s.z0());
        top = Math.max(top, s.z1());
    }

    /** The mesh for everything added. */
    public TensorMesh build() {
        double far = fine.far() * scale;
        r.mark(outer + far, ANY, ANY);
        z.mark(bottom - far, ANY, ANY);
        z.mark(top + far, ANY, ANY);
        // waves of the largest wavenumber cross the whole width of the parts; outside the scattered field gets smoother
        double smooth = Math.min(near, outer);
        DoubleUnaryOperator capR = x -> slant.narrowest(x)
                * (fine.cap() * scale
                        + RELAXED * Math.max(0, Math.min(x, outer) - smooth)
                        + OUTWARD * Math.max(0, x - outer));
        DoubleUnaryOperator capZ =
                x -> fine.cap() * scale / steepness(x) + OUTWARD * Math.max(0, Math.max(x - scale, deepest - x));
        return new TensorMesh(
                r.build(fine.growth(), capR, fine.degree()), z.build(fine.growth(), capZ, fine.degree()), slant);
    }

    /** How much farther it is along the cone at a height than along the axis. */
    private double steepness(double height) {
        return cones.stream()
                .filter(s -> s.z0() <= height && s.z1() >= height)
                .mapToDouble(Section::steepness)
                .max()
                .orElse(1);
    }
}
