package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import org.junit.jupiter.api.Test;

/** H. Nagaoka, J. Coll. Sci. Tokyo 27 (1909) 6. */
class Nagaoka1909Test {

    @Test
    void longCoilLimit() {
        // K = 1 - 4/(3 pi) D/l + ...
        double u = 1e-4;
        assertThat(CoilInductance.nagaoka(u)).isCloseTo(1 - 4 * u / (3 * Math.PI), within(2e-9));
    }
}
