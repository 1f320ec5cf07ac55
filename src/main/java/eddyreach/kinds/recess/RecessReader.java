package eddyreach.kinds.recess;

import eddyreach.materials.Material;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.NamedMounts;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code recess}. */
public final class RecessReader {

    private static final double LEAST = 1e-5;
    private static final double LARGEST = 10;
    private static final int MOST_WALLS = 6;
    private static final int MOST_POINTS = 60;
    private static final int DIAMETERS = 12;
    private static final int DEPTHS = 10;

    /** Range of diameters unless given, in diameters of the bore. */
    private static final double NARROWEST = 1.15;

    private static final double WIDEST = 3.3;

    /** Range of depths unless given, in rated distances. */
    private static final double SHALLOWEST = 0.2;

    private static final double DEEPEST = 2;

    /** Share of what wall and switch allow that a depth may take unless given. */
    private static final double ROOM = 0.9;

    private final StudyContext context;
    private final Node root;

    private RecessReader(StudyContext context) {
        this.context = context;
        root = context.root();
    }

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return new RecessReader(context).bind();
    }

    private Function<StudyHeader, StudyInput> bind() {
        Optional<Node> wall = root.map("wall");
        List<Material> materials = wall.map(this::materials).orElse(List.of());
        double thickness = wall.map(w -> w.quantity("thickness", Dimension.LENGTH, LEAST, LARGEST))
                .orElse(Double.NaN);
        double outer = wall.map(w -> w.quantity("diameter", Dimension.LENGTH, LEAST, LARGEST, Double.POSITIVE_INFINITY))
                .orElse(Double.POSITIVE_INFINITY);
        double bore = wall.map(new NamedMounts(context)::bore).orElse(Double.NaN);
        boolean bottom = root.flag("at the bottom", false);
        double surface = bindSurface(bottom);
        double rear = rear();
        double most = Math.min(thickness, bottom ? Double.POSITIVE_INFINITY : surface - rear);
        double sn = context.switchModel().map(SwitchModel::ratedDistance).orElse(1.0);
        ValueRange limits = new ValueRange(LEAST, LARGEST, MOST_POINTS);
        ValueRange diameters = ValueRange.bind(
                root,
                "diameters",
                Dimension.LENGTH,
                limits,
                new ValueRange(NARROWEST * bore, Math.min(WIDEST * bore, ROOM * outer), DIAMETERS));
        ValueRange depths = ValueRange.bind(
                root,
                "depths",
                Dimension.LENGTH,
                limits,
                new ValueRange(SHALLOWEST * sn, Math.min(DEEPEST * sn, ROOM * most), DEPTHS));
        Fit fit = new Fit(bore, outer, thickness, surface, bottom, rear);
        root.optionalMap("diameters").ifPresent(n -> fit.diameters(n, diameters));
        root.optionalMap("depths").ifPresent(n -> fit.depth(n, "to", depths.last()));
        Optional<RecessInput.Size> drawn = root.optionalMap("recess").map(n -> {
            double diameter = n.quantity("diameter", Dimension.LENGTH, LEAST, LARGEST);
            double depth = n.quantity("depth", Dimension.LENGTH, LEAST, LARGEST);
            fit.narrow(n, "diameter", diameter);
            fit.wide(n, "diameter", diameter);
            fit.depth(n, "depth", depth);
            return new RecessInput.Size(diameter, depth);
        });
        if (diameters.last() <= diameters.first() && !root.has("diameters")) {
            root.problem("diameters", "the wall, " + Units.length(outer) + " across, leaves no room for a recess");
        }
        if (depths.last() <= depths.first() && !root.has("depths")) {
            root.problem("depths", "the wall, " + Units.length(thickness) + " thick, leaves no room for a recess");
        }
        List<Target> targets = context.targets().bindOnAxis(root);
        if (targets.size() > 1) {
            root.problem("targets", "a map is made for one target, got " + targets.size());
        }
        return header -> new RecessInput(
                header,
                materials,
                thickness,
                outer,
                bore,
                surface,
                bottom,
                diameters,
                depths,
                drawn,
                targets.isEmpty() ? header.standard() : targets.get(0));
    }

    private List<Material> materials(Node wall) {
        List<Node> nodes = wall.list("materials");
        if (nodes.size() > MOST_WALLS) {
            wall.problem("materials", nodes.size() + " materials, at most " + MOST_WALLS + " maps are made");
        }
        List<Material> found = new ArrayList<>();
        for (Node node : nodes) {
            context.materials().bind(node).ifPresent(m -> {
                if (found.contains(m)) {
                    node.problem("\"" + m.id() + "\" stands twice in the list of materials");
                }
                found.add(m);
            });
        }
        return found;
    }

    private double bindSurface(boolean bottom) {
        double proud = root.quantity("proud by", Dimension.LENGTH, 0, LARGEST, 0);
        double sunk = root.quantity("sunk by", Dimension.LENGTH, 0, LARGEST, 0);
        if (proud > 0 && sunk > 0) {
            root.problem(
                    "sunk by",
                    Units.length(sunk) + " beside proud by " + Units.length(proud)
                            + ": a switch is one or the other, or level");
        }
        if (bottom && (proud > 0 || sunk > 0)) {
            root.problem(
                    "at the bottom",
                    "stands beside " + (sunk > 0 ? "sunk by " + Units.length(sunk) : "proud by " + Units.length(proud))
                            + "; at the bottom the face is sunk as far as the recess is deep");
        }
        if (proud >= -rear()) {
            root.problem(
                    "proud by", Units.length(proud) + " but the switch is only " + Units.length(-rear()) + " long");
        }
        return sunk - proud;
    }

    /** Height of the rear end of the switch, m; far away when nobody knows. */
    private double rear() {
        OptionalDouble end = context.switchModel().map(SwitchModel::rearEnd).orElse(OptionalDouble.empty());
        return end.orElse(-LARGEST);
    }

    /**
     * What bounds a recess.
     *
     * @param bore diameter of the bore, m
     * @param outer outer diameter of the wall, m
     * @param thickness thickness of the wall, m
     * @param surface height of the surface above the face, m
     * @param bottom whether the face goes with the bottom
     * @param rear height of the rear end of the switch, m
     */
    private record Fit(double bore, double outer, double thickness, double surface, boolean bottom, double rear) {

        void diameters(Node node, ValueRange diameters) {
            narrow(node, node.has("from") ? "from" : "to", diameters.first());
            wide(node, node.has("to") ? "to" : "from", diameters.last());
        }

        void narrow(Node node, String key, double diameter) {
            if (diameter <= bore) {
                node.problem(
                        key,
                        Units.length(diameter) + " is not wider than the bore, " + Units.length(bore)
                                + ", in which the body of the switch sits");
            }
        }

        void wide(Node node, String key, double diameter) {
            if (diameter >= outer) {
                node.problem(key, Units.length(diameter) + " is not narrower than the wall, " + Units.length(outer));
            }
        }

        void depth(Node node, String key, double depth) {
            String at = node.has(key) ? key : "from";
            if (depth >= thickness) {
                node.problem(
                        at,
                        Units.length(depth) + ": the recess is not shallower than the wall is thick, "
                                + Units.length(thickness));
            }
            double behind = depth - surface;
            if (!bottom && behind > -rear) {
                node.problem(
                        at,
                        Units.length(depth) + " reaches " + Units.length(behind)
                                + " behind the active face, but the switch ends at " + Units.length(-rear));
            }
        }
    }
}
