package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.Loops;
import eddyreach.closedform.ThinSheet;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * J. C. Maxwell, Treatise on Electricity and Magnetism (1873), sections 656 to 669; W. R. Smythe, Static and Dynamic Electricity
 * (1950): thin sheet of surface conductance S, reflection -(j w mu0 S)/(2k + j w mu0 S).
 */
class MaxwellSheetTest {

    private static final double COPPER_FOIL = 58e6 * 35e-6;

    /** At low frequency dR grows as f^2; the next term is of relative order (w mu0 S a)^2. */
    @Test
    void lowFrequencyLossGrowsAsTheSquare() {
        Complex low = Loops.impedanceChange(0.01, 0.002, new ThinSheet(COPPER_FOIL), 2e-3);
        Complex twice = Loops.impedanceChange(0.01, 0.002, new ThinSheet(COPPER_FOIL), 4e-3);
        assertThat(twice.getReal() / low.getReal()).isCloseTo(4, within(1e-11));
        var plate = LayeredPlate.single(58e6, 1, 35e-6);
        double byLayer = Loops.impedanceChange(0.01, 0.002, plate, 2e-3).getReal();
        double byLayerTwice = Loops.impedanceChange(0.01, 0.002, plate, 4e-3).getReal();
        assertThat(byLayerTwice / byLayer).isCloseTo(4, within(1e-11));
    }

    /** The loss part is largest, 1/2, at thickness k delta^2. */
    @Test
    void largestLossAtKTimesSkinDepthSquared() {
        double sigma = 37.7e6;
        double omega = 2 * Math.PI * 300e3;
        double delta = Math.sqrt(2 / (omega * 4e-7 * Math.PI * sigma));
        double k = 200;
        double best = k * delta * delta;
        assertThat(best).isBetween(3e-6, 7e-6);
        assertThat(-new ThinSheet(sigma * best).reflection(omega, k).getImaginary())
                .isCloseTo(0.5, within(1e-14));
        for (double factor : new double[] {0.5, 0.9, 1.1, 2}) {
            assertThat(-new ThinSheet(sigma * best * factor)
                            .reflection(omega, k)
                            .getImaginary())
                    .isLessThan(0.5);
        }
        // the exact layer agrees to the order of k t and (t/delta)^2, both near 1e-3 here
        assertThat(-LayeredPlate.single(sigma, 1, best).reflection(omega, k).getImaginary())
                .isCloseTo(0.5, within(2e-3));
    }

    @Test
    void layerTendsToTheSheet() {
        double omega = 2 * Math.PI * 100e3;
        double before = Double.POSITIVE_INFINITY;
        for (double t = 1e-5; t > 1e-9; t /= 10) {
            Complex sheet = new ThinSheet(2e3).reflection(omega, 300);
            double error = LayeredPlate.single(2e3 / t, 1, t)
                    .reflection(omega, 300)
                    .subtract(sheet)
                    .abs();
            assertThat(error).isLessThan(before / 9);
            before = error;
        }
    }
}
