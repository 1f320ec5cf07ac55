package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Tank of 100 uH, 1 nF and 100 uS (in parallel) with a hard limiter of 0.5 mA: independent integration of the
 * circuit in time gives 6.36634 V, near the 6.366198 V of the relay's describing function (Gelb and Vander Velde 1968).
 */
class HardLimitedTankTest {

    private static final double G = 100e-6;

    @Test
    void integrationOfTheWholeCircuit() {
        LimitCycle cycle = LimitCycle.of(1e-9, 100e-6, (v, sign) -> 0.5e-3 * sign - G * v, 6, 200);
        assertThat(cycle.amplitude()).isCloseTo(6.36634, within(5e-6));
    }
}
