package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;

/**
 * One target of a sweep.
 *
 * @param value the quantity that is varied, SI
 * @param distance where it switches
 */
public record SweepPoint(double value, SwitchDistance distance) {

    /** True when the target is recognised at contact or anywhere else. */
    public boolean seen() {
        return distance.outcome() != SwitchDistance.Outcome.NEVER_ON;
    }

    /** True when it switches farther away than was searched, so that its distance is unknown. */
    public boolean beyond() {
        return distance.outcome() == SwitchDistance.Outcome.BEYOND_RANGE;
    }

    /** Switch-on distance, m; NaN when there is none within the range. */
    public double on() {
        return distance.on();
    }
}
