package eddyreach.model;

import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a study file together with the switch it names; the problems of both are told at once. */
public final class StudyReader {

    private static final double FARTHEST = 1;
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
        Optional<Node> distances = root.map("distances");
        double from = distances
                .map(d -> d.quantity("from", Dimension.LENGTH, 0, FARTHEST))
                .orElse(Double.NaN);
        double to = distances
                .map(d -> d.quantity("to", Dimension.LENGTH, 0, FARTHEST))
                .orElse(Double.NaN);
        int points = distances.map(d -> d.integer("points", 2, 10000)).orElse(2);
        if (from >= to) {
            distances
                    .orElseThrow()
                    .problem(
                            "to",
                            Units.text(to, Dimension.LENGTH) + " must be larger than from, "
                                    + Units.text(from, Dimension.LENGTH));
        }
        double accuracy = root.has("accuracy") ? root.quantity("accuracy", Dimension.LENGTH, 1e-9, 1e-2) : 0;
        boolean pictures = root.flag("field pictures", true);
        root.finish();
        problems.throwIfAny();
        return new StudyInput(
                source.id(),
                name,
                note,
                kind.orElseThrow(),
                switchModel.orElseThrow(),
                targets,
                from,
                to,
                points,
                accuracy,
                pictures);
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
            root.knows("targets", "materials", "thickness", "shape", "diameter", "side");
            return List.of();
        }
        if (kind.get() == StudyInput.Kind.APPROACH) {
            return reader.bindAll(root.list("targets"));
        }
        double thickness =
                root.quantity("thickness", Dimension.LENGTH, 1e-9, FARTHEST, TargetReader.STANDARD_THICKNESS);
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
