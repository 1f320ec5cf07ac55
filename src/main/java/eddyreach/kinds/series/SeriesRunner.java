package eddyreach.kinds.series;

import eddyreach.engine.assure.Allowances;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.AssuranceFinder;
import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.engine.core.Approach;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.field.axial.Resolution;
import eddyreach.model.values.Target;
import eddyreach.oscillator.UnworkableException;
import eddyreach.study.StudyInput;
import eddyreach.switching.RandomStream;
import eddyreach.switching.Spread;
import eddyreach.switching.StandardQuantities;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code series}. */
final class SeriesRunner {

    /** Units computed directly to check the model. */
    private static final int CHECKED = 8;

    /** Units that one task draws. */
    private static final int BATCH = 2000;

    /** Bins of a variance share for so many units, and at most. */
    private static final int UNITS_PER_BIN = 50;

    private static final int MOST_BINS = 50;

    /** Points of the nominal approach. */
    private static final int POINTS = 41;

    private final SeriesInput study;
    private final Progress progress;
    private final RandomStream stream;

    private SeriesRunner(SeriesInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        stream = new RandomStream(study.seed());
    }

    static SeriesResult run(SeriesInput study, Progress progress) {
        return new SeriesRunner(study, progress).result();
    }

    private SeriesResult result() {
        List<Target> targets = List.of(
                study.standard(),
                study.target().beside(Math.sqrt(2) * study.tolerances().limit(Factor.OFFSET)));
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), targets, progress);
        ResolutionLadder.Step fine = ladder.step(ResolutionLadder.FIRST);
        double last = StudyInput.defaultReach(study.switchModel());
        SwitchDistance nominal = new Approach(study.setup(), 0, last, POINTS, fine, ladder.step(0))
                .of(study.target())
                .distance();
        if (nominal.outcome() != SwitchDistance.Outcome.SWITCHES) {
            throw new UnworkableException(
                    "the nominal switch does not switch on and off before this target, so that nothing can be told of a series",
                    "on distance",
                    Double.isFinite(nominal.on()) ? nominal.on() : 0,
                    "m",
                    1,
                    0);
        }
        Pieces pieces = new Pieces(
                study,
                ResolutionLadder.trimmed(
                        study.switchModel(), study.standard(), Resolution.ROUGH, targets, bytes -> {}));
        double[] none = new double[Factor.values().length];
        ConductanceCurve plain = pieces.target(none);
        // the model's distances are moved to those of the fine resolution by what the nominal ones differ
        ConductanceCurve cold = ConductanceCurve.of(pieces.step().solved(), study.target());
        double onShift = nominal.on() - cold.on(pieces.step().trim());
        double offShift = nominal.off() - cold.off(pieces.step().trim());
        progress.at("pieces", 0, 1);
        double middle = plain.on(pieces.step().trim());
        UnitModel model = new UnitModel(pieces, Double.isFinite(middle) ? middle : nominal.on());
        progress.at("pieces", 1, 1);
        double[] on = new double[study.units()];
        double[] off = new double[study.units()];
        boolean[] inside = new boolean[study.units()];
        StandardQuantities s = new StandardQuantities(
                study.switchModel().ratedDistance(), study.switchModel().faceDiameter());
        int batches = (study.units() + BATCH - 1) / BATCH;
        IntStream.range(0, batches).parallel().forEach(b -> {
            UnitModel.Worker worker = model.new Worker();
            for (int i = b * BATCH; i < Math.min(study.units(), (b + 1) * BATCH); i++) {
                UnitModel.Distances d = worker.distances(worker.draw(stream, i));
                on[i] = d.on() > 0 ? Math.max(0, d.on() + onShift) : 0;
                off[i] = d.off() > 0 ? Math.max(0, d.off() + offShift) : 0;
                inside[i] = d.effective() >= s.minEffective() && d.effective() <= s.maxEffective();
            }
        });
        long within = IntStream.range(0, inside.length).filter(i -> inside[i]).count();
        return new SeriesResult(
                study,
                TrimmedSwitch.of(fine, WorkingPoint.free(fine.solved())),
                nominal,
                new Spread(on),
                new Spread(off),
                shares(on),
                (double) within / inside.length,
                worst(pieces, cold, nominal),
                check(pieces, model),
                warnings());
    }

    private Assurance worst(Pieces pieces, ConductanceCurve plain, SwitchDistance nominal) {
        return new AssuranceFinder(study.setup(), pieces.step(), Allowances.of(study.switchModel()), () -> {})
                .of(study.target(), plain, nominal);
    }

    private List<SeriesResult.Share> shares(double[] on) {
        boolean finite = IntStream.range(0, on.length).allMatch(i -> Double.isFinite(on[i]));
        int bins = Math.max(2, Math.min(MOST_BINS, study.units() / UNITS_PER_BIN));
        return study.tolerances().factors().parallelStream()
                .map(f -> {
                    if (!finite) {
                        return new SeriesResult.Share(f, Double.NaN);
                    }
                    double[] input = IntStream.range(0, on.length)
                            .mapToDouble(i -> study.tolerances().deviation(f, stream, i))
                            .toArray();
                    return new SeriesResult.Share(f, Spread.share(input, on, bins));
                })
                .sorted(Comparator.comparing(x -> -x.share()))
                .toList();
    }

    /** The first units of the series once more, each with its own field problems and its own trim. */
    private SeriesResult.Check check(Pieces pieces, UnitModel model) {
        double[] difference = new double[CHECKED];
        IntStream.range(0, CHECKED).parallel().forEach(i -> {
            UnitModel.Worker worker = model.new Worker();
            double[] d = worker.draw(stream, i);
            double direct = pieces.target(d).on(pieces.trim(d));
            double expected = Double.isNaN(direct) ? 0 : Pieces.finished(direct, d);
            double on = worker.distances(d).on();
            difference[i] = expected == on ? 0 : Math.abs(on - expected);
        });
        double square = 0;
        double worst = 0;
        for (double d : difference) {
            square += d * d;
            worst = Math.max(worst, d);
        }
        return new SeriesResult.Check(CHECKED, Math.sqrt(square / CHECKED), worst);
    }

    private List<Warning> warnings() {
        List<Warning> list = new ArrayList<>(
                ValidityLimits.squares(List.of(study.target())).stream().toList());
        study.target().body().materials().stream()
                .distinct()
                .forEach(
                        m -> ValidityLimits.permeability(study.target().id(), m).ifPresent(list::add));
        return list;
    }
}
