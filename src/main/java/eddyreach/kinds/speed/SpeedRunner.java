package eddyreach.kinds.speed;

import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.Detector;
import eddyreach.switching.OutputStage;
import eddyreach.switching.PulseTrain;
import eddyreach.switching.SpeedLimit;
import eddyreach.switching.SpeedSearch;
import eddyreach.switching.Teeth;
import eddyreach.switching.Timing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Runs studies of the kind {@code speed}. */
final class SpeedRunner {

    /** Stages of the run that are told. */
    private static final int STAGES = 4;

    /** A row so much too fast is shown. */
    private static final double BEYOND = 1.5;

    private final SpeedInput study;
    private final Progress progress;
    private final ResolutionLadder ladder;

    private SpeedRunner(SpeedInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        double scale = study.switchModel().coreRadius();
        ladder = new ResolutionLadder(
                study.setup(),
                OffAxisLimits.withStandard(
                        study.standard(), List.of(study.tooth()), Row.reach(study.tooth(), scale), scale),
                progress);
    }

    static SpeedResult run(SpeedInput study, Progress progress) {
        return new SpeedRunner(study, progress).result();
    }

    private SpeedResult result() {
        ResolutionLadder.Step step = ladder.step(ResolutionLadder.FIRST);
        Row row = row(step);
        progress.at("speed", 1, STAGES);
        Timing timing = timing(step);
        SpeedLimit limit = new SpeedSearch(row.teeth(), study.shortest()).limit(timing);
        progress.at("speed", 2, STAGES);
        ResolutionLadder.Step below = ladder.step(0);
        Row rough = row(below);
        double coarse = highest(rough.teeth(), timing(below));
        progress.at("speed", STAGES - 1, STAGES);
        // a square is not its disc: its teeth lie between ones that are wider and narrower all round
        double shift = OffAxisLimits.outlineShift(study.tooth());
        double outline = shift == 0
                ? 0
                : Math.max(
                        Math.abs(limitOf(limit) - highest(row.teeth(shift), timing)),
                        Math.abs(limitOf(limit) - highest(row.teeth(-shift), timing)));
        progress.at("speed", STAGES, STAGES);
        double free = step.solved().free().conductance();
        ActiveElement element = study.switchModel().element();
        Optional<SpeedResult.Sudden> sudden = row.conductance()[0] > step.trim().on()
                ? Optional.of(new SpeedResult.Sudden(
                        timing.onTime(free, row.conductance()[0]), timing.offTime(row.conductance()[0], free)))
                : Optional.empty();
        double error = limit instanceof SpeedLimit.Limited a
                ? ErrorBar.ofDifference(a.frequency() - coarse)
                        + outline
                        + a.above().frequency()
                        - a.frequency()
                : Double.NaN;
        Optional<PulseTrain> asked = study.wheel().frequency().isPresent()
                ? Optional.of(PulseTrain.of(
                        timing, row.teeth(), study.wheel().frequency().getAsDouble(), study.shortest()))
                : Optional.empty();
        return new SpeedResult(
                study,
                TrimmedSwitch.of(step, WorkingPoint.free(step.solved())),
                Arrays.stream(row.conductance()).map(element::amplitude).toArray(),
                limit,
                error,
                limit instanceof SpeedLimit.Limited a
                        ? Optional.of(PulseTrain.of(timing, row.teeth(), BEYOND * a.frequency(), study.shortest()))
                        : Optional.empty(),
                asked,
                sudden,
                timing.startUp(free),
                warnings());
    }

    private double highest(Teeth teeth, Timing timing) {
        return new SpeedSearch(teeth, study.shortest()).highest(timing);
    }

    private static double limitOf(SpeedLimit limit) {
        return limit instanceof SpeedLimit.Limited a ? a.frequency() : Double.NaN;
    }

    private Row row(ResolutionLadder.Step step) {
        return new Row(step, study.tooth(), study.wheel().pitch(), study.distance());
    }

    private Timing timing(ResolutionLadder.Step step) {
        ActiveElement element = study.switchModel().element();
        return new Timing(
                new Detector(element, step.solved().capacitance(), study.noise(), study.timeConstant()),
                OutputStage.of(step.trim(), element, study.delay()));
    }

    private List<Warning> warnings() {
        List<Warning> list = new ArrayList<>();
        study.tooth().body().materials().stream()
                .distinct()
                .forEach(m -> ValidityLimits.permeability(study.tooth().id(), m).ifPresent(list::add));
        OffAxisLimits.outline(study.tooth()).ifPresent(list::add);
        return list;
    }
}
