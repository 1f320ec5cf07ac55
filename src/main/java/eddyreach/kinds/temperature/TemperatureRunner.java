package eddyreach.kinds.temperature;

import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Target;
import eddyreach.switching.StandardQuantities;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Runs studies of the kind {@code temperature}. */
final class TemperatureRunner {

    /** How closely the limits of the band are found, K. */
    private static final double LIMIT_FOUND = 0.1;

    /** A distance so close to the end of the band, as a share of that at 23 degrees, is taken to lie on it. */
    private static final double CLOSE = 1e-4;

    private static final int SEARCH = 200;

    private final TemperatureInput study;
    private final Progress progress;
    private final WarmSwitch fine;
    private final WarmSwitch coarse;
    private final AtomicInteger done = new AtomicInteger();

    private TemperatureRunner(TemperatureInput study, Progress progress) {
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
        fine = new WarmSwitch(ladder.step(ResolutionLadder.FIRST), study.drift());
        coarse = new WarmSwitch(ladder.step(0), study.drift());
    }

    static TemperatureResult run(TemperatureInput study, Progress progress) {
        return new TemperatureRunner(study, progress).result();
    }

    /**
     * All targets at one temperature.
     *
     * @param on on distances by cause added and target, m
     * @param all the targets' curves with everything but the compensation
     * @param coarse on distances with everything at the coarser step, m
     */
    private record Row(double[][] on, List<ConductanceCurve> all, double[] coarse) {}

    private TemperatureResult result() {
        int n = study.celsius().size();
        Row[] rows = new Row[n];
        IntStream.range(0, n).parallel().forEach(i -> {
            rows[i] = row(study.celsius().get(i));
            progress.at("temperature", done.incrementAndGet(), n);
        });
        List<TemperatureCurve> curves = IntStream.range(0, study.targets().size())
                .mapToObj(t -> curve(t, List.of(rows)))
                .toList();
        return new TemperatureResult(
                study,
                TrimmedSwitch.of(fine.step(), WorkingPoint.free(fine.step().solved())),
                curves,
                warnings(curves));
    }

    private Row row(double celsius) {
        int k = study.causes().size();
        double[][] on = new double[k][];
        Set<Cause> added = EnumSet.noneOf(Cause.class);
        List<ConductanceCurve> all = curves(fine, Set.of(), celsius);
        for (int j = 0; j < k; j++) {
            Cause cause = study.causes().get(j);
            added.add(cause);
            if (cause != Cause.COMPENSATION) {
                all = curves(fine, added, celsius);
            }
            on[j] = on(fine, all, perKelvin(added), celsius);
        }
        return new Row(on, all, on(coarse, curves(coarse, added, celsius), perKelvin(added), celsius));
    }

    private double perKelvin(Set<Cause> causes) {
        return causes.contains(Cause.COMPENSATION) ? study.drift().compensation() : 0;
    }

    private List<ConductanceCurve> curves(WarmSwitch warm, Set<Cause> causes, double celsius) {
        SolvedSwitch solved = warm.at(causes, celsius);
        double own = causes.contains(Cause.TARGET) ? celsius : Temperature.AMBIENT;
        return study.targets().stream()
                .map(t -> WarmSwitch.curve(solved, t, own))
                .toList();
    }

    private static double[] on(WarmSwitch warm, List<ConductanceCurve> curves, double perKelvin, double celsius) {
        return curves.stream()
                .mapToDouble(c -> c.on(warm.trim(perKelvin, celsius)))
                .toArray();
    }

    private TemperatureCurve curve(int t, List<Row> rows) {
        int n = rows.size();
        int at = study.celsius().indexOf(Temperature.AMBIENT);
        Target target = study.targets().get(t);
        double trim = rows.get(at).all().get(t).on(fine.step().trim());
        List<TemperatureCurve.Step> steps = new ArrayList<>();
        for (int j = 0; j < study.causes().size(); j++) {
            int step = j;
            steps.add(new TemperatureCurve.Step(
                    study.causes().get(j),
                    rows.stream().mapToDouble(r -> r.on()[step][t]).toArray()));
        }
        Set<Cause> causes = Set.copyOf(study.causes());
        double[] off = IntStream.range(0, n)
                .mapToDouble(i -> rows.get(i)
                        .all()
                        .get(t)
                        .off(fine.trim(perKelvin(causes), study.celsius().get(i))))
                .toArray();
        double[] error = new double[n];
        double floor = ErrorBar.of(study.switchModel()).floor();
        boolean standard = target.actsAs(study.standard());
        TemperatureCurve bare =
                new TemperatureCurve(target, trim, steps, off, error, Double.NaN, Double.NaN, 0, Double.NaN);
        for (int i = 0; i < n; i++) {
            double difference = bare.on(i) - rows.get(i).coarse()[t];
            // the trim sets the standard target's distance where nothing has drifted
            error[i] = standard && i == at
                    ? 0
                    : Double.isFinite(difference) ? Math.max(floor, ErrorBar.ofDifference(difference)) : Double.NaN;
        }
        double best = best(rows, t, trim);
        return new TemperatureCurve(
                target,
                trim,
                steps,
                off,
                error,
                limit(bare, t, at, -1),
                limit(bare, t, at, 1),
                best,
                deviation(rows, t, trim, best));
    }

