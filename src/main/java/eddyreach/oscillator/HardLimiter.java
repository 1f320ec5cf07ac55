package eddyreach.oscillator;

/**
 * Current-limited pair that switches hard: a square current in phase with the voltage, whose fundamental gives
 * {@code Gm_eff(A) = 4 I0 / (pi A)}.
 *
 * @param current amplitude I0 of the square current, A, positive
 */
public record HardLimiter(double current) implements ActiveElement {

    public HardLimiter {
        if (!(current > 0)) {
            throw new IllegalArgumentException("current must be above 0 A, got " + current);
        }
    }

    @Override
    public String name() {
        return "hard limiter";
    }

    @Override
    public double conductance(double amplitude) {
        return 4 * current / (Math.PI * amplitude);
    }

    @Override
    public double smallSignalConductance() {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double amplitude(double tankConductance) {
        return 4 * current / (Math.PI * tankConductance);
    }
}
