package eddyreach.kinds.offaxis;

import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code zone}. */
public final class ZoneRunner {

    /** Distances of the map from which the contours are drawn. */
    private static final int MAP = 101;

    private final ZoneInput study;
    private final OffAxisLadder ladder;
    private final Progress progress;
    private final AtomicInteger done = new AtomicInteger();

    private ZoneRunner(ZoneInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        ladder = new OffAxisLadder(study, study.targets(), study.offsets(), study.lastDistance(), progress);
    }

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static ZoneResult run(ZoneInput study, Progress progress) {
        return new ZoneRunner(study, progress).result();
    }

    private ZoneResult result() {
        List<ZoneTarget> targets = new ArrayList<>();
        for (Target target : study.targets()) {
            targets.add(zone(target));
        }
        return new ZoneResult(study.header(), ladder.trimmed(), targets, List.of());
    }

    /** The zone at the first step of the ladder whose error bars suffice, or else at the last. */
    private ZoneTarget zone(Target target) {
        ZoneTarget found = ladder.climb(target, this::zone, ZoneTarget::error);
        return found.with(ladder.warnings(target, found.error())).withOutline(OffAxisLimits.outlineShift(target));
    }

    private ZoneTarget zone(OffAxisFinder lateral) {
        int n = study.offsets().points();
        double[] offset = IntStream.range(0, n).mapToDouble(study.offsets()::at).toArray();
        double[] distance = IntStream.range(0, MAP)
                .mapToDouble(i -> study.lastDistance() * i / (MAP - 1))
                .toArray();
        double[][] conductance = new double[n][];
        SwitchDistance[] found = new SwitchDistance[n];
        int total = n * study.targets().size();
        // solves most orders before two threads ask for the same ones
        lateral.at(offset[n / 2]).conductance();
        IntStream.range(0, n).parallel().forEach(i -> {
            OffAxisFinder.At at = lateral.at(offset[i]);
            found[i] = at.distance();
            var curve = at.conductance();
            conductance[i] = IntStream.range(0, MAP)
                    .mapToDouble(j -> curve.applyAsDouble(distance[j]))
                    .toArray();
            progress.at("zone", Math.min(total, done.incrementAndGet()), total);
        });
        ResolutionLadder.Step step = lateral.step();
        return new ZoneTarget(
                lateral.target(),
                offset,
                List.of(found),
                distance,
                conductance,
                edge(lateral, offset, conductance, step.trim().on()),
                edge(lateral, offset, conductance, step.trim().off()),
                List.of());
    }

    /** The largest offset at which the conductance in contact reaches a threshold. */
    private static ZoneEdge edge(OffAxisFinder lateral, double[] offset, double[][] conductance, double threshold) {
        int last = -1;
        for (int i = 0; i < offset.length; i++) {
            if (conductance[i][0] >= threshold) {
                last = i;
            }
        }
        // the map is extrapolated to contact: what is computed there may cross between other offsets
        while (last >= 0 && lateral.state(offset[last], 0).conductance() < threshold) {
            last--;
        }
        while (last >= 0
                && last < offset.length - 1
                && lateral.state(offset[last + 1], 0).conductance() >= threshold) {
            last++;
        }
        return last < 0 || last == offset.length - 1
                ? ZoneEdge.NONE
                : lateral.edge(offset[last], offset[last + 1], 0, threshold);
    }
}
