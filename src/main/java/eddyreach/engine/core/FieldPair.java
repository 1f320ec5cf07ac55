package eddyreach.engine.core;

/**
 * Two fields of one extent that are drawn on either side of the axis, so that they compare.
 *
 * @param id short name used in file names
 * @param title name of the mount
 * @param comparison what they are
 * @param left the field on the left
 * @param right the field on the right
 */
public record FieldPair(String id, String title, Comparison comparison, FieldPicture left, FieldPicture right) {

    /** What is compared. */
    public enum Comparison {
        /** The switch in free air, and in the mount. */
        FREE_AIR_AND_MOUNT,
        /** Beside a straight edge the two mounts between which it lies: without the edge, and ending there all round. */
        BOUNDS_OF_EDGE
    }
}
