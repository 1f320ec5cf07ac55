package eddyreach.kinds.neighbour;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TankState;
import eddyreach.engine.core.TargetEffect;
import eddyreach.field.join.PlacedTarget;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.BackedTarget;
import eddyreach.field.targets.ThroughTarget;
import eddyreach.model.values.Target;
import eddyreach.study.StudyInput;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.complex.Complex;

/**
 * What the passive presence of a neighbour, its metal, its core and its tank, does to switch-on distances, at two steps of the ladder whose
 * difference is the error bar.
 */
final class NeighbourShifts {

    /** Loss of a tank that does not resonate, over the on threshold: any number far above 1. */
    private static final double DAMPED = 1e3;

    private static final int MAX_EVALUATIONS = 60;

    private final NeighbourInput study;
    private final ResolutionLadder ladder;
    private final NeighbourSwitch[] neighbours;
    private final boolean facing;

    /**
     * @param study the study
     * @param ladder the first switch
     * @param neighbours the other one at the steps of the ladder
     */
    NeighbourShifts(NeighbourInput study, ResolutionLadder ladder, NeighbourSwitch[] neighbours) {
        this.study = study;
        this.ladder = ladder;
        this.neighbours = neighbours.clone();
        facing = study.arrangement() == NeighbourInput.Arrangement.FACE_TO_FACE;
    }

    /** A target on the axis of the first switch. */
    Before before(Target target) {
        return new Before(target);
    }

    /** The other one with its coil open, and with its tank, its oscillator at rest, tuned within the tolerance to where it takes most loss. */
    enum State {
        OPEN,
        TUNED
    }

    /** The first switch at one step with the other one in one state at one spacing. */
    private final class Pair {

        private final int step;
        private final SolvedSwitch solved;
        private final NeighbourSwitch neighbour;
        private final State state;
        private final double spacing;
        private final Complex change;

        Pair(int step, State state, double spacing) {
            this.step = step;
            this.state = state;
            this.spacing = spacing;
            solved = ladder.step(step).solved();
            neighbour = neighbours[step];
            double omega = solved.free().omega();
            if (facing) {
                change = Complex.ZERO;
            } else {
                Complex metal = neighbour.passive(omega, spacing);
                change = state == State.OPEN
                        ? metal
                        : metal.add(neighbour.tank(omega, neighbour.mutual(spacing), study.tolerance()));
            }
        }

        private Complex beside(double omega) {
            return change.multiply(omega / solved.free().omega());
        }

        /** The other one face to face, behind something or not. */
        private TargetEffect facing(UnaryOperator<TargetField> behind) {
            return (omega, g) -> {
                Complex open = solved.change(behind.apply(neighbour.open()), omega, g);
                return state == State.OPEN
                        ? open
                        : neighbour.tuned(
                                omega,
                                study.tolerance(),
                                open,
                                closed -> solved.change(behind.apply(closed), omega, g));
            };
        }

        /** Loss conductance of the tank without a target, S. */
        double without() {
            return conductance(facing ? facing(p -> p) : (omega, g) -> beside(omega), spacing);
        }

        private TargetEffect with(Before target, double distance) {
            if (facing) {
                double behind = Math.max(0, spacing - distance - target.thickness);
                return facing(p -> new BackedTarget(target.through[step], p, behind));
            }
            TargetEffect effect = solved.effect(target.alone[step]);
            return (omega, g) -> effect.change(omega, g).add(beside(omega));
        }

        /** Where no frequency is found the tank is damped more than any threshold. */
        private double conductance(TargetEffect effect, double distance) {
            return solved.stateIfAny(effect, distance)
                    .map(TankState::conductance)
                    .orElse(DAMPED * ladder.step(step).trim().on());
        }

        /** Switch-on distance of a target that has one without a neighbour; NaN when the output no longer switches there. */
        double on(Before target) {
            var trim = ladder.step(step).trim();
            if (without() >= trim.off()) {
                return Double.NaN;
            }
            double low = AccuracyPolicy.SHIFT_NEAREST * target.on[step];
            double high = AccuracyPolicy.SHIFT_FARTHEST * target.on[step];
            if (facing) {
                high = Math.min(high, spacing - target.thickness);
            }
            UnivariateFunction f = g -> conductance(with(target, g), g) / trim.on() - 1;
            return high <= low || f.value(low) <= 0 || f.value(high) >= 0
                    ? Double.NaN
                    : new BrentSolver(AccuracyPolicy.SHIFT_FOUND).solve(MAX_EVALUATIONS, f, low, high);
        }

        /** Change of the distance per change of the impedance, m/ohm, by the slope of the conductance at a distance. */
        double perOhm(Before target, double distance) {
            double h = AccuracyPolicy.SLOPE_STEP * study.switchModel().faceDiameter();
            TankState here = solved.state(with(target, distance), distance);
            double near = distance - h;
            double slope = (conductance(with(target, near), near) - here.conductance()) / h;
            return here.conductance() / here.resistance() / Math.abs(slope);
        }
    }

    /** A target before the first switch at both steps. */
    final class Before {

        private final Target target;
        private final double thickness;
        private final PlacedTarget[] alone = new PlacedTarget[neighbours.length];
        private final ThroughTarget[] through = new ThroughTarget[neighbours.length];
        private final double[] on = new double[neighbours.length];

