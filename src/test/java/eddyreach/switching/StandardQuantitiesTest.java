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
