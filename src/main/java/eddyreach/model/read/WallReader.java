package eddyreach.model.read;

import eddyreach.materials.Material;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.Node;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Binds the wall of a mount: its plate, its bore and the openings that widen it, and an edge. */
final class WallReader {

    /** Whether a hole is tapped. */
    private static final Map<String, Boolean> HOLES = Map.of("clearance", false, "tapped", true);

    private final Materials materials;
    private final Optional<SwitchModel> model;

    /**
     * @param materials the materials that may be named
     * @param model the switch; empty when it is not known
     */
    WallReader(Materials materials, Optional<SwitchModel> model) {
        this.materials = materials;
        this.model = model;
    }

    /**
     * Binds a wall; empty after a problem.
     *
     * @param surface height of its surface, m
     */
    Optional<Mount.Wall> bind(Node node, double surface) {
        Optional<Material> material = materials.bind(node, "material");
        double thickness = MountReader.length(node, "thickness");
        double diameter = node.quantity(
                "diameter", Dimension.LENGTH, MountReader.LEAST, MountReader.widest(model), Double.POSITIVE_INFINITY);
        double bore = bindBore(node);
        List<Mount.Opening> openings = bindOpenings(node, bore);
        double edge = bindEdge(node, diameter, bore, openings);
        if (openings.isEmpty()) {
            if (diameter <= bore) {
                node.problem(
                        "diameter", Units.length(diameter) + " must be larger than the bore, " + Units.length(bore));
            }
            return wall(material, thickness, diameter, bore, openings, edge);
        }
        Mount.Opening first = openings.get(0);
        Mount.Opening last = openings.get(openings.size() - 1);
        if (diameter <= first.front()) {
            node.problem(
                    "diameter",
                    Units.length(diameter) + " must be larger than the opening in it, " + Units.length(first.front()));
        }
        if (thickness <= last.to()) {
            node.problem(
                    "thickness",
                    Units.length(thickness) + ": the plate is not thicker than its recess is deep, "
                            + Units.length(last.to()));
        }
        double depth = last.to() - surface;
        model.flatMap(m -> m.rearEnd().stream().boxed().findFirst()).ifPresent(end -> {
            if (depth > -end) {
                node.problem("the recess reaches " + Units.length(depth)
                        + " behind the active face, but the switch ends at " + Units.length(-end));
            }
        });
        return wall(material, thickness, diameter, bore, openings, edge);
    }

    /** Diameter of a wall's bore, m: as given, or that of the hole that the switch needs; NaN when the switch is not known. */
    double bindBore(Node node) {
        double body = model.map(SwitchModel::bodyDiameter).orElse(Double.NaN);
        boolean tapped = node.optionalChoice("hole", HOLES).orElse(false);
        if (tapped && model.isPresent() && model.get().thread().isEmpty()) {
            node.problem("hole", "tapped, but the body of the switch has no thread");
        }
        if (node.has("hole") && node.has("bore")) {
            node.problem("hole", "stands beside bore; give one of them");
        }
        double fits = tapped ? body : model.map(SwitchModel::clearanceHole).orElse(Double.NaN);
        double bore = node.quantity("bore", Dimension.LENGTH, MountReader.LEAST, MountReader.widest(model), fits);
        if (bore < body * (1 - 1e-9)) {
            node.problem(
                    "bore", Units.length(bore) + " is narrower than the body of the switch, " + Units.length(body));
        }
        return bore;
    }

    private static Optional<Mount.Wall> wall(
            Optional<Material> material,
            double thickness,
            double diameter,
            double bore,
            List<Mount.Opening> openings,
            double edge) {
        return material.isEmpty() || !(thickness > 0 && bore > 0 && diameter > 0 && edge > 0)
                ? Optional.empty()
                : Optional.of(new Mount.Wall(material.get(), thickness, diameter, bore, openings, edge));
    }

    /** Distance of a straight edge from the axis, m; infinite without one. */
    private static double bindEdge(Node node, double diameter, double bore, List<Mount.Opening> openings) {
        double edge = node.quantity(
                "edge", Dimension.LENGTH, MountReader.LEAST, MountReader.LARGEST, Double.POSITIVE_INFINITY);
        double widest = openings.stream().mapToDouble(Mount.Opening::front).reduce(0, Math::max);
        if (edge <= bore / 2) {
            node.problem(
                    "edge",
                    Units.length(edge) + " from the axis, but the bore of " + Units.length(bore) + " reaches "
                            + Units.length(bore / 2) + " from it");
        } else if (edge <= widest / 2) {
            node.problem(
                    "edge",
                    Units.length(edge) + " from the axis, but the opening of " + Units.length(widest) + " reaches "
                            + Units.length(widest / 2) + " from it; an opening that breaks through the edge cannot be"
                            + " described");
        }
        if (Double.isFinite(edge) && edge >= diameter / 2) {
            node.problem(
                    "edge",
                    Units.length(edge) + " from the axis lies outside the wall, whose diameter of "
                            + Units.length(diameter) + " ends at " + Units.length(diameter / 2));
        }
        return edge;
    }

    private List<Mount.Opening> bindOpenings(Node node, double bore) {
        List<String> given = List.of("recess", "countersink", "steps").stream()
                .filter(node::has)
                .toList();
        if (given.size() > 1) {
            node.problem(given.get(1), "stands beside " + given.get(0) + "; give one of them, or all as steps");
        }
        List<Mount.Opening> openings = new ArrayList<>();
        node.optionalMap("recess").ifPresent(n -> addOpening(n, bore, true, openings));
        node.optionalMap("countersink").ifPresent(n -> addCone(n, bore, openings));
        for (Node n : node.optionalList("steps")) {
            if (n.checkMap()) {
                addOpening(n, bore, openings.isEmpty(), openings);
            }
        }
        return openings;
    }

    private void addOpening(Node node, double bore, boolean first, List<Mount.Opening> openings) {
        double diameter = MountReader.length(node, "diameter");
        double depth = MountReader.length(node, "depth");
        if (diameter <= bore) {
            node.problem("diameter", Units.length(diameter) + " must be larger than the bore, " + Units.length(bore));
            return;
        }
        double from = 0;
        if (!first) {
            Mount.Opening before = openings.get(openings.size() - 1);
            from = before.to();
            if (diameter >= before.back()) {
                node.problem(
                        "diameter",
                        Units.length(diameter) + " must be smaller than that of the step above, "
                                + Units.length(before.back()));
            }
            if (depth <= from) {
                node.problem(
                        "depth",
                        Units.length(depth) + " must be larger than that of the step above, " + Units.length(from));
            }
        }
        if (Double.isFinite(diameter) && depth > from) {
            openings.add(new Mount.Opening(diameter, diameter, from, depth));
        }
    }

    private void addCone(Node node, double bore, List<Mount.Opening> openings) {
        double front = MountReader.length(node, "diameter");
        double depth = MountReader.length(node, "depth");
        double back = node.quantity("to", Dimension.LENGTH, MountReader.LEAST, MountReader.LARGEST, bore);
        if (front <= back) {
            node.problem(
                    "diameter", Units.length(front) + " must be larger than what it narrows to, " + Units.length(back));
        }
        if (back < bore) {
            node.problem("to", Units.length(back) + " must not be smaller than the bore, " + Units.length(bore));
        }
        // without a switch the bore may be unknown; what cannot be read is a problem already
        boolean readable = Double.isFinite(front) && (Double.isFinite(back) || !node.has("to"));
        if (readable && !(front <= back) && !(back < bore) && depth > 0) {
            openings.add(new Mount.Opening(front, back, 0, depth));
        }
    }
}
