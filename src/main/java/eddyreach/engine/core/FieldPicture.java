package eddyreach.engine.core;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The field on a rectangular grid of the half-plane r at least 0, for one ampere peak in the coil. Grids are indexed
 * {@code [iz][ir]}.
 *
 * @param id short name used in file names, such as {@code without-target} or the target's id
 * @param target name of the target; empty without one
 * @param r radii of the grid, m, ascending from 0
 * @param z heights of the grid, m, ascending
 * @param flux flux 2 pi r A through the circle at each point in phase with the coil current, Wb
 * @param strength magnitude of the magnetic field strength, A/m
 * @param parts everything drawn, to scale, target included
 * @param winding the coil's section
 * @param ball a target that is a ball, which no part can be
 */
public record FieldPicture(
        String id,
        Optional<String> target,
        double[] r,
        double[] z,
        double[][] flux,
        double[][] strength,
        List<Part> parts,
        Section winding,
        Optional<Ball> ball) {

    /** The arrays are copied, here and when they are asked for. */
    public FieldPicture {
        r = r.clone();
        z = z.clone();
        flux = copy(flux);
        strength = copy(strength);
        parts = List.copyOf(parts);
    }

    @Override
    public double[] r() {
        return r.clone();
    }

    @Override
    public double[] z() {
        return z.clone();
    }

    @Override
    public double[][] flux() {
        return copy(flux);
    }

    @Override
    public double[][] strength() {
        return copy(strength);
    }

    static double[][] copy(double[][] rows) {
        return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
    }

    /**
     * A ball on the axis.
     *
     * @param name its name
     * @param z height of its centre, m
     * @param radius its radius, m
     * @param permeability magnitude of its relative permeability
     */
    public record Ball(String name, double z, double radius, double permeability) {

        /** True when a point lies inside. */
        boolean contains(double r, double height) {
            return Math.hypot(r, height - z) <= radius;
        }
    }
}
