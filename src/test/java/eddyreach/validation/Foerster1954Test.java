package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.closedform.CylinderInField;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** F. Foerster and K. Stambke, Z. Metallkunde 45 (1954) 166: effective permeability of a cylinder. */
class Foerster1954Test {

    /** By the power series of J0 and J1, which is well conditioned for these small arguments. */
    @ParameterizedTest
    @CsvSource({"0", "0.01", "1", "5", "20"})
    void agreesWithThePowerSeries(double ratio) {
        Complex w = new Complex(0, ratio / 4);
        Complex j0 = Complex.ONE;
        Complex j1 = Complex.ONE;
        Complex term = Complex.ONE;
        for (int n = 1; n < 40; n++) {
            term = term.multiply(w).divide((double) n * n);
            j0 = j0.add(term);
            j1 = j1.add(term.divide(n + 1));
        }
        Complex expected = j1.divide(j0);
        assertThat(CylinderInField.effectivePermeability(ratio)
                        .subtract(expected)
                        .abs())
                .isLessThan(1e-13);
    }

    /** Strong skin effect: mu_eff tends to 2/x times -j, that is (1 - j) sqrt(2/ratio), with a correction 1/(j ratio). */
    @Test
    void strongSkinEffect() {
        double ratio = 1e6;
        Complex expected = new Complex(1, -1).multiply(Math.sqrt(2 / ratio)).add(new Complex(0, 1 / ratio));
        assertThat(CylinderInField.effectivePermeability(ratio)
                        .subtract(expected)
                        .abs())
                .isLessThan(2e-9);
    }
}
