package eddyreach.kinds.mount;

/**
 * What the trade does, beside what was computed.
 *
 * @param mount id of the mount
 * @param kind the rule, common practice
 * @param width its width for this switch, m; 0 where it has none
 * @param length its length along the axis for this switch, m; 0 where it has none
 * @param kept whether the mount keeps to it
 * @param grade the verdict on the mount, which the rule does not change
 */
public record UsualRule(String mount, Kind kind, double width, double length, boolean kept, Grade grade) {

    /** The rules. */
    public enum Kind {
        /** A flush switch is level with the metal or proud; sunk, the opening before it is wide. */
        FLUSH_LEVEL,
        /** Around a non-flush switch a zone is free of metal. */
        CLEAR_AROUND,
        /** In front of a switch a zone is free of other metal. */
        CLEAR_IN_FRONT
    }
}
