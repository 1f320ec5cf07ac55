package eddyreach.kinds.mount;

/**
 * How the switch-on distance follows a dimension of a mount.
 *
 * @param dimension name of the dimension
 * @param value the dimension, m
 * @param slope change of the switch-on distance by that of the dimension, m/m
 * @param spread half the difference between the slopes to both sides, m/m: what is not linear, and the mesh; NaN where only one side exists
 */
public record DimensionEffect(String dimension, double value, double slope, double spread) {}
