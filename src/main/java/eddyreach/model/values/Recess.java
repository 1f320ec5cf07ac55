package eddyreach.model.values;

import eddyreach.geometry.Part;
import java.util.List;
import java.util.Optional;

/**
 * The mounts that one mount becomes when its recess gets another diameter or depth.
 *
 * @param base the mount, with a wall
 * @param sinks whether the active face moves with the bottom of the recess, so that a deeper recess is a switch sunk deeper
 */
public record Recess(Mount base, boolean sinks) {

    /** Widest recess that is looked at in a wall without an end, in diameters of the face. */
    private static final double WIDEST = 6;

    /** What must be left of the wall below and around a recess, m. */
    private static final double LEAST_WALL = 1e-3;

    private Mount.Wall wall() {
        return base.wall().orElseThrow();
    }

    private Optional<Mount.Opening> first() {
        return wall().openings().stream().findFirst();
    }

    /** Widest diameter of the recess, m; that of the bore without one. */
    public double diameter() {
        return first().map(Mount.Opening::front).orElse(wall().bore());
    }

    /** Depth of the recess below the surface, m; without one how far the switch is sunk, 0 when it is not. */
    public double depth() {
        List<Mount.Opening> all = wall().openings();
        return all.isEmpty()
                ? Math.max(0, base.surface())
                : all.get(all.size() - 1).to();
    }

    /** Largest diameter that makes sense, m. */
    public double widest(SwitchModel model) {
        return Math.min(Math.min(wall().diameter(), 2 * wall().edge()) - LEAST_WALL, WIDEST * model.faceDiameter());
    }

    /** Largest depth that wall and switch allow, m. */
    public double deepest(SwitchModel model) {
        double wall = wall().thickness() - LEAST_WALL;
        return sinks || model.rearEnd().isEmpty()
                ? wall
                : Math.min(wall, base.surface() - model.rearEnd().getAsDouble());
    }

    /**
     * The mount with another recess. Cones and steps keep their shape: all diameters grow alike, all depths in proportion.
     *
     * @param diameter widest diameter, m; no wider than the bore means without a recess
     * @param depth depth below the surface, m
     */
    public Mount with(double diameter, double depth) {
        Mount.Wall w = wall();
        List<Mount.Opening> openings;
        if (w.openings().isEmpty()) {
            openings = diameter > w.bore() && depth > 0
                    ? List.of(new Mount.Opening(diameter, diameter, 0, depth))
                    : List.of();
        } else {
            double wider = diameter - diameter();
            double deeper = depth / depth();
            openings = w.openings().stream()
                    .map(o ->
                            new Mount.Opening(o.front() + wider, o.back() + wider, o.from() * deeper, o.to() * deeper))
                    .toList();
        }
        double moved = sinks ? depth - depth() : 0;
        // washer and nut lie against the back of the wall and go with it
        List<Part> rings = base.rings().stream()
                .map(p -> p.name().equals("washer") || p.name().equals("nut") ? p.shifted(moved) : p)
                .toList();
        return new Mount(
                base.id(),
                base.name(),
                base.note(),
                base.surface() + moved,
                Optional.of(new Mount.Wall(w.material(), w.thickness(), w.diameter(), w.bore(), openings, w.edge())),
                base.cover(),
                rings,
                base.background());
    }
}
