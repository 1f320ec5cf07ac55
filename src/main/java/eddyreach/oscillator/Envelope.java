package eddyreach.oscillator;

import eddyreach.numerics.Require;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Slow change of the oscillation's amplitude: {@code 2C dA/dt = (Gm(A) - G(t)) A}.
 *
 * <p>First-order averaging of the oscillator's equation (N. Kryloff and N. Bogoliuboff, Introduction to Non-Linear
 * Mechanics, 1947); valid while the amplitude changes little in a period, that is for a quality well above 1, and
 * while G changes slowly against the period. Integrated in ln A, which keeps A positive and the decay of a collapsed
 * oscillation exact. Relative error of A about 1e-9 of the equation's solution.
 *
 * @param element the active element
 * @param tank the tank, for its capacitance C
 */
public record Envelope(ActiveElement element, Tank tank) {

    private static final double TOLERANCE = 1e-10;
    private static final double SMALLEST = 1e-30;
    private static final double LARGEST = 1e30;
    private static final int MAX_EVALUATIONS = 1_000_000;

    /**
     * Amplitude after some time, V.
     *
     * @param start amplitude at time 0, V, positive
     * @param tankConductance loss conductance of the tank, S, as a function of time, s
     * @param duration time, s
     */
    public double after(double start, DoubleUnaryOperator tankConductance, double duration) {
        Require.positive("start amplitude", start, "V");
        Require.notNegative("duration", duration, "s");
        if (duration == 0) {
            return start;
        }
        double[] state = {Math.log(start)};
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-15 * duration, duration, TOLERANCE, TOLERANCE);
        integrator.setMaxEvaluations(MAX_EVALUATIONS);
        integrator.integrate(equation(tankConductance), 0, state, duration, state);
        return Math.exp(state[0]);
    }

    private FirstOrderDifferentialEquations equation(DoubleUnaryOperator tankConductance) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dy) {
                dy[0] = rate(element, tank.capacitance(), y[0], tankConductance.applyAsDouble(t));
            }
        };
    }

    /** Rate of ln A, 1/s, at ln A and a conductance. */
    static double rate(ActiveElement element, double capacitance, double logarithm, double tankConductance) {
        // only a collapsed oscillation, or a trial step that the error control then rejects, leaves this range
        double amplitude = Math.max(SMALLEST, Math.min(LARGEST, Math.exp(logarithm)));
        return (element.conductance(amplitude) - tankConductance) / (2 * capacitance);
    }
}
