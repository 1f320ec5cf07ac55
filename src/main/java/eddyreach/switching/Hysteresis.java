package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.UnworkableException;

/**
 * The on and off distance of one target against what the machine does: a target that goes to and fro between two places and shakes about each by a sine.
 *
 * <p>Slow shaking, which the switch follows: the output then depends on the distance alone. Shaking by the amplitude a moves the target through 2a; where
 * that takes in both distances the output chatters. {@link Vibration} follows a fast one.
 *
 * @param onDistance distance at which the approaching target is recognised, m
 * @param offDistance distance at which the leaving target is lost, m, more than the other
 */
public record Hysteresis(double onDistance, double offDistance) {

    public Hysteresis {
        Require.positive("on distance", onDistance, "m");
        Require.positive("off distance", offDistance, "m");
        if (!(offDistance > onDistance)) {
            throw new IllegalArgumentException(
                    "off distance " + offDistance + " m: must be beyond the on distance " + onDistance + " m");
        }
    }

    /** That of a target. */
    public static Hysteresis of(SwitchPoints.Switches points) {
        return new Hysteresis(points.onDistance(), points.offDistance());
    }

    /** Differential travel H: the dead zone in which the output keeps its state, m. */
    public double differentialTravel() {
        return offDistance - onDistance;
    }

    /** What the output does. */
    public sealed interface Verdict {}

    /**
     * It goes on at the near place, off at the far one, once each.
     *
     * @param reserve the least of what each condition has in hand, m
     */
    public record Clean(double reserve) implements Verdict {}

    /**
     * It goes on and off with the vibration while the target passes.
     *
     * @param nearest mean distance at which this begins, m
     * @param farthest mean distance at which this ends, m
     * @param leastTravel differential travel from which on it does not, m
     */
    public record Chatters(double nearest, double farthest, double leastTravel) implements Verdict {

        /**
         * Changes of the output during one slow passage.
         *
         * @param frequency frequency of the vibration, Hz
         * @param speed speed of the mean distance, m/s
         */
        public double changes(double frequency, double speed) {
            Require.positive("frequency of the vibration", frequency, "Hz");
            return 1 + 2 * frequency * (farthest - nearest) / Require.positive("speed", speed, "m/s");
        }
    }

    /**
     * The target at its near place is not recognised.
     *
     * @param excess by how much it would have to come nearer, m
     */
    public record NeverOn(double excess) implements Verdict {}

    /**
     * The target at its far place is still recognised: the dead zone is wider than the way that it goes.
     *
     * @param excess by how much it would have to go farther, m
     * @param mostTravel differential travel up to which it is lost there, m; negative when the on distance alone lies beyond that place
     */
    public record NeverOff(double excess, double mostTravel) implements Verdict {}

    /**
     * Differential travels between two limits.
     *
     * @param least more than this, m
     * @param most no more than this, m
     */
    public record Travels(double least, double most) {}

    /**
     * The verdict on a machine. A place counts only when the target is recognised, or lost, there without the help of the vibration.
     *
     * @param near mean distance at the near place, m
     * @param far mean distance at the far place, m
     * @param vibration amplitude of the vibration, peak, m
     */
    public Verdict verdict(double near, double far, double vibration) {
        Require.notNegative("near place", near, "m");
        UnworkableException.require("far place", far, "m", near, Double.MAX_VALUE);
        UnworkableException.require("amplitude of the vibration", vibration, "m", 0, Double.MAX_VALUE);
        if (near > onDistance) {
            return new NeverOn(near - onDistance);
        }
        if (far < offDistance) {
            return new NeverOff(offDistance - far, far - onDistance);
        }
        double travel = differentialTravel();
        if (2 * vibration >= travel) {
            return new Chatters(offDistance - vibration, onDistance + vibration, 2 * vibration);
        }
        return new Clean(Math.min(travel - 2 * vibration, Math.min(onDistance - near, far - offDistance)));
    }

    /**
     * Differential travels that serve a machine: more than the whole way of the vibration, and no more than leaves the dead zone before the far place.
     *
     * @param far mean distance at the far place, m
     * @param vibration amplitude of the vibration, peak, m
     * @throws UnworkableException when the vibration is too wide for any, with the vibrations that leave one
     */
    public Travels travels(double far, double vibration) {
        double room = far - onDistance;
        if (!(2 * vibration < room)) {
            throw new UnworkableException(
                    "the vibration takes all the way from the on distance to the far place",
                    "amplitude of the vibration",
                    vibration,
                    "m",
                    0,
                    room / 2);
        }
        return new Travels(2 * vibration, room);
    }
}
