package eddyreach.kinds.neighbour;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.geometry.Section;
import eddyreach.kinds.neighbour.NeighbourShifts.State;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Layer;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.oscillator.Pulling;
import eddyreach.study.DistanceRange;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;

/** Runs studies of the kind {@code neighbour}. */
public final class NeighbourRunner {

    private static final double TENTH = 0.1;
    private static final double TWENTIETH = 0.05;

    private final NeighbourInput study;
    private final Progress progress;
    private final ResolutionLadder ladder;
    private final NeighbourSwitch[] neighbours = new NeighbourSwitch[ResolutionLadder.FIRST + 1];
    private final NeighbourShifts shifts;
    private final boolean facing;
    private final NeighbourResult.Oscillators oscillators;
    private final double otherCapacitance;
    private final AtomicInteger done = new AtomicInteger();

    private NeighbourRunner(NeighbourInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        facing = study.arrangement() == NeighbourInput.Arrangement.FACE_TO_FACE;
        List<Target> all = new ArrayList<>(study.targets());
        all.add(study.standard());
        all.add(stand(study.other(), study.switchModel().coreRadius()));
        ladder = new ResolutionLadder(study.setup(), all, progress);
        SolvedSwitch first = ladder.step(ResolutionLadder.FIRST).solved();
        SolvedSwitch other = study.other().equals(study.switchModel())
                ? first
                : new SolvedSwitch(
                        study.other(),
                        first.resolution().withoutFields(),
                        List.of(),
                        bytes -> progress.solving(study.other().id(), bytes));
        for (int i = 0; i < neighbours.length; i++) {
            neighbours[i] = new NeighbourSwitch(ladder.step(i).solved(), study.other(), other.capacitance(), !facing);
        }
        shifts = new NeighbourShifts(study, ladder, neighbours);
        otherCapacitance = other.capacitance();
        oscillators = oscillators(ladder.step(ResolutionLadder.FIRST), other);
    }

    /** A disc as wide as the other switch: it needs the same waves. */
    private static Target stand(SwitchModel other, double scale) {
        double radius = other.parts().stream()
                .filter(p -> p.material().hasEffect())
                .map(p -> p.section())
                .mapToDouble(Section::r1)
                .max()
                .orElse(other.coreRadius());
        double width = 2 * Math.min(radius, OffsetLimit.ENDLESS * scale);
        return new Target(
                "other",
                "other",
                new Target.Outline.Disc(width),
                List.of(new Layer(other.winding().wire().conductor(), 1e-3)));
    }

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static NeighbourResult run(NeighbourInput study, Progress progress) {
        return new NeighbourRunner(study, progress).result();
    }

    private NeighbourResult.Oscillators oscillators(ResolutionLadder.Step step, SolvedSwitch other) {
        SwitchModel model = study.switchModel();
        double on = step.trim().onAmplitude(model.element());
        double off = step.trim().offAmplitude(model.element());
        double f = model.frequency();
        double f2 = study.other().frequency();
        double apart = Math.abs(study.alternative() * f - f) - study.tolerance() * (1 + study.alternative()) * f;
        double omega = step.solved().free().omega();
        return new NeighbourResult.Oscillators(
                f2,
                other.free().inductance(),
                study.other().element().amplitude(other.free().conductance()),
                omega * step.solved().capacitance() / step.trim().on(),
                on > 0
                        ? Pulling.rateOfReturn(model.element(), step.solved().capacitance(), on) / (2 * Math.PI)
                        : Double.NaN,
                on > 0 ? (off - on) / (2 * on) : Double.NaN,
                Math.max(0, Math.abs(f2 - f) - study.tolerance() * (f + f2)),
                Math.max(0, apart));
    }

    private NeighbourResult result() {
        DistanceRange range = study.spacings();
        int n = range.points();
        double[] spacing = IntStream.range(0, n)
                .mapToDouble(i -> range.first() + (range.last() - range.first()) * i / (n - 1))
                .toArray();
        NeighbourResult.Coupling[] couplings = new NeighbourResult.Coupling[n];
        IntStream.range(0, n).parallel().forEach(i -> couplings[i] = coupling(spacing[i]));
        List<NeighbourResult.Series> series =
                study.targets().stream().map(t -> series(t, spacing)).toList();
        ResolutionLadder.Step step = ladder.step(ResolutionLadder.FIRST);
        return new NeighbourResult(
                study,
                TrimmedSwitch.of(step, WorkingPoint.free(step.solved())),
                spacing,
                List.of(couplings),
                oscillators,
                beats(spacing, couplings, oscillators.least()),
                beats(spacing, couplings, oscillators.leastApart()),
                latched(spacing, State.OPEN),
                latched(spacing, State.TUNED),
                series,
                usual(),
                warnings(series));
    }

