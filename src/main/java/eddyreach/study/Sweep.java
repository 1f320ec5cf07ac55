package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.model.StudyInput;
import eddyreach.model.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;

/**
 * Many targets before one trimmed switch, each only for its on and off distance. Every single distance has its own error bar, from two
 * steps of the ladder as in an approach ({@link DistanceFinder}); targets whose bar is above what the study asks for climb one step, not
 * the whole ladder, for there may be hundreds of them.
 */
final class Sweep {

    /** Intervals in which the range of distances is sampled: the curves of wide targets are smooth on this scale. */
    private static final int INTERVALS = 24;

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
     * Curves of materials over a quantity.
     *
     * @param materials one curve each
     * @param values the quantity, SI
     * @param target makes the target of a material and a value
     * @param stage what is told of them while they are computed
     */
    List<List<SweepPoint>> grid(
            List<Material> materials, double[] values, BiFunction<Material, Double, Target> target, String stage) {
        List<Target> targets = new ArrayList<>();
        for (Material material : materials) {
            for (double value : values) {
                targets.add(target.apply(material, value));
            }
        }
        List<SwitchDistance> found = of(targets, stage);
        List<List<SweepPoint>> curves = new ArrayList<>();
        for (int m = 0; m < materials.size(); m++) {
            List<SweepPoint> points = new ArrayList<>();
            for (int i = 0; i < values.length; i++) {
                points.add(new SweepPoint(values[i], found.get(m * values.length + i)));
            }
            curves.add(points);
        }
        return curves;
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
