package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.Loops;
import eddyreach.closedform.RectangularCoil;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * E. B. Rosa and F. W. Grover, Formulas and tables for the calculation of mutual and self-inductance, Bull. Bureau of Standards 8
 * (1912) 1, worked examples pp. 20 ff. "cm" of inductance in the source is 1e-9 H.
 */
class RosaGrover1912Test {

    /** Printed; the first is off by 1.4 units of its last digit, which the source took from tables of logarithms. */
    @Test
    void coaxialCirclesAsPrinted() {
        assertThat(Loops.mutual(0.25, 0.20, 0.10)).isCloseTo(0.2487875e-6, within(1.5e-13));
        assertThat(Loops.mutual(0.25, 0.25, 0.01)).isCloseTo(1.03666e-6, within(0.5e-11));
    }

    /** Computed from Maxwell's formula with more digits than the source prints; radii and distance in cm. */
    @ParameterizedTest
    @CsvSource({
        "25, 20, 10, 0.248787359042e-6",
        "25, 25, 1, 1.03666484928e-6",
        "25, 25, 10, 0.337684718487e-6",
        "10, 5, 5, 0.0349366231682e-6",
        "20, 20, 10, 0.222522178704e-6",
    })
    void coaxialCirclesComputed(double a, double b, double distance, double expected) {
        double m = Loops.mutual(a / 100, b / 100, distance / 100);
        assertThat(m).isCloseTo(expected, within(0.6e-12 * Math.pow(10, Math.ceil(Math.log10(expected * 1e6))) * 1e-6));
        assertThat(Loops.mutual(b / 100, a / 100, -distance / 100)).isEqualTo(m);
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

    /** Computed from the exact integral; mean radius, length and radial depth in cm, L/N^2 in uH. */
    @ParameterizedTest
    @CsvSource({
        "10, 1, 1, 0.4007798914",
        "4, 1, 1, 0.1147126953",
        "10, 4, 2, 0.2647486553",
        "10, 2, 4, 0.2643188921",
    })
    void rectangularSection(double mean, double length, double depth, double expected) {
        RectangularCoil coil = new RectangularCoil((mean - depth / 2) / 100, (mean + depth / 2) / 100, length / 100, 1);
        assertThat(CoilInductance.rectangular(coil)).isCloseTo(expected * 1e-6, within(0.6e-16));
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
