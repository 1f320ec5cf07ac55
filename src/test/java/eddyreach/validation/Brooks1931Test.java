package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.RectangularCoil;
import org.junit.jupiter.api.Test;

/** H. B. Brooks, Design of standards of inductance, Bureau of Standards J. Research 7 (1931) 289; also Grover 1946. */
class Brooks1931Test {

    /** Printed: L = 0.016994 a N^2 uH with mean radius a = 1.5 c in cm; more digits computed. */
    @Test
    void brooksCoil() {
        double turns = 50;
        double l = CoilInductance.brooks(0.02, turns);
        double coefficient = l * 1e6 / (3 * turns * turns);
        assertThat(coefficient).isCloseTo(0.016994, within(0.5e-6));
        assertThat(coefficient).isCloseTo(0.0169937821, within(0.6e-10));
    }

    /** Brooks: near this shape a given length of wire has most inductance. */
    @Test
    void otherShapesOfTheSameWireHaveLess() {
        double best = CoilInductance.brooks(0.02, 100);
        // same section 4 cm2 and same mean radius, so the same wire
        for (double length : new double[] {0.01, 0.04}) {
            double depth = 0.0004 / length;
            var coil = new RectangularCoil(0.03 - depth / 2, 0.03 + depth / 2, length, 100);
            assertThat(CoilInductance.rectangular(coil)).isLessThan(best);
        }
    }
}
