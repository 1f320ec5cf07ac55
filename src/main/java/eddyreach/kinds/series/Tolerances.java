package eddyreach.kinds.series;

import eddyreach.switching.RandomStream;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How far units differ.
 *
 * @param limits limits of the factors, SI, those of 0 left out: the deviation lies within plus and minus the limit; of the temperature half the range
 * @param middle middle of the range of temperatures, degrees Celsius
 * @param even whether deviations are spread evenly between the limits, or normally with a third of the limit as standard deviation and cut off there; the
 *     temperature is always even
 * @param trimmed whether each unit is trimmed on the standard target, or all get the nominal thresholds
 */
record Tolerances(Map<Factor, Double> limits, double middle, boolean even, boolean trimmed) {

    /** Standard deviations at which a normal deviation is cut off. */
    private static final double CUT = 3;

    /** Number of the second draw of an offset, beyond those of all factors. */
    private static final int SECOND = 64;

    Tolerances {
        limits = Collections.unmodifiableMap(new EnumMap<>(limits));
    }

    /** The factors that differ at all. */
    List<Factor> factors() {
        return Arrays.stream(Factor.values()).filter(limits::containsKey).toList();
    }

    /** Limit of a factor, SI; 0 when it does not differ. */
    double limit(Factor factor) {
        return limits.getOrDefault(factor, 0.0);
    }

    /**
     * Deviation of a unit, SI; of the temperature from the middle of its range; of the offset how far the axes are apart.
     *
     * @param stream the random numbers
     * @param unit number of the unit
     */
    double deviation(Factor factor, RandomStream stream, long unit) {
        double limit = limit(factor);
        if (limit == 0) {
            return 0;
        }
        double first = limit * draw(factor, stream, unit, factor.ordinal());
        return factor == Factor.OFFSET
                ? Math.hypot(first, limit * draw(factor, stream, unit, factor.ordinal() + SECOND))
                : first;
    }

    private double draw(Factor factor, RandomStream stream, long unit, int draw) {
        return even || factor == Factor.TEMPERATURE
                ? 2 * stream.uniform(unit, draw) - 1
                : stream.normalWithin(unit, draw, CUT) / CUT;
    }
}
