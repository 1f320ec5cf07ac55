package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.MountedAssurer;
import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.mounted.MountedApproach;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.geometry.Part;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.study.StudyInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The targets of a study once more, before the switch in a mount, with the thresholds that were set in free air. For one thread. */
final class MountedRun {

    private final ApproachInput study;
    private final Mount mount;
    private final ResolutionLadder ladder;
    private final Progress progress;
    private final List<Mount> bounds;
    private final SolvedSwitch[][] solvedSwitches;
    private final MountedAssurer assurer;

    /**
     * @param ladder the switch in free air, made for the targets
     * @param targets the targets
     */
    MountedRun(ApproachInput study, Mount mount, ResolutionLadder ladder, List<Target> targets, Progress progress) {
        this.study = study;
        this.mount = mount;
        this.ladder = ladder;
        this.progress = progress;
        bounds = mount.bounds();
        solvedSwitches = new SolvedSwitch[ladder.last() + 1][bounds.size()];
        assurer = new MountedAssurer(study.setup(), targets);
    }

    InMount of(List<Target> targets) {
        List<InMount.Found> found = new ArrayList<>();
        for (Target t : targets) {
            progress.at("in the mount", found.size(), targets.size());
            found.add(bounds.size() == 1 ? found(0, t) : between(found(0, t), found(1, t)));
        }
        return new InMount(mount, parts(0, ResolutionLadder.FIRST), found, warnings(found));
    }

    /** Beside a straight edge distances are the middle of the bounds, and bands those of the worse. */
    private static InMount.Found between(InMount.Found whole, InMount.Found round) {
        Optional<Assurance> both =
                whole.assurance().flatMap(a -> round.assurance().map(a::worse));
        return new InMount.Found(
                whole.target(), whole.floor(), whole.curve(), whole.distance().between(round.distance()), both);
    }

    /** Climbs the ladder until the error bar is below what the study asks for. */
    private InMount.Found found(int bound, Target target) {
        double floor = bounds.get(bound).floor(target);
        int step = ResolutionLadder.FIRST;
        MountedApproach.Found found = at(step, bound, target, floor);
        while (found.distance().error() > study.accuracy() && step < ladder.last()) {
            step++;
            found = at(step, bound, target, floor);
        }
        SwitchDistance d = found.distance();
        double last = Math.max(study.lastDistance(), floor + study.switchModel().ratedDistance());
        double room =
                mount.background().map(b -> b.distance() - target.thickness()).orElse(Double.POSITIVE_INFINITY);
        Curve curve = found.approach().curve(study.firstDistance(), Math.min(last, room), study.points());
        return new InMount.Found(
                target,
                floor,
                curve,
                d,
                d.outcome() == SwitchDistance.Outcome.SWITCHES
                        ? assurer.of(bounds.get(bound), target, d)
                        : Optional.empty());
    }

    private MountedApproach.Found at(int step, int bound, Target target, double floor) {
        Optional<Mount.Standing> background = mount.background();
        return MountedApproach.search(
                study.setup(),
                StudyInput.defaultReach(study.switchModel()),
                mount,
                target,
                ladder.step(step),
                ladder.step(step - 1),
                new MountedSwitch(solved(step, bound), target, background, floor),
                new MountedSwitch(solved(step - 1, bound), target, background, floor),
                AccuracyPolicy.APPROACH_INTERVALS);
    }

    private SolvedSwitch solved(int step, int bound) {
        if (solvedSwitches[step][bound] == null) {
            solvedSwitches[step][bound] =
                    ladder.step(step).solved().in(parts(bound, step), bytes -> progress.solving(mount.id(), bytes));
        }
        return solvedSwitches[step][bound];
    }

    private List<Part> parts(int bound, int step) {
        return bounds.get(bound).parts(study.switchModel().coreRadius());
    }

    private List<Warning> warnings(List<InMount.Found> found) {
        List<Warning> list = new ArrayList<>();
        parts(0, 1).stream()
                .map(Part::material)
                .distinct()
                .forEach(m -> ValidityLimits.permeability(m.id(), m).ifPresent(list::add));
        for (InMount.Found f : found) {
            if (f.distance().error() > study.accuracy()) {
                list.add(ValidityLimits.error(f.target().id(), f.distance().error(), study.accuracy()));
            }
        }
        if (mount.edged()) {
            list.add(ValidityLimits.edge(mount.id(), mount.wall().orElseThrow().edge()));
        }
        list.add(Warning.of(Warning.Kind.ROUND_MOUNT, mount.id()));
        assurer.missing(mount.id()).ifPresent(list::add);
        return list;
    }
}
