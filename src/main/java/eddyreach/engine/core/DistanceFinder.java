package eddyreach.engine.core;

import eddyreach.field.join.TargetField;
import eddyreach.field.targets.OffAxisTarget;
import eddyreach.model.values.Target;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a target switches, with error bars from two steps of the ladder.
 *
 * <p>The error bar of a distance is what the coarser step, trimmed on its own standard target, makes of the same distance, or a share of
 * what the error of the impedance alone would make if that is more: errors of target and standard target may cancel by chance. Factor and
 * share were chosen on random cases (see {@code ErrorBarTest}).
 *
 * @param setup switch and standard target
 * @param fine the step that gives the results
 * @param coarse the next coarser step
 * @param reach end of the range of distances, m
 * @param intervals number of even intervals in which the range is sampled, at least 10
 */
public record DistanceFinder(
        Setup setup, ResolutionLadder.Step fine, ResolutionLadder.Step coarse, double reach, int intervals) {

    /** Stated error bar over the difference of two steps. */
    public static final double SAFETY = 2.5;

    /**
     * No bar of a distance is smaller than this share of the face diameter (2 um at M18), except for the standard target, on which the
     * switch is trimmed: two steps may agree by chance.
     */
    public static final double FLOOR = 1e-4;

    /** Share of the impedance's error that is assumed not to cancel. */
    public static final double SHARE = 0.2;

    /**
     * Follows the output with the target's conductance at the finer step.
     *
     * @param conductance loss conductance, S, over distance, m
     */
    public SwitchPoints points(DoubleUnaryOperator conductance) {
        return new SwitchPointFinder(fine.trim(), reach, intervals)
                .find(conductance, fine.bench().free().conductance());
    }

    /** The distances of known points, with their error bars. */
    public SwitchDistance distance(SwitchPoints points, Target target, TargetField field, TargetField coarseField) {
        Optional<Crossing> on = points.on();
        Optional<Crossing> off = points.off();
        if (on.isEmpty()) {
            return new SwitchDistance(unfinished(points), Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        // the switch is trimmed on the standard target: there the errors are one and the same
        double share = target.actsAs(setup.standard()) ? 0 : SHARE;
        double onError =
                error(target, share, field, coarseField, on.get(), coarse.trim().on());
        if (off.isEmpty()) {
            return new SwitchDistance(unfinished(points), on.get().distance(), Double.NaN, onError, Double.NaN);
        }
        double offError = error(
                target, share, field, coarseField, off.get(), coarse.trim().off());
        return new SwitchDistance(
                SwitchDistance.Outcome.SWITCHES, on.get().distance(), off.get().distance(), onError, offError);
    }

    /** What is to be said when there is no on or no off distance within the range. */
    public static SwitchDistance.Outcome unfinished(SwitchPoints points) {
        if (points instanceof SwitchPoints.NeverSwitches) {
            return SwitchDistance.Outcome.NEVER_ON;
        }
        return points instanceof SwitchPoints.OutOfRange
                ? SwitchDistance.Outcome.BEYOND_RANGE
                : SwitchDistance.Outcome.NEVER_OFF;
    }

    /** What the real outline of a target that is computed as a disc may change of the conductance beside the axis, S. */
    private double outline(Target target, TargetField field, SolvedSwitch.State here, Crossing crossing) {
        double shift = OffAxisLimits.outlineShift(target);
        if (!(field instanceof OffAxisTarget b) || shift == 0) {
            return 0;
        }
        double most = 0;
        for (double offset : new double[] {Math.abs(b.offset() - shift), b.offset() + shift}) {
            SolvedSwitch.State there = fine.bench().state(new OffAxisTarget(b.target(), offset), crossing.distance());
            most = Math.max(most, Math.abs(there.conductance() - here.conductance()));
        }
        return most;
    }

    private double error(
            Target target,
            double share,
            TargetField field,
            TargetField coarseField,
            Crossing crossing,
            double threshold) {
        SolvedSwitch.State here = fine.bench().state(field, crossing.distance());
        SolvedSwitch.State there = coarse.bench().state(coarseField, crossing.distance());
        double shift = Math.abs(there.conductance() - threshold);
        double impedance = here.change().subtract(there.change()).abs();
        double per = here.conductance() / here.resistance();
        double alone = share * impedance * per;
        double cut = fine.bench().effect(field).truncation(crossing.distance()) * per;
        double floor = share > 0 ? FLOOR * setup.switchModel().faceDiameter() : 0;
        return Math.max(
                floor,
                crossing.distanceError(SAFETY * Math.max(shift, alone) + cut + outline(target, field, here, crossing)));
    }
}
