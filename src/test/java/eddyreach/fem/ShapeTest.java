package eddyreach.fem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.numerics.GaussLegendre;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties of the hierarchical functions (Szabo and Babuska, Finite Element Analysis, 1991, chapter 3). */
class ShapeTest {

    private static final int DEGREE = 10;

    @ParameterizedTest
    @ValueSource(doubles = {-0.97, -0.4, 0, 0.123, 0.6, 0.99})
    void derivativesAreTheSlopes(double x) {
        double h = 1e-5;
        double[] up = new double[DEGREE + 1];
        double[] down = new double[DEGREE + 1];
        double[] slope = new double[DEGREE + 1];
        Shape.values(DEGREE, x + h, up);
        Shape.values(DEGREE, x - h, down);
        Shape.derivatives(DEGREE, x, slope);
        for (int k = 0; k <= DEGREE; k++) {
            assertThat(slope[k]).as("function %d", k).isCloseTo((up[k] - down[k]) / (2 * h), within(2e-7));
        }
    }

    @Test
    void vertexFunctionsAreOneAtTheirEndAndInnerOnesVanishAtBoth() {
        double[] low = new double[DEGREE + 1];
        double[] high = new double[DEGREE + 1];
        Shape.values(DEGREE, -1, low);
        Shape.values(DEGREE, 1, high);
        assertThat(low[0]).isEqualTo(1);
        assertThat(high[0]).isZero();
        assertThat(low[1]).isZero();
        assertThat(high[1]).isEqualTo(1);
        for (int k = 2; k <= DEGREE; k++) {
            assertThat(low[k]).isCloseTo(0, within(1e-15));
            assertThat(high[k]).isCloseTo(0, within(1e-15));
        }
    }

    /** The first two from their printed polynomials: sqrt(3/8) (x^2 - 1) and sqrt(5/8) x (x^2 - 1). */
    @Test
    void lowestInnerFunctions() {
        double[] v = new double[4];
        Shape.values(3, 0.3, v);
        assertThat(v[2]).isCloseTo(Math.sqrt(3.0 / 8) * (0.09 - 1), within(1e-15));
        assertThat(v[3]).isCloseTo(Math.sqrt(5.0 / 8) * 0.3 * (0.09 - 1), within(1e-15));
    }

    @Test
    void slopesOfInnerFunctionsAreOrthonormal() {
        GaussLegendre rule = GaussLegendre.of(DEGREE + 2, -1, 1);
        double[][] gram = new double[DEGREE + 1][DEGREE + 1];
        double[] d = new double[DEGREE + 1];
        for (int q = 0; q < rule.size(); q++) {
            Shape.derivatives(DEGREE, rule.node(q), d);
            for (int i = 0; i <= DEGREE; i++) {
                for (int j = 0; j <= DEGREE; j++) {
                    gram[i][j] += rule.weight(q) * d[i] * d[j];
                }
            }
        }
        for (int i = 2; i <= DEGREE; i++) {
            for (int j = 0; j <= DEGREE; j++) {
                assertThat(gram[i][j]).as("%d, %d", i, j).isCloseTo(i == j ? 1 : 0, within(1e-13));
            }
        }
    }
}
