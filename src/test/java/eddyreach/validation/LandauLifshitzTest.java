package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.SmallBodies;
import eddyreach.closedform.SphereInField;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;

/** L. D. Landau and E. M. Lifshitz, Electrodynamics of Continuous Media, section 59 (sphere) and the superconducting disc. */
class LandauLifshitzTest {

    /** Computed: largest loss 0.355145610 at a/delta = 2.40922290; at a maximum the place is known to half the digits. */
    @Test
    void largestLossOfASphere() {
        var largest = new BrentOptimizer(1e-9, 1e-12)
                .optimize(
                        new MaxEval(100),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(
                                s -> -SphereInField.momentFactor(s).getImaginary()),
                        new SearchInterval(1, 5));
        assertThat(largest.getValue()).isCloseTo(0.355145610, within(0.6e-9));
        assertThat(largest.getPoint()).isCloseTo(2.40922290, within(1e-7));
    }

    /** Low frequency: D = -(2j/15)(a/delta)^2; high frequency: D tends to -1. */
    @Test
    void limitsOfTheSphere() {
        Complex low = SphereInField.momentFactor(1e-3);
        assertThat(low.getImaginary()).isCloseTo(-2e-6 / 15, within(1e-18));
        // next term 2 x^4/315 with x^2 = -2j (a/delta)^2
        assertThat(low.getReal()).isCloseTo(-8e-12 / 315, within(1e-20));
        Complex high = SphereInField.momentFactor(1e5);
        assertThat(high.add(1).abs()).isLessThan(3e-5);
    }

    @Test
    void seriesAndClosedFormMeet() {
        // a/delta on both sides of the switch-over at 2 s^2 = 0.6
        double s = Math.sqrt(0.3);
        Complex below = SphereInField.momentFactor(s * (1 - 1e-12));
        Complex above = SphereInField.momentFactor(s * (1 + 1e-12));
        assertThat(below.subtract(above).abs()).isLessThan(1e-12);
    }

    /** Permeable sphere: 2 (mu - 1)/(mu + 2) without current, -1 with all flux expelled, as before without permeability. */
    @Test
    void permeableSphere() {
        Complex still = SphereInField.momentFactor(0.002, 0, new Complex(50, -3), 1e6);
        Complex mu = new Complex(50, -3);
        Complex expected = mu.subtract(1).multiply(2).divide(mu.add(2));
        assertThat(still.subtract(expected).abs()).isLessThan(1e-14);
        Complex fast = SphereInField.momentFactor(0.002, 6e6, new Complex(50), 1e16);
        assertThat(fast.add(1).abs()).isLessThan(1e-3);
        double omega = 2e6;
        double delta = Math.sqrt(2 / (omega * 4e-7 * Math.PI * 1e6));
        Complex plain = SphereInField.momentFactor(0.002, 1e6, Complex.ONE, omega);
        assertThat(plain.subtract(SphereInField.momentFactor(0.002 / delta)).abs())
                .isLessThan(1e-13);
    }

    /** Printed: m = -(8/3) a^3 H0. */
    @Test
    void perfectlyConductingDisc() {
        assertThat(SmallBodies.perfectDiscMoment(0.003, 2)).isCloseTo(-8 / 3.0 * 27e-9 * 2, within(1e-21));
        // the flat body: less than the sphere around it, 2 pi a^3
        assertThat(Math.abs(SmallBodies.perfectDiscMoment(1, 1))).isLessThan(2 * Math.PI);
    }
}