        private Before(Target target) {
            this.target = target;
            thickness = target.thickness();
            for (int i = 0; i < neighbours.length; i++) {
                SolvedSwitch solved = ladder.step(i).solved();
                alone[i] = solved.reflector(target);
                if (facing) {
                    through[i] = new ThroughTarget(
                            target.parts(),
                            solved.basis(),
                            solved.band(),
                            solved.celsius(),
                            solved.resolution(),
                            solved.scale());
                }
            }
            for (int i = 0; i < neighbours.length; i++) {
                on[i] = free(i);
            }
        }

        /** Its switch-on distance without a neighbour, m. */
        double on() {
            return on[ResolutionLadder.FIRST];
        }

        private double free(int i) {
            ResolutionLadder.Step step = ladder.step(i);
            UnivariateFunction f = g ->
                    step.solved().state(alone[i], g).conductance() / step.trim().on() - 1;
            double reach = StudyInput.defaultReach(study.switchModel());
            return f.value(0) <= 0 || f.value(reach) >= 0
                    ? Double.NaN
                    : new BrentSolver(AccuracyPolicy.SHIFT_FOUND).solve(MAX_EVALUATIONS, f, 0, reach);
        }
    }

    /** Shifts of the switch-on distance at one spacing, as shares. */
    record Shift(double metal, double metalError, double tank, double tankError) {

        /** True when it is less than a share, with its error bar or without. */
        boolean below(State state, double share, boolean careful) {
            double shift = state == State.OPEN ? metal : tank;
            double error = state == State.OPEN ? metalError : tankError;
            return Math.abs(shift) + (careful ? error : 0) <= share;
        }
    }

    /** What the neighbour does at a spacing, m. */
    Shift shift(Before before, double spacing) {
        double metal = relative(before, ResolutionLadder.FIRST, State.OPEN, spacing);
        double metalError = error(before, State.OPEN, metal, spacing);
        double tuned = relative(before, ResolutionLadder.FIRST, State.TUNED, spacing);
        double error = Math.max(metalError, error(before, State.TUNED, tuned, spacing));
        return new Shift(metal, metalError, Math.abs(tuned) <= Math.abs(metal) ? metal : tuned, error);
    }

    private double relative(Before before, int step, State state, double spacing) {
        return new Pair(step, state, spacing).on(before) / before.on[step] - 1;
    }

    /** From the coarser step, and side by side from what the model leaves out; NaN where the output does not switch. */
    private double error(Before before, State state, double shift, double spacing) {
        double coarse = relative(before, ResolutionLadder.FIRST - 1, state, spacing);
        double on = before.on[ResolutionLadder.FIRST];
        double floor = ErrorBar.of(study.switchModel()).floor() / on;
        double steps = Math.max(floor, ErrorBar.ofDifference(coarse - shift));
        if (facing || Double.isNaN(shift)) {
            return steps;
        }
        NeighbourSwitch p = neighbours[ResolutionLadder.FIRST];
        SolvedSwitch solved = ladder.step(ResolutionLadder.FIRST).solved();
        double omega = solved.free().omega();
        double ohm = p.passiveError(omega, spacing);
        if (state != State.OPEN) {
            Complex m = p.mutual(spacing);
            ohm += 2
                    * mutualError(m, spacing)
                    / m.abs()
                    * p.tank(omega, m, study.tolerance()).abs();
        }
        return steps + new Pair(ResolutionLadder.FIRST, state, spacing).perOhm(before, on * (1 + shift)) * ohm / on;
    }

    /** True when the neighbour alone, in a state, lets the output go. */
    boolean releases(State state, double spacing) {
        return without(state, spacing)
                < ladder.step(ResolutionLadder.FIRST).trim().off();
    }

    /** Error bar of the mutual inductance at the finer step, H. */
    double mutualError(Complex fine, double spacing) {
        double step = fine.subtract(neighbours[ResolutionLadder.FIRST - 1].mutual(spacing))
                .abs();
        return ErrorBar.ofDifference(step) + neighbours[ResolutionLadder.FIRST].rescattering(spacing) * fine.abs();
    }

    /** Largest spacing at which the neighbour alone, in a state, holds the output on, m; 0 for none. Looked for down to contact face to face. */
    double latched(State state) {
        if (!facing || releases(state, 0)) {
            return 0;
        }
        double off = ladder.step(ResolutionLadder.FIRST).trim().off();
        double last = study.spacings().last();
        double on = 0;
        for (int i = 1; i <= AccuracyPolicy.NEIGHBOUR_LOOKS; i++) {
            double d = last * i * i / (AccuracyPolicy.NEIGHBOUR_LOOKS * AccuracyPolicy.NEIGHBOUR_LOOKS);
            if (releases(state, d)) {
                return new BrentSolver(AccuracyPolicy.SHIFT_FOUND)
                        .solve(MAX_EVALUATIONS, x -> without(state, x) / off - 1, on, d);
            }
            on = d;
        }
        return last;
    }

    private double without(State state, double spacing) {
        return new Pair(ResolutionLadder.FIRST, state, spacing).without();
    }
}
