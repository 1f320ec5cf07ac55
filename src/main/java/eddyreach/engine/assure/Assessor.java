package eddyreach.engine.assure;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.Warning;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.SwitchModel;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * Makes the assessment of each target of a study: a band that allows for everything and, where targets are studied one by one, explanation and
 * advice.
 */
public final class Assessor {

    /** Variants that a band takes of most targets. */
    private static final int BAND = 12;

    /** Variants that explanation and advice try of most targets. */
    private static final int VARIANTS = 14;

    private final String id;
    private final Setup setup;
    private final Scope scope;
    private final Supplier<List<SwitchModel>> alternatives;
    private final ResolutionLadder ladder;
    private final Progress progress;

    /** How much is assessed. */
    public enum Scope {
        /** A band that allows for everything, explanation and advice. */
        WHOLE,
        /** The band alone. */
        BANDS
    }

    /**
     * @param id id of the study
     * @param setup switch, standard target and accuracy
     * @param scope how much is assessed
     * @param alternatives other switches to try where this one reaches too little
     * @param ladder the switch at growing resolution
     * @param progress is told how far it is
     */
    public Assessor(
            String id,
            Setup setup,
            Scope scope,
            Supplier<List<SwitchModel>> alternatives,
            ResolutionLadder ladder,
            Progress progress) {
        this.id = id;
        this.scope = scope;
        this.alternatives = alternatives;
        this.setup = setup;
        this.ladder = ladder;
        this.progress = progress;
    }

    /**
     * The same results with their assessments, in order; the standard target, to which all else is compared, gets its band alone. When a
     * variant cannot be computed, say because the tank has too much loss when hot, the results stand without, and say so.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public List<TargetResult> assess(List<TargetResult> results) {
        try {
            return assessed(results);
        } catch (NoTrimException | NoOscillationException e) {
            Warning none = Warning.of(Warning.Kind.NOT_ASSESSED, id).about(e.getMessage());
            return results.stream().map(r -> r.with(none)).toList();
        }
    }

    private List<TargetResult> assessed(List<TargetResult> results) {
        Runnable counted = progress.steps("bands", BAND * results.size());
        Allowances allowances = Allowances.of(setup.switchModel());
        TrialSwitches trials = new TrialSwitches(
                setup, results.stream().map(TargetResult::target).toList());
        AssuranceFinder finder = new AssuranceFinder(setup, trials.plain(), allowances, counted);
        List<ConductanceCurve> nominal =
                each(results.size(), i -> trials.curve(results.get(i).target()));
        List<Assurance> bands = each(results.size(), i -> {
            TargetResult r = results.get(i);
            return finder.of(r.target(), nominal.get(i), r.distance());
        });
        if (scope == Scope.BANDS) {
            return each(
                    results.size(),
                    i -> results.get(i).with(new Assessment(bands.get(i), Optional.empty(), Optional.empty())));
        }
        Runnable variants = progress.steps("variants", VARIANTS * (results.size() - 1));
        Explanation.Retuned retuned = Explanation.Retuned.of(trials);
        Optional<Advice.Others> others = bands.stream().anyMatch(b -> Advice.needed(setup.switchModel(), b))
                ? Optional.of(new Advice.Others(alternatives.get(), trials))
                : Optional.empty();
        double omega = ladder.step(ResolutionLadder.FIRST).solved().free().omega();
        return each(results.size(), i -> {
            TargetResult r = results.get(i);
            if (r.target().actsAs(setup.standard())) {
                return r.with(new Assessment(bands.get(i), Optional.empty(), Optional.empty()));
            }
            TrialSwitches.Trial trial = trials.of(r.distance(), nominal.get(i), variants);
            Advice advice = Advice.needed(setup.switchModel(), bands.get(i))
                    ? Advice.of(setup, trial, others.orElseThrow(), r.target(), r, omega)
                    : Advice.none();
            Explanation explanation = Explanation.of(setup, trial, retuned, r.target(), r, omega);
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
