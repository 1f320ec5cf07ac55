package eddyreach.study;

import eddyreach.geometry.Part;
import eddyreach.model.Mount;
import eddyreach.model.MountInput;
import eddyreach.model.Target;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Runs studies of the kind {@code mount}. The switch stays as the factory trims it: in free air, on its standard target. */
public final class MountRunner {

    /** Temperatures at which the output must still release, degrees Celsius (IEC 60947-5-2, from memory: -25 to 70). */
    private static final double[] TEMPERATURES = {Bench.AMBIENT, -25, 70};

    /** Effective distances that trimming may leave, in rated distances (IEC 60947-5-2, from memory). */
    private static final double[] TRIMS = {0.9, 1.1};

    /** Steps that stand for a cone, by step of the ladder: the error bars then see what they cost. */
    private static final int[] CONE_STEPS = {4, 6, 9, 13};

    private final MountInput study;
    private final List<Mount> mounts;
    private final Ladder ladder;
    private final Progress progress;
    private final Bench[][] benches;

    /** Change of the conductance in free air by each temperature, S. */
    private final double[] drift;

    private MountRunner(MountInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        mounts = Stream.concat(Stream.of(Mount.freeAir()), study.mounts().stream())
                .toList();
        List<Target> all = new ArrayList<>(study.targets());
        all.add(study.standard());
        ladder = new Ladder(study, all, progress);
        benches = new Bench[ladder.last() + 1][mounts.size()];
        Bench fresh = ladder.step(Ladder.FIRST - 1).bench();
        drift = Arrays.stream(TEMPERATURES)
                .parallel()
                .map(t -> at(fresh, t).free().conductance() - fresh.free().conductance())
                .toArray();
    }

    /**
     * Runs a study and tells how far it is.
     *
     * @throws ArithmeticException if a computation fails its own checks
     */
    public static MountResult run(MountInput study, Progress progress) {
        return new MountRunner(study, progress).result();
    }

