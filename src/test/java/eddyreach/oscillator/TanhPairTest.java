package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TanhPairTest extends ActiveElementContract {

    @Override
    ActiveElement element() {
        return new TanhPair(0.5e-3, 10e-3);
    }

    @Override
    double current(double voltage) {
        return 0.5e-3 * Math.tanh(10e-3 * voltage / 0.5e-3);
    }

    @Override
    double knee() {
        return 0.05;
    }

    /** Made with mpmath's quad at 30 digits of the integral in the class comment, with I0 = gm = 1 and A = x. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.99750830392668495",
        "1, 0.81167568513155897",
        "3, 0.40246185777361333",
        "10, 0.12679563836451157",
        "15.999, 0.079454151563198178",
        "16.001, 0.079444252591663022",
        "25, 0.050896024871746728",
        "200, 0.0063661322724156793"
    })
    void agreesWithThirtyDigitQuadrature(double x, double h) {
        assertThat(new TanhPair(1, 1).conductance(x)).isCloseTo(h, within(1e-12 * h));
    }

    @Test
    void smallAmplitudesFollowThePowerSeries() {
        assertThat(new TanhPair(1, 1).conductance(1e-9)).isCloseTo(1, within(1e-15));
        assertThat(new TanhPair(1, 1).conductance(0.01)).isCloseTo(1 - 0.25e-4 + 1e-8 / 12, within(1e-12));
    }

    @Test
    void extremeLossesKeepTheRoot() {
        TanhPair pair = new TanhPair(1, 1);
        assertThat(pair.amplitude(1e-12)).isCloseTo(4 / Math.PI * 1e12, within(1.0));
        // 1 - G is exact here, so h = 1 - x^2/4 gives x = 2e-5
        assertThat(pair.amplitude(1 - 1e-10)).isCloseTo(2e-5, within(1e-8));
    }

    @Test
    void needsCurrentAndSlope() {
        assertThatIllegalArgumentException().isThrownBy(() -> new TanhPair(0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new TanhPair(1, Double.POSITIVE_INFINITY));
    }
}
