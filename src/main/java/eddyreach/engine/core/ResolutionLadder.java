package eddyreach.engine.core;

import eddyreach.field.axial.Resolution;
import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import eddyreach.switching.Trim;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.LongConsumer;

/**
 * The same switch at growing resolution, a ladder that each result climbs as far as it needs; each step trimmed on its own standard target. Steps beyond the first two are computed only
 * when a result asks for them.
 */
public final class ResolutionLadder {

    /** The first step that gives results. */
    public static final int FIRST = 1;

    private final Setup setup;
    private final List<Target> targets;
    private final Progress progress;
    private final Step[] steps = new Step[Resolution.LADDER.size()];

    /**
     * A trimmed switch.
     *
     * @param solved the switch
     * @param trim its thresholds
     * @param standard the target on which it is trimmed
     * @param standardField its field problem
     */
    public record Step(SolvedSwitch solved, Trim trim, Target standard, PlacedTarget standardField) {

        /**
         * The field problem of a target where it stands; that of the standard target is solved already.
         *
         * @throws SelfCheckException if it fails its own checks
         * @throws MemoryException if it may not fit into the heap
         */
        public PlacedTarget field(Target target) {
            // parts are named after the target's id
            return target.actsAs(standard) && target.id().equals(standard.id()) ? standardField : solved.target(target);
        }
    }

    /**
     * Computes the first two steps.
     *
     * @param targets the targets that will be put before the switch
     * @param progress is told of the field problems
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public ResolutionLadder(Setup setup, List<Target> targets, Progress progress) {
        this.setup = setup;
        this.progress = progress;
        this.targets = targets;
        ForkJoinTask<Step> rough = ForkJoinTask.adapt(() -> make(0)).fork();
        steps[FIRST] = make(FIRST);
        steps[0] = rough.join();
    }

    /** Number of the finest step. */
    public int last() {
        return steps.length - 1;
    }

    /**
     * A step, computed when it is asked for the first time; for one thread.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Step step(int i) {
        if (steps[i] == null) {
            steps[i] = make(i);
        }
        return steps[i];
    }

    private Step make(int i) {
        Resolution resolution = Resolution.LADDER.get(i);
        return trimmed(
                setup.switchModel(),
                setup.standard(),
                i < FIRST ? resolution.withoutFields() : resolution,
                targets,
                bytes -> progress.solving(setup.switchModel().id(), bytes));
    }

    /**
     * A switch at one resolution, trimmed on its standard target.
     *
     * @param targets the targets that will be put before it
     * @param memory is told the most memory that solving may take, bytes, before it begins
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static Step trimmed(
            SwitchModel model, Target standard, Resolution resolution, List<Target> targets, LongConsumer memory) {
        SolvedSwitch solved = new SolvedSwitch(model, resolution, targets, memory);
        PlacedTarget field = solved.target(standard);
        Trim trim = Trim.atFactory(
                g -> solved.state(field, g).conductance(),
                solved.free().conductance(),
                model.effectiveDistance(),
                model.differentialTravel());
        return new Step(solved, trim, standard, field);
    }
}
