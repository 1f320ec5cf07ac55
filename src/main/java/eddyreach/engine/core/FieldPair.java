package eddyreach.engine.core;

/**
 * Two fields of one extent that are drawn on either side of the axis, so that they compare.
 *
 * @param id short name used in file names
 * @param title readable title
 * @param left the field on the left
 * @param leftName what it is
 * @param right the field on the right
 * @param rightName what it is
 */
public record FieldPair(
        String id, String title, FieldPicture left, String leftName, FieldPicture right, String rightName) {}
