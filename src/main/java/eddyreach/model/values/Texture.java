package eddyreach.model.values;

import eddyreach.materials.Material;
import eddyreach.materials.Specimen;
import eddyreach.units.Units;
import java.util.Locale;

/** Whether a sheet is solid, and the solid sheet that stands for it when it is not. */
public sealed interface Texture {

    /** Largest share of holes for which the rule of {@link Perforated} is used. */
    double MOST_OPEN = 0.5;

    /** Nothing but material. */
    record Solid() implements Texture {}

    /**
     * Round holes in a regular pattern, small against the coil. For currents in its plane the sheet conducts as a solid one of
     * {@code sigma (1 - f)/(1 + f)}: the two-dimensional form of Maxwell's rule (Treatise, 1873, article 314), which Rayleigh (Phil.
     * Mag. 34, 1892, 481) found good to a few per cent up to f of about one half in a square array.
     *
     * @param openArea share f of the area that is open, 0 to {@link #MOST_OPEN}
     */
    record Perforated(double openArea) implements Texture {}

    /**
     * A square mesh of round wires that touch with good contact: along each direction the sheet conductance is the section of a wire
     * times sigma over the pitch (common practice), here as a sheet as thick as the wire.
     *
     * @param wire diameter of the wires, m
     * @param pitch distance from wire to wire, m, above the diameter
     */
    record Mesh(double wire, double pitch) implements Texture {}

    /** Conductivity of the solid sheet over that of the material. */
    default double conductivityRatio() {
        if (this instanceof Perforated p) {
            return (1 - p.openArea()) / (1 + p.openArea());
        }
        return this instanceof Mesh m ? Math.PI * m.wire() / (4 * m.pitch()) : 1;
    }

    /** What a sheet of a material that is not magnetic counts as. */
    default Material of(Material m) {
        if (this instanceof Solid || !m.hasEffect()) {
            return m;
        }
        String what = this instanceof Mesh mesh
                ? "mesh, pitch " + Units.length(mesh.pitch())
                : String.format(Locale.ROOT, "%.0f %% open", 100 * ((Perforated) this).openArea());
        return m.in(
                String.format(Locale.ROOT, "%s-times-%.4f", m.id(), conductivityRatio()),
                m.name() + " (" + what + ")",
                m.source() + "; as a solid sheet of the same conductance in its plane",
                new Specimen(m.specimen().celsius(), conductivityRatio()));
    }
}
