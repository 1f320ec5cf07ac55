package eddyreach.kinds.recess;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountInput;
import eddyreach.kinds.mount.MountProbe;
import eddyreach.kinds.mount.MountResult;
import eddyreach.kinds.mount.MountRunner;
import eddyreach.kinds.mount.MountTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.study.Checkpoint;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyInput;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Runs studies of the kind {@code recess}: all cells at the coarse step, those near a limit and some spread over the map at the step that
 * gives results. What these two differ by gives the error bars of the others.
 */
public final class RecessRunner {

    /** Strides of the cells, the first ones spread over the map: a map that is stopped early then shows it all roughly. */
    private static final int[] STRIDES = {4, 2, 1};

    /** Points of the curve of the recess on the drawing. */
    private static final int CURVE = 61;

    private final RecessInput study;
    private final Progress progress;
    private final Checkpoint checkpoint;
    private final double[] diameters;
    private final double[] depths;
    private final ResolutionLadder ladder;
    private final MountProbe probe;
    private final Map<Place, RecessCell> cells = new ConcurrentHashMap<>();

    /** Where a cell lies and how finely it was computed. */
    private record Place(int panel, int diameter, int depth, int step) {}

    private RecessRunner(RecessInput study, Progress progress, Checkpoint checkpoint) {
        this.study = study;
        this.progress = progress;
        this.checkpoint = checkpoint;
        diameters = study.diameters().even();
        depths = study.depths().even();
        List<Target> targets = List.of(study.target());
        ladder = new ResolutionLadder(study.setup(), List.of(study.target(), study.standard()), progress);
        probe = new MountProbe(study, ladder, targets);
        checkpoint.kept().stream()
                .flatMap(line -> RecessCell.of(line).stream())
                .filter(this::fits)
                .forEach(c -> cells.put(new Place(c.panel(), c.diameter(), c.depth(), c.step()), c));
    }

    private boolean fits(RecessCell c) {
        return c.panel() >= 0
                && c.panel() < study.materials().size()
                && c.diameter() >= 0
                && c.diameter() < diameters.length
                && c.depth() >= 0
                && c.depth() < depths.length;
    }

    /**
     * Runs a study, tells how far it is, and stops early when asked.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static RecessResult run(RecessInput study, Progress progress, Checkpoint checkpoint) {
        return new RecessRunner(study, progress, checkpoint).result();
    }

    private RecessResult result() {
        List<Place> all = places();
        compute("map", all);
        boolean whole = all.stream().allMatch(cells::containsKey);
        if (whole) {
            List<Place> near = IntStream.range(0, study.materials().size())
                    .boxed()
                    .flatMap(p -> confirmed(p).stream())
                    .toList();
            compute("confirming", near);
            whole = near.stream().allMatch(cells::containsKey);
        }
        Optional<MountResult> judged = whole && !checkpoint.stop() ? Optional.of(judge()) : Optional.empty();
        List<RecessResult.Panel> panels = IntStream.range(0, study.materials().size())
                .mapToObj(p -> new RecessResult.Panel(
                        study.materials().get(p),
                        rows(p),
                        judged.map(j -> j.cases().get(p + 1))))
                .toList();
        return new RecessResult(
                study,
                TrimmedSwitch.of(
                        ladder.step(ResolutionLadder.FIRST),
                        WorkingPoint.free(ladder.step(ResolutionLadder.FIRST).solved())),
                diameters,
                depths,
                probe.free().get(0),
                panels,
                judged.map(MountResult::rules).orElse(List.of()),
                checkpoint.stop(),
                warnings(panels));
    }

    /** All cells at the coarse step, in the order of computing. */
    private List<Place> places() {
        List<Place> all = new ArrayList<>();
        int before = Integer.MAX_VALUE;
        for (int stride : STRIDES) {
            for (int p = 0; p < study.materials().size(); p++) {
                for (int j = 0; j < depths.length; j += stride) {
                    for (int i = 0; i < diameters.length; i += stride) {
                        if (before == Integer.MAX_VALUE || i % before != 0 || j % before != 0) {
                            all.add(new Place(p, i, j, 0));
                        }
                    }
                }
            }
            before = stride;
        }
        return all;
    }

