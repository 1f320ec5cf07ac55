package eddyreach.kinds.hysteresis;

import java.util.OptionalDouble;

/**
 * What the machine does.
 *
 * @param near mean distance of the target at its near place, m; NaN when no places are given
 * @param far mean distance at its far place, m; NaN when no places are given
 * @param vibration amplitude of the vibration, peak, m
 * @param frequency frequency of the vibration, Hz; empty for one that the switch follows
 * @param speed speed at which the target goes between the places, m/s; empty when not given
 * @param noise standard deviation of the demodulated amplitude, V
 * @param repeats number of repeats of which the repeat accuracy is told
 */
record Machine(
        double near,
        double far,
        double vibration,
        OptionalDouble frequency,
        OptionalDouble speed,
        double noise,
        int repeats) {

    /** Whether the two places are given. */
    boolean places() {
        return !Double.isNaN(near);
    }
}
