package eddyreach.kinds.mount;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The nearest safe dimension of a recess: released, with care, and the switch-on distance within a tenth of s_r.
 *
 * @param kind what was varied
 * @param diameter diameter that was given, m
 * @param depth depth that was given, m
 * @param sinks whether a deeper recess is a switch sunk deeper
 * @param limit how far the search went, m
 * @param found what was found; empty when nothing up to the limit is safe
 */
public record SafeDimension(
        Kind kind, double diameter, double depth, boolean sinks, double limit, Optional<Found> found) {

    /** A machinist's step to which dimensions are rounded, towards the safe side, m. */
    public static final double STEP = 0.5e-3;

    /** What was varied. */
    public enum Kind {
        DIAMETER("smallest diameter"),
        DEPTH("depth");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The words shown to the user. */
        public String label() {
            return label;
        }
    }

    /**
     * A safe dimension, confirmed at the resolution that gives results.
     *
     * @param value the dimension, m
     * @param used share of the reserve that is then used
     * @param worst the same in the worst corner of temperature and trim
     * @param on switch-on distance of the first target, m, with its error bar
     * @param onError its numerical error bar, m
     * @param shift against free air, in s_r
     * @param direct deviation of switch, mount and target in one field problem, as a share of the change of impedance; empty where that
     *     does not apply
     */
    public record Found(
            double value, double used, double worst, double on, double onError, double shift, OptionalDouble direct) {}

    /** Diameter of the safe recess, m. */
    public double safeDiameter() {
        return kind == Kind.DIAMETER ? found.orElseThrow().value() : diameter;
    }

    /** Depth of the safe recess, m. */
    public double safeDepth() {
        return kind == Kind.DEPTH ? found.orElseThrow().value() : depth;
    }
}
