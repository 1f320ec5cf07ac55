package eddyreach.kinds.mount;

import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code mount}. */
public final class MountStudyReader {

    private static final int MOST_MOUNTS = 12;

    private final StudyContext context;
    private final NamedMounts named;

    private MountStudyReader(StudyContext context) {
        this.context = context;
        named = new NamedMounts(context);
    }

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return new MountStudyReader(context).bindMounts();
    }

    private Function<StudyHeader, StudyInput> bindMounts() {
        Node root = context.root();
        List<Mount> mounts = new ArrayList<>();
        if (root.has("mount") && root.has("mounts")) {
            root.problem("mounts", "stands beside mount; give one of them");
        }
        if (root.has("mount")) {
            root.child("mount").ifPresent(node -> add(node, mounts));
        } else {
            List<Node> nodes = root.list("mounts");
            if (nodes.size() > MOST_MOUNTS) {
                root.problem("mounts", "more than " + MOST_MOUNTS + " mounts");
            }
            nodes.stream().limit(MOST_MOUNTS).forEach(node -> add(node, mounts));
        }
        List<Target> targets = root.has("targets") ? context.targets().bindAll(root.list("targets")) : List.of();
        DistanceRange distances = DistanceRange.bind(context);
        boolean pictures = root.flag("field pictures", true);
        mounts.forEach(m -> targets.forEach(t -> checkFit(m, t, distances)));
        return header -> new MountInput(header, mounts, header.orStandard(targets), distances, pictures);
    }

    private void add(Node node, List<Mount> mounts) {
        named.bind(node).ifPresent(m -> {
            if (m.id().equals(Mount.freeAir().id())) {
                node.problem("\"" + m.id() + "\" is the name of the row without a mount; choose another name");
            } else if (mounts.stream().anyMatch(other -> other.id().equals(m.id()))) {
                node.problem("\"" + m.id() + "\" names another mount already");
            }
            mounts.add(m);
        });
    }

    /** A first distance that was asked for must be reachable, and a background must leave room for the target. */
    private void checkFit(Mount mount, Target target, DistanceRange distances) {
        double radius = Mount.halfWidth(target);
        double floor = mount.floor(radius);
        boolean asked =
                context.root().child("distances").filter(d -> d.has("from")).isPresent();
        if (asked && distances.first() < floor) {
            double clear = mount.clearance(distances.first(), floor);
            context.root()
                    .problem(
                            "distances",
                            "from " + Units.length(distances.first()) + ": target \"" + target.id() + "\" measures "
                                    + (Double.isInfinite(radius) ? "endlessly" : Units.length(2 * radius))
                                    + " across and mount \"" + mount.id() + "\" leaves "
                                    + (clear > 0 ? Units.length(clear) : "nothing") + " there; it comes no nearer than "
                                    + Units.length(floor));
        }
        if (target.offset() > 0 && (floor < mount.top() || mount.background().isPresent())) {
            context.root()
                    .problem(
                            context.root().has("mount") ? "mount" : "mounts",
                            "target \"" + target.id() + "\" stands " + Units.length(target.offset())
                                    + " beside the axis: that cannot be computed inside the metal of mount \""
                                    + mount.id() + "\" nor before a background");
        }
        if (target.body() instanceof Body.Ball && mount.background().isPresent()) {
            context.root()
                    .problem(
                            context.root().has("mount") ? "mount" : "mounts",
                            "target \"" + target.id()
                                    + "\" is a ball, which cannot be computed before the background of mount \""
                                    + mount.id() + "\"");
        }
        mount.background().ifPresent(b -> {
            double room = b.distance() - target.thickness();
            if (room <= floor || room <= distances.first()) {
                context.root()
                        .problem(
                                context.root().has("mount") ? "mount" : "mounts",
                                "the background of mount \"" + mount.id() + "\" stands at " + Units.length(b.distance())
                                        + ", which leaves no room for target \"" + target.id() + "\", "
                                        + Units.length(target.thickness()) + " thick, at "
                                        + Units.length(Math.max(floor, distances.first())));
            }
        });
    }
}
