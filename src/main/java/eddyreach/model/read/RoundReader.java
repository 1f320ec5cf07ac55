package eddyreach.model.read;

import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Round;
import eddyreach.model.yaml.Node;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Binds targets that are no sheets: washers, tubes, cylinders, screws, rings and spheres. */
final class RoundReader {

    private static final double LARGEST = 1;
    private static final double LARGEST_BALL = 0.2;
    private static final double LEAST_BORE = 1e-5;
    private static final int MOST_RINGS = 40;

    private final Materials materials;

    RoundReader(Materials materials) {
        this.materials = materials;
    }

    /** A body and how it is called unless it is given a label. */
    record Bound(Body body, String label) {}

    /** Binds a body of a shape that is no sheet, or a disc with a coating; empty after a problem. */
    Optional<Bound> bind(Node node, Shape shape) {
        if (shape == Shape.RINGS) {
            node.knows("material");
            if (node.has("material")) {
                node.problem("material", "stands beside rings, give it in each ring");
            }
            return bindRings(node).map(b -> new Bound(b, Describe.rings(b)));
        }
        Optional<Material> material = materials.bind(node, "material");
        if (shape == Shape.SPHERE) {
            double diameter = length(node, "diameter", TargetReader.SMALLEST, LARGEST_BALL);
            return material.filter(m -> diameter > 0)
                    .map(m -> new Bound(new Body.Ball(diameter, m), m.name() + " sphere " + Describe.length(diameter)));
        }
        Optional<Round> round = switch (shape) {
            case DISC -> cylinder(node, "thickness", TargetReader.THINNEST);
            case CYLINDER -> cylinder(node, "length", TargetReader.SMALLEST);
            case SCREW -> screw(node);
            default -> hollow(node, shape);
        };
        Optional<Layer> coating = coating(node, round);
        if (material.isEmpty() || round.isEmpty() || node.has("coating") && coating.isEmpty()) {
            return Optional.empty();
        }
        Round r = round.get();
        return Optional.of(new Bound(
                new Body.Rings(r.rings(material.get(), coating)),
                material.get().name() + " " + shape.word() + " " + Describe.round(r)
                        + coating.map(c -> ", " + Describe.layers(List.of(c)) + " all over")
                                .orElse("")));
    }

    private static double length(Node node, String key, double min, double max) {
        return node.quantity(key, Dimension.LENGTH, min, max);
    }

    private static Optional<Round> cylinder(Node node, String key, double least) {
        double diameter = length(node, "diameter", TargetReader.SMALLEST, LARGEST);
        double length = length(node, key, least, TargetReader.THICKEST);
        return diameter > 0 && length > 0 ? Optional.of(Round.cylinder(diameter / 2, length)) : Optional.empty();
    }

    private static Optional<Round> screw(Node node) {
        double head = length(node, "head diameter", TargetReader.SMALLEST, LARGEST);
        double height = length(node, "head height", TargetReader.SMALLEST, LARGEST);
        double shank = length(node, "shank diameter", TargetReader.SMALLEST, LARGEST);
        double length = length(node, "shank length", TargetReader.SMALLEST, LARGEST);
        boolean point = node.flag("point first", false);
        if (shank >= head) {
            node.problem(
                    "shank diameter",
                    Units.length(shank) + " must be smaller than the head diameter, " + Units.length(head));
        }
        if (!(shank < head && height > 0 && length > 0)) {
            return Optional.empty();
        }
        return Optional.of(Round.screw(head / 2, height, shank / 2, length, point));
    }

    private static Optional<Round> hollow(Node node, Shape shape) {
        double outer = length(node, "outer", TargetReader.SMALLEST, LARGEST);
        double inner = shape == Shape.WASHER ? length(node, "inner", LEAST_BORE, LARGEST) : bore(node, outer);
        double length = shape == Shape.WASHER
                ? length(node, "thickness", TargetReader.THINNEST, TargetReader.THICKEST)
                : length(node, "length", TargetReader.SMALLEST, TargetReader.THICKEST);
        boolean slit = node.flag("slit", false);
        if (inner >= outer) {
            node.problem(
                    "inner",
                    Units.length(inner) + " must be smaller than outer, " + Units.length(outer)
                            + ": nothing is left between them");
        }
        return inner > 0 && inner < outer && length > 0
                ? Optional.of(Round.hollow(inner / 2, outer / 2, length, slit))
                : Optional.empty();
    }

    /** Inner diameter of a tube from inner or wall; NaN after a problem. */
    private static double bore(Node node, double outer) {
        if (!node.has("wall")) {
            if (!node.has("inner")) {
                node.problem("inner", "missing, needs the inner diameter, or wall for the thickness of the wall");
                return Double.NaN;
            }
            return length(node, "inner", LEAST_BORE, LARGEST);
        }
        if (node.has("inner")) {
            node.problem("wall", "stands beside inner, give one of the two");
            return Double.NaN;
        }
        double wall = length(node, "wall", TargetReader.THINNEST, LARGEST);
        if (wall >= outer / 2) {
            node.problem(
                    "wall",
                    Units.length(wall) + " is too thick for an outer diameter of " + Units.length(outer)
                            + ", needs less than " + Units.length(outer / 2)
                            + "; a solid rod is shape: cylinder");
            return Double.NaN;
        }
        return outer - 2 * wall;
    }

