package eddyreach.kinds.mount;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Recess;
import eddyreach.model.values.SwitchModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleFunction;

/**
 * Finds the nearest safe dimensions of a recess: by bisection at the coarse step, on the machinist's grid, then confirmed at the step that
 * gives results, over temperature and trim, and by a direct solve. Where that does not confirm, the next step of the grid is tried.
 */
final class SafeDimensions {

    private final SwitchModel model;
    private final MountProbe probe;
    private final WorstDamping worst;
    private final BooleanSupplier stop;

    /**
     * @param model the switch
     * @param probe looks at mounts
     * @param worst temperature and trim
     * @param stop asked between solves; what is not found by then is left out
     */
    SafeDimensions(SwitchModel model, MountProbe probe, WorstDamping worst, BooleanSupplier stop) {
        this.model = model;
        this.probe = probe;
        this.worst = worst;
        this.stop = stop;
    }

    /** True when a mount is safe, worst corner included. */
    static boolean safe(MountProbe.Reading reading, List<MountCase.Corner> all) {
        return reading.safe() && worst(all) <= MountCase.LIMIT;
    }

    private static double worst(List<MountCase.Corner> all) {
        return all.stream().mapToDouble(MountCase.Corner::used).max().orElseThrow();
    }

    /**
     * Smallest diameter for the depth, never below the body's clearance hole, and for the diameter the largest depth to sink it or the smallest that clears the face. A bare bore
     * around a switch that is not sunk has neither: what the trade usually keeps clear around a non-flush switch stands for them.
     */
    List<SafeDimension> of(Recess recess) {
        boolean bare = recess.depth() == 0;
        double diameter = bare ? Math.min(UsualRules.clearDiameter(model), recess.widest(model)) : recess.diameter();
        double depth = bare ? Math.min(UsualRules.clearHeight(model), recess.deepest(model)) : recess.depth();
        ForkJoinTask<Optional<SafeDimension>> deep = ForkJoinTask.adapt(
                        () -> search(recess, SafeDimension.Kind.DEPTH, diameter, depth))
                .fork();
        List<SafeDimension> all = new ArrayList<>();
        search(recess, SafeDimension.Kind.DIAMETER, diameter, depth).ifPresent(all::add);
        deep.join().ifPresent(all::add);
        return all;
    }

    /**
     * The grid of a search: value = direction x step x (start + i), i from 0 to count.
     *
     * @param first the value next to the given one, m
     * @param step from one value to the next, m, signed
     * @param count number of the last value
     */
    private record Grid(double first, double step, int count) {

        static Grid up(double from, double to) {
            double first = Math.ceil(from / SafeDimension.STEP - 1e-9) * SafeDimension.STEP;
            return new Grid(first, SafeDimension.STEP, (int) Math.floor((to - first) / SafeDimension.STEP + 1e-9));
        }

        static Grid down(double from) {
            int n = (int) Math.floor(from / SafeDimension.STEP + 1e-9);
            return new Grid(n * SafeDimension.STEP, -SafeDimension.STEP, n);
        }

        double at(int i) {
            return first + step * i;
        }
    }

    private Optional<SafeDimension> search(Recess recess, SafeDimension.Kind kind, double diameter, double depth) {
        boolean wider = kind == SafeDimension.Kind.DIAMETER;
        Grid grid = wider
                ? Grid.up(Math.max(Math.nextUp(recess.diameter()), model.clearanceHole()), recess.widest(model))
                : recess.sinks()
                        ? Grid.down(Math.nextDown(recess.depth()))
                        : Grid.up(Math.nextUp(recess.depth()), recess.deepest(model));
        DoubleFunction<Mount> mount = value -> wider ? recess.with(value, depth) : recess.with(diameter, value);
        int first = 0;
        int last = grid.count();
        if (last < 0 || stop.getAsBoolean()) {
            return Optional.empty();
        }
        Optional<SafeDimension.Found> found = Optional.empty();
        if (probe.coarse(mount.apply(grid.at(last))).safe()) {
            // the first value that is safe, if safety does not come and go
            while (first < last && !stop.getAsBoolean()) {
                int middle = (first + last) / 2;
                if (probe.coarse(mount.apply(grid.at(middle))).safe()) {
                    last = middle;
                } else {
                    first = middle + 1;
                }
            }
            for (int i = last; i <= Math.min(grid.count(), last + AccuracyPolicy.SAFE_TRIES) && found.isEmpty(); i++) {
                if (stop.getAsBoolean()) {
                    return Optional.empty();
                }
                found = confirmed(mount.apply(grid.at(i)), grid.at(i));
            }
        }
        return Optional.of(new SafeDimension(kind, diameter, depth, recess.sinks(), grid.at(grid.count()), found));
    }

    /** Each of the mount's bounds must be safe; what is told is the one that uses most of the reserve. */
    private Optional<SafeDimension.Found> confirmed(Mount mount, double value) {
        List<SafeDimension.Found> bounds = new ArrayList<>();
        for (Mount m : mount.bounds()) {
            Optional<SafeDimension.Found> one = bound(m, value);
            if (one.isEmpty()) {
                return one;
            }
            bounds.add(one.get());
        }
        return bounds.stream().max((a, b) -> Double.compare(a.worst(), b.worst()));
    }

    private Optional<SafeDimension.Found> bound(Mount mount, double value) {
        SolvedSwitch rough = probe.solved(mount, 0);
        SolvedSwitch solved = probe.solved(mount, ResolutionLadder.FIRST);
        MountProbe.Reading reading = probe.fine(mount, rough, solved);
        if (!reading.safe()) {
            return Optional.empty();
        }
        List<MountCase.Corner> all = worst.of(solved, rough, mount);
        if (!safe(reading, all)) {
            return Optional.empty();
        }
        MountProbe.Sight sight = reading.sights().get(0);
        return Optional.of(new SafeDimension.Found(
                value,
                reading.used(),
                worst(all),
                sight.distance().on(),
                sight.distance().onError(),
                sight.shift(),
                probe.direct(mount, solved, reading)));
    }
}
