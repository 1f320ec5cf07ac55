package eddyreach.field.join;

/**
 * A target somewhere before a switch: a {@link TargetField} stands on the switch's axis, an {@link OffAxisTarget} beside it. Only the first
 * has a reflection that the axial join may take.
 */
public sealed interface PlacedTarget permits TargetField, OffAxisTarget {}
