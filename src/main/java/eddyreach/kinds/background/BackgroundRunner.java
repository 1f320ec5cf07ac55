package eddyreach.kinds.background;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.WorkingPoint;
import eddyreach.engine.mounted.MountedApproach;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyInput;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/** Runs studies of the kind {@code background}. */
public final class BackgroundRunner {

    /** The usual free zone in front of a switch, in rated distances: common practice. */
    private static final double USUAL_FRONT = 3;

    private static final SwitchDistance NO_ROOM =
            new SwitchDistance(SwitchDistance.Outcome.NEVER_ON, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    private final BackgroundInput study;
    private final Progress progress;
    private final ResolutionLadder ladder;
    private final SolvedSwitch[] solvedSwitches = new SolvedSwitch[2];

    private BackgroundRunner(BackgroundInput study, Progress progress) {
        this.study = study;
        this.progress = progress;
        List<Target> all = new ArrayList<>(study.targets());
        all.add(study.standard());
        all.add(study.background().asTarget());
        ladder = new ResolutionLadder(study.setup(), all, progress);
        double scale = study.switchModel().coreRadius();
        for (int s = 0; s <= ResolutionLadder.FIRST; s++) {
            solvedSwitches[s] = ladder.step(s)
                    .solved()
                    .in(
                            study.mount().parts(scale),
                            bytes -> progress.solving(study.mount().id(), bytes));
        }
    }

    /**
     * Runs a study and tells how far it is.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static BackgroundResult run(BackgroundInput study, Progress progress) {
        return new BackgroundRunner(study, progress).result();
    }

    private BackgroundResult result() {
        SolvedSwitch solved = solvedSwitches[ResolutionLadder.FIRST];
        ResolutionLadder.Step step = ladder.step(ResolutionLadder.FIRST);
        double[] distance = distances();
        double[] amplitude = new double[distance.length];
        double[] reserve = new double[distance.length];
        double free = step.solved().free().conductance();
        var plate = solved.target(study.background().asTarget());
        for (int i = 0; i < distance.length; i++) {
            double g = solved.state(plate, distance[i]).conductance();
            amplitude[i] = study.switchModel().element().amplitude(g);
            reserve[i] = (g - free) / (step.trim().on() - free);
        }
        progress.at("backgrounds", 0, study.targets().size() * distance.length);
        AtomicInteger done = new AtomicInteger();
        List<BackgroundResult.Series> series =
                study.targets().stream().map(t -> series(t, distance, done)).toList();
        SwitchDistance alone =
                distanceOf(study.background().asTarget(), Optional.empty()).orElseThrow();
        return new BackgroundResult(
                study.header(),
                TrimmedSwitch.of(step, WorkingPoint.free(step.solved())),
                study.mount(),
                study.background(),
                distance,
                amplitude,
                reserve,
                alone,
                series,
                USUAL_FRONT * study.switchModel().ratedDistance(),
                warnings(series));
    }

    /** Even distances, those in front of the highest metal of the mount. */
    private double[] distances() {
        DistanceRange d = study.distances();
        double radius = study.background().diameter() / 2;
        double first = Math.max(
                d.first(), Math.max(study.mount().floor(radius), solvedSwitches[ResolutionLadder.FIRST].plane()));
        return IntStream.range(0, d.points())
                .mapToDouble(i -> first + (d.last() - first) * i / (d.points() - 1))
                .toArray();
    }

    private BackgroundResult.Series series(Target target, double[] distance, AtomicInteger done) {
        SwitchDistance free = distanceOf(target, Optional.empty()).orElseThrow();
        SwitchDistance[] behind = new SwitchDistance[distance.length];
        IntStream.range(0, distance.length).parallel().forEach(i -> {
            behind[i] = at(target, distance[i]);
            progress.at("backgrounds", done.incrementAndGet(), study.targets().size() * distance.length);
        });
        double tenth = from(target, distance, behind, free, 0.1);
        double hundredth = from(target, distance, behind, free, 0.01);
        return new BackgroundResult.Series(
                target,
                free,
                List.of(behind),
                tenth,
                hundredth,
                room(target, tenth),
                room(target, hundredth),
                AccuracyPolicy.LIMIT_DISTANCE * study.switchModel().faceDiameter());
    }

    /** Room behind a target where it switches off, m; NaN without a distance. */
    private double room(Target target, double distance) {
        return Double.isNaN(distance)
                ? Double.NaN
                : distance - target.thickness() - at(target, distance).off();
    }

    private SwitchDistance at(Target target, double distance) {
        return distanceOf(target, Optional.of(new Mount.Standing(study.background(), distance)))
                .orElse(NO_ROOM);
    }

    /** Empty when there is no room for the target before the background. */
    private Optional<SwitchDistance> distanceOf(Target target, Optional<Mount.Standing> standing) {
        double floor = study.mount().floor(target);
        double reach =
                Math.max(floor + study.switchModel().ratedDistance(), StudyInput.defaultReach(study.switchModel()));
        double last = standing.map(b -> Math.min(reach, b.distance() - target.thickness()))
                .orElse(reach);
        if (last - floor <= AccuracyPolicy.LIMIT_DISTANCE * study.switchModel().faceDiameter()) {
            return Optional.empty();
        }
        boolean trimmed = study.mount().isEmpty() && standing.isEmpty() && target.actsAs(study.standard());
        return Optional.of(new MountedApproach(
                        ladder.step(ResolutionLadder.FIRST),
                        ladder.step(0),
                        new MountedSwitch(solvedSwitches[1], target, standing, floor),
                        new MountedSwitch(solvedSwitches[0], target, standing, floor),
                        last,
                        trimmed)
                .distance());
    }

    /** From where on the background moves the switch-on distance by less than a share of s_r and lets the output go; NaN if nowhere. */
    private double from(Target target, double[] distance, SwitchDistance[] behind, SwitchDistance free, double share) {
        double sr = study.switchModel().effectiveDistance();
        int last = distance.length - 1;
        int worst = last;
        while (worst >= 0 && harmless(behind[worst], free, share * sr)) {
            worst--;
        }
        if (worst == last) {
            return Double.NaN;
        }
        if (worst < 0) {
            return distance[0];
        }
        DoublePredicate fine = d -> harmless(at(target, d), free, share * sr);
        double low = distance[worst];
        double high = distance[worst + 1];
        while (high - low > AccuracyPolicy.LIMIT_DISTANCE * study.switchModel().faceDiameter()) {
            double middle = (low + high) / 2;
            if (fine.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean harmless(SwitchDistance behind, SwitchDistance free, double shift) {
        return behind.outcome() == SwitchDistance.Outcome.SWITCHES && Math.abs(behind.on() - free.on()) <= shift;
    }

    private List<Warning> warnings(List<BackgroundResult.Series> series) {
        List<Warning> list = new ArrayList<>();
        var material = study.background().material();
        ValidityLimits.permeability(material.id(), material).ifPresent(list::add);
        for (BackgroundResult.Series s : series) {
            double error = s.behind().stream()
                    .mapToDouble(SwitchDistance::error)
                    .filter(Double::isFinite)
                    .max()
                    .orElse(0);
            if (error > study.accuracy()) {
                list.add(ValidityLimits.error(s.target().id(), error, study.accuracy()));
            }
        }
        return list;
    }
}
