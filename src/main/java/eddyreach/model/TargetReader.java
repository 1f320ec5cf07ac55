package eddyreach.model;

import eddyreach.materials.Material;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Binds targets from the files that name them. */
public final class TargetReader {

    private static final double THINNEST = 1e-9;

    private static final double THICKEST = 1;
    private static final double LARGEST = 10;
    private static final int MOST_LAYERS = 12;
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private enum Shape {
        STANDARD,
        PLATE,
        DISC,
        SQUARE
    }

    private static final Map<String, Shape> SHAPES =
            Map.of("standard", Shape.STANDARD, "plate", Shape.PLATE, "disc", Shape.DISC, "square", Shape.SQUARE);

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
        return new Target(material.id(), describe(layers), outline, layers);
    }

    /** Binds a list of targets whose names must differ; those with problems are left out and recorded. */
    public List<Target> bindAll(List<Node> nodes) {
        List<Target> targets = new ArrayList<>();
        for (Node node : nodes) {
            Optional<Target> target = node.checkMap() ? bindTarget(node) : Optional.empty();
            target.ifPresent(t -> {
                if (targets.stream().anyMatch(other -> other.id().equals(t.id()))) {
                    node.problem("name", "\"" + t.id() + "\" names another target already");
                }
                targets.add(t);
            });
        }
        return targets;
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
                targets.add(target(material.id(), "", outline, List.of(new Layer(material, thickness))));
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
        Optional<Target.Outline> outline = bindOutline(node);
        boolean standard = outline.isPresent() && !node.has("shape")
                || node.child("shape").filter(s -> s.text().equals("standard")).isPresent();
        List<Layer> layers = bindLayers(node, standard);
        if (name.isEmpty() || outline.isEmpty() || layers.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(target(name, label, outline.get(), layers));
    }

    /**
     * Binds the keys shape (standard, plate, disc or square; standard when missing), diameter and side; empty after a
     * problem.
     */
    public Optional<Target.Outline> bindOutline(Node node) {
        Shape shape = node.has("shape") ? node.choice("shape", SHAPES).orElse(null) : Shape.STANDARD;
        node.knows("diameter", "side");
        if (shape == null) {
            return Optional.empty();
        }
        if (shape != Shape.DISC && node.has("diameter")) {
            node.problem("diameter", "belongs to shape: disc only");
        }
        if (shape != Shape.SQUARE && node.has("side")) {
            node.problem("side", "belongs to shape: square only");
        }
        double size = switch (shape) {
            case STANDARD -> standardSide;
            case PLATE -> Double.POSITIVE_INFINITY;
            case DISC -> node.quantity("diameter", Dimension.LENGTH, 1e-4, LARGEST);
            case SQUARE -> node.quantity("side", Dimension.LENGTH, 1e-4, LARGEST);
        };
        if (Double.isNaN(size) && shape != Shape.STANDARD) {
            return Optional.empty();
        }
        return Optional.of(
                switch (shape) {
                    case STANDARD, SQUARE -> new Target.Outline.Square(size);
                    case PLATE -> new Target.Outline.Endless();
                    case DISC -> new Target.Outline.Disc(size);
                });
    }

    /** Binds the keys material and thickness, or layers; empty after a problem. */
    List<Layer> bindLayers(Node node, boolean standard) {
        node.knows("material", "thickness");
        if (!node.has("layers")) {
            Optional<Material> material = materials.bind(node, "material");
            double thickness = standard
                    ? node.quantity(
                            "thickness", Dimension.LENGTH, THINNEST, THICKEST, StandardQuantities.TARGET_THICKNESS)
                    : node.quantity("thickness", Dimension.LENGTH, THINNEST, THICKEST);
            return layer(material, thickness);
        }
        for (String key : List.of("material", "thickness")) {
            if (node.has(key)) {
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
                Optional<Material> material = materials.bind(item, "material");
                layers.addAll(layer(material, item.quantity("thickness", Dimension.LENGTH, THINNEST, THICKEST)));
            }
        }
        return layers.size() == nodes.size() ? layers : List.of();
    }

    private static List<Layer> layer(Optional<Material> material, double thickness) {
        return material.isPresent() && thickness > 0 ? List.of(new Layer(material.get(), thickness)) : List.of();
    }

    private Target target(String id, String label, Target.Outline outline, List<Layer> layers) {
        return new Target(id, label.isEmpty() ? describe(layers) + describe(outline) : label, outline, layers);
    }

    private static String describe(List<Layer> layers) {
        return layers.stream()
                .map(l -> l.material().name() + " " + Units.text(l.thickness(), Dimension.LENGTH))
                .collect(Collectors.joining(" on "));
    }

    /** Nothing for the standard outline, which needs no saying. */
    private String describe(Target.Outline outline) {
        if (outline instanceof Target.Outline.Square s) {
            return s.side() == standardSide ? "" : ", square " + Units.text(s.side(), Dimension.LENGTH);
        }
        if (outline instanceof Target.Outline.Disc d) {
            return ", disc " + Units.text(d.diameter(), Dimension.LENGTH);
        }
        return ", endless plate";
    }
}
