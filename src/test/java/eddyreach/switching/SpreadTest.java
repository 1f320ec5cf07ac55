package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.UnworkableException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SpreadTest {

    private static final int N = 60_000;
    private static final RandomStream STREAM = new RandomStream(20260101);

    /** Known answers that come with the authors' own program (Random123, kat_vectors), from memory. */
    @Test
    void philoxKnownAnswers() {
        assertThat(RandomStream.block(0, 0, 0, 0, 0, 0))
                .containsExactly(0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8);
        assertThat(RandomStream.block(-1, -1, -1, -1, -1, -1))
                .containsExactly(0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd);
        assertThat(RandomStream.block(0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344, 0xa4093822, 0x299f31d0))
                .containsExactly(0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1);
    }

    @Test
    void sameNumbersOnAnyNumberOfThreads() {
        double[] one = new double[N];
        for (int i = N - 1; i >= 0; i--) {
            one[i] = STREAM.normal(i, 3);
        }
        double[] many = IntStream.range(0, N)
                .parallel()
                .mapToDouble(i -> STREAM.normal(i, 3))
                .toArray();
        assertThat(many).isEqualTo(one);
        assertThat(STREAM.uniform(7, 1)).isNotEqualTo(STREAM.uniform(7, 2)).isNotEqualTo(STREAM.uniform(8, 1));
        assertThat(new RandomStream(1).uniform(7, 1)).isNotEqualTo(new RandomStream(1L << 40).uniform(7, 1));
    }

    /** Moments of the deviates within four standard errors. */
    @Test
    void momentsOfTheDeviates() {
        double[] u =
                IntStream.range(0, N).mapToDouble(i -> STREAM.uniform(i, 0)).toArray();
        double[] z = IntStream.range(0, N).mapToDouble(i -> STREAM.normal(i, 1)).toArray();
        assertThat(u).doesNotContain(0, 1);
        assertThat(new Spread(u).within(0, 1)).isEqualTo(1);
        assertThat(new Spread(u).mean()).isCloseTo(0.5, within(4 * Math.sqrt(1.0 / 12 / N)));
        assertThat(new Spread(u).deviation()).isCloseTo(Math.sqrt(1.0 / 12), within(2e-3));
        assertThat(new Spread(z).mean()).isCloseTo(0, within(4 / Math.sqrt(N)));
        assertThat(new Spread(z).deviation()).isCloseTo(1, within(4 / Math.sqrt(2.0 * N)));
        double correlation = IntStream.range(0, N)
                .mapToDouble(i -> z[i] * (u[i] - 0.5))
                .average()
                .orElseThrow();
        assertThat(correlation).isCloseTo(0, within(4 * Math.sqrt(1.0 / 12 / N)));
    }

    @Test
    void quantilesOfAKnownSample() {
        double[] values =
                IntStream.rangeClosed(0, 1000).mapToDouble(i -> 1000 - i).toArray();
        Spread spread = new Spread(values);
        assertThat(spread.quantile(0.25).value()).isEqualTo(250);
        assertThat(spread.quantile(0).value()).isZero();
        assertThat(spread.quantile(1).value()).isEqualTo(1000);
        assertThat(spread.quantile(0.99995).value()).isCloseTo(999.95, within(1e-9));
        assertThat(spread.within(100, 199)).isCloseTo(100 / 1001.0, within(1e-12));
    }

    /** The interval of a quantile holds the true one in about 95 of 100 series. */
    @Test
    void intervalsHoldTheTrueQuantile() {
        double[] shares = {0.5, 0.1, 0.9985};
        double[] truth = {0, -1.2815515655446004, 2.9677379253417833};
        int[] held = new int[3];
        int series = 100;
        for (int s = 0; s < series; s++) {
            RandomStream stream = new RandomStream(s);
            Spread spread = new Spread(IntStream.range(0, 2000)
                    .mapToDouble(i -> stream.normal(i, 0))
                    .toArray());
            for (int k = 0; k < 3; k++) {
                Spread.Quantile q = spread.quantile(shares[k]);
                assertThat(q.value()).isBetween(q.low(), q.high());
                held[k] += q.low() <= truth[k] && truth[k] <= q.high() ? 1 : 0;
            }
        }
        for (int h : held) {
            // 95 % with a standard error of 2.2 %; whole order statistics make the interval a little wider
            assertThat(h / (double) series).isBetween(0.88, 1.0);
        }
    }

    /** A linear model: shares a_i^2 s_i^2 over their sum. */
    @Test
    void sharesOfALinearModel() {
        double[] a = {3, 2, 1, 0.5, 0};
        double[][] x = new double[a.length][];
        double[] y = new double[N];
        for (int k = 0; k < a.length; k++) {
            int draw = k;
            x[k] = IntStream.range(0, N)
                    .mapToDouble(i -> STREAM.normal(i, draw))
                    .toArray();
            for (int i = 0; i < N; i++) {
                y[i] += a[k] * x[k][i];
            }
        }
        for (int k = 0; k < a.length; k++) {
            assertThat(Spread.share(x[k], y, 50)).isCloseTo(a[k] * a[k] / 14.25, within(0.012));
        }
    }

    /**
     * Ishigami's function with a = 7, b = 0.1: first-order indices 0.3139, 0.4424, 0 (T. Ishigami and T. Homma, ISUMA 1990; printed in A. Saltelli et al.,
     * Global Sensitivity Analysis, 2008; from memory), which follow from its variances in closed form.
     */
    @Test
    void sharesOfIshigamisFunction() {
        double[][] x = new double[3][];
        for (int k = 0; k < 3; k++) {
            int draw = k;
            x[k] = IntStream.range(0, N)
                    .mapToDouble(i -> Math.PI * (2 * STREAM.uniform(i, draw) - 1))
                    .toArray();
        }
        double[] y = IntStream.range(0, N)
                .mapToDouble(i -> Math.sin(x[0][i])
                        + 7 * Math.pow(Math.sin(x[1][i]), 2)
                        + 0.1 * Math.pow(x[2][i], 4) * Math.sin(x[0][i]))
                .toArray();
        double p4 = Math.pow(Math.PI, 4);
        double first = Math.pow(1 + 0.1 * p4 / 5, 2) / 2;
        double second = 49.0 / 8;
        double together = 0.01 * p4 * p4 * 8 / 225;
        double variance = first + second + together;
        assertThat(first / variance).isCloseTo(0.3139, within(5e-5));
        assertThat(second / variance).isCloseTo(0.4424, within(5e-5));
        assertThat(Math.pow(new Spread(y).deviation(), 2)).isCloseTo(variance, within(0.02 * variance));
        assertThat(Spread.share(x[0], y, 60)).isCloseTo(0.3139, within(0.01));
        assertThat(Spread.share(x[1], y, 60)).isCloseTo(0.4424, within(0.01));
        assertThat(Spread.share(x[2], y, 60)).isCloseTo(0, within(0.003));
    }

    @Test
    void tellsWhatDoesNotWork() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new Spread(new double[99]))
                .withMessage("number of units 99: must be at least 100");
        double[] gap = new double[200];
        gap[3] = Double.NaN;
        assertThatIllegalArgumentException().isThrownBy(() -> new Spread(gap));
        Spread spread = new Spread(new double[100]);
        assertThat(spread.deviation()).isZero();
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> spread.quantile(1.1));
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> Spread.share(new double[10], new double[10], 6));
        assertThatIllegalArgumentException().isThrownBy(() -> Spread.share(new double[9], new double[10], 2));
    }
}
