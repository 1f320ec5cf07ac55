package eddyreach.study;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import java.util.List;

/**
 * The field on a rectangular grid of the half-plane r at least 0, for one ampere peak in the coil. Grids are indexed
 * {@code [iz][ir]}.
 *
 * @param id short name used in file names, such as {@code without-target} or the target's id
 * @param title readable title
 * @param r radii of the grid, m, ascending from 0
 * @param z heights of the grid, m, ascending
 * @param flux flux 2 pi r A through the circle at each point in phase with the coil current, Wb
 * @param strength magnitude of the magnetic field strength, A/m
 * @param parts everything drawn, to scale, target included
 * @param winding the coil's section
 */
public record FieldPicture(
        String id,
        String title,
        double[] r,
        double[] z,
        double[][] flux,
        double[][] strength,
        List<Part> parts,
        Section winding) {}
