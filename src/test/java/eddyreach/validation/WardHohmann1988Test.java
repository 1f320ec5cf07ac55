package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.LoopField;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * S. H. Ward and G. W. Hohmann, Electromagnetic theory for geophysical applications, in Nabighian (ed.), Electromagnetic Methods in
 * Applied Geophysics 1 (1988), central-loop formula.
 */
class WardHohmann1988Test {

    /** Formula printed, values reproduced independently: Hz over I/(2a). */
    @ParameterizedTest
    @CsvSource({"1, 0.8635287022, -0.2596039597", "2, 0.4740027808, -0.4460084507"})
    void centreOfALoopOnAHalfSpace(double radiusOverSkinDepth, double re, double im) {
        double a = 0.02;
        Complex h = LoopField.centreOnHalfSpace(a, a / radiusOverSkinDepth, 3).multiply(2 * a / 3);
        assertThat(h.getReal()).isCloseTo(re, within(0.6e-10));
        assertThat(h.getImaginary()).isCloseTo(im, within(0.6e-10));
    }
}
