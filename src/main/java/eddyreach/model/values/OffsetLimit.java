package eddyreach.model.values;

import eddyreach.units.Units;
import java.util.Optional;

/** How wide a target and how far beside the switch it may lie, in radii of the core. */
public final class OffsetLimit {

    /** From the axis of the switch to a target's edge, from which on the edge does not matter: a foil's loss changes by less than 1 %. */
    public static final double ENDLESS = 6;

    /**
     * From the axis of the switch to the nearest edge of a target that lies wholly beside it, from which on it is not seen: the field falls
     * with the third power and the loss of a half-plane from there on with the fourth, to about 1e-3 of that before the face.
     */
    public static final double UNSEEN = 6;

    /** Of radius and offset together: the many waves beyond it would take minutes. */
    private static final double MOST = 12;

    private OffsetLimit() {}

    /** True for a sheet that reaches so far beyond the switch on all sides that its edge does not matter. */
    public static boolean endless(Target target, double core) {
        return target.body() instanceof Body.Sheet && target.radius() > ENDLESS * core + target.offset();
    }

    /** Largest offset, m, at which a target is still noticed; infinite when it is endless. */
    public static double farthest(Target target, double core) {
        return target.radius() + UNSEEN * core;
    }

    /** True for a target that lies so far beside the switch that it is not noticed. */
    public static boolean unseen(Target target, double core) {
        return target.offset() > farthest(target, core);
    }

    /** What is wrong when a target reaches too far out to be computed. */
    public static Optional<String> problem(Target target, SwitchModel model) {
        double core = model.coreRadius();
        double offset = Math.min(target.offset(), farthest(target, core));
        double sum = offset + target.radius();
        if (offset == 0 || endless(target, core) || unseen(target, core) || !(sum > MOST * core)) {
            return Optional.empty();
        }
        return Optional.of(length(target.offset()) + " and half the target's width, " + length(target.radius())
                + ", are together more than " + length(MOST * core) + ", " + Math.round(MOST)
                + " radii of this switch's core: too wide to be computed with its edge so near, give a narrower target"
                + " whose near edge lies where this one's does");
    }

    private static String length(double metres) {
        return Units.length(Math.rint(metres * 1e5) / 1e5);
    }
}
