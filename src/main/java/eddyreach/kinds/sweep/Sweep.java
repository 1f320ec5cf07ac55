package eddyreach.kinds.sweep;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.DistanceFinder;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.field.join.PlacedTarget;
import eddyreach.materials.Material;
import eddyreach.model.values.Target;
import eddyreach.study.StudyInput;
import eddyreach.switching.SwitchPoints;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * Many targets before one trimmed switch, each only for its on and off distance. Every single distance has its own error bar, from two
 * steps of the ladder as in an approach ({@link DistanceFinder}); targets whose bar is above what the study asks for climb one step, not
 * the whole ladder, for there may be hundreds of them.
 */
final class Sweep {

    private final StudyInput study;
    private final double reach;
    private final Progress progress;
    private final ResolutionLadder ladder;

    /**
     * Solves the field of the switch and trims it.
     *
     * @param study switch, standard target and accuracy
     * @param reach end of the range of distances, m
     * @param widest all targets to come, or at least the widest one that is not endless
     * @param progress is told how far it is
     */
    Sweep(StudyInput study, double reach, List<Target> widest, Progress progress) {
        this.study = study;
        this.reach = reach;
        this.progress = progress;
        List<Target> all = new ArrayList<>(widest);
        all.add(study.standard());
        ladder = new ResolutionLadder(study.setup(), all, progress);
    }

    /** The switch at the step that gives results. */
    SolvedSwitch solved() {
        return ladder.step(ResolutionLadder.FIRST).solved();
    }

    /** The switch without a target. */
    TrimmedSwitch trimmed() {
        return TrimmedSwitch.of(ladder.step(ResolutionLadder.FIRST), WorkingPoint.free(solved()));
    }

    /**
     * Where targets switch, in their order.
     *
     * @param targets the targets
     * @param stage what is told of them while it is computed
     */
    List<SwitchDistance> of(List<Target> targets, String stage) {
        return nodes(targets, stage).stream().map(SmoothCurve.Node::distance).toList();
    }

    private List<SmoothCurve.Node> nodes(List<Target> targets, String stage) {
        SmoothCurve.Node[] found = new SmoothCurve.Node[targets.size()];
        AtomicInteger done = new AtomicInteger();
        progress.at(stage, 0, targets.size());
        for (int step = ResolutionLadder.FIRST;
                step <= AccuracyPolicy.HIGHEST_OF_MANY && done.get() < targets.size();
                step++) {
            boolean last = step == AccuracyPolicy.HIGHEST_OF_MANY;
            DistanceFinder finder = finder(step);
            List<ForkJoinTask<?>> tasks = new ArrayList<>();
            for (int i = 0; i < found.length; i++) {
                int index = i;
                if (found[i] == null || found[i].distance().error() > study.accuracy()) {
                    tasks.add(ForkJoinTask.adapt(() -> {
                        found[index] = one(finder, targets.get(index));
                        if (last || !(found[index].distance().error() > study.accuracy())) {
                            progress.at(stage, done.incrementAndGet(), targets.size());
                        }
                    }));
                }
            }
            ForkJoinTask.invokeAll(tasks);
        }
        return List.of(found);
    }

    /**
     * Curves of materials over a quantity, every point computed.
     *
     * @param materials one curve each
     * @param values the quantity, SI
     * @param target makes the target of a material and a value
     * @param stage what is told of them while they are computed
     */
    List<List<SweepPoint>> grid(
            List<Material> materials, double[] values, BiFunction<Material, Double, Target> target, String stage) {
        List<Target> targets = new ArrayList<>();
        for (Material m : materials) {
            for (double value : values) {
                targets.add(target.apply(m, value));
            }
        }
        List<SwitchDistance> found = of(targets, stage);
        List<List<SweepPoint>> result = new ArrayList<>();
        for (int c = 0; c < materials.size(); c++) {
            List<SweepPoint> points = new ArrayList<>();
            for (int i = 0; i < values.length; i++) {
                points.add(new SweepPoint(values[i], found.get(c * values.length + i)));
            }
            result.add(points);
        }
        return result;
    }

    /**
     * Curves of materials over a quantity on which the distances depend smoothly.
     *
     * @param points the points of each
     * @param smooth what gives each of them between the points; none for endless plates, which are computed
     */
    record Curves(List<List<SweepPoint>> points, List<SmoothCurve> smooth) {}

