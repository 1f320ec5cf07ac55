package eddyreach.kinds.background;

import eddyreach.model.read.Materials;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.DistanceRange;
import eddyreach.study.NamedMounts;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Units;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code background}. */
final class BackgroundReader {

    /** End of the range of a background's distances unless a study says otherwise, in rated distances. */
    private static final double REACH = 6;

    /** Least way of a target before the farthest background, m. */
    private static final double LEAST_ROOM = 1e-3;

    private BackgroundReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        NamedMounts named = new NamedMounts(context);
        Node root = context.root();
        Optional<Mount> mount =
                root.has("mount") ? root.child("mount").flatMap(named::bind) : Optional.of(Mount.freeAir());
        mount.filter(m -> m.background().isPresent())
                .ifPresent(m -> root.problem("mount", "has a background of its own; give it here only"));
        mount.filter(Mount::edged)
                .ifPresent(m -> root.problem(
                        "mount",
                        "ends at a straight edge "
                                + Units.length(m.wall().orElseThrow().edge())
                                + " beside the switch, which only studies of the kind mount can describe"));
        Optional<Mount.Background> background = root.map("background").flatMap(named::background);
        List<Target> targets = context.targets().bindOnAxis(root);
        targets.stream()
                .filter(t -> t.body() instanceof Body.Ball)
                .forEach(t -> root.problem(
                        "targets", "\"" + t.id() + "\" is a ball, which cannot be computed before a background"));
        DistanceRange distances =
                DistanceRange.bind(context, context.switchModel().map(m -> REACH * m.ratedDistance()));
        context.switchModel()
                .ifPresent(m -> mount.ifPresent(held -> checkRoom(
                        root,
                        held,
                        targets.isEmpty()
                                ? List.of(TargetReader.standard(
                                        context.materials().get(Materials.STANDARD_STEEL), m))
                                : targets,
                        distances)));
        return header -> new BackgroundInput(
                header, mount.orElseThrow(), background.orElseThrow(), header.orStandard(targets), distances);
    }

    /** The farthest background must leave room for each target, or nothing can be told of it. */
    private static void checkRoom(Node root, Mount mount, List<Target> targets, DistanceRange distances) {
        for (Target t : targets) {
            double least = mount.floor(t) + t.thickness() + LEAST_ROOM;
            if (distances.last() < least) {
                root.problem(
                        "distances",
                        "the farthest background, " + Units.length(distances.last())
                                + " before the active face, leaves no room for the target \"" + t.id()
                                + "\", needs at least "
                                + Units.length(least));
            }
        }
    }
}
