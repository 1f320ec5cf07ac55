package eddyreach.validation;

import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * Limit cycle of {@code C dv/dt = i(v) - u}, {@code L du/dt = v}: capacitor, coil current u, and a net current i of
 * everything else. Found by integrating the whole equation until it has settled.
 *
 * @param period period, s
 * @param amplitude peak of v, V
 */
record LimitCycle(double period, double amplitude) {

    private static final double TOLERANCE = 1e-12;

    /**
     * Settles from a start and measures the last cycle.
     *
     * @param current net current, A, as a function of v and of the sign of v
     * @param cycles number of natural periods to integrate
     */
    static LimitCycle of(double c, double l, DoubleBinaryOperator current, double start, int cycles) {
        Waveform wave = Waveform.of(c, l, (t, v, sign) -> current.applyAsDouble(v, sign), start, cycles, TOLERANCE);
        List<Double> rises = wave.rises();
        int n = rises.size();
        return new LimitCycle(
                rises.get(n - 1) - rises.get(n - 2),
                wave.peaks().get(wave.peaks().size() - 1));
    }
}
