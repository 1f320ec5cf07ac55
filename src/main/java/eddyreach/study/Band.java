package eddyreach.study;

/**
 * The usual band of a correction factor in the trade.
 *
 * @param low lower end
 * @param high upper end
 * @param source where the band comes from
 */
public record Band(double low, double high, String source) {}
