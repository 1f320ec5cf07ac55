package eddyreach.study;

import eddyreach.model.Target;

/**
 * What one target does in one mount.
 *
 * @param target the target
 * @param floor least distance that the mount lets it have, m
 * @param curve the tank over the distance, from there on
 * @param distance where it switches
 * @param shift switch-on distance against that in free air, relative to s_r; NaN unless both exist
 * @param shiftError numerical error bar of the shift
 */
public record MountTarget(
        Target target, double floor, Curve curve, SwitchDistance distance, double shift, double shiftError) {

    /** Largest shift that a mount may cause, in s_r: common practice. */
    public static final double LARGEST_SHIFT = 0.1;

    /** True when the mount moves the switch-on distance by no more than a tenth of s_r. */
    public boolean within() {
        return Math.abs(shift) <= LARGEST_SHIFT;
    }

    /** True when it never switches because the mount stops it, metal or not. */
    public boolean keptAway() {
        return floor > 0 && distance.outcome() == SwitchDistance.Outcome.NEVER_ON;
    }

    /** Differential travel that is left, m; NaN unless the target switches. */
    public double travel() {
        return distance.off() - distance.on();
    }
}
