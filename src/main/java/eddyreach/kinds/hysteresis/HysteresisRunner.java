package eddyreach.kinds.hysteresis;

import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.DistanceFinder;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TargetEffect;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.field.join.PlacedTarget;
import eddyreach.model.values.Target;
import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.Detector;
import eddyreach.oscillator.UnworkableException;
import eddyreach.study.StudyInput;
import eddyreach.switching.Crossing;
import eddyreach.switching.Hysteresis;
import eddyreach.switching.OutputStage;
import eddyreach.switching.RepeatAccuracy;
import eddyreach.switching.SwitchPoints;
import eddyreach.switching.Timing;
import eddyreach.switching.Trim;
import eddyreach.switching.Vibration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Runs studies of the kind {@code hysteresis}. */
final class HysteresisRunner {

    /** Amplitude from which a collapsed oscillation grows again, V; a vibration about the thresholds does not let it collapse. */
    private static final double NOISE = 1e-5;

    private final HysteresisInput study;
    private final Progress progress;
    private final ResolutionLadder.Step fine;
    private final ResolutionLadder.Step coarse;

    private HysteresisRunner(HysteresisInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        ResolutionLadder ladder = new ResolutionLadder(
                study.setup(),
                OffAxisLimits.withStandard(
                        study.standard(),
                        study.targets(),
                        0,
                        study.switchModel().coreRadius()),
                progress);
        fine = trimmed(ladder.step(ResolutionLadder.FIRST));
        coarse = trimmed(ladder.step(0));
    }

    static HysteresisResult run(HysteresisInput study, Progress progress) {
        return new HysteresisRunner(study, progress).result();
    }

    /** The switch trimmed with the differential travel of the study. */
    private ResolutionLadder.Step trimmed(ResolutionLadder.Step step) {
        SolvedSwitch solved = step.solved();
        PlacedTarget standard = step.standardField();
        return new ResolutionLadder.Step(
                solved,
                Trim.atFactory(
                        g -> solved.state(standard, g).conductance(),
                        solved.free().conductance(),
                        study.switchModel().effectiveDistance(),
                        study.travel()),
                step.standard(),
                standard);
    }

    private HysteresisResult result() {
        List<Loop> loops = new ArrayList<>();
        for (Target t : study.targets()) {
            loops.add(loop(t));
            progress.at("targets", loops.size(), study.targets().size());
        }
        return new HysteresisResult(
                study, TrimmedSwitch.of(fine, WorkingPoint.free(fine.solved())), loops, warnings(loops));
    }

    private Loop loop(Target target) {
        PlacedTarget field = fine.solved().target(target);
        TargetEffect effect = fine.solved().effect(field);
        double reach = Math.max(
                StudyInput.defaultReach(study.switchModel()),
                AccuracyPolicy.SPLINE_REACH * study.switchModel().effectiveDistance() * (1 + study.travel()) / 2);
        DistanceFinder finder = new DistanceFinder(study.setup(), fine, coarse, reach, AccuracyPolicy.OFFSET_INTERVALS);
        SwitchPoints points = finder.points(g -> fine.solved().state(effect, g).conductance());
        SwitchDistance distance =
                finder.distance(points, target, field, coarse.solved().target(target));
        if (distance.outcome() != SwitchDistance.Outcome.SWITCHES) {
            return new Loop(
                    target, distance, Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
        }
        Machine m = study.machine();
        Hysteresis loop = new Hysteresis(distance.on(), distance.off());
        return new Loop(
                target,
                distance,
                m.places() ? Optional.of(loop.verdict(m.near(), m.far(), m.vibration())) : Optional.empty(),
                m.places() && 2 * m.vibration() < m.far() - distance.on()
                        ? Optional.of(loop.travels(m.far(), m.vibration()))
                        : Optional.empty(),
                repeat(points.on().orElseThrow()),
                inTime(field, loop));
    }

    private Optional<RepeatAccuracy> repeat(Crossing on) {
        double noise = study.machine().noise();
        return noise == 0
                ? Optional.empty()
                : Optional.of(RepeatAccuracy.of(
                        noise, study.switchModel().element(), fine.trim().on(), on));
    }

    /** With the mean in the middle of the loop, where the least vibration passes both thresholds. */
    private OptionalDouble inTime(PlacedTarget field, Hysteresis loop) {
        Machine m = study.machine();
        if (m.frequency().isEmpty() || m.vibration() == 0) {
            return OptionalDouble.empty();
        }
        double mean = (loop.onDistance() + loop.offDistance()) / 2;
        if (m.vibration() > mean) {
            throw new UnworkableException(
                    "the vibration would push the target into the switch",
                    "amplitude of the vibration",
                    m.vibration(),
                    "m",
                    0,
                    mean);
        }
        ActiveElement element = study.switchModel().element();
        Timing timing = new Timing(
                new Detector(element, fine.solved().capacitance(), NOISE, 1 / (2 * Math.PI * study.corner())),
                OutputStage.of(fine.trim(), element, 0));
        return OptionalDouble.of(new Vibration(m.vibration(), m.frequency().getAsDouble())
                .changesPerCycle(timing, new ConductanceCurve(fine.solved(), field)::conductance, mean));
    }

    private List<Warning> warnings(List<Loop> loops) {
        List<Warning> list =
                new ArrayList<>(ValidityLimits.squares(study.targets()).stream().toList());
        for (Loop l : loops) {
            l.target().body().materials().stream()
                    .distinct()
                    .forEach(
                            m -> ValidityLimits.permeability(l.target().id(), m).ifPresent(list::add));
            if (l.distance().error() > study.accuracy()) {
                list.add(ValidityLimits.error(l.target().id(), l.distance().error(), study.accuracy()));
            }
        }
        return list;
    }
}
