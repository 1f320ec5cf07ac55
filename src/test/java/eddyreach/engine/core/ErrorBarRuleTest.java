package eddyreach.engine.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.read.Library;
import eddyreach.model.values.SwitchModel;
import eddyreach.switching.Crossing;
import java.nio.file.Path;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The rule itself, by hand; whether its bars hold is judged by {@code ErrorBarTest}. */
class ErrorBarRuleTest {

    /** 10 ohm at 100 uS: 1 ohm more is 10 uS. */
    private static final TankState FINE = new TankState(1e6, new Complex(10, 100), new Complex(2, -1), 100e-6);

    private static SwitchModel model;

    @BeforeAll
    static void read() {
        model = new Library(Path.of("")).switchModel("m18-flush");
    }

    private static TankState coarse(double re, double im) {
        return new TankState(1e6, new Complex(10, 100), new Complex(re, im), 101e-6);
    }

    @Test
    void takesTheLargerOfShiftAndUncancelledImpedance() {
        ErrorBar bar = ErrorBar.of(model);
        // the impedances are equal: the shift alone, whatever its sign
        assertThat(bar.conductance(-4e-6, FINE, coarse(2, -1), 0)).isCloseTo(10e-6, within(1e-18));
        // |3 + 4j| ohm = 5 ohm, of which a fifth at 10 uS/ohm
        assertThat(bar.conductance(4e-6, FINE, coarse(5, 3), 0)).isCloseTo(25e-6, within(1e-18));
        assertThat(bar.conductance(0, FINE, coarse(2, -1), 5)).isCloseTo(25e-6, within(1e-18));
    }

    @Test
    void onTheTrimItselfNothingButTheShiftCounts() {
        ErrorBar bar = ErrorBar.of(model, true);
        assertThat(bar.conductance(4e-6, FINE, coarse(500, 300), 100)).isCloseTo(10e-6, within(1e-18));
        assertThat(bar.floor()).isZero();
        assertThat(ErrorBar.of(model, false).floor())
                .isEqualTo(ErrorBar.of(model).floor());
    }

    @Test
    void noDistanceIsBetterThanTheFloor() {
        Crossing crossing = new Crossing(5e-3, true, -20e-3);
        ErrorBar bar = ErrorBar.of(model);
        assertThat(bar.floor()).isCloseTo(1e-4 * 18e-3, within(1e-12));
        assertThat(bar.distance(crossing, 0)).isEqualTo(bar.floor());
        assertThat(bar.distance(crossing, 2e-6)).isCloseTo(0.1e-3, within(1e-12));
        assertThat(ErrorBar.of(model, true).distance(crossing, 0)).isZero();
    }
}
