package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.Detector;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.UnworkableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OutputStageTest {

    /** Random walks of the amplitude through both levels: the output of a circuit stepped through time in fine steps. */
    @Test
    void agreesWithACircuitSteppedThroughTime() {
        Random random = new Random(21);
        int changes = 0;
        for (int i = 0; i < 60; i++) {
            OutputStage stage = new OutputStage(1, 2, random.nextInt(4) * 0.05 + 0.003);
            double[] corners = new double[30];
            for (int k = 0; k < corners.length; k++) {
                corners[k] = 3 * random.nextDouble();
            }
            corners[0] = 2.5;
            List<Detector.Passage> passages = new ArrayList<>();
            for (int k = 1; k < corners.length; k++) {
                List<Detector.Passage> here = new ArrayList<>();
                for (int level = 0; level < 2; level++) {
                    double share = (stage.levels()[level] - corners[k - 1]) / (corners[k] - corners[k - 1]);
                    if (share > 0 && share < 1) {
                        here.add(new Detector.Passage(0.1 * (k - 1 + share), level, corners[k] > corners[k - 1]));
                    }
                }
                here.sort((a, b) -> Double.compare(a.time(), b.time()));
                passages.addAll(here);
            }
            double end = 0.1 * (corners.length - 1);
            List<OutputStage.Change> found = stage.output(passages, false, end);
            List<OutputStage.Change> stepped = stepped(stage, corners, end);
            assertThat(found).hasSameSizeAs(stepped);
            for (int k = 0; k < found.size(); k++) {
                assertThat(found.get(k).on()).isEqualTo(stepped.get(k).on());
                assertThat(found.get(k).time()).isCloseTo(stepped.get(k).time(), within(5e-5));
            }
            changes += found.size();
        }
        assertThat(changes).isGreaterThan(200);
    }

    private static List<OutputStage.Change> stepped(OutputStage stage, double[] corners, double end) {
        List<OutputStage.Change> changes = new ArrayList<>();
        double step = 1e-5;
        boolean comparator = false;
        boolean output = false;
        double since = 0;
        for (int n = 0; n * step < end; n++) {
            double t = n * step;
            int k = Math.min(corners.length - 2, (int) (t / 0.1));
            double amplitude = corners[k] + (corners[k + 1] - corners[k]) * (t / 0.1 - k);
            boolean now = stage.compare(amplitude, comparator);
            if (now != comparator) {
                comparator = now;
                since = t;
            }
            if (comparator != output && t - since >= stage.delay()) {
                output = comparator;
                changes.add(new OutputStage.Change(t, output));
            }
        }
        return changes;
    }

    @Test
    void tellsWhatDoesNotWork() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new OutputStage(2, 1, 0))
                .withMessage("on amplitude 2 V: must be positive and at most 1 V");
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new OutputStage(1, 2, -1e-3))
                .withMessage("delay of the output -0.001000 s: must be at least 0 s");
        Trim trim = new Trim(100e-6, 80e-6);
        assertThat(OutputStage.of(trim, new HardLimiter(0.5e-3), 0).onAmplitude())
                .isCloseTo(6.366198, within(1e-6));
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> OutputStage.of(trim, new ClippedStage(90e-6, 1), 0))
                .matches(e -> e.value() == 100e-6 && e.high() == 90e-6);
    }
}
