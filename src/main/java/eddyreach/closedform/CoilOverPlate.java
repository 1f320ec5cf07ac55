package eddyreach.closedform;

import org.apache.commons.math3.complex.Complex;

/**
 * An air coil of rectangular section parallel to a plane body (Dodd and Deeds, J. Appl. Phys. 39, 1968, 2829):
 *
 * <pre>
 *   dZ = j w pi mu0 N^2 int_0^inf P(k)^2 [(1 - exp(-k l))/(k l)]^2 exp(-2 k h) Gamma(k) dk,
 *   P = int_{r1}^{r2} r J1(k r) dr / (r2 - r1)
 * </pre>
 *
 * <p>Converged to 1e-9 relative at any lift-off, zero included.
 */
public final class CoilOverPlate {

    private CoilOverPlate() {}

    /**
     * Change of the coil's impedance by the body, ohm.
     *
     * @param coil coil
     * @param liftOff distance h from the coil's near end to the body's surface, m, not negative
     * @param body reflecting body
     * @param omega angular frequency, rad/s
     */
    public static Complex impedanceChange(RectangularCoil coil, double liftOff, Reflector body, double omega) {
        Args.notNegative("lift-off, m", liftOff);
        double length = coil.length();
        return new RadialSpectrum(coil.innerRadius(), coil.outerRadius())
                .impedance(omega, coil.turns(), 2 * liftOff, (k, re, im) -> {
                    body.reflection(omega, k, re, im);
                    for (int i = 0; i < k.length; i++) {
                        double axial = axial(k[i] * length);
                        double factor = axial * axial * Math.exp(-2 * k[i] * liftOff);
                        re[i] *= factor;
                        im[i] *= factor;
                    }
                });
    }

    private static double axial(double x) {
        return x == 0 ? 1 : -Math.expm1(-x) / x;
    }
}