    private double tolerance() {
        return AccuracyPolicy.LIMIT_DISTANCE * study.switchModel().faceDiameter();
    }

    private NeighbourResult.Coupling coupling(double spacing) {
        Complex m = neighbours[ResolutionLadder.FIRST].mutual(spacing);
        Optional<Beats> beats = beats(m);
        double inductance = ladder.step(ResolutionLadder.FIRST).solved().free().inductance();
        double own = ladder.step(ResolutionLadder.FIRST)
                .trim()
                .onAmplitude(study.switchModel().element());
        return new NeighbourResult.Coupling(
                m.abs(),
                shifts.mutualError(m, spacing),
                m.abs() / Math.sqrt(inductance * oscillators.otherInductance()),
                m.abs() * oscillators.otherAmplitude() / (oscillators.otherInductance() * own),
                beats.map(Beats::locking).orElse(Double.NaN),
                beats.map(b -> b.beat(oscillators.least())).orElse(Double.NaN),
                beats.map(b -> b.depth(oscillators.least())).orElse(Double.NaN),
                beats.map(b -> b.depth(oscillators.leastApart())).orElse(Double.NaN),
                beats.map(this::apart).orElse(Double.NaN));
    }

    /** The nominal difference that keeps the beats harmless when both frequencies stray towards each other; 0 when no difference is needed. */
    private double apart(Beats beats) {
        double least = beats.difference(oscillators.allowed());
        double f = study.switchModel().frequency();
        return least == 0 ? 0 : (least + 2 * study.tolerance() * f) / (1 - study.tolerance());
    }

    /** The two at a mutual inductance, H; empty when one of them does not oscillate, the first at its on threshold. */
    private Optional<Beats> beats(Complex mutual) {
        ResolutionLadder.Step step = ladder.step(ResolutionLadder.FIRST);
        double own = step.trim().onAmplitude(study.switchModel().element());
        if (!(own > 0 && oscillators.otherAmplitude() > 0)) {
            return Optional.empty();
        }
        double omega = 2 * Math.PI * study.switchModel().frequency();
        double inductance = step.solved().free().inductance();
        double capacitance = step.solved().capacitance();
        Complex coupling = mutual.divide(Math.sqrt(inductance * oscillators.otherInductance()));
        return Optional.of(new Beats(
                new Pulling(
                        own / oscillators.otherAmplitude(),
                        Pulling.byInductance(coupling, omega, capacitance, otherCapacitance),
                        Pulling.byInductance(coupling, omega, otherCapacitance, capacitance),
                        2 * Math.PI * oscillators.relaxation(),
                        Pulling.rateOfReturn(study.other().element(), otherCapacitance, oscillators.otherAmplitude())),
                study.demodulator()));
    }

    /** From where on beats at a difference of the frequencies, Hz, stay between the thresholds. */
    private NeighbourResult.Limit beats(double[] spacing, NeighbourResult.Coupling[] couplings, double difference) {
        boolean[] bold = new boolean[spacing.length];
        boolean[] careful = new boolean[spacing.length];
        for (int i = 0; i < spacing.length; i++) {
            bold[i] = harmless(spacing[i], 0, difference);
            careful[i] = harmless(spacing[i], couplings[i].error(), difference);
        }
        NeighbourSwitch neighbour = neighbours[ResolutionLadder.FIRST];
        return limit(
                spacing,
                careful,
                bold,
                d -> harmless(d, shifts.mutualError(neighbour.mutual(d), d), difference),
                d -> harmless(d, 0, difference));
    }

    /** Whether the beats leave the output alone with a mutual inductance that is larger by an error, H. */
    private boolean harmless(double spacing, double error, double difference) {
        Complex mutual = neighbours[ResolutionLadder.FIRST].mutual(spacing);
        return beats(mutual.multiply(1 + error / mutual.abs()))
                .map(b -> b.depth(difference) <= oscillators.allowed())
                .orElse(false);
    }

    /** The smallest spacing from which on something holds with its error bar; what the bar adds is the error. */
    private NeighbourResult.Limit limit(
            double[] spacing, boolean[] careful, boolean[] bold, DoublePredicate isCareful, DoublePredicate isBold) {
        int last = spacing.length - 1;
        int bad = worst(careful);
        if (bad < 0) {
            return new NeighbourResult.Limit(NeighbourResult.Place.BELOW, spacing[0], 0);
        }
        if (bad == last) {
            return new NeighbourResult.Limit(NeighbourResult.Place.ABOVE, spacing[last], 0);
        }
        double at = bisect(spacing[bad], spacing[bad + 1], isCareful);
        int worst = worst(bold);
        double without = worst < 0 ? spacing[0] : bisect(spacing[worst], spacing[worst + 1], isBold);
        return new NeighbourResult.Limit(NeighbourResult.Place.WITHIN, at, Math.abs(at - without) + tolerance());
    }

