package eddyreach.engine.assure;

/**
 * What the correction factor becomes when one thing changes.
 *
 * @param quantity what changes
 * @param by what it is multiplied by
 * @param factor the correction factor then, NaN when the target no longer switches
 */
public record Sensitivity(Quantity quantity, double by, double factor) {

    /** What can change. */
    public enum Quantity {
        THICKNESS,
        SIZE,
        /** The switch is trimmed anew. */
        FREQUENCY
    }
}
