package eddyreach.kinds.offaxis;

import eddyreach.model.read.TargetReader;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.OffsetRange;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import java.util.List;
import java.util.function.Function;

/** Binds what is particular to studies of the kinds {@code zone} and {@code pass}. */
public final class OffAxisReader {

    private static final int ZONE_POINTS = 41;
    private static final int PASS_POINTS = 81;

    private OffAxisReader() {}

    /** The targets; their offsets are what is varied. */
    private static List<Target> targets(StudyContext context) {
        List<Node> nodes = context.root().list("targets");
        List<Target> targets = context.targets().bindAll(nodes);
        nodes.stream()
                .filter(n -> n.isMap() && n.has("offset"))
                .forEach(n -> n.problem(
                        "offset", "belongs to kind: approach; here every target takes all the offsets of the study"));
        return targets;
    }

    /** Refuses targets that reach too far out at the largest offset. */
    private static OffsetRange offsets(StudyContext context, List<Target> targets, int points) {
        OffsetRange offsets = OffsetRange.bind(context, targets, points);
        context.switchModel()
                .ifPresent(model -> targets.forEach(t -> OffsetLimit.problem(t.beside(offsets.last()), model)
                        .ifPresent(p ->
                                context.root().problem("offsets", t.id() + ": " + p + ", or a smaller offsets.to"))));
        return offsets;
    }

    static Function<StudyHeader, StudyInput> zone(StudyContext context) {
        List<Target> targets = targets(context);
        OffsetRange offsets = offsets(context, targets, ZONE_POINTS);
        double reach = context.switchModel().map(StudyInput::defaultReach).orElse(TargetReader.FARTHEST);
        double last = context.root().quantity("reach", Dimension.LENGTH, 1e-4, TargetReader.FARTHEST, reach);
        return header -> new ZoneInput(header, targets, offsets, last);
    }

    static Function<StudyHeader, StudyInput> pass(StudyContext context) {
        List<Target> targets = targets(context);
        OffsetRange offsets = offsets(context, targets, PASS_POINTS);
        double distance = context.root().quantity("distance", Dimension.LENGTH, 0, TargetReader.FARTHEST);
        return header -> new PassInput(header, targets, distance, offsets);
    }
}
