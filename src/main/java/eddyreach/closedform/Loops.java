package eddyreach.closedform;

import eddyreach.materials.Material;
import eddyreach.numerics.Elliptic;
import org.apache.commons.math3.complex.Complex;

/** Circular loops on a common axis. */
public final class Loops {

    private Loops() {}

    /**
     * Mutual inductance of two coaxial circles, H (Maxwell, Treatise, section 701, second form):
     * {@code M = 2 mu0 sqrt(a b / k1) (K(k1) - E(k1))}, k1 = (R1 - R2)/(R1 + R2), with R1 and R2 the longest and the shortest distance
     * between points of the circles. This form keeps all digits for distant circles too.
     *
     * @param a radius of one circle, m
     * @param b radius of the other, m
     * @param distance distance of their planes, m
     * @throws IllegalArgumentException if the circles coincide
     */
    public static double mutual(double a, double b, double distance) {
        Args.positive("radius a, m", a);
        Args.positive("radius b, m", b);
        double far = Math.hypot(a + b, distance);
        double near = Args.positive("shortest distance of the circles, m", Math.hypot(a - b, distance));
        double sum = far + near;
        double k1 = 4 * a * b / (sum * sum);
        double m1 = 4 * far * near / (sum * sum);
        return 2 * Material.MU0 * Math.sqrt(a * b / k1) * Elliptic.kMinusE(k1 * k1, m1);
    }

    /**
     * Low-frequency self-inductance of a circle of round wire, H (Rosa and Grover, Bull. Bureau of Standards 8, 1912, formula of
     * Rayleigh and Niven): {@code mu0 a [(1 + rho^2/(8 a^2)) ln(8a/rho) + rho^2/(24 a^2) - 7/4]}; next term of order (rho/a)^4.
     *
     * @param a radius of the circle to the wire's centre, m
     * @param wireRadius radius rho of the wire, m
     */
    public static double selfRoundWire(double a, double wireRadius) {
        double square = wireRadius * wireRadius / (a * a);
        return Material.MU0 * a * ((1 + square / 8) * Math.log(8 * a / wireRadius) + square / 24 - 1.75);
    }

    /**
     * Change of a loop's inductance by a perfectly conducting half-space, H: the image loop, -M(a, a, 2h) (Beissner, J. Nondestr.
     * Eval. 7, 1988, eq. 14).
     *
     * @param a radius of the loop, m
     * @param height height of its plane over the surface, m
     */
    public static double overPerfectConductor(double a, double height) {
        return -mutual(a, a, 2 * height);
    }

    /**
     * Change of a loop's inductance by a non-conducting magnetic half-space, H: (mu - 1)/(mu + 1) M(a, a, 2h).
     *
     * @param a radius of the loop, m
     * @param height height of its plane over the surface, m
     * @param mu relative permeability
     */
    public static double overMagneticHalfSpace(double a, double height, double mu) {
        return (mu - 1) / (mu + 1) * mutual(a, a, 2 * height);
    }

    /**
     * Change of a loop's impedance by any plane body, ohm: {@code dZ = j w pi mu0 a^2 int J1(k a)^2 exp(-2 k h) Gamma(k) dk} (Dodd and
     * Deeds 1968, delta-function coil). Converged to 1e-9 relative.
     *
     * @param a radius of the loop, m
     * @param height height h of its plane over the surface, m, above 0
     * @param body reflecting body
     * @param omega angular frequency, rad/s
     */
    public static Complex impedanceChange(double a, double height, Reflector body, double omega) {
        Args.positive("radius a, m", a);
        Args.positive("height, m", height);
        return new RadialSpectrum(a, a).impedance(omega, 1, 2 * height, (k, re, im) -> {
            body.reflection(omega, k, re, im);
            for (int i = 0; i < k.length; i++) {
                double factor = Math.exp(-2 * k[i] * height);
                re[i] *= factor;
                im[i] *= factor;
            }
        });
    }
}
