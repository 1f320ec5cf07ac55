package eddyreach.engine.core;

import eddyreach.model.values.SwitchModel;
import eddyreach.switching.Crossing;

/**
 * The rule by which a result gets its numerical error bar: what the next coarser step of the ladder, trimmed on its own standard target,
 * makes of the same thing, times a safety factor.
 *
 * <p>For a distance that is the difference of the tank's conductances over the slope, or a share of what the error of the impedance alone
 * would make if that is more, since errors of target and standard target may cancel by chance; and no bar is below a floor. On the standard
 * target itself, on which the switch is trimmed, the errors are one and the same: no share and no floor. The constants are in
 * {@link AccuracyPolicy}.
 */
public final class ErrorBar {

    private final double share;
    private final double floor;

    private ErrorBar(double share, double floor) {
        this.share = share;
        this.floor = floor;
    }

    /** For any target before a switch. */
    public static ErrorBar of(SwitchModel model) {
        return new ErrorBar(AccuracyPolicy.UNCANCELLED, AccuracyPolicy.LEAST_BAR * model.faceDiameter());
    }

    /** For a target that may be the one on which the switch is trimmed, in the place where it is trimmed. */
    public static ErrorBar of(SwitchModel model, boolean trimmedHere) {
        return trimmedHere ? new ErrorBar(0, 0) : of(model);
    }

    /** Bar of anything, in its unit, from its difference between two steps. */
    public static double ofDifference(double difference) {
        return AccuracyPolicy.SAFETY * Math.abs(difference);
    }

    /** The least bar of a distance, m. */
    public double floor() {
        return floor;
    }

    /**
     * Bar of the tank's conductance, S.
     *
     * @param shift what the coarser step makes of the conductance against its own threshold, S
     * @param fine the tank at the finer step
     * @param coarse the tank at the coarser step
     * @param unresolved what else the change of impedance may be wrong by, ohm
     */
    public double conductance(double shift, TankState fine, TankState coarse, double unresolved) {
        double impedance = fine.change().subtract(coarse.change()).abs() + unresolved;
        return ofDifference(Math.max(Math.abs(shift), share * impedance * fine.conductancePerOhm()));
    }

    /** Bar of a distance, m, from that of the conductance there, S. */
    public double distance(Crossing crossing, double conductance) {
        return Math.max(floor, crossing.distanceError(conductance));
    }
}
