package eddyreach.kinds.mount;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.MountedAssurer;
import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.Budgets;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.FieldPair;
import eddyreach.engine.core.FieldPair.Comparison;
import eddyreach.engine.core.FieldPicture;
import eddyreach.engine.core.FieldSampler;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.engine.mounted.MountedApproach;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Recess;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.study.StudyInput;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Runs studies of the kind {@code mount}. The switch stays as the factory trims it: in free air, on its standard target. */
public final class MountRunner {

    private final MountInput study;

    /** Free air, and the mounts as they are computed: round about the axis, two for one with a straight edge. */
    private final List<Mount> mounts;

    private final ResolutionLadder ladder;
    private final Progress progress;
    private final SolvedSwitch[][] solvedSwitches;

    private final WorstDamping worst;
    private final MountProbe probe;
    private final MountedAssurer assurer;
    private final Predicate<Mount> assured;
    private final SafeDimensions safe;

    /** Whether a deeper recess is a switch sunk deeper. */
    private final Predicate<Mount> sinks;

    private MountRunner(
            MountInput study,
            ResolutionLadder ladder,
            Predicate<Mount> sinks,
            Predicate<Mount> assured,
            BooleanSupplier stop,
            Progress progress) {
        this.study = study;
        this.ladder = ladder;
        this.progress = progress;
        mounts = Stream.concat(Stream.of(Mount.freeAir()), study.mounts().stream())
                .flatMap(m -> m.bounds().stream())
                .toList();
        solvedSwitches = new SolvedSwitch[ladder.last() + 1][mounts.size()];
        worst = new WorstDamping(study, ladder);
        probe = new MountProbe(study, ladder, study.targets());
        assurer = new MountedAssurer(study.setup(), study.targets());
        this.assured = assured;
        safe = new SafeDimensions(study.switchModel(), probe, worst, stop);
        this.sinks = sinks;
    }

