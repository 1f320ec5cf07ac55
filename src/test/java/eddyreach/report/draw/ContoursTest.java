package eddyreach.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class ContoursTest {

    private static final int N = 81;

    private static double[] axis(double from, double to) {
        double[] x = new double[N];
        for (int i = 0; i < N; i++) {
            x[i] = from + (to - from) * i / (N - 1);
        }
        return x;
    }

    private static double[][] sample(double[] x, double[] y, DoubleBinaryOperator f) {
        double[][] v = new double[y.length][x.length];
        for (int j = 0; j < y.length; j++) {
            for (int i = 0; i < x.length; i++) {
                v[j][i] = f.applyAsDouble(x[i], y[j]);
            }
        }
        return v;
    }

    private static double length(double[] line) {
        double sum = 0;
        for (int i = 2; i < line.length; i += 2) {
            sum += Math.hypot(line[i] - line[i - 2], line[i + 1] - line[i - 1]);
        }
        return sum;
    }

    @Test
    void circleIsOneClosedLineOfTheRightLength() {
        double[] x = axis(-2, 2);
        double[] y = axis(-1.7, 2.1);
        List<double[]> lines = Contours.lines(x, y, sample(x, y, (a, b) -> a * a + b * b), 1.3 * 1.3);
        assertThat(lines).hasSize(1);
        double[] line = lines.get(0);
        assertThat(line[0]).isEqualTo(line[line.length - 2]);
        assertThat(line[1]).isEqualTo(line[line.length - 1]);
        // chord and linear interpolation errors are of second order in the spacing, h = 0.05
        for (int i = 0; i < line.length; i += 2) {
            assertThat(Math.hypot(line[i], line[i + 1])).isCloseTo(1.3, Offset.offset(0.05 * 0.05 / (8 * 1.3) * 1.5));
        }
        assertThat(length(line)).isCloseTo(2 * Math.PI * 1.3, Offset.offset(0.005));
    }

    @Test
    void planeGivesStraightLineFromBorderToBorder() {
        double[] x = axis(0, 1);
        double[] y = axis(0, 2);
        List<double[]> lines = Contours.lines(x, y, sample(x, y, (a, b) -> 2 * a - b), 0.3);
        assertThat(lines).hasSize(1);
        double[] line = lines.get(0);
        for (int i = 0; i < line.length; i += 2) {
            assertThat(2 * line[i] - line[i + 1]).isCloseTo(0.3, Offset.offset(1e-12));
        }
        assertThat(length(line)).isCloseTo(Math.hypot(0.85, 1.7), Offset.offset(1e-9));
    }

    @Test
    void saddleAndSeveralPiecesAreAllFound() {
        double[] x = axis(-1, 1);
        double[] y = axis(-1, 1);
        double[][] saddle = sample(x, y, (a, b) -> a * b);
        assertThat(Contours.lines(x, y, saddle, 0.1)).hasSize(2);
        assertThat(Contours.lines(x, y, saddle, -0.1)).hasSize(2);
        double[][] hills = sample(x, y, (a, b) -> Math.cos(2 * Math.PI * a) * Math.cos(2 * Math.PI * b));
        long closed = Contours.lines(x, y, hills, 0.9).stream()
                .filter(l -> l[0] == l[l.length - 2] && l[1] == l[l.length - 1])
                .count();
        assertThat(closed).isEqualTo(5);
    }

    @Test
    void saddleCellIsDecidedByItsMean() {
        double[] x = {0, 1};
        double[] low = {1, 0};
        double[] high = {0, 1.2};
        List<double[]> lines = Contours.lines(x, x, new double[][] {low, high}, 0.5);
        assertThat(lines).hasSize(2);
        // mean 0.55 is above the level: the corners with 1 and 1.2 are connected, (1, 0) and (0, 1) cut off
        for (double[] line : lines) {
            assertThat((line[0] - line[1]) * (line[2] - line[3])).isPositive();
        }
    }

    @Test
    void nothingOutsideTheRangeAndNoCellWithoutNumber() {
        double[] x = axis(0, 1);
        double[][] f = sample(x, x, (a, b) -> a);
        assertThat(Contours.lines(x, x, f, 2)).isEmpty();
        f[40][40] = Double.NaN;
        assertThat(Contours.lines(x, x, f, 0.5001)).hasSize(2);
    }
}
