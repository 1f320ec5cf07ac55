package eddyreach.validation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Voltage of {@code C dv/dt = i(t, v) - u}, {@code L du/dt = v}: capacitor, coil current u, and a net current i of everything else,
 * integrated as it stands; zeros and peaks are located as events.
 *
 * @param rises times at which v rises through 0, s
 * @param peaks maxima of v, V
 * @param peakTimes when they are, s
 */
record Waveform(List<Double> rises, List<Double> peaks, List<Double> peakTimes) {

    /** A net current, A. */
    @FunctionalInterface
    interface Current {
        /**
         * @param t time, s
         * @param v voltage, V
         * @param sign sign of v, known by the events, so that a jump at v = 0 is met exactly
         */
        double at(double t, double v, double sign);
    }

    /**
     * Integrates from a voltage without coil current.
     *
     * @param cycles number of natural periods
     * @param tolerance relative error of a step
     */
    static Waveform of(double c, double l, Current current, double start, int cycles, double tolerance) {
        double[] sign = {1};
        FirstOrderDifferentialEquations circuit = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dy) {
                dy[0] = (current.at(t, y[0], sign[0]) - y[1]) / c;
                dy[1] = y[0] / l;
            }
        };
        double natural = 2 * Math.PI * Math.sqrt(l * c);
        List<Double> rises = new ArrayList<>();
        List<Double> peaks = new ArrayList<>();
        List<Double> peakTimes = new ArrayList<>();
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-9 * natural, natural / 20, 1e-14, tolerance);
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
                        return current.at(t, y[0], sign[0]) - y[1];
                    }

                    @Override
                    public Action eventOccurred(double t, double[] y, boolean increasing) {
                        if (!increasing) {
                            peaks.add(y[0]);
                            peakTimes.add(t);
                        }
                        return Action.CONTINUE;
                    }
                },
                natural / 10,
                1e-13 * natural,
                100);
        double[] y = {start, 0};
        integrator.integrate(circuit, 0, y, cycles * natural, y);
        return new Waveform(rises, peaks, peakTimes);
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