    /**
     * Curves of materials over a quantity on which the distances depend smoothly: endless plates are all computed, of targets that need a
     * mesh few are, see {@link SmoothCurve}.
     *
     * @param materials one curve each
     * @param values the quantity, SI; the distances are smooth over its index
     * @param target makes the target of a material and a value
     * @param stage what is told of them while they are computed
     */
    Curves curves(
            List<Material> materials, double[] values, BiFunction<Material, Double, Target> target, String stage) {
        if (solved().fields().endless(target.apply(materials.get(0), values[values.length - 1]))) {
            return new Curves(grid(materials, values, target, stage), List.of());
        }
        List<SmoothCurve> smooth = smooth(materials, values, target, stage);
        List<List<SweepPoint>> points = new ArrayList<>();
        for (SmoothCurve curve : smooth) {
            points.add(IntStream.range(0, values.length)
                    .mapToObj(i -> new SweepPoint(values[i], curve.at(i).orElseThrow()))
                    .toList());
        }
        return new Curves(points, smooth);
    }

    /**
     * Further values on such curves, computed where the curves do not give them.
     *
     * @param curves the curves
     * @param materials their materials
     * @param values the values for each
     * @param index place of a value among those of the curves
     * @param target makes the target of a material and a value
     * @param stage what is told of them while they are computed
     */
    List<List<SweepPoint>> further(
            Curves curves,
            List<Material> materials,
            List<List<Double>> values,
            DoubleUnaryOperator index,
            BiFunction<Material, Double, Target> target,
            String stage) {
        List<SwitchDistance[]> found = new ArrayList<>();
        List<Target> targets = new ArrayList<>();
        List<int[]> places = new ArrayList<>();
        for (int c = 0; c < values.size(); c++) {
            SwitchDistance[] row = new SwitchDistance[values.get(c).size()];
            for (int i = 0; i < row.length; i++) {
                double value = values.get(c).get(i);
                row[i] = curves.smooth().isEmpty()
                        ? null
                        : curves.smooth().get(c).at(index.applyAsDouble(value)).orElse(null);
                if (row[i] == null) {
                    targets.add(target.apply(materials.get(c), value));
                    places.add(new int[] {c, i});
                }
            }
            found.add(row);
        }
        List<SwitchDistance> computed = of(targets, stage);
        for (int k = 0; k < places.size(); k++) {
            found.get(places.get(k)[0])[places.get(k)[1]] = computed.get(k);
        }
        List<List<SweepPoint>> points = new ArrayList<>();
        for (int c = 0; c < values.size(); c++) {
            List<Double> row = values.get(c);
            SwitchDistance[] distances = found.get(c);
            points.add(IntStream.range(0, distances.length)
                    .mapToObj(i -> new SweepPoint(row.get(i), distances[i]))
                    .toList());
        }
        return points;
    }

    private List<SmoothCurve> smooth(
            List<Material> materials, double[] values, BiFunction<Material, Double, Target> target, String stage) {
        List<SmoothCurve> curves = materials.stream()
                .map(m -> new SmoothCurve(values.length, AccuracyPolicy.INTERPOLATION * study.accuracy()))
                .toList();
        while (true) {
            List<Target> targets = new ArrayList<>();
            List<int[]> places = new ArrayList<>();
            for (int c = 0; c < curves.size(); c++) {
                for (int i : curves.get(c).wanted()) {
                    targets.add(target.apply(materials.get(c), values[i]));
                    places.add(new int[] {c, i});
                }
            }
            if (targets.isEmpty()) {
                return curves;
            }
            List<SmoothCurve.Node> found = nodes(targets, stage);
            for (int k = 0; k < places.size(); k++) {
                curves.get(places.get(k)[0]).put(places.get(k)[1], found.get(k));
            }
        }
    }

    private DistanceFinder finder(int step) {
        return new DistanceFinder(
                study.setup(), ladder.step(step), ladder.step(step - 1), reach, AccuracyPolicy.APPROACH_INTERVALS);
    }

    private static SmoothCurve.Node one(DistanceFinder finder, Target target) {
        SolvedSwitch solved = finder.fine().solved();
        PlacedTarget field = solved.reflector(target);
        double[] most = {0};
        SwitchPoints points = finder.points(g -> {
            double conductance = solved.state(field, g).conductance();
            most[0] = Math.max(most[0], conductance);
            return conductance;
        });
        SwitchDistance distance =
                finder.distance(points, target, field, finder.coarse().solved().reflector(target));
        return new SmoothCurve.Node(distance, most[0] / finder.fine().trim().on());
    }
}
