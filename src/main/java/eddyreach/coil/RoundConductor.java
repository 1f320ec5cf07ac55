package eddyreach.coil;

import eddyreach.numerics.ComplexBessel;
import eddyreach.numerics.Require;
import org.apache.commons.math3.complex.Complex;

/**
 * Skin effect and proximity effect of a long, straight, non-magnetic round conductor.
 *
 * <p>Both depend on {@code x = a sqrt(w mu0 sigma) = d / (delta sqrt 2)} only, with the radius a, the diameter
 * d = 2a, the skin depth delta; {@code k a = x exp(-j pi/4)}, {@code k^2 = -j w mu0 sigma} (time factor
 * exp(+j w t)).
 *
 * <p><b>Skin effect.</b> {@code Z' = k J0(ka) / (2 pi a sigma J1(ka))} per length, hence over the direct-current
 * resistance {@code 1/(pi a^2 sigma)}: {@code F(x) = Re[(ka/2) J0(ka)/J1(ka)]}.
 *
 * <p><b>Proximity effect.</b> In a uniform transverse field H (peak) the vector potential is, with B = mu0 H,
 * inside {@code E J1(kr) sin phi} and outside {@code B (r + D a^2/r) sin phi}. Continuity of A and dA/dr at r = a
 * gives {@code E = 2B/(k J0(ka))}, {@code D = J2(ka)/J0(ka)}. The dipole moment per length is
 * {@code 2 pi a^2 H D}; the mean power it takes from the field, {@code (w mu0/2) Im(-m' H*)}, is
 * {@code P' = pi a^2 w mu0 |H|^2 Im(-D)}. With {@code G(x) = (x^2/8) Im(-J2(ka)/J0(ka))} and
 * {@code w mu0 = x^2/(a^2 sigma)}:
 *
 * <pre>P' = (8 pi / sigma) G(x) |H|^2      (W/m, H peak, averaged over time)</pre>
 *
 * <p>In this normalisation, Butterworth's, a straight wire at distance D from a second one that carries the same
 * current, {@code H = I/(2 pi D)}, has its resistance raised by {@code (d/D)^2 G} of the direct-current one. Low
 * frequency: {@code G = x^4/64}, {@code P' = pi w^2 mu0^2 sigma d^4 |H|^2 / 128}.
 *
 * <p>Valid for length much greater than diameter and a field uniform over the strand; then the currents of the two
 * effects are even and odd across the strand and their losses add (Ferreira, IEEE Trans. Power Electronics 9,
 * 1994, 127). Accuracy 1e-12 for x up to 100. References: S. Butterworth, Proc. Roy. Soc. A 107 (1925) 693;
 * NBS Circular 74 (1937); F. E. Terman, Radio Engineers' Handbook, 1943; J. Lammeraner and M. Stafl, Eddy
 * Currents, 1966.
 */
public final class RoundConductor {

    private RoundConductor() {}

    /**
     * Skin-effect factor F = Rac/Rdc.
     *
     * @param x diameter over (skin depth times sqrt 2), not negative
     */
    public static double skinFactor(double x) {
        if (Require.notNegative("strand diameter over skin depth sqrt 2", x, "") == 0) {
            return 1;
        }
        Complex ka = argument(x);
        return ka.divide(ComplexBessel.ratio10(ka)).getReal() / 2;
    }

    /**
     * Proximity-effect factor G.
     *
     * @param x diameter over (skin depth times sqrt 2), not negative
     */
    public static double proximityFactor(double x) {
        Require.notNegative("strand diameter over skin depth sqrt 2", x, "");
        return -x * x / 8 * ComplexBessel.ratio20(argument(x)).getImaginary();
    }

    private static Complex argument(double x) {
        double c = x * Math.sqrt(0.5);
        return new Complex(c, -c);
    }
}
