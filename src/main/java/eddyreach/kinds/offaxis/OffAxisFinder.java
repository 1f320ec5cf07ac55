package eddyreach.kinds.offaxis;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.DistanceFinder;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.engine.core.TargetEffect;
import eddyreach.field.join.PlacedTarget;
import eddyreach.field.join.TargetField;
import eddyreach.model.values.Target;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * One target before a trimmed switch with its axis beside the switch's.
 *
 * <p>At an offset the conductance of the tank is computed at Chebyshev points of the distance and is a polynomial in between; each
 * distance of switching found on the polynomial is corrected by a Newton step on the computed conductance. The error bar is made as on the
 * axis ({@link ErrorBar}), with what the truncated azimuthal orders leave added.
 */
final class OffAxisFinder {

    private static final int MAX_EVALUATIONS = 60;

    private final ResolutionLadder.Step fine;
    private final ResolutionLadder.Step coarse;
    private final ErrorBar bar;
    private final Target target;
    private final Target widest;
    private final TargetField fineField;
    private final TargetField coarseField;
    private final double lastDistance;

    /**
     * @param farthest the largest offset that will be asked for, m
     * @param lastDistance the largest distance, m
     */
    OffAxisFinder(
            ResolutionLadder.Step fine,
            ResolutionLadder.Step coarse,
            Target target,
            double farthest,
            double lastDistance) {
        this.fine = fine;
        this.coarse = coarse;
        bar = ErrorBar.of(fine.solved().model());
        this.target = target;
        this.lastDistance = lastDistance;
        widest = OffAxisLimits.at(target, farthest, fine.solved().scale());
        fineField = fine.solved().about(widest);
        coarseField = coarse.solved().about(widest);
    }

    private PlacedTarget beside(TargetField field, double offset) {
        return fine.solved().fields().beside(widest, field, offset);
    }

    Target target() {
        return target;
    }

    /** The tank with the target at an offset and a distance, m. */
    TankState state(double offset, double distance) {
        return fine.solved().state(beside(fineField, offset), distance);
    }

    /** The resolution taken. */
    ResolutionLadder.Step step() {
        return fine;
    }

    /**
     * Where the conductance of the tank crosses a threshold on the way sideways at a distance.
     *
     * @param from offset on one side of the crossing, m; negative offsets are the same as positive ones
     * @param to offset on the other side, m
     */
    ZoneEdge edge(double from, double to, double distance, double threshold) {
        double at = new BrentSolver(AccuracyPolicy.EDGE * Math.abs(to - from))
                .solve(MAX_EVALUATIONS, d -> state(Math.abs(d), distance).conductance() / threshold - 1, from, to);
        double step = AccuracyPolicy.SLOPE_STEP * fine.solved().model().faceDiameter();
        double low = Math.max(0, Math.abs(at) - step);
        double high = Math.abs(at) + step;
        double slope =
                (state(high, distance).conductance() - state(low, distance).conductance()) / (high - low);
        return new ZoneEdge(at, at(Math.abs(at)).conductanceError(distance) / Math.abs(slope));
    }

    /** Everything at one offset, m; for one thread. */
    At at(double offset) {
        return new At(offset);
    }

    /** The target at one offset. */
    final class At {

        private final TargetEffect effect;
        private final double offset;
        private PolynomialFunctionLagrangeForm curve;

        private At(double offset) {
            this.offset = offset;
            effect = fine.solved().effect(beside(fineField, offset));
        }

        private double computed(double distance) {
            return fine.solved().state(effect, distance).conductance();
        }

        /** Conductance over the distance, S, from the polynomial. */
        DoubleUnaryOperator conductance() {
            if (curve == null) {
                double[] x = new double[AccuracyPolicy.OFFSET_NODES];
                double[] y = new double[AccuracyPolicy.OFFSET_NODES];
                for (int i = 0; i < AccuracyPolicy.OFFSET_NODES; i++) {
                    double t = (1 - Math.cos(Math.PI * i / (AccuracyPolicy.OFFSET_NODES - 1))) / 2;
                    x[i] = lastDistance
                            * (AccuracyPolicy.FIRST_OFFSET_NODE + (1 - AccuracyPolicy.FIRST_OFFSET_NODE) * t);
                    y[i] = computed(x[i]);
                }
                curve = new PolynomialFunctionLagrangeForm(x, y);
            }
            return curve::value;
        }

        /** Where the output switches on the way in and out at this offset. */
        SwitchDistance distance() {
            SwitchPoints points = new SwitchPointFinder(fine.trim(), lastDistance, AccuracyPolicy.OFFSET_INTERVALS)
                    .find(conductance(), fine.solved().free().conductance());
            Optional<Crossing> on = points.on();
            Optional<Crossing> off = points.off();
            SwitchDistance.Outcome outcome = on.isPresent() && off.isPresent()
                    ? SwitchDistance.Outcome.SWITCHES
                    : DistanceFinder.unfinished(points);
            double onAt = on.map(c -> corrected(c, fine.trim().on())).orElse(Double.NaN);
            double offAt = on.isPresent()
                    ? off.map(c -> corrected(c, fine.trim().off())).orElse(Double.NaN)
                    : Double.NaN;
            return new SwitchDistance(
                    outcome,
                    onAt,
                    offAt,
                    Double.isNaN(onAt) ? Double.NaN : error(on.orElseThrow(), onAt),
                    Double.isNaN(offAt) ? Double.NaN : error(off.orElseThrow(), offAt));
        }

        private double corrected(Crossing crossing, double threshold) {
            double g = crossing.distance() - (computed(crossing.distance()) - threshold) / crossing.slope();
            return Math.max(0, Math.min(lastDistance, g));
        }

        private double error(Crossing crossing, double distance) {
            return bar.distance(crossing, conductanceError(distance));
        }

        /** Error bar of the tank's conductance at a distance, m; S. */
        double conductanceError(double distance) {
            TankState here = fine.solved().state(effect, distance);
            TankState there = coarse.solved().state(beside(coarseField, offset), distance);
            // both are trimmed on their own standard target
            double shift =
                    there.conductance() / coarse.trim().on() * fine.trim().on() - here.conductance();
            return bar.conductance(shift, here, there, 0) + effect.truncation(distance) * here.conductancePerOhm();
        }
    }
}
