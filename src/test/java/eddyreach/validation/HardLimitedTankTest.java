package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.Tank;
import org.junit.jupiter.api.Test;

/**
 * Tank of 100 uH, 1 nF and 100 uS (in parallel) with a hard limiter of 0.5 mA: from the relay's describing function
 * (Gelb and Vander Velde 1968) amplitude 6.366198 V and time constant 20 us; independent integration of the circuit
 * in time 6.36634 V.
 */
class HardLimitedTankTest {

    private static final double G = 100e-6;

    @Test
    void amplitudeAndTimeConstant() {
        assertThat(new HardLimiter(0.5e-3).amplitude(G)).isCloseTo(6.366198, within(5e-7));
        assertThat(new Tank(1e-9).timeConstant(G)).isCloseTo(20e-6, within(1e-18));
    }

    @Test
    void integrationOfTheWholeCircuit() {
        LimitCycle cycle = LimitCycle.of(1e-9, 100e-6, (v, sign) -> 0.5e-3 * sign - G * v, 6, 200);
        assertThat(cycle.amplitude()).isCloseTo(6.36634, within(5e-6));
    }
}
