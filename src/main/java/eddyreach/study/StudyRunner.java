package eddyreach.study;

import eddyreach.field.Resolution;
import eddyreach.field.TargetField;
import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.model.Layer;
import eddyreach.model.StudyInput;
import eddyreach.model.Target;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;

/** Runs studies of the kinds {@code approach} and {@code materials}. */
public final class StudyRunner {

    /** Distance from which a factor is compared with the trade's band: a hundredth is below what a table shows. */
    private static final double BAND_TOLERANCE = 0.005;

    private final StudyInput study;
    private final List<Target> targets;
    private final Bench fine;
    private final Bench coarse;
    private final Trim trim;
    private final Approach approach;
    private final Progress progress;

    /** All targets, the standard target first and only once. */
    private static List<Target> standardFirst(StudyInput study) {
        List<Target> all = new ArrayList<>();
        all.add(study.targets().stream()
                .filter(t -> same(t, study.standard()))
                .findFirst()
                .orElse(study.standard()));
        study.targets().stream().filter(t -> !same(t, study.standard())).forEach(all::add);
        return all;
    }

    private static boolean same(Target a, Target b) {
        return a.layers().equals(b.layers()) && a.outline().equals(b.outline());
    }

    private StudyRunner(StudyInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        targets = standardFirst(study);
        progress.at("field of the switch", 0, 1);
        ForkJoinTask<Bench> rough = ForkJoinTask.adapt(
                        () -> new Bench(study.switchModel(), Resolution.COARSE.withoutFields(), targets))
                .fork();
        fine = new Bench(study.switchModel(), Resolution.FINE, targets);
        coarse = rough.join();
        trim = trim(fine);
        approach = new Approach(study, fine, trim, coarse, trim(coarse));
    }

    /**
     * Runs a study.
     *
     * @throws ArithmeticException if a computation fails its own checks
     */
    public static StudyResult run(StudyInput study) {
        return run(study, Progress.NONE);
    }

    /**
     * Runs a study and tells how far it is.
     *
     * @throws ArithmeticException if a computation fails its own checks
     */
    public static StudyResult run(StudyInput study, Progress progress) {
        return new StudyRunner(study, progress).result();
    }

    private Trim trim(Bench bench) {
        TargetField standard = bench.target(study.standard());
        return Trim.atFactory(
                g -> bench.state(standard, g).conductance(),
                study.switchModel().effectiveDistance(),
                study.switchModel().differentialTravel());
    }

    private StudyResult result() {
        List<ForkJoinTask<Found>> tasks = new ArrayList<>();
        progress.at("targets", 0, targets.size());
        AtomicInteger done = new AtomicInteger();
        for (int i = 0; i < targets.size(); i++) {
            int index = i;
            tasks.add(ForkJoinTask.adapt(() -> {
                        Found found = one(index);
                        progress.at("targets", done.incrementAndGet(), targets.size());
                        return found;
                    })
                    .fork());
        }
        Situation free = Situation.free(fine);
        LossBudget freeBudget = Budgets.of(free, null);
        List<TargetResult> results = new ArrayList<>();
        List<FieldPicture> fields = new ArrayList<>();
        List<CurrentPicture> currents = new ArrayList<>();
        if (study.fieldPictures()) {
            fields.add(Imaging.free(free));
        }
        for (ForkJoinTask<Found> task : tasks) {
            Found f = task.join();
            results.add(f.result());
            f.field().ifPresent(fields::add);
            f.currents().ifPresent(currents::add);
        }
        Bench.State s = fine.free();
        var element = study.switchModel().element();
        return new StudyResult(
                study.id(),
                study.name(),
                study.note(),
                study.kind(),
                study.switchModel(),
                fine.capacitance(),
                new StudyResult.Operating(
                        s.resistance(),
                        s.inductance(),
                        s.omega() / (2 * Math.PI),
                        s.conductance(),
                        element.amplitude(s.conductance())),
                trim.on(),
                trim.off(),
                trim.onAmplitude(element),
                trim.offAmplitude(element),
                freeBudget,
                results,
                fields,
                currents,
                studyWarnings());
    }

    private record Found(TargetResult result, Optional<FieldPicture> field, Optional<CurrentPicture> currents) {}

