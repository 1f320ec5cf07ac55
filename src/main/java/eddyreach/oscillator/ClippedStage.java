package eddyreach.oscillator;

import eddyreach.numerics.Require;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Linear stage with clipping: {@code i = gm v} up to {@code |v| = D}, constant beyond.
 *
 * <p>Describing function of saturation, for A above D:
 * {@code Gm(A) = gm (2/pi) [asin(D/A) + (D/A) sqrt(1 - (D/A)^2)]}, and gm for A up to D (A. Gelb and W. E. Vander
 * Velde, Multiple-Input Describing Functions, 1968, section 2.3). The oscillation collapses when the loss reaches
 * {@code G = gm}; just below, the amplitude is D. With {@code D/A = sin(psi/2)} the steady amplitude follows
 * from {@code psi + sin psi = pi G/gm}, solved to 1e-14 relative.
 *
 * @param transconductance slope gm of the linear part, S
 * @param clipLevel voltage D at which the current saturates, V, peak
 */
public record ClippedStage(double transconductance, double clipLevel) implements ActiveElement {

    private static final int MAX_EVALUATIONS = 100;

    public ClippedStage {
        Require.positive("transconductance", transconductance, "S");
        Require.positive("clip level", clipLevel, "V");
    }

    @Override
    public String name() {
        return "clipped stage";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(
                new Parameter("transconductance", transconductance, "S"), new Parameter("clip level", clipLevel, "V"));
    }

    @Override
    public double conductance(double amplitude) {
        double u = clipLevel / Require.positive("amplitude", amplitude, "V");
        return u >= 1
                ? transconductance
                : transconductance * 2 / Math.PI * (Math.asin(u) + u * Math.sqrt((1 - u) * (1 + u)));
    }

    @Override
    public double smallSignalConductance() {
        return transconductance;
    }

    @Override
    public double amplitude(double tankConductance) {
        Require.positive("tank conductance", tankConductance, "S");
        if (tankConductance >= transconductance) {
            return 0;
        }
        double y = Math.PI * tankConductance / transconductance;
        // psi <= psi + sin psi <= 2 psi brackets the root
        double psi = new BrentSolver(1e-14, 1e-14 * y, 1e-18 * y)
                .solve(MAX_EVALUATIONS, p -> p + Math.sin(p) - y, y / 2, Math.min(y, Math.PI));
        return clipLevel / Math.sin(psi / 2);
    }
}
