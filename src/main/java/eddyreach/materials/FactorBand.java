package eddyreach.materials;

/**
 * The band in which the trade usually finds the correction factor of a material as a thick standard target. It judges a result; no
 * result is made from it.
 *
 * @param low lower end
 * @param high upper end, above low
 * @param source where the band comes from
 */
public record FactorBand(double low, double high, String source) {}
