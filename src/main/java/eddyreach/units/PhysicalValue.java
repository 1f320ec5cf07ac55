package eddyreach.units;

/**
 * A number with its dimension.
 *
 * @param si value in SI base units
 * @param dimension its dimension
 */
public record PhysicalValue(double si, Dimension dimension) {}
