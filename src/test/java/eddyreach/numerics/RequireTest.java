package eddyreach.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RequireTest {

    @Test
    void passesGoodValuesThrough() {
        assertThat(Require.positive("capacitance", 1e-9, "F")).isEqualTo(1e-9);
        assertThat(Require.notNegative("gap", 0, "m")).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void rejectsBadValues(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("gap", bad, "m"));
        assertThatIllegalArgumentException().isThrownBy(() -> Require.notNegative("gap", bad, "m"));
    }

    @Test
    void namesValueUnitAndRule() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("capacitance", 0, "F"))
                .withMessage("capacitance 0.0 F: must be positive and finite");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.notNegative("ratio", -1, ""))
                .withMessage("ratio -1.0: must be finite and not negative");
    }
}
