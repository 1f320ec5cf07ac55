package eddyreach.switching;

import eddyreach.numerics.Require;

/**
 * A change of the output while the target moves along its path.
 *
 * @param distance distance of the target, m
 * @param turnsOn true when the output recognises the target here, false when it loses it
 * @param slope change of the conductance with distance, S/m
 */
public record Crossing(double distance, boolean turnsOn, double slope) {

    /**
     * Error of the distance, m, that an error of the conductance makes, to first order; infinite where the curve is
     * level.
     *
     * @param conductanceError error of the conductance, or of the threshold, S, not negative
     */
    public double distanceError(double conductanceError) {
        return Require.notNegative("conductance error", conductanceError, "S") / Math.abs(slope);
    }
}
