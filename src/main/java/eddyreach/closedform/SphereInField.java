package eddyreach.closedform;

import eddyreach.materials.Material;
import org.apache.commons.math3.complex.Complex;

/**
 * A sphere in a uniform alternating field: dipole moment m = 2 pi a^3 H0 D (Landau and Lifshitz, Electrodynamics of Continuous Media,
 * section 59; with permeability Wait, Geophysics 16, 1951, 666, and Smythe, section 11).
 *
 * <p>D = -1 for a perfect conductor, 2 (mu - 1)/(mu + 2) for a magnetic insulator. A small sphere near a coil changes its impedance by
 * {@code dZ = j w mu0 m H0 / I^2} with H0 the coil's own field there; the sphere must be small against its distance.
 */
public final class SphereInField {

    /** Riemann zeta of 4, 6, 8, ... for the series at low frequency. */
    private static final double[] ZETA = {
        1.0823232337111381,
        1.0173430619844492,
        1.0040773561979444,
        1.000994575127818,
        1.000246086553308,
        1.0000612481350588,
        1.0000152822594086,
        1.000003817293265,
        1.0000009539620338,
        1.0000002384505027,
        1.000000059608189,
        1.0000000149015549
    };

    private static final double SERIES_BELOW = 0.6;
    private static final double OPAQUE = 20;

    private SphereInField() {}

    /**
     * D of a non-magnetic sphere: {@code -[1 - 3/(ka)^2 + 3 cot(ka)/(ka)]}, k = (1 - j)/delta.
     *
     * @param radiusOverSkinDepth a/delta, not negative
     */
    public static Complex momentFactor(double radiusOverSkinDepth) {
        double s = Args.notNegative("radius over skin depth", radiusOverSkinDepth);
        return momentFactor(new Complex(0, -2 * s * s));
    }

    /**
     * D of a sphere of any complex permeability: with D0 the non-magnetic value at the same ka,
     * {@code D = [2 (mu - 1)(1 + D0) + 3 D0] / [(mu - 1)(1 + D0) + 3]}.
     *
     * @param radius radius a, m
     * @param sigma conductivity, S/m
     * @param mu relative permeability mu' - j mu''
     * @param omega angular frequency, rad/s
     */
    public static Complex momentFactor(double radius, double sigma, Complex mu, double omega) {
        double w = omega * Material.MU0 * sigma * radius * radius;
        Complex d0 = momentFactor(mu.multiply(new Complex(0, -w)));
        Complex part = mu.subtract(1).multiply(d0.add(1));
        return part.multiply(2).add(d0.multiply(3)).divide(part.add(3));
    }

    private static Complex momentFactor(Complex square) {
        if (square.abs() < SERIES_BELOW) {
            Complex u = square.divide(Math.PI * Math.PI);
            Complex sum = Complex.ZERO;
            for (int i = ZETA.length - 1; i >= 0; i--) {
                sum = sum.add(ZETA[i]).multiply(u);
            }
            return sum.multiply(6 / (Math.PI * Math.PI));
        }
        Complex x = square.sqrt();
        Complex ratio = Complex.ONE.subtract(cot(x).multiply(x)).multiply(3).divide(square);
        return ratio.subtract(1);
    }

    /** cot(x) for Im x below 0, without overflow. */
    private static Complex cot(Complex x) {
        if (x.getImaginary() < -OPAQUE) {
            return Complex.I;
        }
        Complex e = x.multiply(new Complex(0, -2)).exp();
        return Complex.I.multiply(e.add(1)).divide(Complex.ONE.subtract(e));
    }
}
