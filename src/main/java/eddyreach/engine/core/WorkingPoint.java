package eddyreach.engine.core;

import eddyreach.field.axial.Solved;
import eddyreach.field.join.GapState;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.field.targets.SphereTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import java.util.Optional;

/**
 * The solved fields with a target at one distance, from which budgets and pictures are made.
 *
 * @param solved the switch
 * @param distance distance of the target, m; infinite without a target
 * @param state the tank
 * @param before field and losses below the target
 * @param behind the field in and behind a bounded target, its nearest point in z = 0
 */
public record WorkingPoint(
        SolvedSwitch solved, double distance, TankState state, Solved before, Optional<Solved> behind) {

    /** Without a target. */
    public static WorkingPoint free(SolvedSwitch solved) {
        Solved field = solved.field().solveFree(solved.free().omega());
        return new WorkingPoint(solved, Double.POSITIVE_INFINITY, solved.free(), field, Optional.empty());
    }

    /**
     * With a target at a distance, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static WorkingPoint with(SolvedSwitch solved, TargetField target, double distance) {
        TankState state = solved.state(target, distance);
        GapState gap = solved.gap(target, state.omega(), distance);
        Optional<Solved> behind = Optional.empty();
        if (target instanceof BodyTarget body) {
            behind = Optional.of(body.solve(state.omega(), gap));
        } else if (target instanceof SphereTarget ball) {
            behind = Optional.of(ball.solve(state.omega(), gap));
        }
        return new WorkingPoint(solved, distance, state, solved.field().solve(state.omega(), gap), behind);
    }

    double omega() {
        return state.omega();
    }
}
