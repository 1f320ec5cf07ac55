package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ClippedStageTest extends ActiveElementContract {

    @Override
    ActiveElement element() {
        return new ClippedStage(400e-6, 1.5);
    }

    @Override
    double current(double voltage) {
        return 400e-6 * Math.max(-1.5, Math.min(1.5, voltage));
    }

    @Override
    double knee() {
        return 1.5;
    }

    @Test
    void collapsesFromTheClipLevel() {
        assertThat(element().amplitude(400e-6 * (1 - 1e-12))).isCloseTo(1.5, within(1e-6));
        assertThat(element().amplitude(400e-6)).isZero();
    }

    @Test
    void isAHardLimiterForLargeAmplitudes() {
        double g = 1e-9;
        double limiter = new HardLimiter(400e-6 * 1.5).amplitude(g);
        assertThat(element().amplitude(g)).isCloseTo(limiter, within(1e-9 * limiter));
    }

    @Test
    void needsSlopeAndLevel() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ClippedStage(Double.NaN, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ClippedStage(1e-3, -1))
                .withMessageStartingWith("clip level -1.0 V");
    }
}
