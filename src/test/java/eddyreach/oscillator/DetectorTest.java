package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DetectorTest {

    private static final double C = 1e-9;
    private static final double NOISE = 1e-6;

    /** With a hard limiter both equations are linear: exponentials with the time constants 2C/G and tau. */
    @Test
    void hardLimiterAndFilterAreTwoExponentials() {
        Random random = new Random(5);
        for (int i = 0; i < 100; i++) {
            HardLimiter limiter = new HardLimiter(0.5e-3);
            double g = 50e-6 + 300e-6 * random.nextDouble();
            double start = 1 + 9 * random.nextDouble();
            double tau = 2e-6 + 60e-6 * random.nextDouble();
            double t = 100e-6 * random.nextDouble();
            Detector detector = new Detector(limiter, C, NOISE, tau);
            double steady = limiter.amplitude(g);
            double own = 2 * C / g;
            Detector.State end = detector.follow(new Detector.State(start, start), s -> g, 0, t, t)
                    .end();
            assertThat(end.amplitude())
                    .isCloseTo(steady + (start - steady) * Math.exp(-t / own), within(1e-7 * steady));
            double driven = (start - steady) * own / (own - tau);
            double demodulated = steady + driven * Math.exp(-t / own) + (start - steady - driven) * Math.exp(-t / tau);
            assertThat(end.demodulated()).isCloseTo(demodulated, within(3e-7 * Math.max(steady, start)));
        }
    }

    @Test
    void locatesLevels() {
        HardLimiter limiter = new HardLimiter(0.5e-3);
        Detector detector = new Detector(limiter, C, NOISE, 0);
        double g = 100e-6;
        double steady = limiter.amplitude(g);
        Detector.Trace trace = detector.follow(new Detector.State(1, 1), s -> g, 0, 200e-6, 50e-6, 2, 7, 5);
        assertThat(trace.passages()).extracting(Detector.Passage::level).containsExactly(0, 2);
        assertThat(trace.passages()).allMatch(Detector.Passage::rising);
        for (Detector.Passage p : trace.passages()) {
            double level = p.level() == 0 ? 2 : 5;
            assertThat(p.time()).isCloseTo(20e-6 * Math.log((steady - 1) / (steady - level)), within(1e-12));
        }
    }

    /** Below the clip level the stage is linear: from noise the amplitude grows as exp((gm - G) t/(2C)). */
    @Test
    void growsFromNoise() {
        Random random = new Random(6);
        for (int i = 0; i < 50; i++) {
            double gm = 100e-6 * (1 + random.nextDouble());
            double g = gm * random.nextDouble();
            double noise = Math.pow(10, -7 + 3 * random.nextDouble());
            Detector detector = new Detector(new ClippedStage(gm, 1), C, noise, 0);
            double expected = 2 * C / (gm - g) * Math.log(0.7 / noise);
            Detector.Trace trace =
                    detector.follow(detector.atPowerOn(), t -> g, 0, 1.1 * expected, 0.3 * expected, 0.7);
            assertThat(trace.passages()).hasSize(1);
            assertThat(trace.passages().get(0).time()).isCloseTo(expected, within(1e-7 * expected));
        }
    }

    /** However long the target stayed, the oscillation comes back from the noise that it fell to. */
    @Test
    void collapseEndsInTheNoise() {
        Detector detector = new Detector(new ClippedStage(400e-6, 1.5), C, 1e-4, 0);
        for (double stay : new double[] {200e-6, 2e-3}) {
            double end = stay + 400e-6;
            Detector.Trace trace = detector.follow(
                    new Detector.State(1.4, 1.4), t -> t < stay ? 600e-6 : 300e-6, 0, end, 50e-6, 1.2, 2e-4);
            assertThat(trace.passages()).extracting(Detector.Passage::level).containsExactly(0, 1, 1, 0);
            double growth = 2 * C / 100e-6;
            assertThat(trace.passages().get(2).time()).isCloseTo(stay + growth * Math.log(2), within(1e-9));
            assertThat(trace.passages().get(3).time()).isCloseTo(stay + growth * Math.log(1.2e4), within(1e-9));
        }
        assertThat(detector.settled(500e-6)).isEqualTo(new Detector.State(1e-4, 1e-4));
    }

    @Test
    void agreesWithTheEnvelopeUnderRandomDamping() {
        Random random = new Random(7);
        ActiveElement pair = new TanhPair(0.5e-3, 1e-3);
        for (int i = 0; i < 30; i++) {
            double g = 100e-6 + 300e-6 * random.nextDouble();
            double swing = 0.9 * random.nextDouble();
            double omega = 2e4 + 2e5 * random.nextDouble();
            double t = 100e-6 * (0.1 + random.nextDouble());
            double start = Math.pow(10, -3 + 4 * random.nextDouble());
            double expected =
                    new Envelope(pair, new Tank(C)).after(start, s -> g * (1 + swing * Math.sin(omega * s)), t);
            double found = new Detector(pair, C, NOISE, 0)
                    .follow(
                            new Detector.State(start, start),
                            s -> g * (1 + swing * Math.sin(omega * s)),
                            0,
                            t,
                            1 / omega)
                    .end()
                    .amplitude();
            assertThat(found).isCloseTo(expected, within(1e-7 * expected));
        }
    }

    @Test
    void withoutInertiaTheAmplitudeIsTheSteadyOne() {
        ActiveElement pair = new TanhPair(0.5e-3, 1e-3);
        Detector detector = new Detector(pair, C, NOISE, 0).withoutInertia();
        double level = pair.amplitude(200e-6);
        Detector.Trace trace = detector.follow(detector.settled(100e-6), t -> 100e-6 + t, 0, 300e-6, 30e-6, level);
        assertThat(trace.passages()).hasSize(1);
        assertThat(trace.passages().get(0).time()).isCloseTo(100e-6, within(1e-12));
        assertThat(trace.end().demodulated()).isCloseTo(pair.amplitude(400e-6), within(1e-12));
        // the filter alone behind a sudden change
        Detector filter = new Detector(pair, C, NOISE, 10e-6).withoutInertia();
        double from = pair.amplitude(100e-6);
        double to = pair.amplitude(400e-6);
        assertThat(filter.follow(filter.settled(100e-6), t -> 400e-6, 0, 13e-6, 5e-6)
                        .end()
                        .demodulated())
                .isCloseTo(to + (from - to) * Math.exp(-1.3), within(1e-7));
    }

    @Test
    void tellsWhatDoesNotWork() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new Detector(new HardLimiter(1), C, NOISE, -1e-5))
                .withMessage("time constant of the demodulator -1.000e-05 s: must be at least 0 s");
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new Detector(new HardLimiter(1), C, 0, 1e-5));
        Detector stage = new Detector(new ClippedStage(100e-6, 1), C, NOISE, 0);
        stage.requireStart(99e-6);
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> stage.requireStart(120e-6))
                .satisfies(e -> {
                    assertThat(e.quantity()).isEqualTo("loss conductance of the tank");
                    assertThat(e.value()).isEqualTo(120e-6);
                    assertThat(e.high()).isEqualTo(100e-6);
                    assertThat(e.unit()).isEqualTo("S");
                    assertThat(e.anyWorks()).isTrue();
                })
                .withMessageStartingWith("the oscillator never starts; ");
        assertThatIllegalArgumentException().isThrownBy(() -> stage.follow(stage.atPowerOn(), t -> 1e-6, 1, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> stage.follow(stage.atPowerOn(), t -> 1e-6, 0, 1, 0));
    }
}
