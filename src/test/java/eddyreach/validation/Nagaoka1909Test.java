package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** H. Nagaoka, J. Coll. Sci. Tokyo 27 (1909) 6; the table as reprinted by Rosa and Grover 1912, table 21. */
class Nagaoka1909Test {

    /** Printed; diameter over length. */
    @ParameterizedTest
    @CsvSource({"0.25, 0.901649", "0.5, 0.818136", "1, 0.688423", "2, 0.525510", "5, 0.319825"})
    void tableOfCoefficients(double diameterOverLength, double expected) {
        assertThat(CoilInductance.nagaoka(diameterOverLength)).isCloseTo(expected, within(0.5e-6));
    }

    /** The printed 0.203315 at 10 is known to be wrong by 8.5e-6; exact value computed. */
    @Test
    void beyondTheReliablePartOfTheTable() {
        assertThat(CoilInductance.nagaoka(10)).isCloseTo(0.2033235, within(0.5e-7));
    }

    @Test
    void longCoilLimit() {
        // K = 1 - 4/(3 pi) D/l + ...
        double u = 1e-4;
        assertThat(CoilInductance.nagaoka(u)).isCloseTo(1 - 4 * u / (3 * Math.PI), within(2e-9));
    }

    /**
     * Printed: magnetometric demagnetising factor of a cylinder at susceptibility to 0 is 1 - K (Joseph, J. Appl. Phys. 37, 1966,
     * 4639; Chen, Brug and Goldfarb, IEEE Trans. Magn. 27, 1991, 3601): 0.3116 at length over diameter 1.
     */
    @Test
    void demagnetisingFactorOfAShortCylinder() {
        assertThat(1 - CoilInductance.nagaoka(1)).isCloseTo(0.3116, within(0.5e-4));
    }
}