    /**
     * Runs a study and tells how far it is.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static MountResult run(MountInput study, Progress progress) {
        return run(study, m -> true, progress);
    }

    /** The same with assured distances in some of the mounts, which take most of the time where targets dip into a recess. */
    public static MountResult run(MountInput study, Predicate<Mount> assured, Progress progress) {
        List<Target> all = new ArrayList<>(study.targets());
        all.add(study.standard());
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), all, progress);
        return new MountRunner(study, ladder, m -> m.surface() > 0, assured, () -> false, progress).result();
    }

    /**
     * The mounts of another study, without assured distances.
     *
     * @param study mounts and targets
     * @param ladder the switch in free air, made for these targets
     * @param sinks whether a deeper recess is a switch sunk deeper
     * @param stop whether to leave proposals out from now on
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static MountResult judge(
            MountInput study, ResolutionLadder ladder, boolean sinks, BooleanSupplier stop, Progress progress) {
        return new MountRunner(study, ladder, m -> sinks, m -> false, stop, progress).result();
    }

    private MountResult result() {
        List<List<Found>> found = find();
        List<MountCase> cases = new ArrayList<>();
        List<FieldPair> fields = new ArrayList<>();
        Optional<FieldPicture> freeField = Optional.empty();
        int m = 0;
        for (Mount mount : Stream.concat(Stream.of(Mount.freeAir()), study.mounts().stream())
                .toList()) {
            progress.at("safe dimensions and bands", m, mounts.size());
            int n = mount.bounds().size();
            List<MountCase> bounds = new ArrayList<>();
            List<FieldPicture> pictures = new ArrayList<>();
            for (int i = m; i < m + n; i++) {
                WorkingPoint without = workingPoint(withFields(i), mounts.get(i));
                bounds.add(mountCase(i, without, found.get(i), found.get(0)));
                if (study.fieldPictures()) {
                    pictures.add(FieldSampler.mounted(without, mounts.get(i), top()));
                }
            }
            if (m == 0) {
                freeField = pictures.stream().findFirst();
            } else {
                freeField.ifPresent(free -> fields.add(pair(mount, free, pictures)));
            }
            cases.add(followed(
                    n == 1
                            ? bounds.get(0)
                            : StraightEdge.between(
                                    mount,
                                    bounds.get(0),
                                    bounds.get(1),
                                    study.switchModel().element()),
                    coarser(m, m + n)));
            m += n;
        }
        WorkingPoint free =
                WorkingPoint.free(ladder.step(ResolutionLadder.FIRST).solved());
        return new MountResult(
                study.header(),
                TrimmedSwitch.of(ladder.step(ResolutionLadder.FIRST), free),
                cases,
                UsualRules.of(study.switchModel(), cases),
                fields,
                warnings());
    }

    private record Found(Target target, double floor, Curve curve, SwitchDistance distance) {}

    /** Climbs the ladder with those pairs of mount and target whose error bar is still above what the study asks for. */
    private List<List<Found>> find() {
        int n = study.targets().size();
        Found[] found = new Found[mounts.size() * n];
        int[] open = IntStream.range(0, found.length).toArray();
        progress.at("mounts", 0, found.length);
        for (int step = ResolutionLadder.FIRST; step <= ladder.last() && open.length > 0; step++) {
            climb(step, open, found);
            open = IntStream.of(open)
                    .filter(i -> found[i].distance().error() > study.accuracy())
                    .toArray();
        }
        progress.at("mounts", found.length, found.length);
        return IntStream.range(0, mounts.size())
                .mapToObj(m -> Arrays.asList(found).subList(m * n, (m + 1) * n))
                .toList();
    }

    /** Finds pairs of mount and target at a step of the ladder. */
    private void climb(int step, int[] open, Found[] found) {
        int n = study.targets().size();
        AtomicInteger done = new AtomicInteger(found.length - open.length);
        IntStream.of(open).map(i -> i / n).distinct().forEach(m -> prepare(step, m));
        ForkJoinTask.invokeAll(IntStream.of(open)
                .mapToObj(i -> ForkJoinTask.adapt(() -> {
                    found[i] = find(step, i / n, study.targets().get(i % n));
                    progress.at("mounts", done.getAndIncrement(), found.length);
                }))
                .toList());
    }

    /** Solves the switch in a mount at a step of the ladder and at the one before. */
    private void prepare(int step, int m) {
        for (int s = step - 1; s <= step; s++) {
            if (solvedSwitches[s][m] == null) {
                SolvedSwitch solved = ladder.step(s).solved();
                String id = mounts.get(m).id();
                solvedSwitches[s][m] = solved.operatorsIn(parts(m), bytes -> progress.solving(id, bytes));
            }
        }
    }

    /** The switch in a mount once more, for fields and losses: one mount after the other, since these take the memory of its factors. */
    private SolvedSwitch withFields(int m) {
        return ladder.step(ResolutionLadder.FIRST).solved().in(parts(m), bytes -> {});
    }

    private List<Part> parts(int m) {
        return mounts.get(m).parts(study.switchModel().coreRadius());
    }

    private Found find(int step, int m, Target target) {
        Mount mount = mounts.get(m);
        double floor = mount.floor(target);
        double last =
                Math.max(study.distances().last(), floor + study.switchModel().ratedDistance());
        if (mount.background().isPresent()) {
            last = Math.min(last, mount.background().get().distance() - target.thickness());
        }
        MountedApproach.Found found = MountedApproach.search(
                study.setup(),
                StudyInput.defaultReach(study.switchModel()),
                mount,
                target,
                ladder.step(step),
                ladder.step(step - 1),
                new MountedSwitch(solvedSwitches[step][m], target, mount.background(), floor),
                new MountedSwitch(solvedSwitches[step - 1][m], target, mount.background(), floor),
                AccuracyPolicy.APPROACH_INTERVALS);
        Curve curve = found.approach()
                .curve(study.distances().first(), last, study.distances().points());
        return new Found(target, floor, curve, found.distance());
    }

    private MountCase mountCase(int m, WorkingPoint free, List<Found> found, List<Found> inFreeAir) {
        Mount mount = mounts.get(m);
        SolvedSwitch solved = solvedSwitches[ResolutionLadder.FIRST][m];
        TankState s = WorstDamping.without(solved, mount);
        double sr = study.switchModel().effectiveDistance();
        List<MountTarget> targets = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Found f = found.get(i);
            SwitchDistance before = inFreeAir.get(i).distance();
            double error = m == 0 ? 0 : f.distance().onError() + before.onError();
            targets.add(new MountTarget(
                    f.target(),
                    f.floor(),
                    f.curve(),
                    f.distance(),
                    before,
                    (f.distance().on() - before.on()) / sr,
                    error / sr,
                    0,
                    assured(mount, f)));
        }
        List<MountCase.Corner> all = worst.of(solved, solvedSwitches[ResolutionLadder.FIRST - 1][m], mount);
        return new MountCase(
                mount,
                parts(m),
                operating(s),
                reserve(m),
                all,
                all.get(0).verdict(),
                targets,
                Budgets.of(free, mount.background().map(b -> "background").orElse(null)),
                solved.field().unknowns(),
                List.of(),
                List.of(),
                warnings(mount, found));
    }

    /** The band of a target; none where nothing is switched. */
    private Optional<Assurance> assured(Mount mount, Found f) {
        return assured.test(mount) && f.distance().outcome() == SwitchDistance.Outcome.SWITCHES
                ? assurer.of(mount, f.target(), f.distance())
                : Optional.empty();
    }

    /** The field in free air beside that in a mount; beside a straight edge the two that it lies between. */
    private static FieldPair pair(Mount mount, FieldPicture free, List<FieldPicture> bounds) {
        return mount.edged()
                ? new FieldPair(mount.id(), mount.name(), Comparison.BOUNDS_OF_EDGE, bounds.get(0), bounds.get(1))
                : new FieldPair(mount.id(), mount.name(), Comparison.FREE_AIR_AND_MOUNT, free, bounds.get(0));
    }

    /** With the effects of its dimensions and, where it is not safe, the nearest safe ones. */
    private MountCase followed(MountCase c, List<SolvedSwitch> rough) {
        Mount mount = c.mount();
        MountTarget first = c.targets().get(0);
        return c.with(
                mount.wall().isEmpty() || c.safe() ? List.of() : safe.of(new Recess(mount, sinks.test(mount))),
                new DimensionEffects(study.switchModel(), probe, first.target()).of(mount, rough, first.distance()));
    }

    /** At the coarser step, in some of the mounts. */
    private List<SolvedSwitch> coarser(int from, int to) {
        return Arrays.asList(solvedSwitches[ResolutionLadder.FIRST - 1]).subList(from, to);
    }

    /** Upper end of all pictures, m, so that they compare. */
    private double top() {
        double highest = Stream.of(solvedSwitches[ResolutionLadder.FIRST])
                .mapToDouble(SolvedSwitch::plane)
                .max()
                .orElse(0);
        return highest + study.switchModel().faceDiameter();
    }

    private Operating operating(TankState s) {
        return new Operating(
                s.resistance(),
                s.inductance(),
                s.omega() / (2 * Math.PI),
                s.conductance(),
                study.switchModel().element().amplitude(s.conductance()));
    }

    /** The fields in a mount without a target, but with the mount's background. */
    private static WorkingPoint workingPoint(SolvedSwitch solved, Mount mount) {
        return mount.background()
                .map(b -> WorkingPoint.with(solved, solved.onAxis(b.plate().asTarget()), b.distance()))
                .orElseGet(() -> WorkingPoint.free(solved));
    }

    private MountCase.Reserve reserve(int m) {
        double fine = used(ResolutionLadder.FIRST, m);
        double error = ErrorBar.ofDifference(fine - used(ResolutionLadder.FIRST - 1, m));
        double on = ladder.step(ResolutionLadder.FIRST).trim().on();
        double total = WorstDamping.without(solvedSwitches[ResolutionLadder.FIRST][m], mounts.get(m))
                        .conductance()
                / on;
        return new MountCase.Reserve(total, fine, error, 0);
    }

    private double used(int step, int m) {
        ResolutionLadder.Step s = ladder.step(step);
        double free = s.solved().free().conductance();
        return (WorstDamping.without(solvedSwitches[step][m], mounts.get(m)).conductance() - free)
                / (s.trim().on() - free);
    }

    private List<Warning> warnings(Mount mount, List<Found> found) {
        List<Warning> list = new ArrayList<>();
        mount.parts(study.switchModel().coreRadius()).stream()
                .map(Part::material)
                .distinct()
                .forEach(mat -> ValidityLimits.permeability(mat.id(), mat).ifPresent(list::add));
        for (Found f : found) {
            if (f.distance().error() > study.accuracy()) {
                list.add(ValidityLimits.error(mount.id(), f.distance().error(), study.accuracy()));
            }
        }
        return list;
    }

    private List<Warning> warnings() {
        List<Warning> list = new ArrayList<>();
        ValidityLimits.squares(study.targets()).ifPresent(list::add);
        list.add(Warning.of(Warning.Kind.ROUND_MOUNT, "mounts"));
        assurer.missing(study.id()).ifPresent(list::add);
        return list;
    }
}
