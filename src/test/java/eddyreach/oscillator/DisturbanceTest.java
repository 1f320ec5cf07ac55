package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class DisturbanceTest {

    /** 80 turns round 1 cm2 in 80 mT of 50 Hz: 2 pi 50 x 8e-3 x 0.08 V. */
    @Test
    void inducesAVoltage() {
        AlternatingField field = new AlternatingField(50, 0.08);
        assertThat(field.induced(80 * 1e-4)).isCloseTo(0.2010619, within(1e-7));
        assertThat(field.acrossTank(8e-3, 200e-6, 5, 3e-9)).isCloseTo(0.2010619, within(1e-6));
    }

    /** The divider of coil and capacitor by complex impedances. */
    @Test
    void theTankRaisesItTowardsResonance() {
        Random random = new Random(10);
        for (int i = 0; i < 200; i++) {
            double f = 1e3 * Math.pow(1e3, random.nextDouble());
            double l = 200e-6 * (0.5 + random.nextDouble());
            double r = 20 * random.nextDouble();
            double c = 3e-9 * (0.5 + random.nextDouble());
            Complex capacitor = new Complex(0, -1 / (2 * Math.PI * f * c));
            Complex coil = new Complex(r, 2 * Math.PI * f * l);
            AlternatingField field = new AlternatingField(f, 1e-3);
            double expected =
                    field.induced(5e-3) * capacitor.divide(coil.add(capacitor)).abs();
            assertThat(field.acrossTank(5e-3, l, r, c)).isCloseTo(expected, within(1e-9 * expected));
        }
    }

    /** The sum over many single turns. */
    @Test
    void linkageOfAnAirCoil() {
        int n = 10_000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double r = 3.3e-3 + 2.2e-3 * (i + 0.5) / n;
            sum += 80.0 / n * Math.PI * r * r;
        }
        assertThat(AlternatingField.linkageOfAirCoil(80, 3.3e-3, 5.5e-3)).isCloseTo(sum, within(1e-7 * sum));
    }

    @Test
    void worstCaseAtTheThreshold() {
        AlternatingField.Effect effect = new AlternatingField(50, 0.08).effect(2.5, 3, 2);
        assertThat(effect.voltage()).isCloseTo(0.2, within(1e-12));
        assertThat(effect.ofAmplitude()).isCloseTo(0.2 / 3, within(1e-12));
        assertThat(effect.ofDistance()).isCloseTo(0.2, within(1e-12));
        assertThat(effect.mayDisturb()).isFalse();
        AlternatingField.Effect limit = new AlternatingField(50, effect.largestFluxDensity()).effect(2.5, 3, 2);
        assertThat(limit.ofDistance()).isCloseTo(1, within(1e-12));
    }

    /** A sphere, N = 1/3, carries 3 mu/(mu + 2) times the field (Landau and Lifshitz, Electrodynamics of Continuous Media). */
    @Test
    void concentrationOfASphere() {
        for (double mu : new double[] {1, 10, 1500}) {
            assertThat(CoreSaturation.concentration(mu, 1.0 / 3)).isCloseTo(3 * mu / (mu + 2), within(1e-12 * mu));
        }
        // a needle takes all, a sheet across nothing
        assertThat(CoreSaturation.concentration(50, 0)).isEqualTo(50);
        assertThat(CoreSaturation.concentration(50, 1)).isEqualTo(1);
    }

    @Test
    void marginIsOneAtTheLargestField() {
        Random random = new Random(11);
        for (int i = 0; i < 100; i++) {
            double saturation = 0.2 + 0.3 * random.nextDouble();
            CoreSaturation core = new CoreSaturation(
                    saturation, CoreSaturation.concentration(1500, random.nextDouble()), 0.1 * random.nextDouble());
            assertThat(core.margin(core.largestExternal())).isCloseTo(1, within(1e-12));
            assertThat(core.margin(0.5 * core.largestExternal())).isGreaterThan(1);
        }
    }

    @Test
    void tellsWhatDoesNotWork() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new CoreSaturation(0.3, 2, 0.35))
                .withMessage("flux density of the oscillation 0.3500 T: must be at least 0 T and at most 0.3000 T");
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> CoreSaturation.concentration(0.5, 0.3));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> CoreSaturation.concentration(5, 1.3));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> new AlternatingField(0, 1));
        assertThatExceptionOfType(UnworkableException.class).isThrownBy(() -> new AlternatingField(50, Double.NaN));
    }

    @Test
    void slopesAgainstClosedForms() {
        HardLimiter limiter = new HardLimiter(0.5e-3);
        // A = 4 I/(pi G), Gm = 4 I/(pi A)
        double a = limiter.amplitude(100e-6);
        assertThat(Slope.ofAmplitude(limiter, 100e-6)).isCloseTo(-a / 100e-6, within(1e-8 * a / 100e-6));
        assertThat(Slope.ofConductance(limiter, a)).isCloseTo(-100e-6 / a, within(1e-8 * 100e-6 / a));
        assertThat(Pulling.rateOfReturn(limiter, 1e-9, a)).isCloseTo(5e4, within(1e-3));
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> Slope.ofAmplitude(new ClippedStage(100e-6, 1), 110e-6))
                .matches(e -> e.high() == 100e-6);
    }
}
