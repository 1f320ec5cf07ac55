package eddyreach.kinds.sweep;

import eddyreach.materials.Material;
import eddyreach.model.read.Shape;
import eddyreach.model.read.TargetReader;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Layer;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.values.Texture;
import eddyreach.model.yaml.Node;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kinds {@code thickness}, {@code size}, {@code conductivity} and {@code layers}. */
public final class SweepReader {

    private static final double THINNEST = 1e-9;
    private static final double THICKEST = 0.1;
    private static final double SMALLEST = 1e-4;
    private static final double LARGEST = 1;
    private static final double MOST_CONDUCTIVE = 1e8;
    private static final double LEAST_CONDUCTIVE = 1e3;
    private static final double MOST_PERMEABLE = 1e5;
    private static final int MOST_POINTS = 1000;
    private static final int MOST_ON_AN_AXIS = 200;

    private static final ValueRange THICKNESSES = new ValueRange(50e-9, 5e-3, 61);
    private static final ValueRange COATINGS = new ValueRange(0, 100e-6, 31);
    private static final int SIZE_POINTS = 25;

    /** Endless plates need no mesh, so that a map of them may be finer. */
    private static final int PLATE_CONDUCTIVITIES = 41;

    private static final int PLATE_PERMEABILITIES = 31;
    private static final int BOUNDED_CONDUCTIVITIES = 17;
    private static final int BOUNDED_PERMEABILITIES = 13;

    private static final double LEAST_MAPPED = 0.5e6;
    private static final double MOST_MAPPED = 60e6;
    private static final double HIGHEST_MAPPED = 1000;

    private final StudyContext context;
    private final Node root;

    private SweepReader(StudyContext context) {
        this.context = context;
        root = context.root();
    }

    static Function<StudyHeader, StudyInput> bind(SweepKind kind, StudyContext context) {
        SweepReader reader = new SweepReader(context);
        return switch (kind) {
            case THICKNESS -> reader.thickness();
            case SIZE -> reader.size();
            case CONDUCTIVITY -> reader.conductivity();
            case LAYERS -> reader.layers();
        };
    }

    private Function<StudyHeader, StudyInput> thickness() {
        List<Material> materials = materials("materials", root.list("materials"));
        Optional<Target.Outline> outline = context.targets().bindOutline(root);
        ValueRange thicknesses = ValueRange.bind(
                root, "thicknesses", Dimension.LENGTH, new ValueRange(THINNEST, THICKEST, MOST_POINTS), THICKNESSES);
        double reach = reach();
        return header -> new SweepInput.Thickness(header, materials, outline.orElseThrow(), thicknesses, reach);
    }

    private Function<StudyHeader, StudyInput> size() {
        List<Material> materials = materials("materials", root.list("materials"));
        double thickness = oneThickness();
        boolean discs = root.optionalChoice("outline", Map.of("disc", true, "square", false))
                .orElse(false);
        double standard = context.switchModel().map(SwitchModel::standardSide).orElse(LARGEST / 2);
        ValueRange sizes = ValueRange.bind(
                root,
                "sizes",
                Dimension.LENGTH,
                new ValueRange(SMALLEST, LARGEST, MOST_POINTS),
                new ValueRange(0.1 * standard, 2 * standard, SIZE_POINTS));
        double reach = reach();
        return header -> new SweepInput.Size(header, materials, thickness, discs, sizes, reach);
    }

    private Function<StudyHeader, StudyInput> conductivity() {
        Optional<Target.Outline> outline = context.targets().bindOutline(root);
        boolean plate = outline.filter(o -> o instanceof Target.Outline.Endless).isPresent();
        double thickness = oneThickness();
        ValueRange conductivities = ValueRange.bind(
                root,
                "conductivities",
                Dimension.CONDUCTIVITY,
                new ValueRange(LEAST_CONDUCTIVE, MOST_CONDUCTIVE, MOST_ON_AN_AXIS),
                new ValueRange(LEAST_MAPPED, MOST_MAPPED, plate ? PLATE_CONDUCTIVITIES : BOUNDED_CONDUCTIVITIES));
        ValueRange permeabilities = ValueRange.bind(
                root,
                "permeabilities",
                Dimension.NONE,
                new ValueRange(1, MOST_PERMEABLE, MOST_ON_AN_AXIS),
                new ValueRange(1, HIGHEST_MAPPED, plate ? PLATE_PERMEABILITIES : BOUNDED_PERMEABILITIES));
        List<Material> named = materials("materials", root.optionalList("materials"));
        List<Material> materials = root.has("materials")
                ? named
                : context.materials().all().stream()
                        .filter(m -> m.conductivity20() > 0)
                        .toList();
        double reach = reach();
        return header -> new SweepInput.Conductivity(
                header, materials, outline.orElseThrow(), thickness, conductivities, permeabilities, reach);
    }

    private Function<StudyHeader, StudyInput> layers() {
        Optional<Node> base = root.map("base");
        List<Layer> layers = base.map(
                        b -> context.targets().bindLayers(b, Shape.PLATE, Optional.of(new Texture.Solid())))
                .orElse(List.of());
        List<Material> coatings = materials("coatings", root.list("coatings"));
        Optional<Target.Outline> outline = context.targets().bindOutline(root);
        ValueRange thicknesses = ValueRange.bind(
                root, "coating thickness", Dimension.LENGTH, new ValueRange(0, THICKEST, MOST_POINTS), COATINGS);
        if (thicknesses.first() > 0 && thicknesses.first() < THINNEST
                || thicknesses.last() > 0 && thicknesses.last() < THINNEST) {
            root.problem("coating thickness", "a coating is at least " + Units.length(THINNEST) + " thick");
        }
        double reach = reach();
        return header -> new SweepInput.Layers(header, layers, coatings, outline.orElseThrow(), thicknesses, reach);
    }

    private double oneThickness() {
        return root.quantity("thickness", Dimension.LENGTH, THINNEST, THICKEST, StandardQuantities.TARGET_THICKNESS);
    }

    private double reach() {
        double usual = context.switchModel().map(StudyInput::defaultReach).orElse(TargetReader.FARTHEST);
        return root.quantity("reach", Dimension.LENGTH, 1e-5, TargetReader.FARTHEST, usual);
    }

    private List<Material> materials(String key, List<Node> ids) {
        List<Material> found = new ArrayList<>();
        for (Node node : ids) {
            context.materials().bind(node).ifPresent(m -> {
                if (found.contains(m)) {
                    node.problem("\"" + m.id() + "\" stands twice in the list of " + key);
                }
                found.add(m);
            });
        }
        return found;
    }
}
