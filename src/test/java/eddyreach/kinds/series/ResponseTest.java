package eddyreach.kinds.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.switching.RandomStream;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ResponseTest {

    /** What is quadratic with products of the pairs is met everywhere, not only where it was computed. */
    @Test
    void quadraticFunctionsAreExact() {
        List<Response.Axis> axes =
                List.of(new Response.Axis(0, -1, 1), new Response.Axis(2, 0.5, 1), new Response.Axis(3, -1, 1));
        Response r = Response.fit(4, axes, ResponseTest::quadratic, y -> Math.abs(y[0]), 3);
        double[] y = new double[2];
        for (double[] u : new double[][] {{0.3, 0, 0.7, -0.9}, {-1, 0, 0, 1}, {1.2, 0, 0.1, 0.4}}) {
            r.value(u, y);
            assertThat(y[0]).isCloseTo(quadratic(u)[0], within(1e-13));
            assertThat(y[1]).isCloseTo(quadratic(u)[1], within(1e-13));
        }
    }

    private static double[] quadratic(double[] u) {
        return new double[] {
            1 + 2 * u[0] - u[2] + 0.5 * u[3] * u[3] + 0.3 * u[0] * u[2] - 0.7 * u[2] * u[3],
            u[0] * u[0] + u[0] * u[3] - 4
        };
    }

    @Test
    void chebyshevSeriesOfASmoothFunction() {
        Chebyshev series = new Chebyshev(1e-3, 8e-3, 17);
        double[] c = series.coefficients(d -> Math.exp(-d / 2e-3) + 3, 1);
        assertThat(c).hasSize(18);
        for (double d : new double[] {1e-3, 2.345e-3, 7.9e-3}) {
            assertThat(series.value(c, d)).isCloseTo(Math.exp(-d / 2e-3) + 3, within(1e-12));
        }
    }

    /** Variance of the normal distribution cut off at three standard deviations, 1 - 6 phi(3)/(2 Phi(3) - 1) = 0.97334; four times the sample's own scatter. */
    @Test
    void normalDeviatesAreCutOff() {
        RandomStream stream = new RandomStream(7);
        int n = 40_000;
        double[] x = IntStream.range(0, n)
                .mapToDouble(i -> stream.normalWithin(i, 3, 3))
                .toArray();
        assertThat(IntStream.range(0, n).mapToDouble(i -> Math.abs(x[i])).max().orElseThrow())
                .isLessThanOrEqualTo(3);
        double square = IntStream.range(0, n).mapToDouble(i -> x[i] * x[i]).sum() / n;
        assertThat(square).isCloseTo(0.97334, within(4 * Math.sqrt(2.0 / n)));
    }
}
