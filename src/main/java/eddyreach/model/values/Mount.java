package eddyreach.model.values;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What holds a switch and stands around it, in the switch's coordinates: the active face is the plane z = 0, targets come from z above 0.
 *
 * @param id name of its file without the ending, or its short name in a study
 * @param name readable name
 * @param note what is typical and what is assumed, as the file says
 * @param surface height of the wall's surface above the active face, m: 0 when flush, positive when the switch is sunk, negative when it
 *     stands proud
 * @param wall the plate that the switch sits in
 * @param cover a plate in front of the face
 * @param rings washer, nut and whatever else is made of rings, with the role MOUNT
 * @param background metal at a fixed distance, behind the target
 */
public record Mount(
        String id,
        String name,
        String note,
        double surface,
        Optional<Wall> wall,
        Optional<Cover> cover,
        List<Part> rings,
        Optional<Standing> background) {

    /** A wall without an end is cut this many radii of the core beyond its widest opening; what lies beyond does not matter. */
    static final double CUT = 3;

    /** A cover without an end is cut at this many radii of the core. */
    static final double COVER_CUT = 5;

    public Mount {
        rings = List.copyOf(rings);
    }

    /** Nothing at all. */
    public static Mount freeAir() {
        return new Mount(
                "free-air", "free air", "", 0, Optional.empty(), Optional.empty(), List.of(), Optional.empty());
    }

    /**
     * A plate with a bore for the switch that may widen towards its surface.
     *
     * @param material what it is made of
     * @param thickness thickness, m
     * @param diameter outer diameter, m, infinite for a wall without an end
     * @param bore diameter of the bore, m
     * @param openings wider parts of the bore, from the surface inwards, one below the other
     * @param edge distance of a straight edge from the switch's axis, m, at which the plate ends on one side; infinite without one
     */
    public record Wall(
            Material material, double thickness, double diameter, double bore, List<Opening> openings, double edge) {

        public Wall {
            openings = List.copyOf(openings);
        }

        /** The same plate of a diameter, m, without a straight edge. */
        private Wall round(double across) {
            return new Wall(material, thickness, across, bore, openings, Double.POSITIVE_INFINITY);
        }
    }

    /**
     * A wider part of a bore: a cylinder, or a cone.
     *
     * @param front diameter at its upper end, m
     * @param back diameter at its lower end, m, at most the front one
     * @param from depth of its upper end below the surface, m
     * @param to depth of its lower end, m
     */
    public record Opening(double front, double back, double from, double to) {

        /** True for a countersink. */
        public boolean conical() {
            return front != back;
        }
    }

    /**
     * A plate in front of the active face.
     *
     * @param material what it is made of
     * @param distance distance from the active face, m
     * @param thickness thickness, m
     * @param diameter diameter, m, infinite for a plate without an end
     */
    public record Cover(Material material, double distance, double thickness, double diameter) {}

    /**
     * A plate that stands behind the target.
     *
     * @param material what it is made of
     * @param thickness thickness, m
     * @param diameter diameter, m, infinite for a plate without an end
     */
    public record Background(Material material, double thickness, double diameter) {

        /** The same as a target. */
        public Target asTarget() {
            Target.Outline outline =
                    Double.isInfinite(diameter) ? new Target.Outline.Endless() : new Target.Outline.Disc(diameter);
            return new Target("background", material.name(), outline, List.of(new Layer(material, thickness)));
        }
    }

    /**
     * A background at a fixed distance.
     *
     * @param plate the plate
     * @param distance distance from the active face, m
     */
    public record Standing(Background plate, double distance) {}

    /** True when the wall ends at a straight edge beside the switch, and all is no longer round about the axis. */
    public boolean edged() {
        return wall.map(Wall::edge).filter(Double::isFinite).isPresent();
    }

    /**
     * The mounts round about the axis between which this one lies: the wall as if it had no straight edge, and ending all round at the
     * edge's distance. This one alone without an edge.
     */
    public List<Mount> bounds() {
        if (!edged()) {
            return List.of(this);
        }
        Wall w = wall.orElseThrow();
        return Stream.of(w.diameter(), 2 * w.edge())
                .map(across ->
                        new Mount(id, name, note, surface, Optional.of(w.round(across)), cover, rings, background))
                .toList();
    }

    /** True without anything that stands around the switch or before it. */
    public boolean isEmpty() {
        return wall.isEmpty() && cover.isEmpty() && rings.isEmpty() && background.isEmpty();
    }

    /** The widest opening and the outermost bounded part, m: beyond it there is only wall. */
    private double widest() {
        Stream<Double> radii = Stream.of(
                        wall.stream().map(Wall::bore),
                        wall.stream().flatMap(w -> w.openings().stream()).map(Opening::front),
                        rings.stream().map(p -> 2 * p.section().r1()),
                        cover.stream().map(Cover::diameter).filter(Double::isFinite))
                .flatMap(s -> s)
                .map(d -> d / 2);
        return radii.reduce(0.0, Math::max);
    }

    /**
     * Its parts, without the background. Walls and covers without an end are cut where they no longer matter; a straight edge is left out.
     *
     * @param scale radius of the core, m
     */
    public List<Part> parts(double scale) {
        List<Part> parts = new ArrayList<>();
        wall.ifPresent(w -> addWall(w, Math.min(w.diameter() / 2, widest() + CUT * scale), parts));
        parts.addAll(rings);
        cover.ifPresent(c -> parts.add(new Part(
                "cover",
                Role.MOUNT,
                new Section(
                        0,
                        Math.min(c.diameter() / 2, Math.max(widest(), COVER_CUT * scale)),
                        c.distance(),
                        c.distance() + c.thickness()),
                c.material())));
        return parts;
    }

    private void addWall(Wall w, double outer, List<Part> parts) {
        double depth = 0;
        for (Opening o : w.openings()) {
            addRing(w, o, outer, parts);
            depth = o.to();
        }
        addRing(w, new Opening(w.bore(), w.bore(), depth, w.thickness()), outer, parts);
    }

    private void addRing(Wall w, Opening o, double outer, List<Part> parts) {
        if (o.to() > o.from() && outer > o.front() / 2) {
            String name = parts.isEmpty() ? "wall" : "wall " + (parts.size() + 1);
            double flare = (o.front() - o.back()) / 2;
            parts.add(new Part(
                    name,
                    Role.MOUNT,
                    new Section(o.back() / 2, outer, surface - o.to(), surface - o.from(), flare),
                    w.material()));
        }
    }

    /**
     * The least distance that a target can have from the active face, m: whatever of the mount stands above the face in its way stops
     * it, metal or not.
     *
     * @param radius radius of the circle around the target, m
     */
    public double floor(double radius) {
        // a cone lets a target in as far as it is wide enough
        double floor = 0;
        if (wall.isPresent() && surface > 0) {
            Wall w = wall.get();
            double depth = w.openings().stream()
                    .filter(o -> o.front() / 2 >= radius)
                    .mapToDouble(o -> o.back() / 2 >= radius
                            ? o.to()
                            : o.from()
                                    + (o.to() - o.from()) * (o.front() / 2 - radius) / (o.front() / 2 - o.back() / 2))
                    .max()
                    .orElse(0);
            floor = radius <= w.bore() / 2 ? 0 : Math.max(0, surface - depth);
        }
        double front = cover.map(c -> c.distance() + c.thickness()).orElse(0.0);
        double ring = rings.stream()
                .map(Part::section)
                .filter(s -> s.r0() < radius)
                .mapToDouble(Section::z1)
                .max()
                .orElse(0);
        return Math.max(floor, Math.max(front, ring));
    }

    /** The least distance that a target can have from the active face, m, beside the axis or on it. */
    public double floor(Target target) {
        return floor(halfWidth(target) + target.offset());
    }

    /** The same of other materials. */
    public Mount made(UnaryOperator<Material> change) {
        return new Mount(
                id,
                name,
                note,
                surface,
                wall.map(w -> new Wall(
                        change.apply(w.material()), w.thickness(), w.diameter(), w.bore(), w.openings(), w.edge())),
                cover.map(c -> new Cover(change.apply(c.material()), c.distance(), c.thickness(), c.diameter())),
                rings.stream().map(r -> r.of(change.apply(r.material()))).toList(),
                background.map(b -> new Standing(
                        new Background(
                                change.apply(b.plate().material()),
                                b.plate().thickness(),
                                b.plate().diameter()),
                        b.distance())));
    }

    /** The narrowest diameter that is free between two heights above the face, m; infinite without anything there. */
    public double clearance(double low, double high) {
        return parts(1).stream()
                .map(Part::section)
                .filter(s -> s.z1() > low && s.z0() < high)
                .mapToDouble(s -> 2 * s.innerAt(low))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Height above the face of the highest metal, m; 0 when none stands above it. */
    public double top() {
        return parts(1).stream()
                .filter(p -> p.material().hasEffect())
                .mapToDouble(p -> p.section().z1())
                .reduce(0, Math::max);
    }

    /** Radius of the circle around a target, m: what must fit into a recess. */
    public static double halfWidth(Target target) {
        Target.Outline outline = target.sheet().map(Body.Sheet::outline).orElse(null);
        if (outline instanceof Target.Outline.Square s) {
            return s.side() / Math.sqrt(2);
        }
        return outline instanceof Target.Outline.Rectangle r ? Math.hypot(r.width(), r.height()) / 2 : target.radius();
    }
}
