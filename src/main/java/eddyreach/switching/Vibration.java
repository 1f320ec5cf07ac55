package eddyreach.switching;

import eddyreach.oscillator.UnworkableException;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A target that shakes by a sine about a mean distance, followed in time: a switch that is slow against the vibration sees less of it.
 *
 * @param amplitude amplitude, peak, m
 * @param frequency frequency, Hz
 */
public record Vibration(double amplitude, double frequency) {

    private static final int CYCLES = 6;
    private static final int STEPS = 16;

    public Vibration {
        UnworkableException.require("amplitude of the vibration", amplitude, "m", 0, Double.MAX_VALUE);
        UnworkableException.require("frequency of the vibration", frequency, "Hz", Double.MIN_NORMAL, Double.MAX_VALUE);
    }

    /**
     * Changes of the output in each cycle once all has settled: 2 when the output chatters, 0 when it is quiet.
     *
     * @param timing the switch
     * @param conductance loss conductance, S, over the distance of the target, m
     * @param mean mean distance, m, more than the amplitude
     */
    public double changesPerCycle(Timing timing, DoubleUnaryOperator conductance, double mean) {
        UnworkableException.require("mean distance", mean, "m", amplitude, Double.MAX_VALUE);
        double omega = 2 * Math.PI * frequency;
        List<OutputStage.Change> changes = timing.changes(
                t -> conductance.applyAsDouble(mean + amplitude * Math.cos(omega * t)),
                CYCLES / frequency,
                1 / (STEPS * frequency));
        double settled = CYCLES / (2 * frequency);
        return changes.stream().filter(c -> c.time() >= settled).count() * 2.0 / CYCLES;
    }
}
