package eddyreach.engine.core;

/**
 * A limit of validity that a result touches; it travels with the result.
 *
 * @param kind which limit
 * @param subject the target, part or material concerned
 * @param value the value that caused it, SI
 * @param text what is shown to the user, without a full stop
 */
public record Warning(Kind kind, String subject, double value, String text) {

    /** The limits that are watched. */
    public enum Kind {
        PERMEABILITY_ASSUMED,
        SHIELDING,
        SQUARE_AS_DISC,
        RECTANGLE_AS_DISC,
        RECTANGLE_LONG,
        OPEN_AREA_AS_SHEET,
        OPEN_AREA_THICK,
        MESH_AS_SHEET,
        MESH_COARSE,
        SLIT_AS_NARROW,
        WIDE_RINGS_CUT,
        WIDE_AS_ENDLESS,
        BESIDE_UNSEEN,
        ERROR_ABOVE_REQUEST,
        LOST_NEARER,
        OUTSIDE_USUAL_BAND,
        ROUND_MOUNT,
        STRAIGHT_EDGE,
        BEATS_ONE_WAY,
        BESIDE_ESTIMATED,
        NOT_ASSESSED
    }
}
