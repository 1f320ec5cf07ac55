package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.HardLimiter;
import org.junit.jupiter.api.Test;

/**
 * A. Gelb and W. E. Vander Velde, Multiple-Input Describing Functions and Nonlinear System Design, 1968: saturation
 * with slope 1 and break D at D/A = 0.5 and 0.25, ideal relay 4M/(pi A) (values from memory; tolerance the digits
 * printed).
 */
class GelbVanderVeldeTest {

    @Test
    void saturation() {
        assertThat(new ClippedStage(1, 0.5).conductance(1)).isCloseTo(0.6090, within(5e-5));
        assertThat(new ClippedStage(1, 0.25).conductance(1)).isCloseTo(0.3150, within(5e-5));
    }

    @Test
    void relay() {
        assertThat(new HardLimiter(0.3).conductance(2)).isCloseTo(4 * 0.3 / (Math.PI * 2), within(1e-15));
    }
}
