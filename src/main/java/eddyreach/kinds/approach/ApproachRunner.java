package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assessor;
import eddyreach.engine.assure.ReasonFinder;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Approach;
import eddyreach.engine.core.Budgets;
import eddyreach.engine.core.CurrentPicture;
import eddyreach.engine.core.FieldPicture;
import eddyreach.engine.core.FieldSampler;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.ShapeLimits;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.field.join.TargetField;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;

/** Runs studies of the kinds {@code approach} and {@code materials}. */
public final class ApproachRunner {

    /** Distance from which a factor is compared with the trade's band: a hundredth is below what a table shows. */
    private static final double BAND_TOLERANCE = 0.005;

    /** Id of the standard target when one of the study's targets has taken its own. */
    private static final String STANDARD = "standard-target";

    private final ApproachInput study;
    private final List<Target> targets;
    private final ResolutionLadder ladder;
    private final SolvedSwitch fine;
    private final Progress progress;
    private final boolean comparison;

    /** All targets, the standard target first and only once. */
    private static List<Target> standardFirst(ApproachInput study) {
        List<Target> all = new ArrayList<>();
        all.add(study.targets().stream()
                .filter(t -> t.actsAs(study.standard()))
                .findFirst()
                .orElse(study.standard()));
        study.targets().stream().filter(t -> !t.actsAs(study.standard())).forEach(all::add);
        Target first = all.get(0);
        if (all.stream().skip(1).anyMatch(t -> t.id().equals(first.id()))) {
            all.set(0, new Target(STANDARD, first.label(), first.body(), 0, first.tolerances()));
        }
        return all;
    }

    private ApproachRunner(ApproachInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        comparison = study.kind() == ApproachKind.MATERIALS;
        targets = standardFirst(study);
        ladder = new ResolutionLadder(study.setup(), targets, progress);
        fine = ladder.step(ResolutionLadder.FIRST).solved();
    }

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static ApproachResult run(ApproachInput study) {
        return run(study, Progress.NONE);
    }

    /**
     * Runs a study and tells how far it is.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static ApproachResult run(ApproachInput study, Progress progress) {
        return new ApproachRunner(study, progress).result();
    }

    private ApproachResult result() {
        WorkingPoint free = WorkingPoint.free(fine);
        List<Found> found = find();
        List<FieldPicture> fields = new ArrayList<>();
        List<CurrentPicture> currents = new ArrayList<>();
        if (study.fieldPictures()) {
            fields.add(FieldSampler.free(free));
        }
        found.forEach(f -> f.field().ifPresent(fields::add));
        found.forEach(f -> f.currents().ifPresent(currents::add));
        List<TargetResult> results = new Assessor(
                        study.id(),
                        study.setup(),
                        comparison ? Assessor.Scope.BANDS : Assessor.Scope.WHOLE,
                        study.alternatives(),
                        ladder,
                        progress)
                .assess(found.stream().map(Found::result).toList()).stream()
                        .map(t -> Factors.overlaps(t, study.switchModel().effectiveDistance())
                                ? t.without(Warning.Kind.OUTSIDE_USUAL_BAND)
                                : t)
                        .toList();
        return new ApproachResult(
                study.header(),
                TrimmedSwitch.of(ladder.step(ResolutionLadder.FIRST), free),
                results,
                fields,
                currents,
                ValidityLimits.squares(targets).stream().toList(),
                study.mount().map(m -> new MountedRun(study, m, ladder, targets, progress).of(targets)));
    }

    private record Found(TargetResult result, Optional<FieldPicture> field, Optional<CurrentPicture> currents) {}

    /** Climbs the ladder with those targets whose error bar is still above what the study asks for. */
    private List<Found> find() {
        Found[] found = new Found[targets.size()];
        AtomicInteger done = new AtomicInteger();
        for (int step = ResolutionLadder.FIRST; step <= ladder.last() && done.get() < targets.size(); step++) {
            boolean last = step == ladder.last();
            Approach approach = study.approach(ladder.step(step), ladder.step(step - 1));
            Runnable counted = progress.steps(
                    step == ResolutionLadder.FIRST ? "distances" : "distances, finer",
                    (targets.size() - done.get()) * approach.steps());
            List<ForkJoinTask<?>> tasks = new ArrayList<>();
            for (int i = 0; i < found.length; i++) {
                int index = i;
                if (found[i] == null) {
                    tasks.add(ForkJoinTask.adapt(() -> {
                        Approach.Outcome o = approach.of(targets.get(index), counted);
                        if (last || !(o.distance().error() > study.accuracy())) {
                            found[index] = found(index, o);
                            done.incrementAndGet();
                        }
                    }));
                }
            }
            ForkJoinTask.invokeAll(tasks);
        }
        return List.of(found);
    }

