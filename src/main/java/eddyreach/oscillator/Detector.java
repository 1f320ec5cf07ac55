package eddyreach.oscillator;

import eddyreach.numerics.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.exception.MaxCountExceededException;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Amplitude of the oscillation in time, and its demodulated value:
 *
 * <pre>
 *   2C dA/dt = (Gm(A) - G(t)) A,   A at least n        tau dD/dt = A - D
 * </pre>
 *
 * <p>The first is the averaged equation of {@link Envelope}, with its limits. A collapsed oscillation falls to the noise amplitude n and grows
 * again from there, so that n also decides how long the start takes; C = 0 lets the amplitude follow G at once. The demodulator is a first-order filter,
 * equally fast both ways; tau = 0 leaves it out. A level is located within 1e-9 of the longest step; relative error of A and D about 1e-8.
 *
 * @param element the active element
 * @param capacitance capacitance C of the tank, F; 0 for an amplitude that follows at once
 * @param noise amplitude n from which the oscillation starts, V
 * @param timeConstant time constant tau of the demodulator, s; 0 for none
 */
public record Detector(ActiveElement element, double capacitance, double noise, double timeConstant) {

    private static final double TOLERANCE = 1e-9;
    private static final double EVENT = 1e-9;
    private static final double STEPS = 4;
    private static final int EVENT_ITERATIONS = 200;

    /** Logarithm of an amplitude in volts beyond all that oscillates: only a trial step that the error control then rejects gets there. */
    private static final double CEILING = 30;

    private static final int MAX_EVALUATIONS = 5_000_000;

    /** Time constants that can be followed with so many evaluations: a step of the integrator has twelve and spans a few time constants. */
    private static final double FOLLOWED = 1e6;

    public Detector {
        Require.notNegative("capacitance", capacitance, "F");
        UnworkableException.require("noise amplitude", noise, "V", Double.MIN_NORMAL, Double.MAX_VALUE);
        UnworkableException.require("time constant of the demodulator", timeConstant, "s", 0, Double.MAX_VALUE);
    }

    /**
     * State of oscillator and demodulator.
     *
     * @param amplitude amplitude of the oscillation, V, positive
     * @param demodulated output of the demodulator, V
     */
    public record State(double amplitude, double demodulated) {}

    /**
     * The demodulated amplitude passes a level.
     *
     * @param time when, s
     * @param level number of the level, from 0
     * @param rising whether it rises
     */
    public record Passage(double time, int level, boolean rising) {}

    /**
     * What happened in a stretch of time.
     *
     * @param end state at its end
     * @param passages levels passed, the earliest first
     */
    public record Trace(State end, List<Passage> passages) {
        public Trace {
            passages = List.copyOf(passages);
        }
    }

    /** The same with an amplitude that follows the conductance at once. */
    public Detector withoutInertia() {
        return new Detector(element, 0, noise, timeConstant);
    }

    /** The same without the demodulator's filter. */
    public Detector withoutFilter() {
        return new Detector(element, capacitance, noise, 0);
    }

    /** State at power-on: noise, and a demodulator at 0. */
    public State atPowerOn() {
        return new State(noise, 0);
    }

    /**
     * The state that a constant conductance ends in.
     *
     * @param conductance loss conductance of the tank, S
     */
    public State settled(double conductance) {
        double amplitude = Math.max(noise, element.amplitude(conductance));
        return new State(amplitude, amplitude);
    }

    /**
     * Checks that the oscillation grows from noise.
     *
     * @param conductance loss conductance of the tank, S
     * @throws UnworkableException when the loss takes all that the active element gives, with the conductances at which it starts
     */
    public void requireStart(double conductance) {
        Require.positive("loss conductance", conductance, "S");
        double gain = element.conductance(noise);
        if (!(conductance < gain)) {
            throw new UnworkableException(
                    "the oscillator never starts", "loss conductance of the tank", conductance, "S", 0, gain);
        }
    }

