package eddyreach.kinds.sweep;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code size}. */
public final class SizeRunner {

    /** Sizes that are told, over that of the standard target. */
    private static final double[] TOLD = {0.25, 0.5, 0.75, 1, 1.5};

    private final SweepInput.Size study;
    private final Sweep sweep;

    private SizeRunner(SweepInput.Size study, Progress progress) {
        this.study = study;
        List<Target> all = Arrays.stream(study.sizes().logarithmic())
                .mapToObj(s -> study.target(study.materials().get(0), s))
                .toList();
        sweep = new Sweep(study, study.searched(), all, progress);
    }

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static SizeResult run(SweepInput.Size study, Progress progress) {
        return new SizeRunner(study, progress).result();
    }

    private SizeResult result() {
        List<Material> materials = study.materials();
        double side = study.switchModel().standardSide();
        double reference = study.discs() ? 2 * side / Math.sqrt(Math.PI) : side;
        List<List<SweepPoint>> curves = sweep.grid(materials, study.sizes().logarithmic(), study::target, "sizes");
        double[] told = Arrays.stream(TOLD)
                .map(r -> r * reference)
                .filter(s -> s == reference
                        || s >= study.sizes().first() && s <= study.sizes().last())
                .toArray();
        List<List<SweepPoint>> marked = sweep.grid(materials, told, study::target, "marked sizes");
        double[] smallest = smallest(curves);
        curves.forEach(c -> c.sort(Comparator.comparingDouble(SweepPoint::value)));
        List<Warning> warnings =
                ValidityLimits.sweep(study.outline(study.sizes().first()), materials, sweep.solved());
        double widest = study.outline(study.sizes().last()).equivalentRadius();
        if (sweep.solved().fields().wide(widest)) {
            warnings.add(ValidityLimits.wide("the largest sizes", widest));
        }
        List<SizeResult.Item> items = new ArrayList<>();
        for (int m = 0; m < materials.size(); m++) {
            Material material = materials.get(m);
            SweepCurve curve = new SweepCurve(material.id(), material.name(), curves.get(m));
            List<SweepPoint> points = marked.get(m);
            SwitchDistance standard = points.stream()
                    .filter(p -> p.value() == reference)
                    .findFirst()
                    .orElseThrow()
                    .distance();
            items.add(new SizeResult.Item(
                    material,
                    curve,
                    standard,
                    smallest[m],
                    points.stream()
                            .map(p -> new MarkedPoint(
                                    p.value() == reference ? MarkedPoint.Mark.STANDARD_SIZE : MarkedPoint.Mark.ROUND,
                                    p))
                            .toList()));
            ValidityLimits.errors(
                            material.id(),
                            curve.points().stream().map(SweepPoint::distance).toList(),
                            study.accuracy())
                    .ifPresent(warnings::add);
        }
        return new SizeResult(study.header(), study, sweep.trimmed(), reference, items, warnings);
    }

    /** Halves, for all materials at once, the step between the largest size that is not seen and the next one, and adds what it meets. */
    private double[] smallest(List<List<SweepPoint>> curves) {
        int n = curves.size();
        double[] unseen = new double[n];
        double[] seen = new double[n];
        for (int m = 0; m < n; m++) {
            List<SweepPoint> points = curves.get(m);
            int first = points.size();
            while (first > 0 && points.get(first - 1).seen()) {
                first--;
            }
            seen[m] = first < points.size() ? points.get(first).value() : Double.NaN;
            unseen[m] =
                    first > 0 && first < points.size() ? points.get(first - 1).value() : seen[m];
        }
        while (open(unseen, seen).length > 0) {
            int[] open = open(unseen, seen);
            List<Target> targets = new ArrayList<>();
            for (int m : open) {
                targets.add(study.target(study.materials().get(m), Math.sqrt(unseen[m] * seen[m])));
            }
            List<SwitchDistance> found = sweep.of(targets, "smallest sizes");
            for (int i = 0; i < open.length; i++) {
                int m = open[i];
                double middle = Math.sqrt(unseen[m] * seen[m]);
                SweepPoint point = new SweepPoint(middle, found.get(i));
                curves.get(m).add(point);
                if (point.seen()) {
                    seen[m] = middle;
                } else {
                    unseen[m] = middle;
                }
            }
        }
        return seen;
    }

    private static int[] open(double[] unseen, double[] seen) {
        return IntStream.range(0, seen.length)
                .filter(m -> seen[m] > AccuracyPolicy.SMALLEST_SIZE * unseen[m])
                .toArray();
    }
}
