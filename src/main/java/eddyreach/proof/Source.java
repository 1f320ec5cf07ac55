package eddyreach.proof;

/**
 * Where expected values come from.
 *
 * @param name author, title, place and year, or the law
 * @param provenance how the values were taken from it
 */
public record Source(String name, Provenance provenance) {}
