package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.UnworkableException;
import java.util.function.DoubleUnaryOperator;

/**
 * Targets that pass in a row without end.
 *
 * @param conductance loss conductance of the tank, S, over the position within one pitch, 0 to the pitch, m; a feature is no narrower than a sixteenth of the pitch
 * @param pitch distance from one target to the next, m
 */
public record Teeth(DoubleUnaryOperator conductance, double pitch) {

    public Teeth {
        UnworkableException.require("pitch", pitch, "m", Double.MIN_NORMAL, Double.MAX_VALUE);
    }

    /** Loss conductance at any position along the row, S. */
    double at(double position) {
        double turns = position / pitch;
        return Require.positive(
                "conductance along the row", conductance.applyAsDouble((turns - Math.floor(turns)) * pitch), "S");
    }
}
