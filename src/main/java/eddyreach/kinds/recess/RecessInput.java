package eddyreach.kinds.recess;

import eddyreach.engine.core.Progress;
import eddyreach.materials.Material;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Recess;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A study of the kind {@code recess}: maps over diameter and depth of a straight recess around a switch.
 *
 * @param header what every study says
 * @param materials materials of the wall, different from each other, one map each
 * @param thickness thickness of the wall, m
 * @param outer outer diameter of the wall, m, infinite without an end
 * @param bore diameter of the bore, m
 * @param surface height of the wall's surface above the active face, m, unless the face goes with the bottom
 * @param bottom whether the active face is level with the bottom of the recess
 * @param diameters diameters of the recess, m
 * @param depths depths of the recess below the surface, m
 * @param drawn the recess that is on the drawing, m; the middle of the map unless given
 * @param target what comes nearer
 */
public record RecessInput(
        StudyHeader header,
        List<Material> materials,
        double thickness,
        double outer,
        double bore,
        double surface,
        boolean bottom,
        ValueRange diameters,
        ValueRange depths,
        Optional<Size> drawn,
        Target target)
        implements StudyInput {

    public RecessInput {
        materials = List.copyOf(materials);
    }

    /**
     * Diameter and depth of a recess.
     *
     * @param diameter diameter, m
     * @param depth depth below the surface of the wall, m
     */
    public record Size(double diameter, double depth) {}

    /** The recess to be judged: the one that is drawn, or the middle of the map. */
    public Size judged() {
        return drawn.orElseGet(
                () -> new Size((diameters.first() + diameters.last()) / 2, (depths.first() + depths.last()) / 2));
    }

    /** The recesses in one of the materials, as they come out of the judged one. */
    public Recess recess(Material material) {
        Size size = judged();
        Mount.Opening opening = new Mount.Opening(size.diameter(), size.diameter(), 0, size.depth());
        return new Recess(
                new Mount(
                        material.id(),
                        "recess in " + material.name(),
                        "",
                        bottom ? size.depth() : surface,
                        Optional.of(new Mount.Wall(
                                material, thickness, outer, bore, List.of(opening), Double.POSITIVE_INFINITY)),
                        Optional.empty(),
                        List.of(),
                        Optional.empty()),
                bottom);
    }

    @Override
    public RecessResult run(Progress progress, Checkpoint checkpoint) {
        return RecessRunner.run(this, progress, checkpoint);
    }

    @Override
    public Optional<Predicate<String>> resumable() {
        return Optional.of(line -> RecessCell.of(line).isPresent());
    }
}
