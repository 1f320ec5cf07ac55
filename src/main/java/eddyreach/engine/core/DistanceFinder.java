package eddyreach.engine.core;

import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a target switches, with error bars from two steps of the ladder by the rule of {@link ErrorBar}.
 *
 * @param setup switch and standard target
 * @param fine the step that gives the results
 * @param coarse the next coarser step
 * @param reach end of the range of distances, m
 * @param intervals number of even intervals in which the range is sampled, at least 10
 */
public record DistanceFinder(
        Setup setup, ResolutionLadder.Step fine, ResolutionLadder.Step coarse, double reach, int intervals) {

    /**
     * Follows the output with the target's conductance at the finer step.
     *
     * @param conductance loss conductance, S, over distance, m
     */
    public SwitchPoints points(DoubleUnaryOperator conductance) {
        return new SwitchPointFinder(fine.trim(), reach, intervals)
                .find(conductance, fine.solved().free().conductance());
    }

    /**
     * The distances of known points, with their error bars.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SwitchDistance distance(SwitchPoints points, Target target, PlacedTarget field, PlacedTarget coarseField) {
        Optional<Crossing> on = points.on();
        Optional<Crossing> off = points.off();
        if (on.isEmpty()) {
            return new SwitchDistance(unfinished(points), Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        ErrorBar bar = ErrorBar.of(setup.switchModel(), target.actsAs(setup.standard()));
        double onError =
                error(target, bar, field, coarseField, on.get(), coarse.trim().on());
        if (off.isEmpty()) {
            return new SwitchDistance(unfinished(points), on.get().distance(), Double.NaN, onError, Double.NaN);
        }
        double offError =
                error(target, bar, field, coarseField, off.get(), coarse.trim().off());
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

    private double error(
            Target target,
            ErrorBar bar,
            PlacedTarget field,
            PlacedTarget coarseField,
            Crossing crossing,
            double threshold) {
        TankState here = fine.solved().state(field, crossing.distance());
        TankState there = coarse.solved().state(coarseField, crossing.distance());
        double cut = fine.solved().effect(field).truncation(crossing.distance()) * here.conductancePerOhm();
        return bar.distance(
                crossing,
                bar.conductance(there.conductance() - threshold, here, there, 0)
                        + cut
                        + OffAxisLimits.outline(fine.solved(), target, field, here, crossing.distance()));
    }
}
