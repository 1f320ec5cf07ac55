package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.RectangularCoil;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * S. K. Burke, A benchmark problem for computation of dZ in eddy-current nondestructive evaluation, J. Nondestr. Eval. 7 (1988) 35;
 * TEAM workshop problem 15.
 */
class Burke1988Test {

    private static final RectangularCoil FIRST = new RectangularCoil(6.15e-3, 12.4e-3, 6.15e-3, 3790);
    private static final RectangularCoil SECOND = new RectangularCoil(9.34e-3, 18.4e-3, 9.0e-3, 408);

    /** Read, measured in air: 221.8 mH and 3.96 mH; 2.5 % is what the stated tolerances of the dimensions allow. */
    @Test
    void measuredInductance() {
        assertThat(CoilInductance.rectangular(FIRST)).isCloseTo(221.8e-3, Percentage.withPercentage(2.5));
        assertThat(CoilInductance.rectangular(SECOND)).isCloseTo(3.96e-3, Percentage.withPercentage(2.5));
    }

    /** Computed from the exact integral. */
    @Test
    void idealInductance() {
        assertThat(CoilInductance.rectangular(FIRST)).isCloseTo(225.988e-3, within(0.5e-6));
        assertThat(CoilInductance.rectangular(SECOND)).isCloseTo(3.98516e-3, within(0.5e-8));
    }
}