    /** Largest spacing at which the neighbour alone, in a state, holds the output on, m. */
    private double latched(double[] spacing, State state) {
        boolean[] released = new boolean[spacing.length];
        for (int i = 0; i < spacing.length; i++) {
            released[i] = shifts.releases(state, spacing[i]);
        }
        int worst = worst(released);
        if (worst < 0) {
            return shifts.latched(state);
        }
        return worst == spacing.length - 1
                ? spacing[worst]
                : bisect(spacing[worst], spacing[worst + 1], d -> shifts.releases(state, d));
    }

    private static int worst(boolean[] fine) {
        int i = fine.length - 1;
        while (i >= 0 && fine[i]) {
            i--;
        }
        return i;
    }

    private double bisect(double bad, double good, DoublePredicate fine) {
        double low = bad;
        double high = good;
        while (high - low > tolerance()) {
            double middle = (low + high) / 2;
            if (fine.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private NeighbourResult.Series series(Target target, double[] spacing) {
        NeighbourShifts.Before before = shifts.before(target);
        int n = spacing.length;
        if (!Double.isFinite(before.on())) {
            progress.at("neighbour", done.addAndGet(n), n * study.targets().size());
            return neverOn(target, n);
        }
        NeighbourShifts.Shift[] shift = new NeighbourShifts.Shift[n];
        IntStream.range(0, n).parallel().forEach(i -> {
            shift[i] = shifts.shift(before, spacing[i]);
            progress.at("neighbour", done.incrementAndGet(), n * study.targets().size());
        });
        return new NeighbourResult.Series(
                target,
                before.on(),
                Arrays.stream(shift).mapToDouble(NeighbourShifts.Shift::metal).toArray(),
                Arrays.stream(shift)
                        .mapToDouble(NeighbourShifts.Shift::metalError)
                        .toArray(),
                Arrays.stream(shift).mapToDouble(NeighbourShifts.Shift::tank).toArray(),
                Arrays.stream(shift)
                        .mapToDouble(NeighbourShifts.Shift::tankError)
                        .toArray(),
                limit(before, spacing, shift, State.OPEN, TWENTIETH),
                limit(before, spacing, shift, State.OPEN, TENTH),
                limit(before, spacing, shift, State.TUNED, TWENTIETH),
                limit(before, spacing, shift, State.TUNED, TENTH));
    }

    /** A target that has no switch-on distance of its own has none to shift. */
    private static NeighbourResult.Series neverOn(Target target, int n) {
        double[] none = new double[n];
        Arrays.fill(none, Double.NaN);
        NeighbourResult.Limit never = new NeighbourResult.Limit(NeighbourResult.Place.NEVER, Double.NaN, 0);
        return new NeighbourResult.Series(target, Double.NaN, none, none, none, none, never, never, never, never);
    }

    private NeighbourResult.Limit limit(
            NeighbourShifts.Before before, double[] spacing, NeighbourShifts.Shift[] shift, State state, double share) {
        boolean[] careful = new boolean[spacing.length];
        boolean[] bold = new boolean[spacing.length];
        for (int i = 0; i < spacing.length; i++) {
            careful[i] = shift[i].below(state, share, true);
            bold[i] = shift[i].below(state, share, false);
        }
        return limit(
                spacing,
                careful,
                bold,
                d -> shifts.shift(before, d).below(state, share, true),
                d -> shifts.shift(before, d).below(state, share, false));
    }

    /** Common practice: face to face 6 to 8 rated distances; side by side two diameters for flush switches, three for others. */
    private double usual() {
        SwitchModel model = study.switchModel();
        if (facing) {
            return 6 * Math.max(model.ratedDistance(), study.other().ratedDistance());
        }
        double diameter = Math.max(model.faceDiameter(), study.other().faceDiameter());
        return (study.flush() ? 2 : 3) * diameter;
    }

    private List<Warning> warnings(List<NeighbourResult.Series> series) {
        List<Warning> list = new ArrayList<>();
        ValidityLimits.squares(study.targets()).ifPresent(list::add);
        list.add(Warning.of(Warning.Kind.BEATS_WITHOUT_TARGET, "beats")
                .with(Warning.Measure.CORNER, study.demodulator()));
        if (!facing) {
            list.add(Warning.of(Warning.Kind.BESIDE_ESTIMATED, "side by side"));
            // there the bar is the model's, told above
            return list;
        }
        for (NeighbourResult.Series s : series) {
            double worst = IntStream.range(0, s.error().length)
                    .filter(i -> Math.abs(s.tank()[i]) <= TENTH)
                    .mapToDouble(i -> s.error()[i] * s.on())
                    .max()
                    .orElse(0);
            if (worst > study.accuracy()) {
                list.add(ValidityLimits.error(s.target().id(), worst, study.accuracy()));
            }
        }
        return list;
    }
}
