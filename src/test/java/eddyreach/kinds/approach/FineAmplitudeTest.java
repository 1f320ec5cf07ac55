package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.core.Curve;
import eddyreach.report.words.Labels;
import org.jfree.data.xy.XYSeries;
import org.junit.jupiter.api.Test;

class FineAmplitudeTest {

    /** Conductance, S, at which the oscillation breaks off. */
    private static final double BREAK = 10;

    /** Amplitude that ends with an upright tangent, as that of every smooth active element does. */
    private static double amplitude(double conductance) {
        return Math.sqrt(Math.max(0, 1 - conductance / BREAK));
    }

    /** Conductance of a tank whose loss falls like that of a real one: a constant and a decaying part. */
    private static double conductance(double d) {
        return 0.4 + 20 * Math.exp(-d / 1.2e-3);
    }

    private static Curve curve(int n) {
        double[][] c = new double[9][n];
        for (int i = 0; i < n; i++) {
            c[0][i] = 15e-3 * i / (n - 1);
            c[7][i] = conductance(c[0][i]);
            c[8][i] = amplitude(c[7][i]);
        }
        return new Curve(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8]);
    }

    /** Off by 1.6e-5 of the height at most; straight lines between the curve's own points are off by 0.15 next to the break. */
    @Test
    void amplitudeBetweenThePointsIsThatOfTheTankThere() {
        XYSeries fine = new FineAmplitude(curve(61), FineAmplitudeTest::amplitude).series(0);
        assertThat(fine.getItemCount()).isGreaterThan(400);
        double straight = 0;
        for (int i = 0; i < fine.getItemCount(); i++) {
            double mm = fine.getX(i).doubleValue();
            double exact = amplitude(conductance(mm / Labels.MM));
            assertThat(Math.abs(fine.getY(i).doubleValue() - exact))
                    .as("at %s mm", mm)
                    .isLessThan(1e-4);
            int below = i / 8 * 8;
            int above = Math.min(below + 8, fine.getItemCount() - 1);
            double u = above == below ? 0 : (i - below) / (double) (above - below);
            double chord =
                    fine.getY(below).doubleValue() * (1 - u) + fine.getY(above).doubleValue() * u;
            straight = Math.max(straight, Math.abs(chord - exact));
        }
        assertThat(straight).isGreaterThan(0.1);
    }
}
