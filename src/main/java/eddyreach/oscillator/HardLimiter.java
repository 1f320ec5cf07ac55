package eddyreach.oscillator;

import eddyreach.numerics.Require;
import java.util.List;

/**
 * Current-limited switching pair: {@code i = I0 sign(v)}, in phase to feed the tank.
 *
 * <p>The fundamental of the square wave is {@code 4 I0/pi}, hence {@code Gm(A) = 4 I0/(pi A)} and
 * {@code A = 4 I0/(pi G)}: it sustains the oscillation at any loss. Reference: A. Gelb and W. E. Vander Velde,
 * Multiple-Input Describing Functions, 1968, section 2.3.
 *
 * @param current limiting current I0, A, peak
 */
public record HardLimiter(double current) implements ActiveElement {

    public HardLimiter {
        Require.positive("limiting current", current, "A");
    }

    @Override
    public String name() {
        return "hard limiter";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(new Parameter("current", current, "A"));
    }

    @Override
    public double conductance(double amplitude) {
        return 4 * current / (Math.PI * Require.positive("amplitude", amplitude, "V"));
    }

    @Override
    public double smallSignalConductance() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double amplitude(double tankConductance) {
        return 4 * current / (Math.PI * Require.positive("tank conductance", tankConductance, "S"));
    }
}