    /**
     * Follows the amplitude.
     *
     * @param start state at the beginning
     * @param conductance loss conductance of the tank, S, as a function of time, s
     * @param from beginning, s
     * @param to end, s, after the beginning
     * @param longestStep longest step of time, s: no longer than the shortest feature of the conductance
     * @param levels levels of the demodulated amplitude whose passing is wanted, V
     */
    public Trace follow(
            State start,
            DoubleUnaryOperator conductance,
            double from,
            double to,
            double longestStep,
            double... levels) {
        Require.positive("duration", to - from, "s");
        Require.positive("longest step", longestStep, "s");
        Motion motion = new Motion(conductance);
        double step = Math.min(longestStep, to - from);
        double[] absolute = new double[motion.getDimension()];
        Arrays.fill(absolute, TOLERANCE);
        if (timeConstant > 0) {
            absolute[motion.getDimension() - 1] =
                    TOLERANCE * Arrays.stream(levels).max().orElse(start.amplitude);
        }
        double[] relative = new double[motion.getDimension()];
        Arrays.fill(relative, TOLERANCE);
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-16 * (to - from), step, absolute, relative);
        integrator.setMaxEvaluations(MAX_EVALUATIONS);
        List<Passage> passages = new ArrayList<>();
        for (int i = 0; i < levels.length; i++) {
            integrator.addEventHandler(
                    motion.level(i, levels[i], passages), step / STEPS, EVENT * step, EVENT_ITERATIONS);
        }
        double[] y = motion.of(start);
        try {
            integrator.integrate(motion, from, y, to, y);
        } catch (MaxCountExceededException e) {
            throw new UnworkableException(
                    "so fast a filter cannot be followed for as long as " + (to - from) + " s",
                    "time constant of the demodulator",
                    timeConstant,
                    "s",
                    (to - from) / FOLLOWED,
                    Double.MAX_VALUE);
        }
        return new Trace(motion.state(to, y), passages);
    }

    /** The equations, in ln A and D as far as these have a life of their own. */
    private final class Motion implements FirstOrderDifferentialEquations {

        private final DoubleUnaryOperator conductance;
        private final boolean inert = capacitance > 0;
        private final boolean filtered = timeConstant > 0;
        private final double floor = Math.log(noise);

        Motion(DoubleUnaryOperator conductance) {
            this.conductance = conductance;
        }

        @Override
        public int getDimension() {
            // the integrator needs something to integrate even when all follows at once
            return inert && filtered ? 2 : 1;
        }

        double[] of(State s) {
            double y = Math.log(Math.max(noise, s.amplitude));
            if (inert && filtered) {
                return new double[] {y, s.demodulated};
            }
            return new double[] {inert ? y : filtered ? s.demodulated : 0};
        }

        State state(double t, double[] y) {
            double amplitude = amplitude(t, y);
            return new State(amplitude, filtered ? y[y.length - 1] : amplitude);
        }

        private double amplitude(double t, double[] y) {
            return inert
                    ? Math.exp(Math.max(floor, Math.min(CEILING, y[0])))
                    : Math.max(noise, element.amplitude(conductance.applyAsDouble(t)));
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] dy) {
            dy[0] = 0;
            if (inert) {
                double rate = Envelope.rate(element, capacitance, Math.max(floor, y[0]), conductance.applyAsDouble(t));
                dy[0] = y[0] <= floor ? Math.max(0, rate) : rate;
            }
            if (filtered) {
                dy[y.length - 1] = (amplitude(t, y) - y[y.length - 1]) / timeConstant;
            }
        }

        EventHandler level(int number, double level, List<Passage> passages) {
            return new EventHandler() {
                @Override
                public void init(double t0, double[] y0, double t) {
                    // nothing to prepare
                }

                @Override
                public double g(double t, double[] y) {
                    return state(t, y).demodulated / level - 1;
                }

                @Override
                public Action eventOccurred(double t, double[] y, boolean increasing) {
                    passages.add(new Passage(t, number, increasing));
                    return Action.CONTINUE;
                }

                @Override
                public void resetState(double t, double[] y) {
                    // the state is continuous
                }
            };
        }
    }
}
