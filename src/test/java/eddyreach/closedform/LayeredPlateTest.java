package eddyreach.closedform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class LayeredPlateTest {

    private static final double MU0 = 4e-7 * Math.PI;

    /** The recursion as on paper, with complex objects and tanh; good for layers neither very thin nor very thick. */
    private static Complex plain(
            double omega, double k, double[] sigma, double[] muReal, double[] muLoss, double[] thickness) {
        Complex behind = new Complex(k);
        for (int i = sigma.length - 1; i >= 0; i--) {
            Complex mu = new Complex(muReal[i], -muLoss[i]);
            Complex q = mu.multiply(new Complex(0, omega * MU0 * sigma[i]))
                    .add(k * k)
                    .sqrt();
            Complex y = q.divide(mu);
            Complex tanh = q.multiply(thickness[i]).tanh();
            behind = y.multiply(behind.add(y.multiply(tanh))).divide(y.add(behind.multiply(tanh)));
        }
        return new Complex(k).subtract(behind).divide(behind.add(k));
    }

    @Test
    void agreesWithThePlainRecursion() {
        Random random = new Random(3);
        for (int trial = 0; trial < 500; trial++) {
            int n = 1 + random.nextInt(4);
            double[] sigma = random.doubles(n, 0, 6e7).toArray();
            double[] muReal = random.doubles(n, 1, 200).toArray();
            double[] muLoss = random.doubles(n, 0, 20).toArray();
            double[] thickness = random.doubles(n, 1e-5, 3e-4).toArray();
            double omega = 2 * Math.PI * Math.pow(10, 3 + 2.5 * random.nextDouble());
            double k = Math.pow(10, 1.5 + 2 * random.nextDouble());
            Complex expected = plain(omega, k, sigma, muReal, muLoss, thickness);
            Complex gamma = new LayeredPlate(sigma, muReal, muLoss, thickness).reflection(omega, k);
            // what the plain form loses: y/k and the cancellation of k - Y
            assertThat(gamma.subtract(expected).abs()).isLessThan(1e-11);
        }
    }

    @Test
    void identicalLayersAreOneLayer() {
        for (double t : new double[] {1e-9, 1e-5, 1e-3, 1}) {
            double[] part = new double[7];
            Arrays.fill(part, t / 7);
            LayeredPlate many = new LayeredPlate(filled(5e6), filled(120), filled(8), part);
            LayeredPlate one =
                    new LayeredPlate(new double[] {5e6}, new double[] {120}, new double[] {8}, new double[] {t});
            for (double k = 1; k < 1e5; k *= 7) {
                Complex expected = one.reflection(2e6, k);
                assertThat(many.reflection(2e6, k).subtract(expected).abs())
                        .as("t %s k %s", t, k)
                        .isLessThan(1e-13 * expected.abs());
            }
        }
    }

    private static double[] filled(double value) {
        double[] values = new double[7];
        Arrays.fill(values, value);
        return values;
    }

    @Test
    void passiveAndWithinTheUnitCircle() {
        Random random = new Random(5);
        for (int trial = 0; trial < 2000; trial++) {
            int n = 1 + random.nextInt(5);
            double[] sigma = random.doubles(n, 0, 6e7).toArray();
            double[] thickness =
                    random.doubles(n, -8, 0).map(x -> Math.pow(10, x)).toArray();
            double[] one = new double[n];
            Arrays.fill(one, 1);
            double omega = Math.pow(10, 1 + 7 * random.nextDouble());
            double k = Math.pow(10, 5 * random.nextDouble());
            Complex gamma = new LayeredPlate(sigma, one, new double[n], thickness).reflection(omega, k);
            assertThat(gamma.getImaginary()).isNegative();
            assertThat(gamma.abs()).isLessThanOrEqualTo(1 + 1e-15);
            double[] mu = random.doubles(n, 1, 500).toArray();
            double[] loss = random.doubles(n, 0, 50).toArray();
            Complex magnetic = new LayeredPlate(sigma, mu, loss, thickness).reflection(omega, k);
            assertThat(magnetic.getImaginary()).isNegative();
            assertThat(magnetic.abs()).isLessThanOrEqualTo(1 + 1e-15);
        }
    }

    /** From a thousandth of a skin depth to a thousand of them, against the series at one end and the half-space at the other. */
    @Test
    void thinAndThickLimits() {
        double omega = 2 * Math.PI * 200e3;
        double sigma = 58e6;
        double delta = Math.sqrt(2 / (omega * MU0 * sigma));
        double k = 250;
        LayeredPlate halfSpace = LayeredPlate.single(sigma, 1, Double.POSITIVE_INFINITY);
        Complex q = new Complex(k * k, omega * MU0 * sigma).sqrt();
        Complex exact = new Complex(k).subtract(q).divide(q.add(k));
        assertThat(halfSpace.reflection(omega, k).subtract(exact).abs()).isLessThan(1e-14);
        Complex thick = LayeredPlate.single(sigma, 1, 1000 * delta).reflection(omega, k);
        assertThat(thick.subtract(exact).abs()).isLessThan(1e-14);

        // Born approximation of a layer that carries little current: Gamma = -j w mu0 sigma (1 - exp(-2 k t))/(4 k^2)
        double slow = 1e-3;
        double t = delta / 1000;
        double born = -slow * MU0 * sigma * -Math.expm1(-2 * k * t) / (4 * k * k);
        Complex thin = LayeredPlate.single(sigma, 1, t).reflection(slow, k);
        assertThat(thin.getImaginary() / born).isCloseTo(1, within(1e-11));
    }

    @Test
    void airLayersOnlyDelayTheReflection() {
        LayeredPlate steel = LayeredPlate.single(6e6, 100, 1e-3);
        LayeredPlate covered = new LayeredPlate(
                new double[] {0, 6e6, 0}, new double[] {1, 100, 1}, new double[3], new double[] {2e-3, 1e-3, 5e-3});
        for (double k = 10; k < 3000; k *= 2) {
            Complex expected = steel.reflection(1e6, k).multiply(Math.exp(-2 * k * 2e-3));
            assertThat(covered.reflection(1e6, k).subtract(expected).abs()).isLessThan(1e-14 * expected.abs());
        }
    }

    @Test
    void noLayersReflectNothing() {
        Complex gamma = new LayeredPlate(new double[0], new double[0], new double[0], new double[0]).reflection(1, 5);
        assertThat(gamma).isEqualTo(Complex.ZERO);
    }

    @Test
    void arrayFormAgreesWithTheSingleOne() {
        LayeredPlate plate = LayeredPlate.single(15e6, 2, 1e-4);
        double[] k = {5, 50, 500, 5000};
        double[] re = new double[4];
        double[] im = new double[4];
        plate.reflection(1e6, k, re, im);
        for (int i = 0; i < 4; i++) {
            assertThat(new Complex(re[i], im[i])).isEqualTo(plate.reflection(1e6, k[i]));
        }
    }

    @Test
    void badLayersAreRefused() {
        assertThatThrownBy(() -> LayeredPlate.single(1, 1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("thickness of layer 1, m = 0.0, must be above 0");
        assertThatThrownBy(() -> LayeredPlate.single(Double.NaN, 1, 1))
                .hasMessage("conductivity of layer 1, S/m = NaN, must not be below 0");
        assertThatThrownBy(() -> new LayeredPlate(new double[1], new double[2], new double[2], new double[2]))
                .hasMessageContaining("must be as many");
    }

    /** Two halves of one metal, thin against its skin: A falls by exp(-k z) only, so the front takes 1/(1 + exp(-kt)). */
    @Test
    void lossSharesOfThinHalves() {
        double k = 200;
        double t = 1e-3;
        LayeredPlate plate =
                new LayeredPlate(new double[] {10, 10}, new double[] {1, 1}, new double[] {0, 0}, new double[] {t, t});
        double[] share = plate.lossShares(2 * Math.PI * 1e4, k);
        assertThat(share[0]).isCloseTo(1 / (1 + Math.exp(-2 * k * t)), within(1e-6));
        assertThat(share[0] + share[1]).isCloseTo(1, within(1e-12));
    }

    /** A front of many skin depths takes it all; a front without loss nothing. */
    @Test
    void lossSharesBehindAMirrorAndBehindPaint() {
        LayeredPlate copper = new LayeredPlate(
                new double[] {0, 58e6, 6e6}, new double[] {1, 1, 150}, new double[] {0, 0, 0}, new double[] {
                    1e-3, 1e-2, 1e-3
                });
        assertThat(copper.lossShares(2 * Math.PI * 3e5, 200)).containsExactly(new double[] {0, 1, 0}, within(1e-9));
    }
}
