package eddyreach.field.axial;

/**
 * The angular frequencies between which operators are interpolated.
 *
 * @param low lower angular frequency, rad/s
 * @param high higher angular frequency, rad/s
 */
public record Band(double low, double high) {}
