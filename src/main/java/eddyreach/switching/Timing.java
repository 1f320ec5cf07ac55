package eddyreach.switching;

import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.Detector;
import eddyreach.oscillator.UnworkableException;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The switch in time: from the tank's conductance to the output.
 *
 * @param detector oscillator and demodulator
 * @param output comparator and delay
 */
public record Timing(Detector detector, OutputStage output) {

    private static final double FIRST = 1e-6;
    private static final double GROWTH = 4;
    private static final double LONGEST = 1e3;
    private static final double STEPS = 16;

    public Timing {
        UnworkableException.require("noise amplitude", detector.noise(), "V", Double.MIN_NORMAL, output.onAmplitude());
    }

    /** Sum of all that takes time, s: 2C/G at the off threshold, the demodulator's time constant, the delay. */
    double timeConstant() {
        return 2 * detector.capacitance() / detector.element().conductance(output.offAmplitude())
                + detector.timeConstant()
                + output.delay();
    }

    /**
     * Time from the sudden arrival of a target to the output's change, s.
     *
     * @param free loss conductance before, at which the output is off, S
     * @param damped loss conductance with the target, S
     * @throws UnworkableException when the output is not off before, or does not go on
     * @throws SelfCheckException if a computation fails its own checks
     */
    public double onTime(double free, double damped) {
        requireRelease(free);
        // the limit itself takes forever
        double least = detector.element().conductance(output.onAmplitude());
        if (!(damped > least)) {
            throw new UnworkableException(
                    "the target does not turn the output on",
                    "loss conductance with the target",
                    damped,
                    "S",
                    least,
                    Double.POSITIVE_INFINITY);
        }
        return after(detector.settled(free), damped, 0) + output.delay();
    }

    /**
     * Time from the sudden removal of a target to the output's change, s.
     *
     * @param damped loss conductance with the target, at which the output is on, S
     * @param free loss conductance afterwards, S
     * @throws UnworkableException when the output does not go off, or is not on before
     * @throws SelfCheckException if a computation fails its own checks
     */
    public double offTime(double damped, double free) {
        requireRelease(free);
        double least = detector.element().conductance(output.onAmplitude());
        if (!(damped >= least)) {
            throw new UnworkableException(
                    "the output is not on before",
                    "loss conductance with the target",
                    damped,
                    "S",
                    least,
                    Double.POSITIVE_INFINITY);
        }
        return after(detector.settled(damped), free, 1) + output.delay();
    }

    /**
     * Time from power-on to the output's being off without a target, s; until then the missing amplitude looks like a target.
     *
     * @param free loss conductance without a target, S
     * @throws UnworkableException when the oscillation never starts, or does not reach the amplitude at which the output goes off
     * @throws SelfCheckException if a computation fails its own checks
     */
    public double startUp(double free) {
        detector.requireStart(free);
        requireRelease(free);
        return after(detector.atPowerOn(), free, 1) + output.delay();
    }

    /**
     * Changes of the output under a conductance that changes in time, from a settled start.
     *
     * @param conductance loss conductance, S, over time from 0 on, s
     * @param duration how long to follow, s
     * @param longestStep no longer than the shortest feature of the conductance, s
     */
    public List<OutputStage.Change> changes(DoubleUnaryOperator conductance, double duration, double longestStep) {
        Detector.State start = detector.settled(conductance.applyAsDouble(0));
        Detector.Trace trace = detector.follow(start, conductance, 0, duration, longestStep, output.levels());
        return output.output(trace.passages(), output.compare(start.demodulated(), false), duration);
    }

    private void requireRelease(double free) {
        double most = detector.element().conductance(output.offAmplitude());
        if (!(free < most)) {
            throw new UnworkableException(
                    "the output does not go off", "loss conductance without the target", free, "S", 0, most);
        }
    }

    /** Time until the demodulated amplitude passes one of the two levels under a constant conductance. */
    private double after(Detector.State start, double conductance, int level) {
        double from = 0;
        Detector.State state = start;
        for (double stretch = FIRST; stretch < LONGEST; stretch *= GROWTH) {
            Detector.Trace trace =
                    detector.follow(state, t -> conductance, from, from + stretch, stretch / STEPS, output.levels());
            for (Detector.Passage p : trace.passages()) {
                if (p.level() == level) {
                    return p.time();
                }
            }
            state = trace.end();
            from += stretch;
        }
        throw new SelfCheckException("an output that should change within " + from + " s has not");
    }
}
