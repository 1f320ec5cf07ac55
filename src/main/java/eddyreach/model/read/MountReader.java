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
import java.util.Optional;
import java.util.regex.Pattern;

/** Binds a mount, from a file of its own or from a group of keys in a study, and checks that it fits the switch. */
public final class MountReader {

    /** Smallest length that can be given, m. */
    static final double LEAST = 1e-5;

    /** Largest, m. */
    static final double LARGEST = 10;

    /** Farthest that a face can be sunk, in its diameters: the field has long ended there, and numbers lose their digits. */
    private static final double DEEPEST = 10;

    /** Widest walls, bores and rings, in diameters of the face: wider ones take minutes and change nothing. */
    private static final double WIDEST = 20;

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private final Materials materials;
    private final Optional<SwitchModel> model;
    private final WallReader walls;

    /**
     * @param materials the materials that may be named
     * @param model the switch; empty when it is not known and only the file itself can be checked
     */
    public MountReader(Materials materials, Optional<SwitchModel> model) {
        this.materials = materials;
        this.model = model;
        walls = new WallReader(materials, model);
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
        Optional<Mount.Wall> wall = node.optionalMap("wall").flatMap(n -> walls.bind(n, surface));
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

    /** Diameter of a wall's bore, m: as given, or that of the hole that the switch needs; NaN when the switch is not known. */
    public double bindBore(Node wall) {
        return walls.bindBore(wall);
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
        double outer = node.quantity("outer diameter", Dimension.LENGTH, LEAST, widest(model));
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
        for (Part part : mount.parts(m.coreRadius())) {
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

    /** Widest wall, bore or ring about a switch, m. */
    static double widest(Optional<SwitchModel> model) {
        return model.map(m -> WIDEST * m.faceDiameter()).orElse(LARGEST);
    }

    /** A required length, m; NaN after a problem. */
    static double length(Node node, String key) {
        return node.quantity(key, Dimension.LENGTH, LEAST, LARGEST);
    }
}
