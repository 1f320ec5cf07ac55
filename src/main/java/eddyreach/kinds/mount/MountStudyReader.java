package eddyreach.kinds.mount;

import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.DistanceRange;
import eddyreach.study.MountFit;
import eddyreach.study.NamedMounts;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
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
        mounts.forEach(
                m -> MountFit.check(context.root(), root.has("mount") ? "mount" : "mounts", m, targets, distances));
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
}
