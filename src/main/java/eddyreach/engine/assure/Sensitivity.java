package eddyreach.engine.assure;

/**
 * What the correction factor becomes when one thing changes.
 *
 * @param change what changes, in words
 * @param factor the factor then, NaN when the target no longer switches
 */
public record Sensitivity(String change, double factor) {}
