package eddyreach.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Limit cycle of {@code C dv/dt = i(v) - u}, {@code L du/dt = v}: capacitor, coil current u, and a net current i of
 * everything else. Found by integrating the whole equation until it has settled; zeros and peaks are located as events.
 *
 * @param period period, s
 * @param amplitude peak of v, V
 */
record LimitCycle(double period, double amplitude) {

    /**
     * Settles from a start and measures the last cycle.
     *
     * @param current net current, A, as a function of v and of the sign of v (known by the events, so that a jump at
     *     v = 0 is met exactly)
     * @param cycles number of natural periods to integrate
     */
    static LimitCycle of(double c, double l, DoubleBinaryOperator current, double start, int cycles) {
        double[] sign = {1};
        FirstOrderDifferentialEquations circuit = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dy) {
                dy[0] = (current.applyAsDouble(y[0], sign[0]) - y[1]) / c;
                dy[1] = y[0] / l;
            }
        };
        double natural = 2 * Math.PI * Math.sqrt(l * c);
        List<Double> rises = new ArrayList<>();
        List<Double> peaks = new ArrayList<>();
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-9 * natural, natural / 20, 1e-14, 1e-12);
        integrator.addEventHandler(
                new Event() {
                    @Override
                    public double g(double t, double[] y) {
                        return y[0];
                    }

                    @Override
                    public Action eventOccurred(double t, double[] y, boolean increasing) {
                        sign[0] = increasing ? 1 : -1;
                        if (increasing) {
                            rises.add(t);
                        }
                        return Action.RESET_DERIVATIVES;
                    }
                },
                natural / 10,
                1e-13 * natural,
                100);
        integrator.addEventHandler(
                new Event() {
                    @Override
                    public double g(double t, double[] y) {
                        return current.applyAsDouble(y[0], sign[0]) - y[1];
                    }

                    @Override
                    public Action eventOccurred(double t, double[] y, boolean increasing) {
                        if (!increasing) {
                            peaks.add(y[0]);
                        }
                        return Action.CONTINUE;
                    }
                },
                natural / 10,
                1e-13 * natural,
                100);
        double[] y = {start, 0};
        integrator.integrate(circuit, 0, y, cycles * natural, y);
        int n = rises.size();
        return new LimitCycle(rises.get(n - 1) - rises.get(n - 2), peaks.get(peaks.size() - 1));
    }

    /** An event that needs no preparation and changes no state. */
    private abstract static class Event implements EventHandler {
        @Override
        public void init(double t0, double[] y0, double t) {
            // nothing to prepare
        }

        @Override
        public void resetState(double t, double[] y) {
            // the state is continuous
        }
    }
}
