package eddyreach.field.axial;

import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.mesh.MeshMaker.Fineness;
import eddyreach.numerics.SelfCheckException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/**
 * Switch and target in one field problem: works at any distance, contact included, and is the check of the joined path.
 *
 * <p>With and without the target are solved on the same mesh, so that its error cancels from the difference.
 */
public final class DirectSolve {

    private final Complex change;
    private final Complex impedance;

    /**
     * @param parts core, housing and mount
     * @param coil the winding
     * @param target the target's rings where they stand, z not below 0
     * @param omega angular frequency, rad/s
     * @param celsius temperature of everything
     * @param resolution how fine
     * @param scale radius of the core, m
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public DirectSolve(
            List<Part> parts,
            CoilRegion coil,
            List<Part> target,
            double omega,
            double celsius,
            Resolution resolution,
            double scale) {
        this(parts, coil, target, omega, celsius, resolution.target(), scale);
    }

    /**
     * The same on a mesh of another fineness than that of targets, which resolves waves that are not there.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public DirectSolve(
            List<Part> parts,
            CoilRegion coil,
            List<Part> target,
            double omega,
            double celsius,
            Fineness fine,
            double scale) {
        List<Part> all = new ArrayList<>(parts);
        all.addAll(target);
        Layout layout = new Layout(all, coil, null, 1, fine, scale, omega, celsius);
        // the winding, if it has losses, is the layout's last part; the target's parts stand just before it
        Media media = Media.of(layout.parts, coil.muLoss(), omega, celsius);
        impedance = new Scatterer(layout, media, coil, omega, false).impedance();
        int active = (int) target.stream().filter(p -> p.material().hasEffect()).count();
        int first = layout.parts.size() - active - (coil.muLoss() > 0 ? 1 : 0);
        change =
                impedance.subtract(new Scatterer(layout, media.without(first, active), coil, omega, false).impedance());
    }

    /** Change of the impedance by the target, ohm. */
    public Complex change() {
        return change;
    }

    /** Impedance with the target, ohm, without the winding's own resistance. */
    public Complex impedance() {
        return impedance;
    }
}
