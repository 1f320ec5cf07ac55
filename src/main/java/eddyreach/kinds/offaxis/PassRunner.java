package eddyreach.kinds.offaxis;

import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.Progress;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code pass}. */
public final class PassRunner {

    private final PassInput study;
    private final OffAxisLadder ladder;
    private final Progress progress;
    private final AtomicInteger done = new AtomicInteger();

    private PassRunner(PassInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        ladder = new OffAxisLadder(study, study.targets(), study.offsets(), study.distance(), progress);
    }

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static PassResult run(PassInput study, Progress progress) {
        return new PassRunner(study, progress).result();
    }

    private PassResult result() {
        return new PassResult(
                study.header(),
                ladder.trimmed(),
                study.distance(),
                study.targets().stream().map(this::pass).toList(),
                List.of());
    }

    /** The pass at the first step of the ladder whose error bars suffice, or else at the last. */
    private PassTarget pass(Target target) {
        PassTarget found = ladder.climb(target, this::pass, PassTarget::error);
        return found.with(ladder.warnings(target, found.error())).withOutline(OffAxisLimits.outlineShift(target));
    }

    private PassTarget pass(OffAxisFinder lateral) {
        int half = study.offsets().points();
        double[] conductance = new double[half];
        int total = half * study.targets().size();
        // solves most orders before two threads ask for the same ones
        lateral.state(study.offsets().at(half / 2), study.distance());
        IntStream.range(0, half).parallel().forEach(i -> {
            conductance[i] =
                    lateral.state(study.offsets().at(i), study.distance()).conductance();
            progress.at("pass", Math.min(total, done.incrementAndGet()), total);
        });
        int n = 2 * half - 1;
        Trim trim = lateral.step().trim();
        double[] offset = new double[n];
        double[] amplitude = new double[n];
        boolean[] on = new boolean[n];
        List<PassTarget.Change> changes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int from = Math.abs(i - (half - 1));
            offset[i] = Math.signum(i - (half - 1)) * study.offsets().at(from);
            amplitude[i] = study.switchModel().element().amplitude(conductance[from]);
            boolean before = i > 0 && on[i - 1];
            on[i] = before ? conductance[from] >= trim.off() : conductance[from] >= trim.on();
            if (i > 0 && on[i] != before) {
                changes.add(change(lateral, offset[i - 1], offset[i], on[i]));
            }
        }
        return new PassTarget(lateral.target(), offset, amplitude, on, changes, List.of());
    }

    private PassTarget.Change change(OffAxisFinder lateral, double from, double to, boolean turnsOn) {
        Trim trim = lateral.step().trim();
        ZoneEdge edge = lateral.edge(from, to, study.distance(), turnsOn ? trim.on() : trim.off());
        return new PassTarget.Change(edge.offset(), edge.error(), turnsOn);
    }
}
