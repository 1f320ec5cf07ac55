package eddyreach.kinds.sweep;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.Wavenumber;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Runs studies of the kind {@code thickness}. */
public final class ThicknessRunner {

    /** What a household or lid foil measures, m. */
    private static final double FOIL = 10e-6;

    private static final double SHEET = 1e-3;

    private final SweepInput.Thickness study;
    private final Sweep sweep;

    private ThicknessRunner(SweepInput.Thickness study, Progress progress) {
        this.study = study;
        List<Target> widest = List.of(
                study.target(study.materials().get(0), study.thicknesses().first()));
        sweep = new Sweep(study, study.searched(), widest, progress);
    }

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static ThicknessResult run(SweepInput.Thickness study, Progress progress) {
        return new ThicknessRunner(study, progress).result();
    }

    private ThicknessResult result() {
        double[] values = study.thicknesses().logarithmic();
        Sweep.Curves all = sweep.curves(study.materials(), values, study::target, "thicknesses");
        List<List<SweepPoint>> curves = all.points();
        List<Warning> warnings = ValidityLimits.sweep(study.outline(), study.materials(), sweep.solved());
        List<List<Double>> wanted = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            wanted.add(refined(curves.get(i)));
        }
        List<List<SweepPoint>> peaks = points(all, wanted, "largest distances");
        List<Map<MarkedPoint.Mark, Double>> names = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            names.add(marked(study.materials().get(i), highest(curves.get(i), peaks.get(i))));
        }
        List<List<SweepPoint>> found =
                points(all, names.stream().map(n -> List.copyOf(n.values())).toList(), "marked thicknesses");
        List<ThicknessResult.Metal> metals = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            Material material = study.materials().get(i);
            List<MarkedPoint> marked = new ArrayList<>();
            int n = 0;
            for (MarkedPoint.Mark mark : names.get(i).keySet()) {
                marked.add(new MarkedPoint(mark, found.get(i).get(n++)));
            }
            metals.add(metal(material, curves.get(i), highest(curves.get(i), peaks.get(i)), marked));
            ValidityLimits.errors(
                            material.id(),
                            curves.get(i).stream().map(SweepPoint::distance).toList(),
                            study.accuracy())
                    .ifPresent(warnings::add);
        }
        return new ThicknessResult(study.header(), study, sweep.trimmed(), metals, warnings);
    }

    /** Where a parabola through the highest point and its neighbours has its top; empty when the highest is at an end. */
    private static List<Double> refined(List<SweepPoint> points) {
        int top = top(points);
        if (top < 1 || top > points.size() - 2) {
            return List.of();
        }
        double left = points.get(top - 1).on();
        double middle = points.get(top).on();
        double right = points.get(top + 1).on();
        double bend = left - 2 * middle + right;
        if (!(bend < 0)) {
            return List.of();
        }
        double shift = (left - right) / (2 * bend);
        double step = Math.log(points.get(top + 1).value() / points.get(top).value());
        return List.of(points.get(top).value() * Math.exp(shift * step));
    }

    private static int top(List<SweepPoint> points) {
        return IntStream.range(0, points.size())
                .filter(i -> Double.isFinite(points.get(i).on()))
                .boxed()
                .max(Comparator.comparingDouble(i -> points.get(i).on()))
                .orElse(-1);
    }

    private static Optional<SweepPoint> highest(List<SweepPoint> curve, List<SweepPoint> peak) {
        return Stream.concat(curve.stream(), peak.stream())
                .filter(p -> Double.isFinite(p.on()))
                .max(Comparator.comparingDouble(SweepPoint::on));
    }

    private List<List<SweepPoint>> points(Sweep.Curves curves, List<List<Double>> values, String stage) {
        return sweep.further(
                curves, study.materials(), values, study.thicknesses()::logarithmicIndex, study::target, stage);
    }

    private double wavenumber(Optional<SweepPoint> highest) {
        return Wavenumber.dominant(
                study.switchModel(), highest.map(SweepPoint::on).orElse(0.0));
    }

    private double optimum(Material material, double wavenumber) {
        return Wavenumber.sheetOptimum(material, sweep.solved().free().omega(), wavenumber);
    }

    /** Thicknesses that tell something, in ascending order, with what they are. */
    private Map<MarkedPoint.Mark, Double> marked(Material material, Optional<SweepPoint> highest) {
        Map<MarkedPoint.Mark, Double> all = new LinkedHashMap<>();
        highest.ifPresent(p -> all.put(MarkedPoint.Mark.LARGEST, p.value()));
        all.put(MarkedPoint.Mark.SHEET_OPTIMUM, optimum(material, wavenumber(highest)));
        all.put(MarkedPoint.Mark.FOIL, FOIL);
        all.put(
                MarkedPoint.Mark.SKIN_DEPTH,
                material.skinDepth(sweep.solved().free().omega(), Temperature.AMBIENT));
        all.put(MarkedPoint.Mark.SHEET, SHEET);
        Map<MarkedPoint.Mark, Double> sorted = new LinkedHashMap<>();
        all.entrySet().stream()
                .filter(e -> e.getValue() >= study.thicknesses().first()
                        && e.getValue() <= study.thicknesses().last())
                .sorted(Map.Entry.comparingByValue())
                .forEach(e -> sorted.put(e.getKey(), e.getValue()));
        return sorted;
    }

    private ThicknessResult.Metal metal(
            Material material, List<SweepPoint> points, Optional<SweepPoint> highest, List<MarkedPoint> marked) {
        SweepCurve curve = new SweepCurve(material.id(), material.name(), points);
        double k = wavenumber(highest);
        double skin = material.skinDepth(sweep.solved().free().omega(), Temperature.AMBIENT);
        double optimum = optimum(material, k);
        boolean inside = highest.isPresent()
                && highest.get().value() > study.thicknesses().first()
                && highest.get().value() < study.thicknesses().last();
        return new ThicknessResult.Metal(material, curve, skin, optimum, k, highest, inside, marked);
    }
}
