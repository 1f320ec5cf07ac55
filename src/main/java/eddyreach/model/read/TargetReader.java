package eddyreach.model.read;

import eddyreach.materials.Material;
import eddyreach.materials.Specimen;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.values.Texture;
import eddyreach.model.values.ThicknessTolerance;
import eddyreach.model.yaml.Node;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Binds targets from the files that name them. */
public final class TargetReader {

    /** Largest length that a file may name, m. */
    public static final double FARTHEST = 1;

    static final double THINNEST = 1e-9;
    static final double THICKEST = 1;
    static final double SMALLEST = 1e-4;
    private static final double LARGEST = 10;
    private static final double THICKEST_WIRE = 10e-3;
    private static final double THINNEST_WIRE = 1e-6;
    private static final double WIDEST_PITCH = 0.1;
    private static final int LONGEST = 4;
    private static final int MOST_LAYERS = 12;
    private static final double ZERO_CELSIUS = 273.15;
    private static final double COLDEST = ZERO_CELSIUS - 60;

    /** Above this the resistivity of iron is no longer straight, and its permeability falls towards the Curie point at 770 C. */
    private static final double WARMEST = ZERO_CELSIUS + 400;

    private static final String TOLERANCE = "thickness tolerance";

    /** A number alone, or one in percent: anything else is a length. */
    private static final Pattern SHARE = Pattern.compile("[^a-zA-Z\u00b5\u03bc]*|[^%]*%");

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private final Materials materials;
    private final double standardSide;

    /**
     * A reader for one switch.
     *
     * @param materials the materials that targets may name
     * @param standardSide side of the standard target, m ({@link SwitchModel#standardSide()}); NaN when the switch
     *     could not be read and the targets are only checked
     */
    public TargetReader(Materials materials, double standardSide) {
        this.materials = materials;
        this.standardSide = standardSide;
    }

    /** The standard target of a switch in a material, 1 mm thick. */
    public static Target standard(Material material, SwitchModel switchModel) {
        Target.Outline outline = new Target.Outline.Square(switchModel.standardSide());
        List<Layer> layers = List.of(new Layer(material, StandardQuantities.TARGET_THICKNESS));
        return new Target(material.id(), Describe.sheetOf(layers), outline, layers);
    }

