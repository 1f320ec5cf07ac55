package eddyreach.closedform;

import eddyreach.materials.Material;
import eddyreach.numerics.Elliptic;

/** Self-inductance of air coils with evenly spread current. */
public final class CoilInductance {

    private CoilInductance() {}

    /**
     * Inductance in H of a coil of rectangular section:
     *
     * <pre>
     *   L = pi mu0 N^2 int_0^inf P(k)^2 2 (k l - 1 + exp(-k l))/(k l)^2 dk,   P = int_{r1}^{r2} r J1(k r) dr / (r2 - r1)
     * </pre>
     *
     * (Dodd and Deeds, J. Appl. Phys. 39, 1968, 2829, the term without a conductor). Converged to 1e-9 relative. Length 0 gives the
     * flat disc coil (Spielrein, Arch. Elektrotech. 3, 1915, 187).
     */
    public static double rectangular(RectangularCoil coil) {
        double length = coil.length();
        double integral = new RadialSpectrum(coil.innerRadius(), coil.outerRadius())
                .integrate(0, (k, re, im) -> {
                    for (int i = 0; i < k.length; i++) {
                        re[i] = axial(k[i] * length);
                        im[i] = 0;
                    }
                })
                .getReal();
        return Math.PI * Material.MU0 * coil.turns() * coil.turns() * integral;
    }

    /**
     * Nagaoka's coefficient of a thin solenoid, L = K mu0 N^2 pi a^2 / l (Lorenz 1879; Nagaoka, J. Coll. Sci. Tokyo 27, 1909, 6):
     * {@code K = 4/(3 pi k') [ (k'^2/k^2)(K(k) - E(k)) + E(k) - k ]}, k = D/sqrt(D^2 + l^2), k' = l/sqrt(D^2 + l^2).
     *
     * @param diameterOverLength diameter over length, above 0
     */
    public static double nagaoka(double diameterOverLength) {
        double u = Args.positive("diameter over length", diameterOverLength);
        double square = 1 + u * u;
        double m = u * u / square;
        double m1 = 1 / square;
        double k = Math.sqrt(m);
        double kc = Math.sqrt(m1);
        return 4 / (3 * Math.PI * kc) * (m1 / m * Elliptic.kMinusE(m, m1) + Elliptic.eOfComplement(m1) - k);
    }

    /**
     * Inductance in H of a thin solenoid by Nagaoka's coefficient.
     *
     * @param radius radius a, m
     * @param length length l, m
     * @param turns turns N
     */
    public static double solenoid(double radius, double length, double turns) {
        double area = Math.PI * radius * radius;
        return nagaoka(2 * radius / length) * Material.MU0 * turns * turns * area / length;
    }

    /**
     * Inductance in H of a Brooks coil, the square section c by c with inner radius c that is close to the largest inductance for a
     * length of wire (Brooks, Bureau of Standards J. Research 7, 1931, 289).
     *
     * @param side side of the section c, m
     * @param turns turns
     */
    public static double brooks(double side, double turns) {
        return rectangular(new RectangularCoil(side, 2 * side, side, turns));
    }

    /** Mean of exp(-k |z - z'|) over all pairs z, z' in a coil of length l, x = k l. */
    private static double axial(double x) {
        if (x < 0.3) {
            double term = 1;
            double sum = 1;
            for (int n = 3; n < 14; n++) {
                term *= -x / n;
                sum += term;
            }
            return sum;
        }
        return 2 * (x + Math.expm1(-x)) / (x * x);
    }
}
