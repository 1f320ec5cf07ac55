package eddyreach.field;

/**
 * The angular frequencies between which operators are interpolated.
 *
 * @param low lower angular frequency, rad/s
 * @param high higher angular frequency, rad/s
 */
public record Band(double low, double high) {

    /** Width that covers the shift of the oscillation by a target, relative to the undamped frequency. */
    private static final double WIDTH = 1.15;

    /** The band above the undamped angular frequency. */
    public static Band above(double omega) {
        return new Band(omega, WIDTH * omega);
    }
}