    /** Binds a list of targets whose names must differ; those with problems are left out and recorded. */
    public List<Target> bindAll(List<Node> nodes) {
        List<Target> targets = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Node node : nodes) {
            Optional<Target> target = node.checkMap() ? bindTarget(node) : Optional.empty();
            target.ifPresent(t -> {
                if (!names.add(t.id())) {
                    node.problem("name", "\"" + t.id() + "\" names another target already");
                }
                targets.add(t);
            });
        }
        return targets;
    }

    /** Binds the optional list under the key targets, of which none may stand beside the axis. */
    public List<Target> bindOnAxis(Node root) {
        root.knows("targets");
        if (!root.has("targets")) {
            return List.of();
        }
        List<Node> nodes = root.list("targets");
        nodes.stream()
                .filter(n -> n.isMap() && n.has("offset"))
                .forEach(n -> n.problem("offset", "in a study of this kind targets stand on the axis"));
        return bindAll(nodes);
    }

    /**
     * Binds a list of material ids: for each a target of one layer and the given thickness and outline, named like
     * the material.
     */
    public List<Target> bindMaterials(List<Node> ids, double thickness, Target.Outline outline) {
        List<Target> targets = new ArrayList<>();
        for (Node node : ids) {
            materials.bind(node).ifPresent(material -> {
                if (targets.stream().anyMatch(other -> other.id().equals(material.id()))) {
                    node.problem("\"" + material.id() + "\" stands twice in the list");
                }
                List<Layer> layers = List.of(new Layer(material, thickness));
                Body.Sheet body = new Body.Sheet(outline, layers, new Texture.Solid());
                targets.add(new Target(material.id(), Describe.sheet(body, standardSide), body));
            });
        }
        return targets;
    }

    /** Binds one target; empty after a problem. */
    public Optional<Target> bindTarget(Node node) {
        String name = node.text("name");
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            node.problem("name", "a target's name has 1 to 40 small letters, digits and hyphens; put more in label");
        }
        String label = node.text("label", "");
        double offset = node.quantity("offset", Dimension.LENGTH, 0, FARTHEST, 0);
        boolean warm = node.has("temperature");
        double celsius = warm
                ? node.quantity("temperature", Dimension.TEMPERATURE, COLDEST, WARMEST) - ZERO_CELSIUS
                : Double.NaN;
        Shape shape = shape(node, false);
        Shape.check(node, shape, false);
        for (String key : List.of("open area", "mesh")) {
            if (node.has("coating") && shape != null && shape.isSheet() && node.has(key)) {
                node.problem(key, "stands beside coating, give one of the two");
            }
        }
        boolean coated = shape == Shape.DISC && node.has("coating") && !node.has("layers");
        boolean round = shape != null && !shape.isSheet() || coated;
        List<ThicknessTolerance> tolerances = new ArrayList<>();
        Optional<Body.Sheet> sheet = round ? Optional.empty() : bindSheet(node, shape, tolerances);
        Optional<RoundReader.Bound> bound = shape != null && !shape.isSheet() || coated
                ? new RoundReader(materials).bind(node, shape)
                : sheet.map(s -> new RoundReader.Bound(s, Describe.sheet(s, standardSide)));
        node.knows(TOLERANCE);
        if (sheet.isEmpty() && node.has(TOLERANCE) && (shape != null && !shape.isSheet() || coated)) {
            node.problem(TOLERANCE, "goes only with flat parts without a coating all over; other sizes are as stated");
        }
        return bound.filter(b -> !name.isEmpty())
                .map(b -> new Target(
                        name,
                        label.isEmpty()
                                ? b.label() + (warm ? Describe.at(celsius) : "") + Describe.offset(offset)
                                : label,
                        warm ? b.body().made(m -> at(m, celsius)) : b.body(),
                        offset,
                        tolerances));
    }

    /** A material that stays at a temperature, degrees Celsius, whatever that of the switch. */
    private static Material at(Material m, double celsius) {
        if (m.conductivity20() == 0) {
            return m;
        }
        String id = m.id() + "-at-" + Math.round(celsius);
        String source = m.source() + "; conductivity by its coefficient" + Describe.at(celsius);
        return m.in(
                id,
                m.name() + Describe.at(celsius),
                source,
                new Specimen(celsius, m.specimen().sheetFactor()));
    }

    /**
     * Binds the keys shape (standard, plate, disc, square or rectangle; standard when missing), diameter, side, width
     * and height; empty after a problem.
     */
    public Optional<Target.Outline> bindOutline(Node node) {
        Shape shape = shape(node, true);
        Shape.check(node, shape, true);
        return outline(node, shape);
    }

    private static Shape shape(Node node, boolean sheetsOnly) {
        return node.has("shape") ? node.choice("shape", Shape.words(sheetsOnly)).orElse(null) : Shape.STANDARD;
    }

    private Optional<Target.Outline> outline(Node node, Shape shape) {
        if (shape == null) {
            return Optional.empty();
        }
        if (shape == Shape.PLATE) {
            return Optional.of(new Target.Outline.Endless());
        }
        if (shape == Shape.RECTANGLE) {
            double width = size(node, "width");
            double height = size(node, "height");
            if (!(width > 0 && height > 0)) {
                return Optional.empty();
            }
            Target.Outline.Rectangle rectangle = new Target.Outline.Rectangle(width, height);
            if (rectangle.aspect() > LONGEST * (1 + 1e-9)) {
                node.problem(
                        width > height ? "width" : "height",
                        Units.length(Math.max(width, height)) + " is more than " + LONGEST
                                + " times the other side, "
                                + Units.length(Math.min(width, height))
                                + ": no disc stands for so long a strip; if both sides are far wider than the switch,"
                                + " shape: plate does");
                return Optional.empty();
            }
            return Optional.of(rectangle);
        }
        if (shape == Shape.DISC) {
            double diameter = size(node, "diameter");
            return diameter > 0 ? Optional.of(new Target.Outline.Disc(diameter)) : Optional.empty();
        }
        double side = shape == Shape.STANDARD ? standardSide : size(node, "side");
        return side > 0 || shape == Shape.STANDARD ? Optional.of(new Target.Outline.Square(side)) : Optional.empty();
    }

    private static double size(Node node, String key) {
        return node.quantity(key, Dimension.LENGTH, SMALLEST, LARGEST);
    }

    /** Binds a sheet and adds the tolerances of its layers. */
    private Optional<Body.Sheet> bindSheet(Node node, Shape shape, List<ThicknessTolerance> tolerances) {
        Optional<Target.Outline> outline = outline(node, shape);
        Optional<Texture> texture = bindTexture(node);
        List<Layer> layers = bindLayers(node, shape, texture, tolerances);
        if (node.has("coating") && node.has("layers")) {
            node.problem(
                    "coating", "stands beside layers: layers cover the front, a coating every side of one material");
        }
        if (outline.isEmpty() || layers.isEmpty() || texture.isEmpty()) {
            return Optional.empty();
        }
        Texture t = texture.get();
        List<Layer> effective = layers.stream()
                .map(l -> new Layer(t.of(l.material()), l.thickness()))
                .toList();
        return Optional.of(new Body.Sheet(outline.get(), effective, t));
    }

    /** Solid unless the keys "open area" or mesh say otherwise; empty after a problem. */
    private static Optional<Texture> bindTexture(Node node) {
        if (node.has("open area") && node.has("mesh")) {
            node.problem("open area", "stands beside mesh, give one of the two");
            return Optional.empty();
        }
        if (node.has("open area")) {
            double share = node.quantity("open area", Dimension.NONE, 0, Texture.MOST_OPEN);
            return share >= 0 ? Optional.of(new Texture.Perforated(share)) : Optional.empty();
        }
        if (!node.has("mesh")) {
            return Optional.of(new Texture.Solid());
        }
        return node.map("mesh").flatMap(mesh -> {
            double wire = mesh.quantity("wire", Dimension.LENGTH, THINNEST_WIRE, THICKEST_WIRE);
            double pitch = mesh.quantity("pitch", Dimension.LENGTH, THINNEST_WIRE, WIDEST_PITCH);
            if (wire >= pitch) {
                mesh.problem(
                        "pitch",
                        Units.length(pitch) + " from wire to wire leaves no opening between wires of "
                                + Units.length(wire) + ", needs more");
            }
            return wire < pitch ? Optional.of(new Texture.Mesh(wire, pitch)) : Optional.empty();
        });
    }

    /** Binds the keys material and thickness, or layers; empty after a problem. */
    public List<Layer> bindLayers(Node node, Shape shape, Optional<Texture> texture) {
        return bindLayers(node, shape, texture, new ArrayList<>());
    }

    private List<Layer> bindLayers(
            Node node, Shape shape, Optional<Texture> texture, List<ThicknessTolerance> tolerances) {
        node.knows("material", "thickness");
        boolean mesh = node.has("mesh");
        if (mesh && node.has("thickness")) {
            node.problem("thickness", "stands beside mesh, whose wire is its thickness");
        }
        if (mesh && node.has("layers")) {
            node.problem("mesh", "stands beside layers; a mesh is of one material");
        }
        if (!node.has("layers")) {
            Optional<Material> material = bindMaterial(node, texture);
            double thickness = mesh
                    ? texture.filter(Texture.Mesh.class::isInstance)
                            .map(t -> ((Texture.Mesh) t).wire())
                            .orElse(Double.NaN)
                    : shape == Shape.STANDARD
                            ? node.quantity(
                                    "thickness",
                                    Dimension.LENGTH,
                                    THINNEST,
                                    THICKEST,
                                    StandardQuantities.TARGET_THICKNESS)
                            : node.quantity("thickness", Dimension.LENGTH, THINNEST, THICKEST);
            List<Layer> single = layer(material, thickness);
            if (mesh && node.has(TOLERANCE)) {
                node.problem(TOLERANCE, "stands beside mesh, whose wire is as stated");
            } else if (!mesh) {
                bindTolerances(List.of(node), single, tolerances);
            }
            return single;
        }
        for (String key : List.of("material", "thickness", TOLERANCE)) {
            if (node.has(key) && !mesh) {
                node.problem(key, "stands beside layers, give it in each layer");
            }
        }
        List<Node> nodes = node.list("layers");
        if (nodes.size() > MOST_LAYERS) {
            node.problem("layers", "more than " + MOST_LAYERS + " layers");
            return List.of();
        }
        List<Layer> layers = new ArrayList<>();
        for (Node item : nodes) {
            if (item.checkMap()) {
                Optional<Material> material = bindMaterial(item, texture);
                item.knows(TOLERANCE);
                layers.addAll(layer(material, item.quantity("thickness", Dimension.LENGTH, THINNEST, THICKEST)));
            }
        }
        if (layers.size() != nodes.size()) {
            return List.of();
        }
        bindTolerances(nodes, layers, tolerances);
        return layers;
    }

    /** The tolerance that each layer states, in percent or as a length, or the usual one. */
    private static void bindTolerances(List<Node> nodes, List<Layer> layers, List<ThicknessTolerance> tolerances) {
        for (int i = 0; i < layers.size(); i++) {
            Node node = nodes.get(i);
            if (!node.has(TOLERANCE)) {
                tolerances.add(ThicknessTolerance.usual(layers, i));
                continue;
            }
            double thickness = layers.get(i).thickness();
            double most = ThicknessTolerance.MOST;
            double share = SHARE.matcher(node.text(TOLERANCE)).matches()
                    ? node.quantity(TOLERANCE, Dimension.NONE, 0, most)
                    : node.quantity(TOLERANCE, Dimension.LENGTH, 0, most * thickness) / thickness;
            tolerances.add(ThicknessTolerance.stated(share));
        }
    }

    /** A magnetic sheet with openings has no solid one that stands for it: its field lines and its skin follow the holes. */
    private Optional<Material> bindMaterial(Node node, Optional<Texture> texture) {
        Optional<Material> material = materials.bind(node, "material");
        boolean open = texture.isPresent() && !(texture.get() instanceof Texture.Solid);
        if (open && material.isPresent() && !material.get().permeability().equals(Material.AIR.permeability())) {
            node.problem(
                    "material",
                    material.get().name() + " is magnetic: no rule here covers magnetic sheets with holes or magnetic"
                            + " mesh, needs a metal that is not magnetic");
            return Optional.empty();
        }
        return material;
    }

    private static List<Layer> layer(Optional<Material> material, double thickness) {
        return material.isPresent() && thickness > 0 ? List.of(new Layer(material.get(), thickness)) : List.of();
    }
}
