package eddyreach.model;

import eddyreach.materials.FactorBand;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a study file together with the switch it names; the problems of both are told at once. */
public final class StudyReader {

    private static final double FARTHEST = 1;
    private static final int FEWEST_POINTS = 11;
    private static final int MOST_POINTS = 10000;
    private static final int USUAL_POINTS = 61;
    private static final Map<String, StudyInput.Kind> KINDS = Map.of(
            StudyInput.Kind.APPROACH.label(),
            StudyInput.Kind.APPROACH,
            StudyInput.Kind.MATERIALS.label(),
            StudyInput.Kind.MATERIALS);

    private StudyReader() {}

    /**
     * Reads a study.
     *
     * @param source its file
     * @param library where the switch and the materials are
     * @throws InputException with everything that is wrong in the study and its switch
     */
    public static StudyInput read(SourceFile source, Library library) {
        Problems problems = new Problems();
        Node root = Node.open(source, "study", problems);
        Materials materials = library.materials();
        String name = root.text("name");
        String note = root.note("note");
        Optional<StudyInput.Kind> kind = root.choice("kind", KINDS);
        Optional<SwitchModel> switchModel = bindSwitch(root, source, library, materials, problems);
        TargetReader reader = new TargetReader(
                materials, switchModel.map(SwitchModel::standardSide).orElse(Double.NaN));
        List<Target> targets = bindTargets(root, kind, reader);
        Optional<Node> distances = root.optionalMap("distances");
        double reach = switchModel.map(StudyInput::defaultReach).orElse(FARTHEST);
        double from = distances
                .map(d -> d.quantity("from", Dimension.LENGTH, 0, FARTHEST, 0))
                .orElse(0.0);
        double to = distances
                .map(d -> d.quantity("to", Dimension.LENGTH, 0, FARTHEST, reach))
                .orElse(reach);
        int points = distances
                .filter(d -> d.has("points"))
                .map(d -> d.integer("points", FEWEST_POINTS, MOST_POINTS))
                .orElse(USUAL_POINTS);
        distances.ifPresent(d -> d.knows("points"));
        if (from >= to) {
            distances
                    .orElseThrow()
                    .problem(
                            "to",
                            Units.text(to, Dimension.LENGTH) + " must be larger than from, "
                                    + Units.text(from, Dimension.LENGTH));
        }
        double usual = switchModel.map(StudyInput::defaultAccuracy).orElse(FARTHEST);
        double accuracy = root.quantity("accuracy", Dimension.LENGTH, 1e-9, 1e-2, usual);
        boolean pictures = root.flag("field pictures", true);
        root.finish();
        problems.throwIfAny();
        SwitchModel model = switchModel.orElseThrow();
        return new StudyInput(
                source.id(),
                name,
                note,
                kind.orElseThrow(),
                model,
                TargetReader.standard(materials.get(Materials.STANDARD_STEEL), model),
                targets,
                usualFactors(targets, materials, model),
                from,
                to,
                points,
                accuracy,
                pictures);
    }

    /** The bands that apply: one layer at least as thick as the standard target, with its outline. */
    static Map<String, FactorBand> usualFactors(List<Target> targets, Materials materials, SwitchModel model) {
        Map<String, FactorBand> bands = new HashMap<>();
        for (Target t : targets) {
            if (t.layers().size() == 1
                    && t.thickness() >= StandardQuantities.TARGET_THICKNESS * (1 - 1e-9)
                    && t.actsAs(new Target(
                            t.id(), t.label(), new Target.Outline.Square(model.standardSide()), t.layers()))) {
                materials.usualFactor(t.layers().get(0).material().id()).ifPresent(b -> bands.put(t.id(), b));
            }
        }
        return bands;
    }

    private static Optional<SwitchModel> bindSwitch(
            Node root, SourceFile source, Library library, Materials materials, Problems problems) {
        String reference = root.text("switch");
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(SwitchReader.read(library.switchFile(reference, source), materials));
        } catch (InputException e) {
            Problem first = e.problems().get(0);
            if (first.line() == 0) {
                // the file as a whole is missing or unfit: the place to mend is the reference
                root.problem("switch", first.file() + ": " + first.message());
            } else {
                problems.addAll(e);
            }
            return Optional.empty();
        }
    }

    private static List<Target> bindTargets(Node root, Optional<StudyInput.Kind> kind, TargetReader reader) {
        if (kind.isEmpty()) {
            // what can be told without the kind is told at once
            root.knows("targets", "materials", "thickness", "shape", "diameter", "side", "width", "height");
            return reader.bindAll(root.optionalList("targets"));
        }
        if (kind.get() == StudyInput.Kind.APPROACH) {
            return reader.bindAll(root.list("targets"));
        }
        double thickness =
                root.quantity("thickness", Dimension.LENGTH, 1e-9, FARTHEST, StandardQuantities.TARGET_THICKNESS);
        Optional<Target.Outline> outline = reader.bindOutline(root);
        List<Node> ids = root.list("materials");
        List<Target> targets = new ArrayList<>();
        outline.ifPresent(o -> targets.addAll(reader.bindMaterials(ids, thickness, o)));
        for (Node node : root.optionalList("targets")) {
            reader.bindAll(List.of(node)).forEach(t -> {
                if (targets.stream().anyMatch(other -> other.id().equals(t.id()))) {
                    node.problem("name", "\"" + t.id() + "\" names another target already");
                }
                targets.add(t);
            });
        }
        return targets;
    }
}
