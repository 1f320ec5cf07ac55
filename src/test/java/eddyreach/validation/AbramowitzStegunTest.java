package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.numerics.ComplexBessel;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964: Kelvin functions, table 9.12 (values from
 * memory, tolerance the digits printed), {@code ber x + j bei x = J0(x exp(3 pi j/4))} (9.9.1).
 */
class AbramowitzStegunTest {

    @ParameterizedTest
    @CsvSource({"1, 0.9843817812, 0.2495660400", "5, -6.2300824787, 0.1160343816"})
    void kelvinFunctions(double x, double ber, double bei) {
        double c = x * Math.sqrt(0.5);
        Complex value = ComplexBessel.j0(new Complex(-c, c));
        assertThat(value.getReal()).isCloseTo(ber, within(6e-11));
        assertThat(value.getImaginary()).isCloseTo(bei, within(6e-11));
    }
}
