package eddyreach.model.read;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import eddyreach.model.yaml.YamlTree;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Binds a mount, from a file of its own or from a group of keys in a study, and checks that it fits the switch. */
public final class MountReader {

    private static final double LEAST = 1e-5;
    private static final double LARGEST = 10;

    /** Farthest that a face can be sunk, in its diameters: the field has long ended there, and numbers lose their digits. */
    private static final double DEEPEST = 10;

    /** Widest walls, bores and rings, in diameters of the face: wider ones take minutes and change nothing. */
    private static final double WIDEST = 20;

    /** Steps of a cone when only overlaps are looked for. */
    private static final int STEPS = 8;

    /** Whether a hole is tapped. */
    private static final Map<String, Boolean> HOLES = Map.of("clearance", false, "tapped", true);

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private final Materials materials;
    private final Optional<SwitchModel> model;

    /**
     * @param materials the materials that may be named
     * @param model the switch; empty when it is not known and only the file itself can be checked
     */
    public MountReader(Materials materials, Optional<SwitchModel> model) {
        this.materials = materials;
        this.model = model;
    }

    /**
     * Reads a mount's file.
     *
     * @return empty when the switch is not known
     * @throws InputException with everything that is wrong in the file or does not fit the switch
     */
    public static Optional<Mount> read(SourceFile source, Materials materials, Optional<SwitchModel> model) {
        Problems problems = new Problems();
        Node root = YamlTree.open(source, "mount", problems);
        Optional<Mount> mount = new MountReader(materials, model).bind(root, id(source), root.text("name"));
        root.finish();
        problems.throwIfAny();
        return mount;
    }

    /** A file may be called anything, but pictures and rows are named after it. */
    private static String id(SourceFile source) {
        String safe = source.id().replaceAll("[^A-Za-z0-9._]+", "-").replaceAll("^[-.]+|-+$", "");
        return safe.isEmpty() ? "mount" : safe;
    }

    /**
     * The readable name that a mount's file gives.
     *
     * @throws InputException with everything that is wrong in the file
     */
    static String name(SourceFile source, Materials materials) {
        read(source, materials, Optional.empty());
        return YamlTree.open(source, "mount", new Problems()).text("name");
    }

    /** Binds a group of keys in a study, with a short name as targets have; empty after a problem. */
    public Optional<Mount> bindInline(Node node) {
        String id = node.text("name");
        if (!id.isEmpty() && !NAME.matcher(id).matches()) {
            node.problem("name", "a mount's name has 1 to 40 small letters, digits and hyphens; put more in label");
        }
        String label = node.text("label", id);
        return bind(node, id, label);
    }

    private Optional<Mount> bind(Node node, String id, String name) {
        String note = node.note("note");
        double surface = bindSurface(node);
        Optional<Mount.Wall> wall = node.optionalMap("wall").flatMap(n -> bindWall(n, surface));
        Optional<Mount.Cover> cover = node.optionalMap("cover").flatMap(this::bindCover);
        List<Part> rings = new ArrayList<>(bindBehind(node, wall, surface));
        for (Node ring : node.optionalList("rings")) {
            if (ring.checkMap()) {
                bindRing(ring, rings);
            }
        }
        Optional<Mount.Standing> background = node.optionalMap("background").flatMap(this::bindStanding);
        if (model.isEmpty() || id.isEmpty() || Double.isNaN(surface)) {
            return Optional.empty();
        }
        Mount mount = new Mount(id, name, note, surface, wall, cover, rings, background);
        checkOverlaps(node, mount);
        background.ifPresent(b -> {
            double front = mount.floor(0);
            if (b.distance() <= front) {
                node.problem(
                        "background",
                        "stands " + Units.length(b.distance())
                                + " before the face, inside the mount, which reaches up to " + Units.length(front));
            }
        });
        return Optional.of(mount);
    }

