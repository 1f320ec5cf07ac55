package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.Loops;
import eddyreach.closedform.Reflector;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** R. E. Beissner, Approximate model of eddy-current probe impedance, J. Nondestr. Eval. 7 (1988), eq. 14: dZ = -j w M(a, a, 2h). */
class Beissner1988Test {

    private static final double A = 0.25;
    private static final double H = 0.05;

    @Test
    void loopOverPerfectConductor() {
        Complex dZ = Loops.impedanceChange(A, H, Reflector.perfectConductor(), 1e5);
        assertThat(dZ.getImaginary() / 1e5).isCloseTo(Loops.overPerfectConductor(A, H), within(1e-16));
        assertThat(dZ.getReal()).isZero();
    }

    @Test
    void loopOverMagneticHalfSpace() {
        var layer = LayeredPlate.single(0, 10, Double.POSITIVE_INFINITY);
        Complex byLayers = Loops.impedanceChange(A, H, layer, 1e5);
        Complex byImage = Loops.impedanceChange(A, H, Reflector.magneticHalfSpace(10), 1e5);
        assertThat(byLayers.getImaginary() / 1e5).isCloseTo(Loops.overMagneticHalfSpace(A, H, 10), within(1e-16));
        assertThat(byLayers.subtract(byImage).abs()).isLessThan(1e-14 * byImage.abs());
    }

    /** All lengths times 10 and frequency over 100: dZ times 0.1 exactly. */
    @Test
    void scaleLaw() {
        Complex small = Loops.impedanceChange(A, H, LayeredPlate.single(6e6, 50, 2e-3), 1e5);
        Complex large = Loops.impedanceChange(10 * A, 10 * H, LayeredPlate.single(6e6, 50, 20e-3), 1e3);
        assertThat(large.multiply(10).subtract(small).abs()).isLessThan(1e-13 * small.abs());
    }

    /** At high frequency every good conductor is a mirror: the difference falls with the skin depth. */
    @Test
    void goodConductorTendsToTheMirror() {
        double mirror = Loops.overPerfectConductor(A, H);
        double before = Double.POSITIVE_INFINITY;
        for (double omega = 1e4; omega < 1e11; omega *= 100) {
            Complex dZ = Loops.impedanceChange(A, H, LayeredPlate.single(58e6, 1, Double.POSITIVE_INFINITY), omega);
            double error = Math.abs(dZ.getImaginary() / omega / mirror - 1);
            assertThat(error).isLessThan(before / 8);
            before = error;
        }
        assertThat(before).isLessThan(1e-4);
    }
}