    private Optional<Layer> coating(Node node, Optional<Round> round) {
        return node.optionalMap("coating").flatMap(coat -> {
            Optional<Material> material = materials.bind(coat, "material");
            double thickness = length(coat, "thickness", TargetReader.THINNEST, TargetReader.THICKEST);
            double most = round.map(Round::mostCoating).orElse(Double.NaN);
            if (thickness >= most) {
                coat.problem(
                        "thickness",
                        Units.length(thickness) + " on every side leaves nothing of the part, needs less than "
                                + Units.length(most) + "; the part's sizes include its coating");
                return Optional.empty();
            }
            return material.filter(m -> thickness > 0).map(m -> new Layer(m, thickness));
        });
    }

    private Optional<Body.Rings> bindRings(Node node) {
        List<Node> items = node.list("rings");
        if (items.size() > MOST_RINGS) {
            node.problem("rings", "more than " + MOST_RINGS + " rings");
            return Optional.empty();
        }
        List<Ring> rings = new ArrayList<>();
        boolean sound = !items.isEmpty();
        for (int i = 0; i < items.size(); i++) {
            Optional<Ring> ring = items.get(i).checkMap() ? ring(items.get(i), "ring " + (i + 1)) : Optional.empty();
            sound &= ring.isPresent();
            ring.ifPresent(rings::add);
        }
        if (!sound || !together(node, items, rings)) {
            return Optional.empty();
        }
        return Optional.of(new Body.Rings(rings));
    }

    private Optional<Ring> ring(Node node, String name) {
        Optional<Material> material = materials.bind(node, "material");
        double inner = node.quantity("inner", Dimension.LENGTH, 0, LARGEST, 0);
        double outer = length(node, "outer", TargetReader.SMALLEST, LARGEST);
        double from = length(node, "from", 0, TargetReader.THICKEST);
        double to = length(node, "to", 0, TargetReader.THICKEST);
        boolean slit = node.flag("slit", false);
        boolean sound = true;
        if (inner >= outer) {
            node.problem("inner", Units.length(inner) + " must be smaller than outer, " + Units.length(outer));
            sound = false;
        }
        if (from >= to) {
            node.problem("to", Units.length(to) + " must be larger than from, " + Units.length(from));
            sound = false;
        }
        if (slit && inner == 0) {
            node.problem("slit", "a slit stops the current round a hole, but this ring is solid; needs inner above 0");
            sound = false;
        }
        sound &= material.isPresent() && inner >= 0 && outer > 0 && from >= 0 && to > 0;
        return sound
                ? Optional.of(new Ring(name, new Section(inner / 2, outer / 2, from, to), material.get(), slit))
                : Optional.empty();
    }

    /** Checks the rings as one body: it begins at 0, none stand in each other's place, none float, no slit is bridged. */
    private static boolean together(Node node, List<Node> items, List<Ring> rings) {
        boolean sound = true;
        double front = rings.stream().mapToDouble(r -> r.section().z0()).min().orElse(0);
        if (front > 0) {
            node.problem(
                    "rings",
                    "the nearest begins at " + Units.length(front)
                            + ": one must begin at 0, from where the distance counts");
            sound = false;
        }
        for (int i = 0; i < rings.size(); i++) {
            Ring ring = rings.get(i);
            boolean held = rings.size() == 1;
            for (int j = 0; j < rings.size(); j++) {
                if (j == i) {
                    continue;
                }
                Ring other = rings.get(j);
                boolean overlap = ring.section().overlaps(other.section());
                held |= overlap || ring.section().touches(other.section());
                if (j < i && overlap) {
                    items.get(i).problem("stands in the place of " + other.name() + ": rings must not overlap");
                    sound = false;
                }
                if (bridged(ring, other)) {
                    items.get(i).problem("slit", "is bridged by " + other.name() + ", which touches it and is closed");
                    sound = false;
                }
            }
            if (!held) {
                items.get(i)
                        .problem("touches no other ring, the nearest being " + nearest(ring, rings)
                                + "; fill the gap, with a ring of air if nothing is there");
                sound = false;
            }
        }
        return sound;
    }

    private static boolean bridged(Ring ring, Ring other) {
        return ring.slit()
                && !other.slit()
                && ring.material().conductivity20() > 0
                && other.material().conductivity20() > 0
                && ring.section().touches(other.section());
    }

    private static String nearest(Ring ring, List<Ring> rings) {
        String name = "";
        double least = Double.POSITIVE_INFINITY;
        for (Ring other : rings) {
            Section a = ring.section();
            Section b = other.section();
            double radial = Math.max(0, Math.max(a.r0() - b.r1(), b.r0() - a.r1()));
            double axial = Math.max(0, Math.max(a.z0() - b.z1(), b.z0() - a.z1()));
            if (other != ring && Math.hypot(radial, axial) < least) {
                least = Math.hypot(radial, axial);
                name = other.name() + ", " + Units.length(least) + " away";
            }
        }
        return name;
    }
}
