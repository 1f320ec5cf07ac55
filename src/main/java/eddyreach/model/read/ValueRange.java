package eddyreach.model.read;

import eddyreach.model.yaml.Node;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.Optional;

/**
 * A range of a quantity and how many values of it are computed.
 *
 * @param first smallest value, SI
 * @param last largest value, SI, above the first
 * @param points number of values, at least 2
 */
public record ValueRange(double first, double last, int points) {

    private static final int FEWEST_POINTS = 2;

    /**
     * Binds a group of keys with from, to and points, each of them optional.
     *
     * @param root where the group stands
     * @param key its name
     * @param dimension dimension of from and to
     * @param limits least and largest value allowed, SI, and the largest number of points
     * @param usual what holds where the file says nothing, SI
     */
    public static ValueRange bind(Node root, String key, Dimension dimension, ValueRange limits, ValueRange usual) {
        Optional<Node> group = root.optionalMap(key);
        if (group.isEmpty()) {
            return usual;
        }
        Node node = group.get();
        double from = value(node, "from", dimension, limits, usual.first);
        double to = value(node, "to", dimension, limits, usual.last);
        int points = node.integer("points", FEWEST_POINTS, limits.points, usual.points);
        if (from >= to) {
            node.problem(
                    node.has("to") ? "to" : "from",
                    "the range from " + Units.text(from, dimension) + " to " + Units.text(to, dimension)
                            + " is empty or reversed, to must be larger than from");
        }
        return new ValueRange(from, to, points);
    }

    private static double value(Node node, String key, Dimension dimension, ValueRange limits, double usual) {
        if (dimension.equals(Dimension.CONDUCTIVITY)) {
            return node.has(key) ? node.conductivity(key, limits.first, limits.last) : usual;
        }
        return node.quantity(key, dimension, limits.first, limits.last, usual);
    }

    /** The values at even distances. */
    public double[] even() {
        double[] values = new double[points];
        for (int i = 0; i < points; i++) {
            values[i] = first + (last - first) * i / (points - 1);
        }
        return values;
    }

    /** The values at even ratios. */
    public double[] logarithmic() {
        double[] values = new double[points];
        for (int i = 0; i < points; i++) {
            values[i] = i == points - 1 ? last : first * Math.pow(last / first, i / (points - 1.0));
        }
        return values;
    }

    /** Place of a value among the {@link #logarithmic} ones, from 0. */
    public double logarithmicIndex(double value) {
        return (points - 1) * Math.log(value / first) / Math.log(last / first);
    }

    /** The values closer together near the first one, where their steps grow evenly. */
    public double[] crowded() {
        double[] values = new double[points];
        for (int i = 0; i < points; i++) {
            double share = i / (points - 1.0);
            values[i] = first + (last - first) * share * share;
        }
        return values;
    }

    /** Place of a value among the {@link #crowded} ones, from 0. */
    public double crowdedIndex(double value) {
        return (points - 1) * Math.sqrt((value - first) / (last - first));
    }
}
