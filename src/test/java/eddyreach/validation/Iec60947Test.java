package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.switching.StandardQuantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * IEC 60947-5-2, from memory: assured distance 0.81 s_n, standard target of side max(d, 3 s_n), sure release beyond
 * 1.21 s_n + 0.2 x 1.1 s_n = 1.43 s_n. Values in mm.
 */
class Iec60947Test {

    @ParameterizedTest
    @CsvSource({"5, 18, 18", "8, 18, 24", "15, 30, 45"})
    void sideOfTheStandardTarget(double rated, double face, double side) {
        assertThat(new StandardQuantities(rated * 1e-3, face * 1e-3).targetSide())
                .isCloseTo(side * 1e-3, within(1e-12));
    }

    @Test
    void assuredDistanceAndSureRelease() {
        StandardQuantities q = new StandardQuantities(8e-3, 18e-3);
        assertThat(q.assured()).isCloseTo(6.48e-3, within(1e-12));
        assertThat(q.sureRelease()).isCloseTo(11.44e-3, within(1e-12));
    }
}
