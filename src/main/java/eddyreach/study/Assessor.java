package eddyreach.study;

import eddyreach.model.ApproachInput;
import eddyreach.model.StudyInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntFunction;

/**
 * Makes the assessment of each target of a study: where targets are studied one by one, a band that allows for everything, explanation and
 * advice; in a comparison of materials, for which that would take as long as the whole study, a band that allows for the switch alone.
 */
final class Assessor {

    private final ApproachInput study;
    private final Ladder ladder;
    private final Progress progress;

    Assessor(ApproachInput study, Ladder ladder, Progress progress) {
        this.study = study;
        this.ladder = ladder;
        this.progress = progress;
    }

    /**
     * The same results with their assessments, in order; the standard target, to which all else is compared, gets its band alone. When a
     * variant cannot be computed, say because the tank has too much loss when hot, the results stand without, and say so.
     */
    List<TargetResult> assess(List<TargetResult> results) {
        try {
            return assessed(results);
        } catch (ArithmeticException e) {
            Warning none = new Warning(
                    Warning.Kind.NOT_ASSESSED, study.id(), Double.NaN, "no bands and no advice: " + message(e));
            return results.stream().map(r -> r.with(none)).toList();
        }
    }

    /** A task that fails on another thread is reported by an exception without a message whose cause has it. */
    private static String message(Throwable e) {
        return e.getCause() == null ? e.getMessage() : message(e.getCause());
    }

    private List<TargetResult> assessed(List<TargetResult> results) {
        progress.at("bands", 0, results.size());
        boolean single = study.kind() == StudyInput.Kind.APPROACH;
        Allowances allowances =
                single ? Allowances.of(study.switchModel()) : Allowances.ofSwitchAlone(study.switchModel());
        Trials trials =
                new Trials(study, results.stream().map(TargetResult::target).toList());
        Assurer assurer = new Assurer(study, trials.plain(), allowances);
        List<Tryout> nominal =
                each(results.size(), i -> trials.tryout(results.get(i).target()));
        List<Assurance> bands = each(results.size(), i -> {
            TargetResult r = results.get(i);
            return assurer.of(r.target(), nominal.get(i), r.distance());
        });
        if (!single) {
            return each(
                    results.size(),
                    i -> results.get(i).with(new Assessment(bands.get(i), Optional.empty(), Optional.empty())));
        }
        progress.at("variants", 0, results.size());
        Explanation.Retuned retuned = Explanation.Retuned.of(trials);
        Optional<Advice.Others> others = bands.stream().anyMatch(b -> Advice.needed(study.switchModel(), b))
                ? Optional.of(new Advice.Others(study, trials))
                : Optional.empty();
        double omega = ladder.step(Ladder.FIRST).bench().free().omega();
        return each(results.size(), i -> {
            TargetResult r = results.get(i);
            if (r.target().actsAs(study.standard())) {
                return r.with(new Assessment(bands.get(i), Optional.empty(), Optional.empty()));
            }
            Trials.Trial trial = trials.of(r.distance(), nominal.get(i));
            Advice advice = Advice.needed(study.switchModel(), bands.get(i))
                    ? Advice.of(study, trial, others.orElseThrow(), r.target(), r, omega)
                    : Advice.none();
            Explanation explanation = Explanation.of(study, trial, retuned, r.target(), r, omega);
            return r.with(new Assessment(bands.get(i), Optional.of(explanation), Optional.of(advice)));
        });
    }

    private static <T> List<T> each(int count, IntFunction<T> work) {
        List<ForkJoinTask<T>> tasks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int index = i;
            tasks.add(ForkJoinTask.adapt(() -> work.apply(index)));
        }
        return ForkJoinTask.invokeAll(tasks).stream().map(ForkJoinTask::join).toList();
    }
}
