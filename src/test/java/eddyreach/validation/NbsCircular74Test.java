package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.coil.RoundConductor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Round wire: Radio Instruments and Measurements, NBS Circular 74, 2nd ed. 1937, table of Rac/Rdc; the same table and
 * the proximity factor G in F. E. Terman, Radio Engineers' Handbook, 1943 (both quoted from memory). Tolerance: the
 * digits printed.
 */
class NbsCircular74Test {

    @ParameterizedTest
    @CsvSource({"1, 1.0052, 5e-5", "2, 1.0782, 5e-5", "5, 2.0430, 3e-4", "10, 3.799, 5e-4"})
    void resistanceRatio(double x, double printed, double digits) {
        // at x = 5 the printed value lies 2.8e-4 above the exact 2.042725 of the same formula
        assertThat(RoundConductor.skinFactor(x)).isCloseTo(printed, within(digits));
    }

    @Test
    void proximityFactor() {
        assertThat(RoundConductor.proximityFactor(2)).isCloseTo(0.1724, within(5e-5));
    }
}
