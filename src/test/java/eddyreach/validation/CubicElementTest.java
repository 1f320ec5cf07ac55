package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.Envelope;
import eddyreach.oscillator.Tank;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Cubic element {@code i = g1 v - g3 v^3}, closed form {@code A = sqrt(4 (g1 - G)/(3 g3))} (B. van der Pol, Phil.
 * Mag. 43 (1922) 700): 3.651484 V for g1 = 200 uS, G = 100 uS, g3 = 1e-5 S/V2. The envelope must grow as the
 * closed form, and the whole circuit settle there within the order 1/Q^2 that averaging neglects.
 */
class CubicElementTest {

    private static final double G1 = 200e-6;
    private static final double G3 = 1e-5;
    private static final double G = 100e-6;
    private static final double AMPLITUDE = 3.651484;

    private record Cubic() implements ActiveElement {
        @Override
        public String name() {
            return "cubic";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of();
        }

        @Override
        public double conductance(double amplitude) {
            return G1 - 0.75 * G3 * amplitude * amplitude;
        }

        @Override
        public double smallSignalConductance() {
            return G1;
        }

        @Override
        public double amplitude(double tankConductance) {
            return Math.sqrt(4 * (G1 - tankConductance) / (3 * G3));
        }
    }

    /** Bernoulli's equation: A^2(t) = A1^2 / (1 + (A1^2/A0^2 - 1) exp(-(g1 - G) t/C)). */
    @Test
    void envelopeGrowsAsTheClosedForm() {
        double a1 = new Cubic().amplitude(G);
        double t = 35e-6;
        double expected = a1 / Math.sqrt(1 + (a1 * a1 / 0.25 - 1) * Math.exp(-(G1 - G) * t / 1e-9));
        assertThat(new Envelope(new Cubic(), new Tank(1e-9)).after(0.5, s -> G, t))
                .isCloseTo(expected, within(1e-8));
    }

    @Test
    void wholeCircuitAgreesWithTheDescribingFunction() {
        LimitCycle cycle = LimitCycle.of(1e-9, 100e-6, (v, sign) -> (G1 - G) * v - G3 * v * v * v, 3.5, 150);
        assertThat(cycle.amplitude()).isCloseTo(AMPLITUDE, within(AMPLITUDE / (31.6 * 31.6)));
    }
}
