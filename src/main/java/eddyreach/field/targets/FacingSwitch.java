package eddyreach.field.targets;

import eddyreach.field.join.GapState;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.SwitchField;
import eddyreach.field.join.TargetField;
import eddyreach.materials.Material;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;

/**
 * Another switch that looks at the first one along the same axis, as a target whose nearest point is its active face.
 *
 * <p>The mirror z to g - z turns it into a switch as they are all computed. A current round the axis lies in the mirror's plane, so that it
 * and A_phi keep their signs; a wave b exp(-k z) of the first is a wave a exp(k z') of the other. Its reflection is therefore its own
 * response S, with the same sign. Its waves drive the emf {@code j w (4 pi/mu0) s^T W a} in its coil; the loop of coil and capacitor
 * answers with the current {@code -emf / Z}, which emits s once more:
 *
 * <pre>T = S - j w (4 pi/mu0) s s^T / Z,   Z = Z_coil + R_winding + 1/(j w C)</pre>
 *
 * <p>Near its own resonance Z is small and the second term large: there two oscillators pull and lock.
 */
public final class FacingSwitch implements TargetField {

    private final SwitchField other;
    private final Optional<DoubleFunction<Complex>> loop;

    private FacingSwitch(SwitchField other, Optional<DoubleFunction<Complex>> loop) {
        this.other = other;
        this.loop = loop;
    }

    /** A switch whose coil carries no current: its metal and its core alone. */
    public static FacingSwitch open(SwitchField other) {
        return new FacingSwitch(other, Optional.empty());
    }

    /**
     * A switch whose coil is closed over its capacitor.
     *
     * @param other its field, for the same waves as those of the first
     * @param loop impedance of the loop of coil and capacitor without surroundings, ohm, over the angular frequency, rad/s
     */
    public static FacingSwitch closed(SwitchField other, DoubleFunction<Complex> loop) {
        return new FacingSwitch(other, Optional.of(loop));
    }

    @Override
    public Reflection at(double omega) {
        double[][] s = other.response(omega);
        if (loop.isEmpty()) {
            return new Reflection.Full(s[0], s[1]);
        }
        double[][] link = other.link(omega);
        int n = link[0].length;
        Complex current = new Complex(0, -omega * 4 * Math.PI / Material.MU0)
                .divide(loop.get().apply(omega));
        for (int i = 0; i < n; i++) {
            Complex row = current.multiply(new Complex(link[0][i], link[1][i]));
            for (int j = 0; j < n; j++) {
                Complex t = row.multiply(new Complex(link[0][j], link[1][j]));
                s[0][i * n + j] += t.getReal();
                s[1][i * n + j] += t.getImaginary();
            }
        }
        return new Reflection.Full(s[0], s[1]);
    }

    /**
     * Mutual inductance between the coil of a first switch and this one's, H: emf in this one over j w times the current in the first. Its
     * imaginary part, of the sign of a loss, comes from eddy currents.
     *
     * @param gap waves between the two with this coil open ({@link #open}), for one ampere in the first
     * @param omega angular frequency, rad/s
     */
    public Complex mutual(GapState gap, double omega) {
        double[][] link = other.link(omega);
        double[] w = other.basis().w();
        double re = 0;
        double im = 0;
        for (int i = 0; i < w.length; i++) {
            double a = link[0][i] / Math.sqrt(w[i]);
            double b = link[1][i] / Math.sqrt(w[i]);
            re += a * gap.arrivingRe()[i] - b * gap.arrivingIm()[i];
            im += a * gap.arrivingIm()[i] + b * gap.arrivingRe()[i];
        }
        return new Complex(re, im).multiply(4 * Math.PI / Material.MU0);
    }
}
