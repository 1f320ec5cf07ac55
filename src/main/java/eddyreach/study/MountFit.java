package eddyreach.study;

import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;

/** Whether a target can come nearer in a mount, and be computed there. */
public final class MountFit {

    private MountFit() {}

    /**
     * Records what does not go together.
     *
     * @param root the study
     * @param key the key that names the mount
     */
    public static void check(Node root, String key, Mount mount, List<Target> targets, DistanceRange distances) {
        boolean asked = root.child("distances").filter(d -> d.has("from")).isPresent();
        for (Target t : targets) {
            if (asked) {
                reach(root, mount, t, distances.first());
            }
            problems(mount, t, distances.first()).forEach(p -> root.problem(key, p));
        }
    }

    /** A first distance that was asked for must be reachable. */
    private static void reach(Node root, Mount mount, Target target, double first) {
        double floor = mount.floor(target);
        if (first >= floor) {
            return;
        }
        double wide = 2 * Mount.halfWidth(target);
        double clear = mount.clearance(first, floor);
        root.problem(
                "distances",
                "from " + Units.length(first) + ": target \"" + target.id() + "\" measures "
                        + (Double.isInfinite(wide) ? "endlessly" : Units.length(wide))
                        + " across and mount \"" + mount.id() + "\" leaves "
                        + (clear > 0 ? Units.length(clear) : "nothing") + " there; it comes no nearer than "
                        + Units.length(floor));
    }

    /**
     * What keeps a target from being computed in a mount, a sentence each.
     *
     * @param first least distance that is asked for, m
     */
    public static List<String> problems(Mount mount, Target target, double first) {
        List<String> problems = new ArrayList<>();
        double floor = mount.floor(target);
        if (target.offset() > 0 && (floor < mount.top() || mount.background().isPresent())) {
            problems.add("target \"" + target.id() + "\" stands " + Units.length(target.offset())
                    + " beside the axis: that cannot be computed inside the metal of mount \"" + mount.id()
                    + "\" nor before a background");
        }
        if (target.body() instanceof Body.Ball && mount.background().isPresent()) {
            problems.add("target \"" + target.id()
                    + "\" is a ball, which cannot be computed before the background of mount \"" + mount.id() + "\"");
        }
        mount.background().ifPresent(b -> {
            double room = b.distance() - target.thickness();
            if (room <= floor || room <= first) {
                problems.add("the background of mount \"" + mount.id() + "\" stands at "
                        + Units.length(b.distance()) + ", which leaves no room for target \"" + target.id() + "\", "
                        + Units.length(target.thickness()) + " thick, at "
                        + Units.length(Math.max(floor, first)));
            }
        });
        return problems;
    }
}
