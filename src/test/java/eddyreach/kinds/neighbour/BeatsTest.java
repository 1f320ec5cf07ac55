package eddyreach.kinds.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.TanhPair;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.junit.jupiter.api.Test;

class BeatsTest {

    /** Adler, Proc. IRE 34, 1946, 351, from memory: 1 MHz, Q 50, E1/E 0.05 give 500 Hz; an offset of 1000 Hz beats at 866.0254 Hz. */
    @Test
    void adlersExample() {
        Beats beats = new Beats(1e6, 0.05 / 50, 10e3, 1e9);
        assertThat(beats.locking()).isCloseTo(500, within(1e-9));
        assertThat(beats.beat(1000)).isCloseTo(866.0254, within(5e-5));
        assertThat(beats.beat(-1000)).isEqualTo(beats.beat(1000));
        assertThat(beats.beat(500)).isZero();
    }

    /** A hard limiter returns with the tank's half bandwidth: 2C/G is its time constant. */
    @Test
    void relaxationOfAHardLimiter() {
        double g = 1e-4;
        double c = 1e-9;
        HardLimiter limiter = new HardLimiter(0.5e-3);
        assertThat(Beats.relaxation(limiter, c, limiter.amplitude(g)))
                .isCloseTo(g / (2 * c) / (2 * Math.PI), within(1e-4));
    }

    /**
     * Amplitude and phase of the averaged equations, integrated in time with a weak injected current: the largest deviation of the amplitude
     * once the start has died out.
     */
    @Test
    void depthAgainstTheAveragedEquations() {
        double g = 60e-6;
        double c = 2e-9;
        double f0 = 300e3;
        ActiveElement element = new TanhPair(75e-6, 120e-6);
        double steady = element.amplitude(g);
        double injected = 2e-5;
        double relaxation = Beats.relaxation(element, c, steady);
        Beats beats = new Beats(f0, injected, relaxation, 1e9);
        for (double difference : new double[] {500, 2000, 8000}) {
            double[] extremes = {Double.MAX_VALUE, 0};
            double duration = 20 / difference + 20 / relaxation;
            // current e/(w L) into the tank, with 1/(w L) = w C
            double current = injected * 2 * Math.PI * f0 * c;
            DormandPrince853Integrator integrator =
                    new DormandPrince853Integrator(1e-12, 0.02 / difference, 1e-11, 1e-11);
            integrator.addStepHandler(new StepHandler() {
                @Override
                public void init(double t0, double[] y0, double t) {}

                @Override
                public void handleStep(StepInterpolator step, boolean last) {
                    if (step.getCurrentTime() > duration / 2) {
                        double a = step.getInterpolatedState()[0];
                        extremes[0] = Math.min(extremes[0], a);
                        extremes[1] = Math.max(extremes[1], a);
                    }
                }
            });
            double[] y = {1, 0};
            integrator.integrate(
                    new FirstOrderDifferentialEquations() {
                        @Override
                        public int getDimension() {
                            return 2;
                        }

                        @Override
                        public void computeDerivatives(double t, double[] s, double[] d) {
                            double a = s[0] * steady;
                            d[0] = ((element.conductance(a) - g) * a + current * steady * Math.cos(s[1]))
                                    / (2 * c)
                                    / steady;
                            d[1] = 2 * Math.PI * difference - current / s[0] / (2 * c) * Math.sin(s[1]);
                        }
                    },
                    0,
                    y,
                    duration,
                    y);
            double depth = (extremes[1] - extremes[0]) / 2;
            assertThat(beats.depth(difference)).isCloseTo(depth, within(0.01 * depth));
        }
    }

    @Test
    void theDifferenceNeededGivesTheDepthAllowed() {
        Beats beats = new Beats(320e3, 2e-3, 2200, 5e3);
        for (double allowed : new double[] {0.1, 0.02, 1e-3}) {
            assertThat(beats.depth(beats.difference(allowed))).isCloseTo(allowed, within(1e-9));
        }
        assertThat(beats.difference(1))
                .as("even locked, the level is off by less")
                .isZero();
    }
}
