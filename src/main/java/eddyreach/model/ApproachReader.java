package eddyreach.model;

import eddyreach.materials.FactorBand;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kinds {@code approach} and {@code materials}. */
final class ApproachReader {

    private ApproachReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyReader.Context context) {
        Node root = context.root();
        List<Target> targets = bindTargets(root, context.kind(), context.targets());
        context.switchModel().ifPresent(model -> {
            for (Node node : root.optionalList("targets")) {
                targets.stream()
                        .filter(t -> node.isMap() && t.id().equals(node.text("name")))
                        .findFirst()
                        .flatMap(t -> Extent.problem(t, model))
                        .ifPresent(p -> node.problem("offset", p));
            }
        });
        Distances distances = Distances.bind(context);
        boolean pictures = root.flag("field pictures", true);
        return header -> new ApproachInput(
                header,
                targets,
                usualFactors(targets, context.materials(), header.switchModel()),
                distances.first(),
                distances.last(),
                distances.points(),
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

    private static List<Target> bindTargets(Node root, StudyInput.Kind kind, TargetReader reader) {
        if (kind == StudyInput.Kind.APPROACH) {
            return reader.bindAll(root.list("targets"));
        }
        double thickness = root.quantity(
                "thickness", Dimension.LENGTH, 1e-9, Distances.FARTHEST, StandardQuantities.TARGET_THICKNESS);
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
