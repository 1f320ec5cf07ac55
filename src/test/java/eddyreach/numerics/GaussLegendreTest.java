package eddyreach.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GaussLegendreTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 8, 16, 24, 33})
    void agreesWithCommonsMath(int n) {
        var reference = new GaussIntegratorFactory().legendre(n, -1, 1);
        GaussLegendre rule = GaussLegendre.of(n, -1, 1);
        for (int i = 0; i < n; i++) {
            assertThat(rule.node(i)).isCloseTo(reference.getPoint(i), within(2e-15));
            assertThat(rule.weight(i)).isCloseTo(reference.getWeight(i), within(1e-14));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 40, 300})
    void exactForPolynomials(int n) {
        GaussLegendre rule = GaussLegendre.of(n, 0, 1);
        for (int degree = 0; degree < 2 * n; degree++) {
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += rule.weight(i) * Math.pow(rule.node(i), degree);
            }
            assertThat(sum).as("x^%d", degree).isCloseTo(1.0 / (degree + 1), within(1e-14));
        }
    }

    /** Abramowitz and Stegun 1964, table 25.4, n = 10 (from memory). */
    @Test
    void tableOfAbramowitzAndStegun() {
        GaussLegendre rule = GaussLegendre.of(10, -1, 1);
        assertThat(rule.node(9)).isCloseTo(0.973906528517172, within(1e-15));
        assertThat(rule.weight(9)).isCloseTo(0.066671344308688, within(1e-15));
        assertThat(rule.node(5)).isCloseTo(0.148874338981631, within(1e-15));
        assertThat(rule.weight(5)).isCloseTo(0.295524224714753, within(1e-15));
    }

    @Test
    void ruleIsSymmetricAndUnchangeable() {
        GaussLegendre rule = GaussLegendre.of(24, 2, 5);
        assertThat(Arrays.stream(rule.weights()).sum()).isCloseTo(3, within(1e-14));
        assertThat(rule.nodes()).isSorted();
        rule.nodes()[0] = 9;
        assertThat(rule.node(0)).isLessThan(2.1);
        assertThatThrownBy(() -> GaussLegendre.of(0, 0, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("number of nodes n = 0, must be at least 1");
    }
}
