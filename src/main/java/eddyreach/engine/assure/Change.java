package eddyreach.engine.assure;

/**
 * One thing to change so that a target is detected from farther away, computed together with everything else.
 *
 * @param kind what kind of change
 * @param name the material or the switch concerned; empty where there is none
 * @param value a thickness, a side or a rated distance, m, or the factor of the size; NaN where there is none
 * @param on the switch-on distance then, m
 * @param gain how much farther that is, m, above 0
 */
public record Change(Kind kind, String name, double value, double on, double gain) {

    /** The kinds of change. */
    public enum Kind {
        ON_AXIS,
        CLOSED_RING,
        STEEL_FLAG,
        SAME_PART_OF_STEEL,
        STANDARD_SIZE,
        THINNER,
        THICKER,
        LARGER_TARGET,
        LARGER_SWITCH,
        NON_FLUSH_SWITCH
    }
}
