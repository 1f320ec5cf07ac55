package eddyreach.model.read;

import eddyreach.coil.Winding;
import eddyreach.coil.Wire;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.values.MetricThread;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import eddyreach.model.yaml.YamlTree;
import eddyreach.oscillator.ActiveElement;
import eddyreach.switching.OutputFunction;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Reads a switch file. Diameters and depths behind the active face (positive numbers) in the file become radii and
 * negative z in the model; shape and fit of the parts are checked here, with their coordinates as the file gives them.
 */
public final class SwitchReader {

    private static final double LARGEST = 1.0;

    private static final double ROUNDING = 1e-9;

    /** Without a differential travel a switch has no second threshold. */
    private static final double LEAST_TRAVEL = 1e-4;

    private static final Map<String, Mounting> MOUNTINGS =
            Map.of("flush", Mounting.FLUSH, "non-flush", Mounting.NON_FLUSH);
    private static final Map<String, OutputFunction> OUTPUTS =
            Map.of("normally open", OutputFunction.NORMALLY_OPEN, "normally closed", OutputFunction.NORMALLY_CLOSED);

    /** A part as far as it could be bound, with the place that tells of it. */
    private record Ring(Node node, String name, Role role, Section section, Optional<Material> material) {}

    private final Materials materials;
    private final List<Ring> rings = new ArrayList<>();

    private SwitchReader(Materials materials) {
        this.materials = materials;
    }

    /**
     * Reads a switch.
     *
     * @param source its file
     * @param materials the materials its parts may name; must hold {@code copper}, the winding's conductor
     * @throws InputException with everything that is wrong in the file
     */
    public static SwitchModel read(SourceFile source, Materials materials) {
        return new SwitchReader(materials).bind(source);
    }

    private SwitchModel bind(SourceFile source) {
        Problems problems = new Problems();
        Node root = YamlTree.open(source, "switch", problems);
        String name = root.text("name");
        String note = root.note("note");
        Optional<Mounting> mounting = root.choice("mounting", MOUNTINGS);
        double rated = root.quantity("rated distance", Dimension.LENGTH, 1e-4, 0.2);
        // s_r lies between 0.9 and 1.1 s_n (IEC 60947-5-2, from memory); the margin is for rounding
        double effective = Double.isNaN(rated)
                ? root.quantity("effective distance", Dimension.LENGTH, 0, LARGEST, rated)
                : root.quantity(
                        "effective distance",
                        Dimension.LENGTH,
                        0.9 * rated * (1 - 1e-12),
                        1.1 * rated * (1 + 1e-12),
                        rated);
        double face = root.quantity("active face", Dimension.LENGTH, 1e-3, 0.5);
        double frequency = root.quantity("frequency", Dimension.FREQUENCY, 1e3, 1e7);
        Optional<Section> window = bindCore(root);
        Optional<Winding> winding = root.map("winding").flatMap(node -> bindWinding(node, window));
        for (Node node : root.optionalList("housing")) {
            if (node.checkMap()) {
                bindHousing(node);
            }
        }
        checkRings(winding);
        checkFace(root, face, winding);
        Optional<MetricThread> thread = bindThread(root);
        Optional<Supplier<ActiveElement>> element = root.map("oscillator").flatMap(OscillatorReader::bind);
        Optional<Node> switching = root.map("switching");
        double travel = switching
                .map(node -> node.quantity(
                        "differential travel",
                        Dimension.NONE,
                        LEAST_TRAVEL,
                        StandardQuantities.MAX_DIFFERENTIAL_TRAVEL))
                .orElse(Double.NaN);
        Optional<OutputFunction> output = switching.flatMap(node -> node.choice("output", OUTPUTS));
        root.finish();
        problems.throwIfAny();
        return new SwitchModel(
                source.id(),
                name,
                note,
                mounting.orElseThrow(),
                rated,
                effective,
                face,
                frequency,
                winding.orElseThrow(),
                rings.stream()
                        .map(r -> new Part(r.name, r.role, r.section, r.material.orElseThrow()))
                        .toList(),
                element.orElseThrow().get(),
                travel,
                output.orElseThrow(),
                thread);
    }

