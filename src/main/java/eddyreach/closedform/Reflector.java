package eddyreach.closedform;

import org.apache.commons.math3.complex.Complex;

/**
 * A plane, laterally uniform body in z of 0 and more, seen from the air in front of it.
 *
 * <p>A wave b e^{-kz} J1(k r) of the vector potential A_phi coming from a coil in z below 0 returns as a e^{kz} J1(k r) with
 * a = Gamma b. Gamma is -1 for a perfect conductor, 0 for air and +1 in the limit of infinite permeability. Time factor exp(+jwt):
 * a passive non-magnetic body has Im Gamma not above 0.
 */
public interface Reflector {

    /**
     * Reflection coefficients for many spatial frequencies at once.
     *
     * @param omega angular frequency, rad/s
     * @param k spatial frequencies, 1/m, above 0
     * @param re receives the real parts; as long as k
     * @param im receives the imaginary parts; as long as k
     */
    void reflection(double omega, double[] k, double[] re, double[] im);

    /**
     * Reflection coefficient for one spatial frequency.
     *
     * @param omega angular frequency, rad/s
     * @param k spatial frequency, 1/m, above 0
     */
    default Complex reflection(double omega, double k) {
        double[] re = new double[1];
        double[] im = new double[1];
        reflection(omega, new double[] {k}, re, im);
        return new Complex(re[0], im[0]);
    }

    /** A perfectly conducting half-space: Gamma = -1. */
    static Reflector perfectConductor() {
        return constant(-1);
    }

    /**
     * A non-conducting half-space: Gamma = (mu_r - 1)/(mu_r + 1), the image factor (Smythe, Static and Dynamic Electricity, 1950,
     * images in plane boundaries).
     *
     * @param mu relative permeability
     */
    static Reflector magneticHalfSpace(double mu) {
        return constant((mu - 1) / (mu + 1));
    }

    private static Reflector constant(double gamma) {
        return (omega, k, re, im) -> {
            for (int i = 0; i < k.length; i++) {
                re[i] = gamma;
                im[i] = 0;
            }
        };
    }
}