    private double bindSurface(Node node) {
        double proud = node.quantity("proud by", Dimension.LENGTH, 0, LARGEST, 0);
        double deepest = model.map(m -> DEEPEST * m.faceDiameter()).orElse(LARGEST);
        double sunk = node.quantity("sunk by", Dimension.LENGTH, 0, deepest, 0);
        if (proud > 0 && sunk > 0) {
            node.problem(
                    "sunk by",
                    Units.length(sunk) + " beside proud by " + Units.length(proud)
                            + ": a switch is one or the other, or flush");
        }
        double end =
                model.flatMap(m -> m.rearEnd().stream().boxed().findFirst()).orElse(-LARGEST);
        if (proud >= -end) {
            node.problem("proud by", Units.length(proud) + " but the switch is only " + Units.length(-end) + " long");
        }
        return sunk - proud;
    }

    private Optional<Mount.Wall> bindWall(Node node, double surface) {
        Optional<Material> material = materials.bind(node, "material");
        double thickness = length(node, "thickness");
        double diameter = node.quantity("diameter", Dimension.LENGTH, LEAST, widest(), Double.POSITIVE_INFINITY);
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
    public double bindBore(Node node) {
        double body = model.map(SwitchModel::bodyDiameter).orElse(Double.NaN);
        boolean tapped = node.optionalChoice("hole", HOLES).orElse(false);
        if (tapped && model.isPresent() && model.get().thread().isEmpty()) {
            node.problem("hole", "tapped, but the body of the switch has no thread");
        }
        if (node.has("hole") && node.has("bore")) {
            node.problem("hole", "stands beside bore; give one of them");
        }
        double fits = tapped ? body : model.map(SwitchModel::clearanceHole).orElse(Double.NaN);
        double bore = node.quantity("bore", Dimension.LENGTH, LEAST, widest(), fits);
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
        double edge = node.quantity("edge", Dimension.LENGTH, LEAST, LARGEST, Double.POSITIVE_INFINITY);
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
        double diameter = length(node, "diameter");
        double depth = length(node, "depth");
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
        if (depth > from) {
            openings.add(new Mount.Opening(diameter, diameter, from, depth));
        }
    }

    private void addCone(Node node, double bore, List<Mount.Opening> openings) {
        double front = length(node, "diameter");
        double depth = length(node, "depth");
        double back = node.quantity("to", Dimension.LENGTH, LEAST, LARGEST, bore);
        if (front <= back) {
            node.problem(
                    "diameter", Units.length(front) + " must be larger than what it narrows to, " + Units.length(back));
        }
        if (back < bore) {
            node.problem("to", Units.length(back) + " must not be smaller than the bore, " + Units.length(bore));
        }
        // without a switch the bore may be unknown
        if (!(front <= back) && !(back < bore) && depth > 0) {
            openings.add(new Mount.Opening(front, back, 0, depth));
        }
    }

    private Optional<Mount.Cover> bindCover(Node node) {
        Optional<Material> material = materials.bind(node, "material");
        double distance = node.quantity("distance", Dimension.LENGTH, 0, LARGEST, 0);
        double thickness = length(node, "thickness");
        double diameter = node.quantity("diameter", Dimension.LENGTH, LEAST, LARGEST, Double.POSITIVE_INFINITY);
        return material.isPresent() && distance >= 0 && thickness > 0 && diameter > 0
                ? Optional.of(new Mount.Cover(material.get(), distance, thickness, diameter))
                : Optional.empty();
    }

    /** Washer and nut at the back of the wall, the washer against it. */
    private List<Part> bindBehind(Node node, Optional<Mount.Wall> wall, double surface) {
        List<Part> parts = new ArrayList<>();
        double back = wall.map(w -> surface - w.thickness()).orElse(Double.NaN);
        double inner = model.map(SwitchModel::bodyDiameter).orElse(Double.NaN);
        back = addBehind(node, "washer", "diameter", "thickness", inner, back, parts);
        addBehind(node, "nut", "across corners", "height", inner, back, parts);
        return parts;
    }

    private double addBehind(
            Node root, String name, String across, String along, double inner, double back, List<Part> parts) {
        Optional<Node> found = root.optionalMap(name);
        if (found.isEmpty()) {
            return back;
        }
        Node node = found.get();
        if (!root.has("wall")) {
            node.problem("stands at the back of the wall, but there is no wall; give it as one of the rings");
        }
        Optional<Material> material = materials.bind(node, "material");
        double outer = length(node, across);
        double height = length(node, along);
        if (outer <= inner) {
            node.problem(
                    across,
                    Units.length(outer) + " must be larger than the body of the switch, " + Units.length(inner));
        }
        if (material.isEmpty() || !(outer > inner && height > 0) || Double.isNaN(back)) {
            return back;
        }
        parts.add(new Part(name, Role.MOUNT, new Section(inner / 2, outer / 2, back - height, back), material.get()));
        return back - height;
    }

    private void bindRing(Node node, List<Part> rings) {
        String name = node.text("name");
        if (rings.stream().anyMatch(r -> r.name().equals(name))) {
            node.problem("name", "\"" + name + "\" names another part already");
        }
        Optional<Material> material = materials.bind(node, "material");
        double inner = node.quantity("inner diameter", Dimension.LENGTH, 0, LARGEST, 0);
        double outer = node.quantity("outer diameter", Dimension.LENGTH, LEAST, widest());
        double front = node.quantity("front", Dimension.LENGTH, -LARGEST, LARGEST);
        double back = node.quantity("back", Dimension.LENGTH, -LARGEST, LARGEST);
        if (inner >= outer) {
            node.problem(
                    "outer diameter",
                    Units.length(outer) + " must be larger than inner diameter, " + Units.length(inner));
        }
        if (front >= back) {
            node.problem("back", Units.length(back) + " must be larger than front, " + Units.length(front));
        }
        if (material.isPresent() && outer > inner && back > front) {
            rings.add(
                    new Part(name, Role.MOUNT, new Section(inner / 2, outer / 2, 0 - back, 0 - front), material.get()));
        }
    }

    private Optional<Mount.Standing> bindStanding(Node node) {
        double distance = length(node, "distance");
        return bindBackground(node).filter(b -> distance > 0).map(b -> new Mount.Standing(b, distance));
    }

    /** Binds material, thickness and diameter of a background; empty after a problem. */
    public Optional<Mount.Background> bindBackground(Node node) {
        Optional<Material> material = materials.bind(node, "material");
        double thickness = length(node, "thickness");
        double diameter = node.quantity("diameter", Dimension.LENGTH, LEAST, LARGEST, Double.POSITIVE_INFINITY);
        return material.isPresent() && thickness > 0 && diameter > 0
                ? Optional.of(new Mount.Background(material.get(), thickness, diameter))
                : Optional.empty();
    }

    private void checkOverlaps(Node node, Mount mount) {
        SwitchModel m = model.orElseThrow();
        List<Part> fixed = new ArrayList<>(m.parts());
        fixed.add(new Part("winding", Role.WINDING, m.winding().section(), Material.AIR));
        for (Part part : mount.parts(m.coreRadius(), STEPS)) {
            for (Part other : fixed) {
                if (part.section().overlaps(other.section())) {
                    node.problem(named(part) + " overlaps " + named(other));
                }
            }
            fixed.add(part);
        }
    }

    private static String named(Part part) {
        Section s = part.section();
        return "\"" + part.name() + "\" (diameter " + Units.length(2 * s.r0()) + " to " + Units.length(2 * s.r1())
                + ", " + height(s.z1()) + " to " + height(s.z0()) + ")";
    }

    private static String height(double z) {
        return z > 0 ? Units.length(z) + " in front of the face" : Units.length(0 - z) + " behind the face";
    }

    private double widest() {
        return model.map(m -> WIDEST * m.faceDiameter()).orElse(LARGEST);
    }

    private static double length(Node node, String key) {
        return node.quantity(key, Dimension.LENGTH, LEAST, LARGEST);
    }
}
