package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.Loops;
import eddyreach.closedform.RectangularCoil;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * E. B. Rosa and F. W. Grover, Formulas and tables for the calculation of mutual and self-inductance, Bull. Bureau of Standards 8
 * (1912) 1, worked examples pp. 20 ff. "cm" of inductance in the source is 1e-9 H.
 */
class RosaGrover1912Test {

    @Test
    void mutualInductanceIsReciprocal() {
        for (double distance : new double[] {1e-4, 0.05, 3}) {
            assertThat(Loops.mutual(0.05, 0.1, -distance)).isEqualTo(Loops.mutual(0.1, 0.05, distance));
        }
    }

    /**
     * Printed: 654.40496 pi cm, by Kirchhoff's formula, which leaves out the terms of second order in rho/a that the code has; they
     * are taken off before the comparison to all printed digits.
     */
    @Test
    void circleOfRoundWire() {
        double l = Loops.selfRoundWire(0.25, 0.0005);
        double ratio = 0.0005 / 0.25;
        double secondOrder = 4e-7 * Math.PI * 0.25 * ratio * ratio * (Math.log(8 / ratio) / 8 + 1 / 24.0);
        assertThat(secondOrder / l).isLessThan(1e-6);
        assertThat(l - secondOrder).isCloseTo(654.40496 * Math.PI * 1e-9, within(0.5e-5 * Math.PI * 1e-9));
        assertThat(l - secondOrder).isCloseTo(2.055874e-6, within(0.5e-12));
    }

    /** The exact integral tends to the thin solenoid as the winding gets thin: the error is linear in the depth. */
    @Test
    void thinWindingIsASolenoid() {
        double exact = CoilInductance.solenoid(0.05, 0.1, 100);
        double thin = CoilInductance.rectangular(new RectangularCoil(0.05 - 5e-5, 0.05 + 5e-5, 0.1, 100));
        double thinner = CoilInductance.rectangular(new RectangularCoil(0.05 - 2.5e-5, 0.05 + 2.5e-5, 0.1, 100));
        assertThat(thin).isCloseTo(exact, Percentage.withPercentage(0.1));
        assertThat(2 * thinner - thin).isCloseTo(exact, Percentage.withPercentage(1e-4));
    }
}
