package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class HardLimiterTest extends ActiveElementContract {

    @Override
    ActiveElement element() {
        return new HardLimiter(0.5e-3);
    }

    @Override
    double current(double voltage) {
        return 0.5e-3 * Math.signum(voltage);
    }

    @Override
    double knee() {
        return 1;
    }

    @Test
    void needsACurrent() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new HardLimiter(0))
                .withMessageStartingWith("limiting current 0.0 A");
    }
}