    private Found one(int index) {
        Target target = targets.get(index);
        Approach.Outcome o = approach.of(target);
        double sr = study.switchModel().effectiveDistance();
        double on = o.distance().on();
        double factor = on / sr;
        double shown = Double.isFinite(on) ? on : 0;
        Situation at = Situation.with(fine, o.field(), shown);
        Optional<FactorBand> band = Optional.ofNullable(study.usualFactors().get(target.id()));
        TargetResult result = new TargetResult(
                target,
                o.curve(),
                o.distance(),
                factor,
                o.distance().onError() / sr,
                band,
                Budgets.of(at, target.id()),
                Reason.of(
                        target,
                        targets.get(0),
                        o.distance(),
                        factor,
                        fine.free().omega(),
                        wavenumber(shown)),
                warnings(target, o, factor, band));
        if (!study.fieldPictures() || at.behind().isEmpty()) {
            return new Found(result, Optional.empty(), Optional.empty());
        }
        return new Found(
                result,
                pictured(index) ? Optional.of(Imaging.with(at, target)) : Optional.empty(),
                Optional.of(Imaging.currents(at, target)));
    }

    /** The standard target and the best conductor are drawn: the two ends of what a target can do. */
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
        return t.layers().get(0).material().conductivity20();
    }

    /** The wavenumber that dominates at the target: 1/k is about 0.6 times mean coil radius plus distance from the coil's front. */
    private double wavenumber(double distance) {
        var s = study.switchModel().winding().section();
        return 1 / (0.6 * ((s.r0() + s.r1()) / 2 + distance - s.z1()));
    }

    private List<Warning> warnings(Target target, Approach.Outcome o, double factor, Optional<FactorBand> band) {
        List<Warning> list = new ArrayList<>();
        String id = target.id();
        for (Layer l : target.layers()) {
            Material m = l.material();
            if (m.muReal() > 1 && m.conductivity20() > 0) {
                list.add(new Warning(
                        Warning.Kind.PERMEABILITY_ASSUMED,
                        id,
                        m.muReal(),
                        String.format(
                                Locale.ROOT,
                                "permeability of %s assumed as %.0f: it differs from piece to piece and falls with"
                                        + " frequency",
                                m.name(),
                                m.muReal())));
            }
        }
        if (fine.endless(target) && Double.isFinite(target.outline().equivalentRadius())) {
            list.add(new Warning(
                    Warning.Kind.WIDE_AS_ENDLESS,
                    id,
                    target.outline().equivalentRadius(),
                    "so wide against the core that it is computed as an endless plate"));
        }
        double least = 0;
        double at = 0;
        for (int i = 0; i < o.curve().distance().length; i++) {
            if (o.curve().lossResistance()[i] < least) {
                least = o.curve().lossResistance()[i];
                at = o.curve().distance()[i];
            }
        }
        if (least < -1e-3 * fine.free().resistance()) {
            list.add(new Warning(
                    Warning.Kind.SHIELDING,
                    id,
                    least,
                    String.format(
                            Locale.ROOT,
                            "far out, near %.1f mm, it lowers the loss by up to %.3g ohm: it shields the housing from"
                                    + " the coil more than it loses itself",
                            at * 1e3,
                            -least)));
        }
        double error = Math.max(o.distance().onError(), o.distance().offError());
        if (error > study.accuracy()) {
            list.add(new Warning(
                    Warning.Kind.ERROR_ABOVE_REQUEST,
                    id,
                    error,
                    String.format(
                            Locale.ROOT,
                            "numerical error %.3f mm, asked for %.3f mm",
                            error * 1e3,
                            study.accuracy() * 1e3)));
        }
        if (band.isPresent()
                && Double.isFinite(factor)
                && (factor < band.get().low() - BAND_TOLERANCE
                        || factor > band.get().high() + BAND_TOLERANCE)) {
            list.add(new Warning(
                    Warning.Kind.OUTSIDE_USUAL_BAND,
                    id,
                    factor,
                    String.format(
                            Locale.ROOT,
                            "factor %.2f lies outside the trade's usual %.2f to %.2f",
                            factor,
                            band.get().low(),
                            band.get().high())));
        }
        return list;
    }

    private List<Warning> studyWarnings() {
        List<Warning> list = new ArrayList<>();
        if (targets.stream().anyMatch(t -> t.outline() instanceof Target.Outline.Square)) {
            list.add(new Warning(
                    Warning.Kind.SQUARE_AS_DISC,
                    "squares",
                    0.01,
                    "computed as discs of equal area, on the axis within about 1 % of the loss"));
        }
        return list;
    }
}
