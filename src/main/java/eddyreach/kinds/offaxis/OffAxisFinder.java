package eddyreach.kinds.offaxis;

import eddyreach.engine.core.DistanceFinder;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
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
 * axis ({@link DistanceFinder}), with what the truncated azimuthal orders leave added.
 */
final class OffAxisFinder {

    /** The polynomial then lies within about 1e-4 of the damping at contact; the Newton step squares that. */
    private static final int NODES = 13;

    /** First node as a share of the range: waves of high order, which matter in contact alone, need not be solved then. */
    private static final double NEAREST = 0.02;

    private static final int INTERVALS = 60;

    /** Accuracy of an edge, as a share of the interval in which it lies. */
    private static final double EDGE = 1e-6;

    private static final int MAX_EVALUATIONS = 60;

    /** Step for the slope of the conductance over the offset, as a share of the face's diameter. */
    private static final double SLOPE_STEP = 1e-3;

    private final ResolutionLadder.Step fine;
    private final ResolutionLadder.Step coarse;
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
        this.target = target;
        this.lastDistance = lastDistance;
        widest = OffAxisLimits.at(target, farthest, fine.bench().scale());
        fineField = fine.bench().about(widest);
        coarseField = coarse.bench().about(widest);
    }

    private TargetField beside(TargetField field, double offset) {
        return fine.bench().fields().beside(widest, field, offset);
    }

    Target target() {
        return target;
    }

    /** The tank with the target at an offset and a distance, m. */
    SolvedSwitch.State state(double offset, double distance) {
        return fine.bench().state(beside(fineField, offset), distance);
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
        double at = new BrentSolver(EDGE * Math.abs(to - from))
                .solve(MAX_EVALUATIONS, d -> state(Math.abs(d), distance).conductance() / threshold - 1, from, to);
        double step = SLOPE_STEP * fine.bench().model().faceDiameter();
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

        private final SolvedSwitch.Effect effect;
        private final double offset;
        private PolynomialFunctionLagrangeForm curve;

        private At(double offset) {
            this.offset = offset;
            effect = fine.bench().effect(beside(fineField, offset));
        }

        private double computed(double distance) {
            return fine.bench().state(effect, distance).conductance();
        }

        /** Conductance over the distance, S, from the polynomial. */
        DoubleUnaryOperator conductance() {
            if (curve == null) {
                double[] x = new double[NODES];
                double[] y = new double[NODES];
                for (int i = 0; i < NODES; i++) {
                    double t = (1 - Math.cos(Math.PI * i / (NODES - 1))) / 2;
                    x[i] = lastDistance * (NEAREST + (1 - NEAREST) * t);
                    y[i] = computed(x[i]);
                }
                curve = new PolynomialFunctionLagrangeForm(x, y);
            }
            return curve::value;
        }

        /** Where the output switches on the way in and out at this offset. */
        SwitchDistance distance() {
            SwitchPoints points = new SwitchPointFinder(fine.trim(), lastDistance, INTERVALS)
                    .find(conductance(), fine.bench().free().conductance());
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
            return Math.max(
                    DistanceFinder.FLOOR * fine.bench().model().faceDiameter(),
                    crossing.distanceError(conductanceError(distance)));
        }

        /** Error bar of the tank's conductance at a distance, m; S. */
        double conductanceError(double distance) {
            SolvedSwitch.State here = fine.bench().state(effect, distance);
            SolvedSwitch.State there = coarse.bench().state(beside(coarseField, offset), distance);
            // both are trimmed on their own standard target
            double shift = Math.abs(
                    there.conductance() / coarse.trim().on() * fine.trim().on() - here.conductance());
            double impedance = here.change().subtract(there.change()).abs();
            double cut = effect.truncation(distance);
            double per = here.conductance() / here.resistance();
            return DistanceFinder.SAFETY * Math.max(shift, DistanceFinder.SHARE * impedance * per) + cut * per;
        }
    }
}