    /** The housing must be a tube of a diameter between the thread's minor and its nominal one. */
    private Optional<MetricThread> bindThread(Node root) {
        if (!root.has("thread")) {
            return Optional.empty();
        }
        String designation = root.text("thread");
        Optional<MetricThread> thread = MetricThread.of(designation);
        if (thread.isEmpty() && !designation.isEmpty()) {
            root.problem(
                    "thread",
                    "\"" + designation
                            + "\" is not a metric thread such as M18 x 1, from M3 to M64 with a clearance hole"
                            + " of ISO 273");
        }
        double outer = rings.stream()
                .filter(r -> r.role == Role.HOUSING)
                .mapToDouble(r -> 2 * r.section.r1())
                .max()
                .orElse(0);
        thread.filter(t -> outer < t.minor() || outer > t.nominal() * (1 + 1e-9))
                .ifPresent(t -> root.problem(
                        "thread",
                        t.text() + " but the housing measures " + Units.length(outer)
                                + ": it is taken as a smooth tube of the pitch diameter, between "
                                + Units.length(t.minor()) + " and "
                                + Units.length(t.nominal())));
        return thread;
    }

    /** Adds the core's parts and returns the space for the winding, endless without a core, empty after a problem. */
    private Optional<Section> bindCore(Node root) {
        Optional<Node> found = root.child("core");
        if (found.isEmpty()) {
            root.problem("core", "missing, needs a group of keys, or \"core: none\" for an air coil");
            return Optional.empty();
        }
        Node node = found.get();
        if (!node.isMap() && node.text().equals("none")) {
            return Optional.of(new Section(0, LARGEST, -LARGEST, 0));
        }
        if (!node.checkMap()) {
            return Optional.empty();
        }
        Optional<Material> material = materials.bind(node, "material");
        double outer = diameter(node, "outer diameter");
        double window = diameter(node, "window outer diameter");
        double post = diameter(node, "post diameter");
        double hole = node.quantity("hole diameter", Dimension.LENGTH, 0, LARGEST, 0);
        double height = node.quantity("height", Dimension.LENGTH, 1e-4, LARGEST);
        double depth = node.quantity("window depth", Dimension.LENGTH, 1e-4, LARGEST);
        double front = depth(node, "behind face");
        boolean fits = ordered(node, "hole diameter", hole, "post diameter", post)
                & ordered(node, "post diameter", post, "window outer diameter", window)
                & ordered(node, "window outer diameter", window, "outer diameter", outer)
                & ordered(node, "window depth", depth, "height", height);
        if (!fits || Double.isNaN(front)) {
            return Optional.empty();
        }
        double floor = -(front + depth);
        double back = -(front + height);
        rings.add(ring(node, "core back", hole, outer, back, floor, material));
        rings.add(ring(node, "core post", hole, post, floor, 0 - front, material));
        rings.add(ring(node, "core rim", window, outer, floor, 0 - front, material));
        return Optional.of(new Section(post / 2, window / 2, floor, 0));
    }

    private static Ring ring(
            Node node, String name, double inner, double outer, double z0, double z1, Optional<Material> material) {
        return new Ring(node, name, Role.CORE, new Section(inner / 2, outer / 2, z0, z1), material);
    }

    private Optional<Winding> bindWinding(Node node, Optional<Section> window) {
        int turns = node.integer("turns", 1, 5000);
        Optional<Section> section = bindSection(node);
        if (section.isPresent() && window.isPresent() && !inside(section.get(), window.get())) {
            node.problem("the winding (" + place(section.get()) + ") does not fit the core's window ("
                    + place(window.get()) + ")");
        }
        Optional<Node> wire = node.map("wire");
        if (wire.isEmpty()) {
            return Optional.empty();
        }
        double copper = wire.get().quantity("copper diameter", Dimension.LENGTH, 1e-5, 5e-3);
        int strands = wire.get().integer("strands", 1, 10000, 1);
        if (Double.isNaN(copper) || section.isEmpty()) {
            return Optional.empty();
        }
        double needed = turns * strands * copper * copper;
        if (needed > section.get().area()) {
            wire.get()
                    .problem("the wire does not fit: turns x strands x diameter squared is "
                            + Units.text(needed, Dimension.AREA) + ", the winding's section only "
                            + Units.text(section.get().area(), Dimension.AREA));
        }
        return Optional.of(new Winding(section.get(), turns, new Wire(copper, strands, materials.get("copper"))));
    }

