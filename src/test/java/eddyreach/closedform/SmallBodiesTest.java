package eddyreach.closedform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmallBodiesTest {

    /** Torsion constants k1 a b^3 of rectangles, to the digits of Timoshenko and Goodier, art. 109, from memory. */
    @ParameterizedTest
    @CsvSource({"1, 0.1406", "1.5, 0.196", "2, 0.229", "3, 0.263", "10, 0.312"})
    void rectanglesLoseLessThanDiscs(double aspect, double constant) {
        double expected = constant * 2 * Math.PI / aspect;
        assertThat(SmallBodies.rectangleLossRatio(aspect)).isCloseTo(expected, within(0.0006 * 2 * Math.PI / aspect));
    }
}
