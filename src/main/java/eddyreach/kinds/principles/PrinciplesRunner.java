package eddyreach.kinds.principles;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.kinds.principles.PrinciplesResult.Evaluated;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Target;
import eddyreach.oscillator.UnworkableException;
import eddyreach.switching.EqualDistance;
import eddyreach.switching.Principle;
import eddyreach.switching.TankState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code principles}. */
final class PrinciplesRunner {

    private final PrinciplesInput study;
    private final Progress progress;

    private PrinciplesRunner(PrinciplesInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
    }

    static PrinciplesResult run(PrinciplesInput study, Progress progress) {
        return new PrinciplesRunner(study, progress).result();
    }

    /**
     * All switches at one resolution.
     *
     * @param on on distances by principle, m; empty where it cannot be trimmed
     * @param problems why not
     * @param weight weight of the loss in the weighted sum
     */
    private record Found(List<List<Double>> on, List<Optional<String>> problems, double weight) {}

    private PrinciplesResult result() {
        Target reference = TargetReader.standard(study.reference(), study.switchModel());
        List<Target> all = OffAxisLimits.withStandard(
                study.standard(), study.targets(), 0, study.switchModel().coreRadius());
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), all, progress);
        ResolutionLadder.Step step = ladder.step(ResolutionLadder.FIRST);
        progress.at("principles", 0, 2);
        Found fine = found(step.solved(), reference, Double.NaN);
        progress.at("principles", 1, 2);
        // with the same weight, so that the bar tells of the field and not of a flat minimum
        Found coarse = found(ladder.step(0).solved(), reference, fine.weight());
        progress.at("principles", 2, 2);
        double floor = ErrorBar.of(study.switchModel()).floor();
        List<PrinciplesResult.Switch> switches = new ArrayList<>();
        for (Evaluated e : Evaluated.values()) {
            List<Double> on = fine.on().get(e.ordinal());
            List<Double> rough = coarse.on().get(e.ordinal());
            List<Double> error = IntStream.range(0, on.size())
                    .mapToObj(i -> error(i, on, rough, floor))
                    .toList();
            switches.add(new PrinciplesResult.Switch(e, fine.problems().get(e.ordinal()), on, error));
        }
        return new PrinciplesResult(
                study, TrimmedSwitch.of(step, WorkingPoint.free(step.solved())), switches, fine.weight(), warnings());
    }

    private static double error(int i, List<Double> on, List<Double> rough, double floor) {
        return rough.isEmpty() || on.get(i) == 0 || rough.get(i) == 0
                ? Double.NaN
                : Math.max(floor, ErrorBar.ofDifference(on.get(i) - rough.get(i)));
    }

    private Found found(SolvedSwitch solved, Target reference, double weight) {
        TankState free = TankCurve.state(solved.free());
        TankCurve standard = new TankCurve(solved, study.standard());
        TankCurve nonFerrous = new TankCurve(solved, reference);
        List<TankCurve> curves = study.targets().parallelStream()
                .map(t -> new TankCurve(solved, t))
                .toList();
        List<DoubleFunction<TankState>> targets = List.copyOf(curves);
        List<DoubleFunction<TankState>> alike = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            if (study.alike().contains(study.targets().get(i).id())) {
                alike.add(targets.get(i));
            }
        }
        EqualDistance finder = new EqualDistance(
                free,
                study.switchModel().effectiveDistance(),
                study.switchModel().differentialTravel(),
                TankCurve.reach(solved),
                AccuracyPolicy.CHEAP_INTERVALS);
        Principle.WeightedSum sum = Double.isNaN(weight)
                ? finder.find(standard, alike).principle()
                : new Principle.WeightedSum(free, weight);
        List<List<Double>> on = new ArrayList<>();
        List<Optional<String>> problems = new ArrayList<>();
        for (Evaluated e : Evaluated.values()) {
            Principle principle = switch (e) {
                case LOSS -> new Principle.Loss();
                case INDUCTANCE -> new Principle.Inductance(free);
                case WEIGHTED_SUM -> sum;
                case FERROUS -> new Principle.FerrousSelective(free);
                case NON_FERROUS -> new Principle.NonFerrousSelective(free);
            };
            try {
                on.add(finder.distances(principle, e == Evaluated.NON_FERROUS ? nonFerrous : standard, targets));
                problems.add(Optional.empty());
            } catch (UnworkableException x) {
                // a principle that does not fit this coil is an answer, not a failure of the study
                on.add(List.of());
                problems.add(Optional.of(x.getMessage()));
            }
        }
        return new Found(on, problems, sum.weight());
    }

    private List<Warning> warnings() {
        List<Warning> list =
                new ArrayList<>(ValidityLimits.squares(study.targets()).stream().toList());
        for (Target t : study.targets()) {
            t.body().materials().stream()
                    .distinct()
                    .forEach(m -> ValidityLimits.permeability(t.id(), m).ifPresent(list::add));
        }
        return list;
    }
}
