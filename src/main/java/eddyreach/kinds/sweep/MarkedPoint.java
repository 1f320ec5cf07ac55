package eddyreach.kinds.sweep;

/**
 * A point of a curve that is worth naming.
 *
 * @param mark what is found there
 * @param point the point, computed there and not read off the curve
 */
public record MarkedPoint(Mark mark, SweepPoint point) {

    /** What is found at a point. */
    public enum Mark {
        /** The largest switch-on distance of the curve. */
        LARGEST,
        /** The thickness at which a thin sheet takes the most loss. */
        SHEET_OPTIMUM,
        /** As thick as household foil. */
        FOIL,
        /** As thick as the skin depth. */
        SKIN_DEPTH,
        /** As thick as ordinary sheet. */
        SHEET,
        /** As large as the standard target. */
        STANDARD_SIZE,
        /** A round value. */
        ROUND
    }
}
