package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.RectangularCoil;
import org.junit.jupiter.api.Test;

/** H. B. Brooks, Design of standards of inductance, Bureau of Standards J. Research 7 (1931) 289; also Grover 1946. */
class Brooks1931Test {

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
