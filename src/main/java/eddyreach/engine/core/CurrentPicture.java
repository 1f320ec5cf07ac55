package eddyreach.engine.core;

import eddyreach.geometry.Section;
import java.util.List;

/**
 * Eddy-current density inside one target, for one ampere peak in the coil. The grid is indexed {@code [iz][ir]}.
 *
 * @param id the target's id
 * @param title readable title
 * @param frequency at which the tank oscillates with it, Hz
 * @param skins its conductors; none if nothing conducts
 * @param r radii, m, ascending from 0
 * @param z depth below the target's near face, m, ascending from 0
 * @param density magnitude of the current density, A/m2
 */
public record CurrentPicture(
        String id, String title, double frequency, List<Skin> skins, double[] r, double[] z, double[][] density) {

    /** The arrays are copied, here and when they are asked for. */
    public CurrentPicture {
        skins = List.copyOf(skins);
        r = r.clone();
        z = z.clone();
        density = FieldPicture.copy(density);
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
    public double[][] density() {
        return FieldPicture.copy(density);
    }

    /**
     * A conductor in the target.
     *
     * @param material its name
     * @param where its section, the target's near face in the plane z = 0
     * @param depth its own skin depth, m
     */
    public record Skin(String material, Section where, double depth) {}
}
