package eddyreach.engine.assure;

/**
 * One thing to change so that a target is seen from farther away, computed together with everything else.
 *
 * @param kind what kind of change
 * @param text what to do, in words
 * @param on the switch-on distance then, m
 * @param gain how much farther that is, m, above 0
 */
public record Change(Kind kind, String text, double on, double gain) {

    /** The kinds of change. */
    public enum Kind {
        ON_AXIS,
        CLOSED_RING,
        STEEL_FLAG,
        STANDARD_SIZE,
        THICKNESS,
        LARGER_TARGET,
        LARGER_SWITCH,
        NON_FLUSH_SWITCH
    }
}
