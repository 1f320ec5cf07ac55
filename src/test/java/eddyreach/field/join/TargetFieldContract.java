package eddyreach.field.join;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;

/**
 * What every target owes to physics, whatever it is made of: it loses power and makes none, it is reciprocal, it fades with the
 * distance, and it gives what an independent solution gives. Tests of implementations of {@link TargetField} inherit it; the switch is the
 * reference switch at {@link ReferenceSwitch#OMEGA}.
 */
public abstract class TargetFieldContract {

    protected static final Resolution RESOLUTION = Resolution.FINE;
    protected static final double OMEGA = ReferenceSwitch.OMEGA;

    private static SwitchField field;

    /** The waves of the gap. */
    protected static WaveBasis basis() {
        return field().basis();
    }

    protected static synchronized SwitchField field() {
        if (field == null) {
            field = ReferenceSwitch.field(RESOLUTION);
        }
        return field;
    }

    /** The target, for the waves of {@link #basis}. */
    protected abstract TargetField target();

    /** The change of impedance at a distance, m, by another way, ohm. */
    protected abstract Complex independent(double distance);

    /** How far the two ways may differ, relative to the change; a looser one than 0.3 % has its reason in the test. */
    protected double tolerance() {
        return 3e-3;
    }

    private Complex change(double distance) {
        return field().at(OMEGA).impedance(target().at(OMEGA), distance);
    }

    @Test
    void losesPowerAndMakesNone() {
        Reflection t = target().at(OMEGA);
        int n = basis().size();
        double[][] loss = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                loss[i][j] = t instanceof Reflection.Diagonal d
                        ? i == j ? -d.im()[i] : 0
                        : -(((Reflection.Full) t).im()[i * n + j] + ((Reflection.Full) t).im()[j * n + i]) / 2;
            }
        }
        double[] values = new EigenDecomposition(new Array2DRowRealMatrix(loss)).getRealEigenvalues();
        double least = Double.POSITIVE_INFINITY;
        double largest = 0;
        for (double v : values) {
            least = Math.min(least, v);
            largest = Math.max(largest, v);
        }
        assertThat(largest).isPositive();
        assertThat(least).isGreaterThan(-1e-9 * largest);
    }

    /** S and T are stored with the square roots of the weights on both sides, so that they are symmetric. */
    @Test
    void isReciprocal() {
        if (target().at(OMEGA) instanceof Reflection.Full t) {
            int n = basis().size();
            double worst = 0;
            double largest = 0;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    largest = Math.max(largest, Math.hypot(t.re()[i * n + j], t.im()[i * n + j]));
                    worst = Math.max(
                            worst,
                            Math.hypot(t.re()[i * n + j] - t.re()[j * n + i], t.im()[i * n + j] - t.im()[j * n + i]));
                }
            }
            assertThat(worst).isLessThan(1e-10 * largest);
        }
    }

    /** Near the face parts of opposite sign may cancel (ferrite and tube of another switch); two core radii away nothing does any more. */
    @Test
    void fadesWithTheDistance() {
        double before = Double.POSITIVE_INFINITY;
        for (double g = 2 * ReferenceSwitch.SCALE; g < 60e-3; g *= 1.5) {
            double here = change(g).abs();
            assertThat(here).as("at %.1f mm", g * 1e3).isPositive().isLessThan(before);
            before = here;
        }
        assertThat(change(40e-3).abs()).isLessThan(1e-2 * change(2e-3).abs());
    }

    @Test
    void givesWhatAnIndependentSolutionGives() {
        for (double g : new double[] {2e-3, 5e-3}) {
            Complex other = independent(g);
            assertThat(change(g).subtract(other).abs())
                    .as("at %.1f mm: %s, other way %s", g * 1e3, change(g), other)
                    .isLessThan(tolerance() * other.abs());
        }
    }
}