    /** Where the on distance leaves the standard's band on the way from 23 degrees to one end, found on the computed switch. */
    private double limit(TemperatureCurve curve, int t, int from, int step) {
        if (!Double.isFinite(curve.trim())) {
            return Double.NaN;
        }
        for (int i = from + step; i >= 0 && i < study.celsius().size(); i += step) {
            if (excess(curve.on(i), curve.trim()) > 0) {
                return bisect(study.celsius().get(i - step), study.celsius().get(i), c -> on(t, c), curve.trim());
            }
        }
        return Double.NaN;
    }

    private double on(int t, double celsius) {
        Set<Cause> causes = Set.copyOf(study.causes());
        SolvedSwitch solved = fine.at(causes, celsius);
        double own = causes.contains(Cause.TARGET) ? celsius : Temperature.AMBIENT;
        return WarmSwitch.curve(solved, study.targets().get(t), own).on(fine.trim(perKelvin(causes), celsius));
    }

    /** By false position, since the distance is nearly straight over the temperature, or halving where it is not finite. */
    private static double bisect(double good, double bad, DoubleUnaryOperator on, double trim) {
        double in = good;
        double out = bad;
        double fIn = excess(on.applyAsDouble(in), trim);
        double fOut = excess(on.applyAsDouble(out), trim);
        while (Math.abs(out - in) > LIMIT_FOUND) {
            double middle = Double.isFinite(fOut) ? in + (out - in) * fIn / (fIn - fOut) : (in + out) / 2;
            double f = excess(on.applyAsDouble(middle), trim);
            if (Math.abs(f) < CLOSE) {
                return middle;
            }
            if (f <= 0) {
                in = middle;
                fIn = f;
                fOut /= 2;
            } else {
                out = middle;
                fOut = f;
                fIn /= 2;
            }
        }
        return in;
    }

    /** By how much a distance lies outside the standard's band, as a share; infinite where there is none. */
    private static double excess(double on, double trim) {
        double change = Math.abs(on / trim - 1);
        return Double.isNaN(change) ? Double.POSITIVE_INFINITY : change - (StandardQuantities.maxUsable(1) - 1);
    }

    /** The change of the thresholds per kelvin, told as conductances, whose largest deviation is least. */
    private double best(List<Row> rows, int t, double trim) {
        // what a threshold would have to change by at each temperature brackets it
        List<Double> wanted = new ArrayList<>(List.of(0.0));
        for (int i = 0; i < rows.size(); i++) {
            double kelvin = study.celsius().get(i) - Temperature.AMBIENT;
            if (kelvin != 0) {
                double threshold = rows.get(i).all().get(t).conductance(trim)
                        / fine.step().trim().on();
                wanted.add((threshold - 1) / kelvin);
            }
        }
        double low = Collections.min(wanted);
        double high = Collections.max(wanted);
        if (!Double.isFinite(trim) || high == low) {
            return 0;
        }
        return new BrentOptimizer(1e-6, 1e-9)
                .optimize(
                        new MaxEval(SEARCH),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(c -> {
                            double d = deviation(rows, t, trim, c);
                            return Double.isFinite(d) ? d : Double.MAX_VALUE;
                        }),
                        new SearchInterval(low, high))
                .getPoint();
    }

    private double deviation(List<Row> rows, int t, double trim, double perKelvin) {
        double worst = 0;
        for (int i = 0; i < rows.size(); i++) {
            double celsius = study.celsius().get(i);
            if (!(1 + perKelvin * (celsius - Temperature.AMBIENT) > 0)) {
                return Double.NaN;
            }
            double on = rows.get(i).all().get(t).on(fine.trim(perKelvin, celsius));
            worst = Math.max(worst, Math.abs(on / trim - 1));
        }
        return Double.isFinite(worst) ? worst : Double.NaN;
    }

    private List<Warning> warnings(List<TemperatureCurve> curves) {
        List<Warning> list =
                new ArrayList<>(ValidityLimits.squares(study.targets()).stream().toList());
        for (TemperatureCurve c : curves) {
            c.target().body().materials().stream()
                    .distinct()
                    .forEach(
                            m -> ValidityLimits.permeability(c.target().id(), m).ifPresent(list::add));
            double worst = IntStream.range(0, c.error().length)
                    .mapToDouble(i -> c.error()[i])
                    .filter(Double::isFinite)
                    .max()
                    .orElse(0);
            if (worst > study.accuracy()) {
                list.add(ValidityLimits.error(c.target().id(), worst, study.accuracy()));
            }
        }
        return list;
    }
}