    /** Computes what is missing on all cores, in order, until asked to stop. */
    private void compute(String stage, List<Place> places) {
        List<Place> missing = places.stream().filter(p -> !cells.containsKey(p)).toList();
        AtomicInteger next = new AtomicInteger();
        AtomicInteger done = new AtomicInteger(places.size() - missing.size());
        progress.at(stage, done.get(), places.size());
        // plain threads: a task that waits inside a solve must not begin another cell
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int t = 0; t < Runtime.getRuntime().availableProcessors(); t++) {
                running.add(threads.submit(() -> {
                    for (int i = next.getAndIncrement();
                            i < missing.size() && !checkpoint.stop();
                            i = next.getAndIncrement()) {
                        RecessCell cell = cell(missing.get(i));
                        cells.put(missing.get(i), cell);
                        checkpoint.keep(cell.line());
                        progress.at(stage, done.incrementAndGet(), places.size());
                    }
                }));
            }
            for (Future<?> f : running) {
                f.get();
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the thread that waits for the map was interrupted", e);
        } finally {
            next.set(missing.size());
            threads.shutdown();
        }
    }

    private RecessCell cell(Place place) {
        Mount mount = study.recess(study.materials().get(place.panel()))
                .with(diameters[place.diameter()], depths[place.depth()]);
        MountProbe.Reading r = place.step() == 0 ? probe.coarse(mount) : probe.fine(mount);
        MountProbe.Sight s = r.sights().get(0);
        return new RecessCell(
                place.panel(),
                place.diameter(),
                place.depth(),
                place.step(),
                r.used(),
                r.verdict(),
                s.distance(),
                s.shift(),
                s.lever());
    }

    private RecessCell coarse(int panel, int i, int j) {
        return cells.get(new Place(panel, i, j, 0));
    }

    /** The cells to be confirmed: corners and middle of the map, and those beside a limit, the nearest to it first. */
    private List<Place> confirmed(int panel) {
        int right = diameters.length - 1;
        int top = depths.length - 1;
        List<Place> places = new ArrayList<>();
        for (int[] spread : new int[][] {{0, 0}, {right, 0}, {0, top}, {right, top}, {right / 2, top / 2}}) {
            places.add(new Place(panel, spread[0], spread[1], ResolutionLadder.FIRST));
        }
        List<RecessCell> beside = new ArrayList<>();
        for (int j = 0; j <= top; j++) {
            for (int i = 0; i <= right; i++) {
                boolean here = coarse(panel, i, j).safe();
                boolean edge = i > 0 && coarse(panel, i - 1, j).safe() != here
                        || i < right && coarse(panel, i + 1, j).safe() != here
                        || j > 0 && coarse(panel, i, j - 1).safe() != here
                        || j < top && coarse(panel, i, j + 1).safe() != here;
                if (edge) {
                    beside.add(coarse(panel, i, j));
                }
            }
        }
        beside.stream()
                .sorted(Comparator.comparingDouble(this::nearness))
                .map(c -> new Place(panel, c.diameter(), c.depth(), ResolutionLadder.FIRST))
                .filter(p -> !places.contains(p))
                .limit(AccuracyPolicy.CONFIRMED_CELLS)
                .toList()
                .forEach(places::add);
        return places.stream().distinct().toList();
    }

    /** How far a cell is from the nearest limit. */
    private double nearness(RecessCell c) {
        double shift = Math.abs(Math.abs(c.shift()) - MountTarget.LARGEST_SHIFT);
        double used = Math.abs(c.used() - MountCase.CAREFUL);
        return Double.isNaN(shift) ? used : Math.min(used, shift);
    }

    /** The finest cell of each place, those of the coarse step with the error bar that the confirmed ones show. */
    private List<List<Optional<RecessCell>>> rows(int panel) {
        List<RecessCell> confirmed = cells.values().stream()
                .filter(c -> c.panel() == panel && c.step() > 0)
                .toList();
        double floor = ErrorBar.of(study.switchModel()).floor();
        return IntStream.range(0, depths.length)
                .mapToObj(j -> IntStream.range(0, diameters.length)
                        .mapToObj(i -> {
                            RecessCell fine = cells.get(new Place(panel, i, j, ResolutionLadder.FIRST));
                            return fine != null
                                    ? Optional.of(fine)
                                    : Optional.ofNullable(coarse(panel, i, j))
                                            .map(c -> c.withError(bar(c, confirmed, floor)));
                        })
                        .toList())
                .toList();
    }

    /**
     * Error bar of a cell that is not confirmed, m: the largest error of the conductance that confirmed ones show, over its own slope.
     *
     * @param floor smallest bar, m
     */
    static double bar(RecessCell cell, List<RecessCell> confirmed, double floor) {
        double share = confirmed.stream()
                .mapToDouble(c -> c.distance().onError() / c.lever())
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
        return Math.max(floor, share * cell.lever());
    }

    /** The recess on the drawing in each material, as a study of the kind mount finds it. */
    private MountResult judge() {
        double reach = StudyInput.defaultReach(study.switchModel());
        MountInput mounts = new MountInput(
                study.header(),
                study.materials().stream().map(m -> study.recess(m).base()).toList(),
                List.of(study.target()),
                new DistanceRange(0, reach, CURVE),
                false);
        return MountRunner.judge(mounts, ladder, study.bottom(), checkpoint::stop, progress);
    }

    private List<Warning> warnings(List<RecessResult.Panel> panels) {
        List<Warning> list = new ArrayList<>();
        for (RecessResult.Panel panel : panels) {
            ValidityLimits.permeability(panel.material().id(), panel.material()).ifPresent(list::add);
            ValidityLimits.errors(
                            panel.material().id(),
                            panel.rows().stream()
                                    .flatMap(List::stream)
                                    .flatMap(Optional::stream)
                                    .map(RecessCell::distance)
                                    .toList(),
                            study.accuracy())
                    .ifPresent(list::add);
        }
        return list;
    }
}
