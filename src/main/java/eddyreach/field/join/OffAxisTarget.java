package eddyreach.field.join;

/**
 * A target whose axis is parallel to the switch's and some way beside it. It has no reflection of its own about the switch's axis;
 * {@link OffAxisJoin} makes what is needed from those about its own.
 *
 * @param about the target about its own axis
 * @param offset distance of the axes, m, above 0
 */
public record OffAxisTarget(TargetField about, double offset) implements PlacedTarget {}
