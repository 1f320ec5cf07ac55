package eddyreach.model;

import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kinds {@code mount} and {@code background}. */
final class MountStudyReader {

    private static final int MOST_MOUNTS = 12;

    /** End of the range of a background's distances unless a study says otherwise, in rated distances. */
    private static final double BACKGROUND_REACH = 6;

    private final StudyReader.Context context;
    private final MountReader reader;

    private MountStudyReader(StudyReader.Context context) {
        this.context = context;
        reader = new MountReader(context.materials(), context.switchModel());
    }

    static Function<StudyHeader, StudyInput> mount(StudyReader.Context context) {
        return new MountStudyReader(context).bindMounts();
    }

    static Function<StudyHeader, StudyInput> background(StudyReader.Context context) {
        return new MountStudyReader(context).bindBackground();
    }

    private Function<StudyHeader, StudyInput> bindMounts() {
        Node root = context.root();
        List<Mount> mounts = new ArrayList<>();
        if (root.has("mount") && root.has("mounts")) {
            root.problem("mounts", "stands beside mount; give one of them");
        }
        if (root.has("mount")) {
            root.child("mount").flatMap(this::bindOne).ifPresent(mounts::add);
        } else {
            List<Node> nodes = root.list("mounts");
            if (nodes.size() > MOST_MOUNTS) {
                root.problem("mounts", "more than " + MOST_MOUNTS + " mounts");
            }
            nodes.stream()
                    .limit(MOST_MOUNTS)
                    .forEach(node -> bindOne(node).ifPresent(m -> {
                        if (m.id().equals(Mount.freeAir().id())
                                || mounts.stream().anyMatch(other -> other.id().equals(m.id()))) {
                            node.problem("\"" + m.id() + "\" names another mount already");
                        }
                        mounts.add(m);
                    }));
        }
        List<Target> targets = root.has("targets") ? context.targets().bindAll(root.list("targets")) : List.of();
        Distances distances = Distances.bind(context);
        boolean pictures = root.flag("field pictures", true);
        mounts.forEach(m -> targets.forEach(t -> checkFit(m, t, distances)));
        return header -> new MountInput(header, mounts, orStandard(targets, header), distances, pictures);
    }

    private Function<StudyHeader, StudyInput> bindBackground() {
        Node root = context.root();
        Optional<Mount> mount =
                root.has("mount") ? root.child("mount").flatMap(this::bindOne) : Optional.of(Mount.freeAir());
        mount.filter(m -> m.background().isPresent())
                .ifPresent(m -> root.problem("mount", "has a background of its own; give it here only"));
        mount.filter(Mount::edged)
                .ifPresent(m -> root.problem(
                        "mount",
                        "ends at a straight edge " + text(m.wall().orElseThrow().edge())
                                + " beside the switch, which only studies of the kind mount can describe"));
        Optional<Mount.Background> background = root.map("background").flatMap(reader::bindBackground);
        List<Target> targets = context.targets().bindOnAxis(root);
        targets.stream()
                .filter(t -> t.body() instanceof Body.Ball)
                .forEach(t -> root.problem(
                        "targets", "\"" + t.id() + "\" is a ball, which cannot be computed before a background"));
        Distances distances =
                Distances.bind(context, context.switchModel().map(m -> BACKGROUND_REACH * m.ratedDistance()));
        return header -> new BackgroundInput(
                header, mount.orElseThrow(), background.orElseThrow(), orStandard(targets, header), distances);
    }

    private static List<Target> orStandard(List<Target> targets, StudyHeader header) {
        return targets.isEmpty() ? List.of(header.standard()) : targets;
    }

    /** A mount by id, by path, or in place. */
    private Optional<Mount> bindOne(Node node) {
        if (node.isMap()) {
            return reader.bindInline(node);
        }
        String reference = node.text();
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        try {
            return MountReader.read(
                    context.library().mountFile(reference, context.source()),
                    context.materials(),
                    context.switchModel());
        } catch (InputException e) {
            Problem first = e.problems().get(0);
            if (first.line() == 0) {
                // the file as a whole is missing or unfit: the place to mend is the reference
                node.problem(first.file() + ": " + first.message());
            } else {
                context.problems().addAll(e);
            }
            return Optional.empty();
        }
    }

    /** A first distance that was asked for must be reachable, and a background must leave room for the target. */
    private void checkFit(Mount mount, Target target, Distances distances) {
        double radius = Mount.halfWidth(target);
        double floor = mount.floor(radius);
        boolean asked =
                context.root().child("distances").filter(d -> d.has("from")).isPresent();
        if (asked && distances.first() < floor) {
            double clear = mount.clearance(distances.first(), floor);
            context.root()
                    .problem(
                            "distances",
                            "from " + text(distances.first()) + ": target \"" + target.id() + "\" measures "
                                    + (Double.isInfinite(radius) ? "endlessly" : text(2 * radius))
                                    + " across and mount \"" + mount.id() + "\" leaves "
                                    + (clear > 0 ? text(clear) : "nothing") + " there; it comes no nearer than "
                                    + text(floor));
        }
        if (target.offset() > 0 && (floor < mount.top() || mount.background().isPresent())) {
            context.root()
                    .problem(
                            context.root().has("mount") ? "mount" : "mounts",
                            "target \"" + target.id() + "\" stands " + text(target.offset())
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
                                "the background of mount \"" + mount.id() + "\" stands at " + text(b.distance())
                                        + ", which leaves no room for target \"" + target.id() + "\", "
                                        + text(target.thickness()) + " thick, at "
                                        + text(Math.max(floor, distances.first())));
            }
        });
    }

    private static String text(double metres) {
        return Units.text(metres, Dimension.LENGTH);
    }
}
