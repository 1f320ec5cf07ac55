package eddyreach.kinds.mount;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Target;
import java.util.Optional;

/**
 * What one target does in one mount.
 *
 * @param target the target
 * @param floor least distance that the mount lets it have, m
 * @param curve the tank over the distance, from there on
 * @param distance where it switches
 * @param free where it switches in free air
 * @param shift switch-on distance against that in free air, relative to s_r; NaN unless both exist
 * @param shiftError error bar of the shift, numerical and, beside a straight edge, of the model
 * @param spread the latter alone, half of what the shifts differ by that a straight edge lies between; 0 without an edge
 * @param assurance how far it is assured over all tolerances; empty when that could not be computed
 */
public record MountTarget(
        Target target,
        double floor,
        Curve curve,
        SwitchDistance distance,
        SwitchDistance free,
        double shift,
        double shiftError,
        double spread,
        Optional<Assurance> assurance) {

    /** Largest shift that a mount may cause, in s_r: common practice. */
    public static final double LARGEST_SHIFT = 0.1;

    /**
     * True when the mount moves the switch-on distance by no more than a tenth of s_r, a straight edge taken as the worse of its bounds, or
     * when the target is detected neither in free air nor here.
     */
    public boolean within() {
        return Math.abs(shift) + spread <= LARGEST_SHIFT || neverDetected();
    }

    /** True when it is not detected, in free air either. */
    public boolean neverDetected() {
        return free.outcome() == SwitchDistance.Outcome.NEVER_ON
                && distance.outcome() == SwitchDistance.Outcome.NEVER_ON;
    }

    /** True when it never switches because the mount stops it, metal or not. */
    public boolean keptAway() {
        return floor > 0 && distance.outcome() == SwitchDistance.Outcome.NEVER_ON && !neverDetected();
    }

    /** Differential travel that is left, m; NaN unless the target switches. */
    public double travel() {
        return distance.off() - distance.on();
    }
}
