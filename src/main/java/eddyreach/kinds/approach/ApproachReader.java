package eddyreach.kinds.approach;

import eddyreach.materials.FactorBand;
import eddyreach.model.read.AlternativeSwitches;
import eddyreach.model.read.Materials;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Mount;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.DistanceRange;
import eddyreach.study.MountFit;
import eddyreach.study.NamedMounts;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Binds what is particular to studies of the kinds {@code approach} and {@code materials}. */
public final class ApproachReader {

    private ApproachReader() {}

    static Function<StudyHeader, StudyInput> bind(ApproachKind kind, StudyContext context) {
        Node root = context.root();
        List<Target> targets = bindTargets(root, kind, context.targets());
        Map<String, Target> byName = new HashMap<>();
        targets.forEach(t -> byName.putIfAbsent(t.id(), t));
        context.switchModel().ifPresent(model -> {
            for (Node node : root.optionalList("targets")) {
                Optional.ofNullable(node.isMap() ? byName.get(node.text("name")) : null)
                        .flatMap(t -> OffsetLimit.problem(t, model))
                        .ifPresent(p -> node.problem("offset", p));
            }
        });
        DistanceRange distances = DistanceRange.bind(context);
        boolean pictures = root.flag("field pictures", true);
        Optional<Mount> mount = kind == ApproachKind.APPROACH && root.has("mount")
                ? root.child("mount").flatMap(new NamedMounts(context)::bind)
                : Optional.empty();
        mount.ifPresent(m -> MountFit.check(root, "mount", m, targets, distances));
        return header -> new ApproachInput(
                header,
                targets,
                usualFactors(targets, context.materials(), header.switchModel()),
                distances.first(),
                distances.last(),
                distances.points(),
                pictures,
                kind == ApproachKind.APPROACH
                        ? () -> AlternativeSwitches.of(header.switchModel(), context.library(), context.materials())
                        : List::of,
                mount);
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

    private static List<Target> bindTargets(Node root, ApproachKind kind, TargetReader reader) {
        if (kind == ApproachKind.APPROACH) {
            return reader.bindAll(root.list("targets"));
        }
        double thickness = root.quantity(
                "thickness", Dimension.LENGTH, 1e-9, TargetReader.FARTHEST, StandardQuantities.TARGET_THICKNESS);
        Optional<Target.Outline> outline = reader.bindOutline(root);
        List<Node> ids = root.list("materials");
        List<Target> targets = new ArrayList<>();
        outline.ifPresent(o -> targets.addAll(reader.bindMaterials(ids, thickness, o)));
        Set<String> names = targets.stream().map(Target::id).collect(Collectors.toSet());
        for (Node node : root.optionalList("targets")) {
            reader.bindAll(List.of(node)).forEach(t -> {
                if (!names.add(t.id())) {
                    node.problem("name", "\"" + t.id() + "\" names another target already");
                }
                targets.add(t);
            });
        }
        return targets;
    }
}
