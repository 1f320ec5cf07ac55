package eddyreach.kinds.sweep;

/**
 * A point of a curve that tells something.
 *
 * @param what what it is, in a few words
 * @param point the point, computed there and not read off the curve
 */
public record MarkedPoint(String what, SweepPoint point) {}
