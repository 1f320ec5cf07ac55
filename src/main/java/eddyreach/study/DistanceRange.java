package eddyreach.study;

import eddyreach.model.read.TargetReader;
import eddyreach.model.yaml.Node;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.Optional;

/**
 * A range of distances between face and target.
 *
 * @param first smallest, m
 * @param last largest, m, above the first
 * @param points number of distances, at least 2
 */
public record DistanceRange(double first, double last, int points) {

    private static final int FEWEST_POINTS = 11;
    private static final int MOST_POINTS = 10000;
    private static final int USUAL_POINTS = 61;

    /** Binds the key {@code distances} with from, to and points. */
    public static DistanceRange bind(StudyContext context) {
        return bind(context, context.switchModel().map(StudyInput::defaultReach));
    }

    /** The same with another end unless the study says otherwise, m. */
    public static DistanceRange bind(StudyContext context, Optional<Double> end) {
        Optional<Node> distances = context.root().optionalMap("distances");
        double reach = end.orElse(TargetReader.FARTHEST);
        double from = distances
                .map(d -> d.quantity("from", Dimension.LENGTH, 0, TargetReader.FARTHEST, 0))
                .orElse(0.0);
        double to = distances
                .map(d -> d.quantity("to", Dimension.LENGTH, 0, TargetReader.FARTHEST, reach))
                .orElse(reach);
        int points = distances
                .filter(d -> d.has("points"))
                .map(d -> d.integer("points", FEWEST_POINTS, MOST_POINTS))
                .orElse(USUAL_POINTS);
        distances.ifPresent(d -> d.knows("points"));
        if (from >= to) {
            distances
                    .orElseThrow()
                    .problem("to", Units.length(to) + " must be larger than from, " + Units.length(from));
        }
        return new DistanceRange(from, to, points);
    }
}
