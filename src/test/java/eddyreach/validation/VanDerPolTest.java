package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * B. van der Pol, Phil. Mag. 2 (1926) 978: {@code x'' - epsilon (1 - x^2) x' + x = 0}. Period and amplitude of the
 * limit cycle as tabulated since, from memory; tolerance the digits printed. It checks the integration of whole
 * circuits that {@link HardLimitedTankTest} uses against values that know nothing of this project.
 */
class VanDerPolTest {

    private static LimitCycle cycle(double epsilon, int cycles) {
        return LimitCycle.of(1, 1, (v, sign) -> epsilon * (v - v * v * v / 3), 2, cycles);
    }

    @Test
    void strong() {
        LimitCycle cycle = cycle(1, 30);
        assertThat(cycle.period()).isCloseTo(6.66328686, within(6e-9));
        assertThat(cycle.amplitude()).isCloseTo(2.00861986, within(6e-9));
    }

    @Test
    void weak() {
        double period = cycle(0.1, 60).period();
        // w = 1 - e^2/16 + 17 e^4/3072 + 35 e^6/884736 (C. M. Andersen and J. F. Geer, SIAM J. Appl. Math. 42 (1982)
        // 678)
        double w = 1 - 0.01 / 16 + 17e-4 / 3072 + 35e-6 / 884736;
        assertThat(period).isCloseTo(2 * Math.PI / w, within(2e-10));
        // the value as quoted is rounded up by most of a unit of its last digit: the series gives 6.287111272
        assertThat(period).isCloseTo(6.28711128, within(1e-8));
    }
}
