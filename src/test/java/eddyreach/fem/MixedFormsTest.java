package eddyreach.fem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.fem.MixedForms.Kind;
import eddyreach.mesh.Axis;
import org.junit.jupiter.api.Test;

/** Forms of known functions on two elements of different degree. */
class MixedFormsTest {

    private static final Axis AXIS = new Axis(new double[] {1, 1.5, 3}, new int[] {3, 2});

    /** x as a sum of vertex functions, and as a sum of Legendre polynomials: exact integrals of x^2 to x^5. */
    @Test
    void linearFunction() {
        for (int e = 0; e < 2; e++) {
            double a = AXIS.end(e);
            double b = AXIS.end(e + 1);
            double[] shape = new double[AXIS.degree(e) + 1];
            shape[0] = a;
            shape[1] = b;
            double[] inner = new double[AXIS.degree(e)];
            inner[0] = (a + b) / 2;
            inner[1] = (b - a) / 2;
            for (int power = 0; power <= 3; power++) {
                double moment = (Math.pow(b, power + 3) - Math.pow(a, power + 3)) / (power + 3);
                double mean = (Math.pow(b, power + 2) - Math.pow(a, power + 2)) / (power + 2);
                assertThat(apply(Kind.VALUE, Kind.INNER, power, e, shape, inner))
                        .isCloseTo(moment, within(1e-12));
                assertThat(apply(Kind.INNER, Kind.INNER, power, e, inner, inner))
                        .isCloseTo(moment, within(1e-12));
                // (x)' = 1 and (x x)' = 2x
                assertThat(apply(Kind.INNER, Kind.SLOPE, power, e, inner, shape))
                        .isCloseTo(mean, within(1e-12));
                assertThat(apply(Kind.MOMENT, Kind.VALUE, power, e, shape, shape))
                        .isCloseTo(2 * moment, within(1e-12));
            }
            assertThat(apply(Kind.VALUE, Kind.VALUE, -1, e, shape, shape)).isCloseTo((b * b - a * a) / 2, within(1e-9));
        }
    }

    /** Legendre polynomials are orthogonal, and the derivatives of the inner shape functions are their multiples. */
    @Test
    void orthogonality() {
        double[] mass = MixedForms.of(AXIS, Kind.INNER, Kind.INNER, 0)[0];
        double[] slope = MixedForms.of(AXIS, Kind.INNER, Kind.SLOPE, 0)[0];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertThat(mass[i * 3 + j]).isCloseTo(i == j ? 0.5 / (2 * i + 1) : 0, within(1e-14));
            }
            for (int k = 2; k <= 3; k++) {
                double expected = i == k - 1 ? Math.sqrt((2 * k - 1) / 2.0) * 2 / (2 * i + 1) : 0;
                assertThat(slope[i * 4 + k]).isCloseTo(expected, within(1e-14));
            }
        }
    }

    private static double apply(Kind left, Kind right, int power, int e, double[] u, double[] v) {
        double[] m = MixedForms.of(AXIS, left, right, power)[e];
        double sum = 0;
        for (int i = 0; i < u.length; i++) {
            for (int j = 0; j < v.length; j++) {
                sum += m[i * v.length + j] * u[i] * v[j];
            }
        }
        return sum;
    }
}
