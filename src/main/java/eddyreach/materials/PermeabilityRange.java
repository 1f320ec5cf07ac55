package eddyreach.materials;

/**
 * Two values between which a relative permeability lies.
 *
 * @param low the lower, at least 1
 * @param high the higher, above the lower
 */
public record PermeabilityRange(double low, double high) {

    public PermeabilityRange {
        if (!(low >= 1 && high > low && Double.isFinite(high))) {
            throw new IllegalArgumentException("permeability " + low + " to " + high + ": must rise from 1 or more");
        }
    }

    /** The value that stands for it: as many times the lower as the higher is of it. */
    public double middle() {
        return Math.sqrt(low * high);
    }
}
