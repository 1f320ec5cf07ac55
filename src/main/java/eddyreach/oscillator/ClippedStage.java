package eddyreach.oscillator;

/**
 * Linear stage whose output stops growing above a voltage D (saturation): {@code Gm_eff = gm} up to D, then
 * {@code gm (2/pi) (asin u + u sqrt(1 - u^2))}, u = D/A (Gelb and Vander Velde 1968).
 *
 * @param transconductance transconductance gm of the linear part, S, positive
 * @param clipLevel voltage amplitude D where clipping begins, V, positive
 */
public record ClippedStage(double transconductance, double clipLevel) implements ActiveElement {

    public ClippedStage {
        if (!(transconductance > 0 && clipLevel > 0)) {
            throw new IllegalArgumentException("transconductance and clip level must be above 0, got "
                    + transconductance + " S, " + clipLevel + " V");
        }
    }

    @Override
    public String name() {
        return "clipped stage";
    }

    @Override
    public double conductance(double amplitude) {
        double u = clipLevel / amplitude;
        return u >= 1 ? transconductance : transconductance * 2 / Math.PI * (Math.asin(u) + u * Math.sqrt(1 - u * u));
    }

    @Override
    public double smallSignalConductance() {
        return transconductance;
    }

    @Override
    public double amplitude(double tankConductance) {
        if (tankConductance >= transconductance) {
            return 0;
        }
        // the bracket's function falls in A; above it Gm_eff is below that of a hard limiter of current gm D
        double low = clipLevel;
        double high = 4 * transconductance * clipLevel / (Math.PI * tankConductance);
        while (high - low > 1e-14 * high) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (conductance(middle) > tankConductance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
