package eddyreach.study;

import eddyreach.field.BodyTarget;
import eddyreach.field.GapState;
import eddyreach.field.Solved;
import eddyreach.field.SphereTarget;
import eddyreach.field.TargetField;
import java.util.Optional;

/**
 * The solved fields with a target at one distance, from which budgets and pictures are made.
 *
 * @param bench the switch
 * @param distance distance of the target, m; infinite without a target
 * @param state the tank
 * @param before field and losses below the target
 * @param behind the field in and behind a bounded target, its nearest point in z = 0
 */
record Situation(Bench bench, double distance, Bench.State state, Solved before, Optional<Solved> behind) {

    /** Without a target. */
    static Situation free(Bench bench) {
        Solved field = bench.field().solveFree(bench.free().omega());
        return new Situation(bench, Double.POSITIVE_INFINITY, bench.free(), field, Optional.empty());
    }

    /** With a target at a distance, m. */
    static Situation with(Bench bench, TargetField target, double distance) {
        Bench.State state = bench.state(target, distance);
        GapState gap = bench.gap(target, state.omega(), distance);
        Optional<Solved> behind = Optional.empty();
        if (target instanceof BodyTarget body) {
            behind = Optional.of(body.solve(state.omega(), gap));
        } else if (target instanceof SphereTarget ball) {
            behind = Optional.of(ball.solve(state.omega(), gap));
        }
        return new Situation(bench, distance, state, bench.field().solve(state.omega(), gap), behind);
    }

    double omega() {
        return state.omega();
    }
}
