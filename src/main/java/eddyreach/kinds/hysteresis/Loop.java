package eddyreach.kinds.hysteresis;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Target;
import eddyreach.switching.Hysteresis;
import eddyreach.switching.RepeatAccuracy;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The loop of one target.
 *
 * @param target the target
 * @param distance its distances
 * @param verdict what the output does on this machine; empty without places, or when the target does not switch
 * @param travels differential travels that would serve the machine, m; empty when none does or no places are given
 * @param repeat scatter of the on distance by the noise; empty without noise
 * @param inTime changes of the output in each cycle of the vibration at the worst mean distance, followed in time; empty without a frequency
 */
record Loop(
        Target target,
        SwitchDistance distance,
        Optional<Hysteresis.Verdict> verdict,
        Optional<Hysteresis.Travels> travels,
        Optional<RepeatAccuracy> repeat,
        OptionalDouble inTime) {

    /** Whether there is a loop at all. */
    boolean switches() {
        return distance.outcome() == SwitchDistance.Outcome.SWITCHES;
    }

    /** Differential travel, m. */
    double travel() {
        return distance.off() - distance.on();
    }
}
