package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EnvelopeTest {

    private static final Tank TANK = new Tank(1e-9);
    private static final double G = 100e-6;

    static ActiveElement[] elements() {
        return new ActiveElement[] {new HardLimiter(0.5e-3), new TanhPair(0.5e-3, 10e-3), new ClippedStage(400e-6, 1.5)
        };
    }

    @ParameterizedTest
    @MethodSource("elements")
    void settlesAtTheSteadyAmplitudeFromBothSides(ActiveElement element) {
        double steady = element.amplitude(G);
        Envelope envelope = new Envelope(element, TANK);
        for (double start : new double[] {1e-6, 0.9 * steady, 5 * steady}) {
            assertThat(envelope.after(start, t -> G, 1e-3)).isCloseTo(steady, within(1e-8 * steady));
        }
    }

    /** With a hard limiter the equation is linear: A = A1 + (A0 - A1) exp(-t G/(2C)). */
    @Test
    void hardLimiterReturnsWithTheTanksTimeConstant() {
        HardLimiter limiter = new HardLimiter(0.5e-3);
        double steady = limiter.amplitude(G);
        double tau = TANK.timeConstant(G);
        double expected = steady + (1 - steady) * Math.exp(-1.3);
        assertThat(new Envelope(limiter, TANK).after(1, t -> G, 1.3 * tau)).isCloseTo(expected, within(1e-8));
    }

    /** Above G = gm the clipped stage, linear below D, decays exactly as exp((gm - G) t/(2C)). */
    @Test
    void collapsesAndRestartsExponentially() {
        Envelope envelope = new Envelope(new ClippedStage(400e-6, 1.5), TANK);
        double down = envelope.after(1.4, t -> 600e-6, 100e-6);
        assertThat(down).isCloseTo(1.4 * Math.exp(-10), within(1e-12));
        assertThat(envelope.after(down, t -> 300e-6, 100e-6)).isCloseTo(down * Math.exp(5), within(1e-10));
    }

    @Test
    void followsADampingThatRises() {
        // linear below the clip level: ln A falls by the integral of (G(t) - gm)/(2C)
        Envelope envelope = new Envelope(new ClippedStage(400e-6, 1.5), TANK);
        double t1 = 20e-6;
        double a = envelope.after(1.4, t -> 400e-6 + 10 * t, t1);
        assertThat(a).isCloseTo(1.4 * Math.exp(-10 * t1 * t1 / 2 / 2e-9), within(1e-9));
    }

    @Test
    void rejectsNonsense() {
        Envelope envelope = new Envelope(new HardLimiter(1e-3), TANK);
        assertThat(envelope.after(0.3, t -> G, 0)).isEqualTo(0.3);
        assertThatIllegalArgumentException().isThrownBy(() -> envelope.after(0, t -> G, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> envelope.after(1, t -> G, -1));
    }
}
