package eddyreach.study;

import eddyreach.model.read.TargetReader;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * A range of sideways offsets between the axes of switch and target, from 0.
 *
 * @param last largest, m
 * @param points number of offsets, the first being 0
 */
public record OffsetRange(double last, int points) {

    private static final int FEWEST_POINTS = 11;
    private static final int MOST_POINTS = 1000;
    private static final double NEAREST = 1e-4;

    /** How far beyond the place where the edges of face and target meet a target is still followed. */
    private static final double BEYOND = 1.15;

    /** Binds the key {@code offsets} with to and points. */
    public static OffsetRange bind(StudyContext context, List<Target> targets, int usualPoints) {
        Optional<Node> offsets = context.root().optionalMap("offsets");
        double reach = context.switchModel().map(m -> reach(m, targets)).orElse(TargetReader.FARTHEST);
        double to = offsets.map(o -> o.quantity("to", Dimension.LENGTH, NEAREST, TargetReader.FARTHEST, reach))
                .orElse(reach);
        int points = offsets.map(o -> o.integer("points", FEWEST_POINTS, MOST_POINTS, usualPoints))
                .orElse(usualPoints);
        return new OffsetRange(to, points);
    }

    private static double reach(SwitchModel model, List<Target> targets) {
        double widest = targets.stream()
                .mapToDouble(t -> t.radius())
                .filter(Double::isFinite)
                .max()
                .orElse(model.faceDiameter() / 2);
        return BEYOND * (model.faceDiameter() / 2 + widest);
    }

    /** The offset of a number from 0 on, m. */
    public double at(int i) {
        return last * i / (points - 1);
    }
}
