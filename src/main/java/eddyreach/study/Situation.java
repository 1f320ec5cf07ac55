package eddyreach.study;

import eddyreach.field.BodyTarget;
import eddyreach.field.GapState;
import eddyreach.field.MeshField;
import eddyreach.field.TargetField;
import java.util.Optional;

/**
 * The solved fields with a target at one distance, from which budgets and pictures are made.
 *
 * @param bench the switch
 * @param distance distance of the target, m; infinite without a target
 * @param state the tank
 * @param before the field below the target
 * @param body the target's field problem, if it is a bounded body
 * @param behind the field in and behind such a target, its nearest point in z = 0
 */
record Situation(
        Bench bench,
        double distance,
        Bench.State state,
        MeshField before,
        Optional<BodyTarget> body,
        Optional<MeshField> behind) {

    /** Without a target. */
    static Situation free(Bench bench) {
        MeshField field = bench.field().freeField(bench.free().omega());
        return new Situation(bench, Double.POSITIVE_INFINITY, bench.free(), field, Optional.empty(), Optional.empty());
    }

    /** With a target at a distance, m. */
    static Situation with(Bench bench, TargetField target, double distance) {
        Bench.State state = bench.state(target, distance);
        GapState gap = bench.gap(target, state.omega(), distance);
        Optional<BodyTarget> body = target instanceof BodyTarget b ? Optional.of(b) : Optional.empty();
        return new Situation(
                bench,
                distance,
                state,
                bench.field().field(state.omega(), gap),
                body,
                body.map(b -> b.field(state.omega(), gap)));
    }

    double omega() {
        return state.omega();
    }
}
