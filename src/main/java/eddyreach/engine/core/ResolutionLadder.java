package eddyreach.engine.core;

import eddyreach.field.axial.Resolution;
import eddyreach.field.join.PlacedTarget;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.Trim;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.LongConsumer;

/**
 * The same switch at growing resolution, each step trimmed on its own standard target. Steps beyond the first two are computed only
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
     * @param bench the switch
     * @param trim its thresholds
     */
    public record Step(SolvedSwitch bench, Trim trim) {}

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

    /** A step, computed when it is asked for the first time; for one thread. */
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
     */
    public static Step trimmed(
            SwitchModel model, Target standard, Resolution resolution, List<Target> targets, LongConsumer memory) {
        SolvedSwitch bench = new SolvedSwitch(model, resolution, targets, memory);
        PlacedTarget field = bench.target(standard);
        Trim trim = Trim.atFactory(
                g -> bench.state(field, g).conductance(),
                bench.free().conductance(),
                model.effectiveDistance(),
                model.differentialTravel());
        return new Step(bench, trim);
    }
}
