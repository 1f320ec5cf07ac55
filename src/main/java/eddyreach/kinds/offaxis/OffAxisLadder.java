package eddyreach.kinds.offaxis;

import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.model.values.Target;
import eddyreach.study.OffsetRange;
import eddyreach.study.StudyInput;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The steps of the ladder for targets that are moved sideways. */
final class OffAxisLadder {

    private final StudyInput study;
    private final double farthest;
    private final double lastDistance;
    private final ResolutionLadder ladder;

    /**
     * @param offsets offsets that the targets take
     * @param lastDistance largest distance examined, m
     */
    OffAxisLadder(StudyInput study, List<Target> targets, OffsetRange offsets, double lastDistance, Progress progress) {
        this.study = study;
        this.lastDistance = lastDistance;
        farthest = offsets.last();
        ladder = new ResolutionLadder(
                study.setup(),
                OffAxisLimits.withStandard(
                        study.standard(), targets, farthest, study.switchModel().coreRadius()),
                progress);
    }

    /** The switch without a target. */
    TrimmedSwitch trimmed() {
        ResolutionLadder.Step first = ladder.step(ResolutionLadder.FIRST);
        return TrimmedSwitch.of(first, WorkingPoint.free(first.solved()));
    }

    /**
     * What a target does, at the first step whose error bar suffices, or else at the last.
     *
     * @param compute what is to be found
     * @param error its error bar, m; NaN for none
     */
    <T> T climb(Target target, Function<OffAxisFinder, T> compute, ToDoubleFunction<T> error) {
        int step = ResolutionLadder.FIRST;
        T found = compute.apply(lateral(step, target));
        while (error.applyAsDouble(found) > study.accuracy() && step < ladder.last()) {
            step++;
            found = compute.apply(lateral(step, target));
        }
        return found;
    }

    private OffAxisFinder lateral(int step, Target target) {
        return new OffAxisFinder(ladder.step(step), ladder.step(step - 1), target, farthest, lastDistance);
    }

    /** The limits of validity that a target with an error bar, m, touches. */
    List<Warning> warnings(Target target, double error) {
        return OffAxisLimits.warnings(
                target,
                farthest,
                error,
                study.accuracy(),
                ladder.step(ResolutionLadder.FIRST).solved());
    }
}
