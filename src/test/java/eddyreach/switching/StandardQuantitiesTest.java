package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StandardQuantitiesTest {

    @Test
    void bandAboutTheRatedDistance() {
        StandardQuantities q = new StandardQuantities(5e-3, 18e-3);
        assertThat(q.minEffective()).isCloseTo(4.5e-3, within(1e-12));
        assertThat(q.maxEffective()).isCloseTo(5.5e-3, within(1e-12));
        assertThat(StandardQuantities.minUsable(5.2e-3)).isCloseTo(4.68e-3, within(1e-12));
        assertThat(StandardQuantities.maxUsable(5.2e-3)).isCloseTo(5.72e-3, within(1e-12));
    }

    /** IEC 60947-5-2, from memory: on to 0.81 s_n, off from 1.43 s_n, target as wide as the face or 3 s_n. */
    @Test
    void whatTheStandardAssures() {
        StandardQuantities q = new StandardQuantities(5e-3, 18e-3);
        assertThat(q.assured()).isCloseTo(4.05e-3, within(1e-12));
        assertThat(q.sureRelease()).isCloseTo(7.15e-3, within(1e-12));
        assertThat(q.targetSide()).isEqualTo(18e-3);
        assertThat(new StandardQuantities(12e-3, 18e-3).targetSide()).isCloseTo(36e-3, within(1e-12));
    }

    @Test
    void rejectsNonsense() {
        assertThatIllegalArgumentException().isThrownBy(() -> new StandardQuantities(0, 18e-3));
        assertThatIllegalArgumentException().isThrownBy(() -> new StandardQuantities(5e-3, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> StandardQuantities.minUsable(-1));
    }

    @Test
    void outputConductsAccordingToItsFunction() {
        assertThat(OutputFunction.NORMALLY_OPEN.conducts(true)).isTrue();
        assertThat(OutputFunction.NORMALLY_OPEN.conducts(false)).isFalse();
        assertThat(OutputFunction.NORMALLY_CLOSED.conducts(true)).isFalse();
        assertThat(OutputFunction.NORMALLY_CLOSED.conducts(false)).isTrue();
    }
}
