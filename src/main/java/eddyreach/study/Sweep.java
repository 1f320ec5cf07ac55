package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.model.StudyInput;
import eddyreach.model.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;

/**
 * Many targets before one trimmed switch, each only for its on and off distance. Every single distance has its own error bar, from two
 * steps of the ladder as in an approach ({@link DistanceFinder}); targets whose bar is above what the study asks for climb one step, not
 * the whole ladder, for there may be hundreds of them.
 */
final class Sweep {

    /** Intervals in which the range of distances is sampled: the curves of wide targets are smooth on this scale. */
    private static final int INTERVALS = 24;

    private static final int STRIDE = 2;

    /** Error of interpolation that is accepted, over the accuracy of the study. */
    private static final double INTERPOLATION = 0.1;

    private static final int HIGHEST = Ladder.FIRST + 1;

    private final StudyInput study;
    private final double reach;
    private final Progress progress;
    private final Ladder ladder;

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
        ladder = new Ladder(study, all, progress);
    }

    /** The switch at the step that gives results. */
    Bench bench() {
        return ladder.step(Ladder.FIRST).bench();
    }

    /** The switch without a target. */
    TrimmedSwitch trimmed() {
        return TrimmedSwitch.of(ladder.step(Ladder.FIRST), Situation.free(bench()));
    }

    /**
     * Where targets switch, in their order.
     *
     * @param targets the targets
     * @param stage what is told of them while it is computed
     */
    List<SwitchDistance> of(List<Target> targets, String stage) {
        SwitchDistance[] found = new SwitchDistance[targets.size()];
        AtomicInteger done = new AtomicInteger();
        progress.at(stage, 0, targets.size());
        for (int step = Ladder.FIRST; step <= HIGHEST && done.get() < targets.size(); step++) {
            boolean last = step == HIGHEST;
            DistanceFinder finder = finder(step);
            List<ForkJoinTask<?>> tasks = new ArrayList<>();
            for (int i = 0; i < found.length; i++) {
                int index = i;
                if (found[i] == null || found[i].error() > study.accuracy()) {
                    tasks.add(ForkJoinTask.adapt(() -> {
                                found[index] = one(finder, targets.get(index));
                                if (last || !(found[index].error() > study.accuracy())) {
                                    progress.at(stage, done.incrementAndGet(), targets.size());
                                }
                            })
                            .fork());
                }
            }
            tasks.forEach(ForkJoinTask::join);
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
        return grid(materials, values, target, stage, 1);
    }

    /**
     * Curves of materials over a quantity on which the distances depend smoothly. Endless plates are all computed; of targets that need a
     * mesh every second value is, and {@link SmoothCurve} fills in between where that is safe.
     *
     * @param materials one curve each
     * @param values the quantity, SI; the distances are smooth over its index
     * @param target makes the target of a material and a value
     * @param stage what is told of them while they are computed
     */
    List<List<SweepPoint>> smooth(
            List<Material> materials, double[] values, BiFunction<Material, Double, Target> target, String stage) {
        boolean cheap = bench().fields().endless(target.apply(materials.get(0), values[values.length - 1]));
        return grid(materials, values, target, stage, cheap ? 1 : STRIDE);
    }

    private List<List<SweepPoint>> grid(
            List<Material> materials,
            double[] values,
            BiFunction<Material, Double, Target> target,
            String stage,
            int stride) {
        List<SwitchDistance[]> curves = new ArrayList<>();
        materials.forEach(m -> curves.add(new SwitchDistance[values.length]));
        fill(materials, values, target, stage, curves, (c, i) -> i % stride == 0 || i == values.length - 1);
        if (stride > 1) {
            curves.replaceAll(c -> SmoothCurve.filled(c, INTERPOLATION * study.accuracy()));
            fill(materials, values, target, stage, curves, (c, i) -> true);
        }
        List<List<SweepPoint>> result = new ArrayList<>();
        for (SwitchDistance[] curve : curves) {
            List<SweepPoint> points = new ArrayList<>();
            for (int i = 0; i < values.length; i++) {
                points.add(new SweepPoint(values[i], curve[i]));
            }
            result.add(points);
        }
        return result;
    }

    /** Computes those chosen by number of curve and value that are still missing. */
    private void fill(
            List<Material> materials,
            double[] values,
            BiFunction<Material, Double, Target> target,
            String stage,
            List<SwitchDistance[]> curves,
            BiPredicate<Integer, Integer> chosen) {
        List<Target> targets = new ArrayList<>();
        List<int[]> places = new ArrayList<>();
        for (int c = 0; c < curves.size(); c++) {
            for (int i = 0; i < values.length; i++) {
                if (curves.get(c)[i] == null && chosen.test(c, i)) {
                    targets.add(target.apply(materials.get(c), values[i]));
                    places.add(new int[] {c, i});
                }
            }
        }
        List<SwitchDistance> found = of(targets, stage);
        for (int k = 0; k < places.size(); k++) {
            curves.get(places.get(k)[0])[places.get(k)[1]] = found.get(k);
        }
    }

    private DistanceFinder finder(int step) {
        return new DistanceFinder(study, ladder.step(step), ladder.step(step - 1), reach, INTERVALS);
    }

    private static SwitchDistance one(DistanceFinder finder, Target target) {
        return finder.of(
                target,
                finder.fine().bench().reflector(target),
                finder.coarse().bench().reflector(target));
    }
}