    private MountResult result() {
        List<List<Found>> found = find();
        List<MountCase> cases = new ArrayList<>();
        List<FieldPicture> fields = new ArrayList<>();
        for (int m = 0; m < mounts.size(); m++) {
            Bench bench = benches[Ladder.FIRST][m];
            Situation free = situation(bench, mounts.get(m));
            cases.add(mountCase(m, free, found.get(m), found.get(0)));
            if (study.fieldPictures()) {
                fields.add(Imaging.mounted(free, mounts.get(m)));
            }
        }
        Situation free = Situation.free(ladder.step(Ladder.FIRST).bench());
        return new MountResult(
                study.header(),
                TrimmedSwitch.of(ladder.step(Ladder.FIRST), free),
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
        AtomicInteger done = new AtomicInteger();
        progress.at("mounts", 0, found.length);
        for (int step = Ladder.FIRST; step <= ladder.last() && done.get() < found.length; step++) {
            int now = step;
            boolean last = step == ladder.last();
            int[] open = IntStream.range(0, found.length)
                    .filter(i -> found[i] == null)
                    .toArray();
            IntStream.of(open).map(i -> i / n).distinct().forEach(m -> prepare(now, m));
            List<ForkJoinTask<?>> tasks = new ArrayList<>();
            for (int i : open) {
                tasks.add(ForkJoinTask.adapt(() -> {
                            Found f = encounter(now, i / n, study.targets().get(i % n));
                            if (last || !(f.distance().error() > study.accuracy())) {
                                found[i] = f;
                                progress.at("mounts", done.incrementAndGet(), found.length);
                            }
                        })
                        .fork());
            }
            tasks.forEach(ForkJoinTask::join);
        }
        return IntStream.range(0, mounts.size())
                .mapToObj(m -> Arrays.asList(found).subList(m * n, (m + 1) * n))
                .toList();
    }

    /** Solves the switch in a mount at a step of the ladder and at the one before. */
    private void prepare(int step, int m) {
        for (int s = step - 1; s <= step; s++) {
            if (benches[s][m] == null) {
                Bench bench = ladder.step(s).bench();
                benches[s][m] = bench.in(
                        parts(m, s), Ladder.memory(progress, mounts.get(m).id()));
            }
        }
    }

    private List<Part> parts(int m, int step) {
        return mounts.get(m).parts(study.switchModel().coreRadius(), CONE_STEPS[step]);
    }

    private Found encounter(int step, int m, Target target) {
        Mount mount = mounts.get(m);
        double floor = mount.floor(Mount.halfWidth(target));
        double last =
                Math.max(study.distances().last(), floor + study.switchModel().ratedDistance());
        if (mount.background().isPresent()) {
            last = Math.min(last, mount.background().get().distance() - target.thickness());
        }
        // the switch is trimmed on the standard target in free air: there the errors are one and the same
        boolean trimmed = mount.isEmpty() && target.actsAs(study.standard());
        Encounter e = new Encounter(
                ladder.step(step),
                ladder.step(step - 1),
                new Scene(benches[step][m], target, mount.background(), floor),
                new Scene(benches[step - 1][m], target, mount.background(), floor),
                last,
                trimmed ? 0 : DistanceFinder.SHARE);
        SwitchDistance distance = e.distance();
        return new Found(
                target,
                floor,
                e.curve(study.distances().first(), study.distances().points()),
                distance);
    }

    private MountCase mountCase(int m, Situation free, List<Found> found, List<Found> inFreeAir) {
        Mount mount = mounts.get(m);
        Bench bench = benches[Ladder.FIRST][m];
        Bench.State s = without(bench, mount);
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
                    (f.distance().on() - before.on()) / sr,
                    error / sr));
        }
        List<MountCase.Corner> corners = corners(bench, mount);
        return new MountCase(
                mount,
                parts(m, Ladder.FIRST),
                operating(s),
                reserve(m),
                corners,
                corners.get(0).verdict(),
                targets,
                Budgets.of(free, mount.background().map(b -> "background").orElse(null)),
                bench.field().unknowns(),
                warnings(mount, found));
    }

    private Operating operating(Bench.State s) {
        return new Operating(
                s.resistance(),
                s.inductance(),
                s.omega() / (2 * Math.PI),
                s.conductance(),
                study.switchModel().element().amplitude(s.conductance()));
    }

    /** The fields in a mount without a target, but with the mount's background. */
    private static Situation situation(Bench bench, Mount mount) {
        return mount.background()
                .map(b -> Situation.with(bench, bench.target(b.plate().asTarget()), b.distance()))
                .orElseGet(() -> Situation.free(bench));
    }

    /** The tank in a mount without a target, but with the mount's background. */
    private static Bench.State without(Bench bench, Mount mount) {
        return mount.background()
                .map(b -> bench.state(bench.target(b.plate().asTarget()), b.distance()))
                .orElse(bench.free());
    }

    private MountCase.Reserve reserve(int m) {
        double fine = used(Ladder.FIRST, m);
        double error = DistanceFinder.SAFETY * Math.abs(fine - used(Ladder.FIRST - 1, m));
        double on = ladder.step(Ladder.FIRST).trim().on();
        double total = without(benches[Ladder.FIRST][m], mounts.get(m)).conductance() / on;
        return new MountCase.Reserve(total, fine, error);
    }

    private double used(int step, int m) {
        Ladder.Step s = ladder.step(step);
        double free = s.bench().free().conductance();
        return (without(benches[step][m], mounts.get(m)).conductance() - free)
                / (s.trim().on() - free);
    }

    /**
     * Temperature changes winding, core, housing and mount, not the thresholds. What it changes of the switch's own loss in free air is
     * taken as made up for by the electronics, as it is in most switches, and told beside that as if it were not.
     */
    private List<MountCase.Corner> corners(Bench bench, Mount mount) {
        Bench fresh = ladder.step(Ladder.FIRST).bench();
        var standard = fresh.target(study.standard());
        double free = fresh.free().conductance();
        double sn = study.switchModel().ratedDistance();
        // the coarser step serves for what temperature changes
        Bench rough = benches[Ladder.FIRST - 1][mounts.indexOf(mount)];
        double now = without(bench, mount).conductance() - without(rough, mount).conductance();
        double[] mounted = Arrays.stream(TEMPERATURES)
                .parallel()
                .map(t -> without(at(rough, t), mount).conductance() + now)
                .toArray();
        List<MountCase.Corner> corners = new ArrayList<>();
        for (double trim : new double[] {study.switchModel().effectiveDistance() / sn, TRIMS[0], TRIMS[1]}) {
            Trim thresholds = Trim.atFactory(
                    g -> fresh.state(standard, g).conductance(),
                    trim * sn,
                    study.switchModel().differentialTravel());
            for (int i = 0; i < TEMPERATURES.length; i++) {
                double bare = mounted[i];
                double made = bare - drift[i];
                corners.add(new MountCase.Corner(
                        TEMPERATURES[i],
                        trim,
                        (made - free) / (thresholds.on() - free),
                        verdict(made, thresholds),
                        (bare - free) / (thresholds.on() - free),
                        verdict(bare, thresholds)));
            }
        }
        return corners;
    }

    private static Bench at(Bench bench, double celsius) {
        return celsius == Bench.AMBIENT ? bench : bench.at(celsius);
    }

    private static MountCase.Verdict verdict(double conductance, Trim trim) {
        return conductance >= trim.on()
                ? MountCase.Verdict.LATCHED
                : conductance >= trim.off() ? MountCase.Verdict.HOLDS : MountCase.Verdict.RELEASED;
    }

    private List<Warning> warnings(Mount mount, List<Found> found) {
        List<Warning> list = new ArrayList<>();
        mount.parts(study.switchModel().coreRadius(), 1).stream()
                .map(Part::material)
                .distinct()
                .forEach(mat -> Limits.permeability(mat.id(), mat).ifPresent(list::add));
        for (Found f : found) {
            if (f.distance().error() > study.accuracy()) {
                list.add(Limits.error(mount.id(), f.distance().error(), study.accuracy()));
            }
        }
        return list;
    }

    private List<Warning> warnings() {
        List<Warning> list = new ArrayList<>();
        if (study.targets().stream()
                .anyMatch(t -> t.sheet()
                        .filter(s -> s.outline() instanceof Target.Outline.Square)
                        .isPresent())) {
            list.add(Limits.squares());
        }
        list.add(new Warning(
                Warning.Kind.ROUND_MOUNT,
                "mounts",
                0,
                "everything is round about the axis: a nut counts as the circle across its corners, a bracket with an edge beside the"
                        + " switch cannot be described"));
        return list;
    }
}