    private Found found(int index, Approach.Outcome o) {
        Target target = targets.get(index);
        double sr = study.switchModel().effectiveDistance();
        double on = o.distance().on();
        double factor = on / sr;
        double shown = Double.isFinite(on) ? on : 0;
        // fields beside the axis are not kept: they have no symmetry
        Optional<WorkingPoint> at = target.offset() == 0 && o.field() instanceof TargetField axial
                ? Optional.of(WorkingPoint.with(o.step().solved(), axial, shown))
                : Optional.empty();
        Optional<FactorBand> band = Optional.ofNullable(study.usualFactors().get(target.id()));
        LossBudget budget = at.map(a -> Budgets.of(a, target.id()))
                .orElseGet(() -> Budgets.beside(o.step().solved(), o.field(), shown, target.id()));
        TargetResult result = new TargetResult(
                target,
                o.curve(),
                o.distance(),
                factor,
                o.distance().onError() / sr,
                band,
                budget,
                ReasonFinder.of(target, targets.get(0), o.distance(), factor, fine, budget),
                warnings(target, o, factor, band));
        if (!study.fieldPictures() || at.isEmpty() || at.get().behind().isEmpty()) {
            return new Found(result, Optional.empty(), Optional.empty());
        }
        return new Found(
                result,
                pictured(index) ? Optional.of(FieldSampler.with(at.get(), target)) : Optional.empty(),
                pictured(index) || !comparison ? FieldSampler.currents(at.get(), target) : Optional.empty());
    }

    /** Of many materials the standard target and the best conductor are drawn: the two ends of what a target can do. */
    private boolean pictured(int index) {
        int best = 0;
        for (int i = 1; i < targets.size(); i++) {
            if (conductivity(targets.get(i)) > conductivity(targets.get(best))) {
                best = i;
            }
        }
        return index == 0 || index == best;
    }

    private static double conductivity(Target t) {
        return t.front().conductivity(Temperature.AMBIENT);
    }

    private List<Warning> warnings(Target target, Approach.Outcome o, double factor, Optional<FactorBand> band) {
        List<Warning> list = new ArrayList<>();
        String id = target.id();
        for (Material m : new LinkedHashSet<>(target.body().materials())) {
            ValidityLimits.permeability(id, m).ifPresent(list::add);
        }
        list.addAll(ShapeLimits.of(target, fine));
        if (target.offset() > 0) {
            OffAxisLimits.outline(target).ifPresent(list::add);
        }
        if (fine.fields().endless(target) && Double.isFinite(target.radius())) {
            list.add(ValidityLimits.wide(id, target.radius()));
        }
        double least = 0;
        double at = 0;
        for (int i = 0; i < o.curve().size(); i++) {
            if (o.curve().lossResistance(i) < least) {
                least = o.curve().lossResistance(i);
                at = o.curve().distance(i);
            }
        }
        if (least < -1e-3 * fine.free().resistance()) {
            list.add(Warning.of(Warning.Kind.SHIELDING, id)
                    .with(Warning.Measure.DISTANCE, at)
                    .with(Warning.Measure.RESISTANCE, -least));
        }
        if (Double.isFinite(o.lostNearer())) {
            list.add(Warning.of(Warning.Kind.LOST_NEARER, id).with(Warning.Measure.DISTANCE, o.lostNearer()));
        }
        double error = o.distance().error();
        if (error > study.accuracy()) {
            list.add(ValidityLimits.error(id, error, study.accuracy()));
        }
        if (band.isPresent()
                && Double.isFinite(factor)
                && (factor < band.get().low() - BAND_TOLERANCE
                        || factor > band.get().high() + BAND_TOLERANCE)) {
            list.add(Warning.of(Warning.Kind.OUTSIDE_USUAL_BAND, id)
                    .with(Warning.Measure.FACTOR, factor)
                    .with(Warning.Measure.LOW, band.get().low())
                    .with(Warning.Measure.HIGH, band.get().high()));
        }
        return list;
    }
}
