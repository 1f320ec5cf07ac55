package eddyreach.study;

import eddyreach.model.Offsets;
import eddyreach.model.StudyInput;
import eddyreach.model.Target;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The steps of the ladder for targets that are moved sideways. */
final class LateralLadder {

    private final StudyInput study;
    private final double farthest;
    private final double lastDistance;
    private final Ladder ladder;

    /**
     * @param offsets offsets that the targets take
     * @param lastDistance largest distance examined, m
     */
    LateralLadder(StudyInput study, List<Target> targets, Offsets offsets, double lastDistance, Progress progress) {
        this.study = study;
        this.lastDistance = lastDistance;
        farthest = offsets.last();
        ladder = new Ladder(
                study,
                Sideways.withStandard(
                        study.standard(), targets, farthest, study.switchModel().coreRadius()),
                progress);
    }

    /** The switch without a target. */
    TrimmedSwitch trimmed() {
        Ladder.Step first = ladder.step(Ladder.FIRST);
        return TrimmedSwitch.of(first, Situation.free(first.bench()));
    }

    /**
     * What a target does, at the first step whose error bar suffices, or else at the last.
     *
     * @param compute what is to be found
     * @param error its error bar, m; NaN for none
     */
    <T> T climb(Target target, Function<Lateral, T> compute, ToDoubleFunction<T> error) {
        int step = Ladder.FIRST;
        T found = compute.apply(lateral(step, target));
        while (error.applyAsDouble(found) > study.accuracy() && step < ladder.last()) {
            step++;
            found = compute.apply(lateral(step, target));
        }
        return found;
    }

    private Lateral lateral(int step, Target target) {
        return new Lateral(ladder.step(step), ladder.step(step - 1), target, farthest, lastDistance);
    }

    /** The limits of validity that a target with an error bar, m, touches. */
    List<Warning> warnings(Target target, double error) {
        return Sideways.warnings(
                target,
                farthest,
                error,
                study.accuracy(),
                ladder.step(Ladder.FIRST).bench());
    }
}