    private void bindHousing(Node node) {
        String name = node.text("name");
        if (rings.stream().anyMatch(r -> r.name.equals(name)) || name.equals("winding")) {
            node.problem("name", "\"" + name + "\" names another part already");
        }
        Optional<Material> material = materials.bind(node, "material");
        bindSection(node).ifPresent(section -> rings.add(new Ring(node, name, Role.HOUSING, section, material)));
    }

    private Optional<Section> bindSection(Node node) {
        double inner = node.quantity("inner diameter", Dimension.LENGTH, 0, LARGEST, 0);
        double outer = diameter(node, "outer diameter");
        double front = depth(node, "front");
        double back = depth(node, "back");
        boolean fits = ordered(node, "inner diameter", inner, "outer diameter", outer)
                & ordered(node, "front", front, "back", back);
        return fits ? Optional.of(new Section(inner / 2, outer / 2, -back, 0 - front)) : Optional.empty();
    }

    private static double diameter(Node node, String key) {
        return node.quantity(key, Dimension.LENGTH, 1e-5, LARGEST);
    }

    /** A depth behind the active face, not negative. */
    private static double depth(Node node, String key) {
        double depth = node.quantity(key, Dimension.LENGTH, -LARGEST, LARGEST);
        if (depth < 0) {
            node.problem(
                    key,
                    Units.length(depth)
                            + " lies in front of the active face; depths count backwards from the face, from 0 mm");
            return Double.NaN;
        }
        return depth;
    }

    /** True when both are known and the first is the smaller; records the problem otherwise. */
    private static boolean ordered(Node node, String smallKey, double small, String largeKey, double large) {
        if (small >= large) {
            node.problem(
                    largeKey, Units.length(large) + " must be larger than " + smallKey + ", " + Units.length(small));
        }
        return small < large;
    }

    private void checkRings(Optional<Winding> winding) {
        for (int i = 0; i < rings.size(); i++) {
            Ring ring = rings.get(i);
            for (Ring before : rings.subList(0, i)) {
                if (ring.section.overlaps(before.section)) {
                    ring.node.problem(named(ring) + " overlaps " + named(before));
                }
            }
            if (ring.role == Role.HOUSING
                    && winding.isPresent()
                    && ring.section.overlaps(winding.get().section())) {
                ring.node.problem(named(ring) + " overlaps the winding ("
                        + place(winding.get().section()) + ")");
            }
        }
    }

    /** The active face covers the coil, or nothing that is sized by it would be right. */
    private void checkFace(Node root, double face, Optional<Winding> winding) {
        double coil = 2
                * Stream.concat(
                                rings.stream().filter(r -> r.role == Role.CORE).map(r -> r.section),
                                winding.map(Winding::section).stream())
                        .mapToDouble(Section::r1)
                        .max()
                        .orElse(0);
        if (face < coil * (1 - ROUNDING)) {
            root.problem(
                    "active face",
                    Units.length(face) + " is smaller than the coil behind it, " + Units.length(coil) + " across");
        }
    }

    private static boolean inside(Section inner, Section outer) {
        double eps = 1e-9;
        return inner.r0() >= outer.r0() - eps
                && inner.r1() <= outer.r1() + eps
                && inner.z0() >= outer.z0() - eps
                && inner.z1() <= outer.z1() + eps;
    }

    private static String named(Ring ring) {
        return "\"" + ring.name + "\" (" + place(ring.section) + ")";
    }

    /** Diameters and depths as the file gives them. */
    private static String place(Section s) {
        return "diameter " + Units.length(2 * s.r0()) + " to "
                + Units.length(2 * s.r1()) + ", depth " + Units.length(0 - s.z1())
                + " to " + Units.length(-s.z0());
    }
}
