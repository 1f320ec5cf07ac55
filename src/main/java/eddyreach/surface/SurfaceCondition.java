package eddyreach.surface;

import eddyreach.materials.Material;
import org.apache.commons.math3.complex.Complex;

/**
 * What metal demands of the potential on its surface: a flux dpsi/dn = b with, for a variation with wavenumber k along the surface,
 *
 * <pre>psi = (y0/k^2 + y1/(1 + y2 k^2)) b</pre>
 *
 * Pade's approximation of the exact y(k)/k^2, which like it gains no power at any k. With {@code gamma^2 = j w mu sigma, q^2 = gamma^2 + k^2}: y = q/mu_r for thick metal. A plate of
 * thickness t couples its faces: y = q coth(qt/2)/mu_r for potentials alike on both, q tanh(qt/2)/mu_r for opposite ones. The
 * first is the flux that it guides, the second its resistance to current, {@code j w mu0 sigma t/2} when thin, with the field across it, t/2.
 *
 * @param y0 inverse of the length lambda = Z_s/(j w mu0), 1/m
 * @param y1 depth over which the field goes straight in, m
 * @param y2 square of the length below which it does not, m2
 */
record SurfaceCondition(Complex y0, Complex y1, Complex y2) {

    /** Relative permeability up to which metal counts as not magnetic. */
    private static final double MAGNETIC = 1.5;

    /** A metal at one frequency. */
    static final class Metal {

        private final Complex permeability;
        private final Complex gamma;

        Metal(Material metal, double celsius, double omega) {
            double sigma = metal.conductivity(celsius);
            if (!(sigma > 0)) {
                throw new IllegalArgumentException(
                        metal.name() + " does not conduct: parts that are not round must be of metal");
            }
            permeability = metal.permeability();
            gamma = permeability
                    .multiply(new Complex(0, omega * Material.MU0 * sigma))
                    .sqrt();
        }

        /** Metal much thicker than the skin depth. */
        SurfaceCondition thick() {
            return of(Complex.ONE, Complex.ZERO, Complex.ZERO);
        }

        /** The faces of a plate, m thick. */
        SurfaceCondition face(double thickness, boolean alike) {
            Complex decay = gamma.multiply(-thickness).exp();
            Complex tanh = Complex.ONE.subtract(decay).divide(Complex.ONE.add(decay));
            Complex f = alike ? Complex.ONE.divide(tanh) : tanh;
            Complex slope = Complex.ONE.subtract(f.multiply(f)).multiply(thickness / 2);
            return of(f, slope, f.multiply(slope).multiply(-thickness));
        }

        /** From y = q f(q)/mu_r and the derivatives of f at gamma; d/dk^2 is d/dq over 2q. */
        private SurfaceCondition of(Complex f, Complex slope, Complex bend) {
            Complex first = f.divide(gamma).add(slope).divide(2);
            Complex second = slope.divide(gamma)
                    .subtract(f.divide(gamma.multiply(gamma)))
                    .add(bend)
                    .divide(gamma.multiply(8));
            return new SurfaceCondition(
                    gamma.multiply(f).divide(permeability),
                    first.divide(permeability),
                    second.divide(first).negate());
        }

        /** The faces of a plate with air on both sides, as a plate that thick altogether. */
        SurfaceCondition face(double thickness, double whole, boolean alike) {
            SurfaceCondition own = face(thickness, alike);
            double s = (whole - thickness) / 2;
            // y becomes (y + k tanh(ks)) / (1 + y tanh(ks)/k)
            Complex y = own.y0.multiply(s);
            Complex below = y.add(1);
            Complex straight = own.y1.add(y.multiply(y).divide(3).add(y).add(1).multiply(s));
            return new SurfaceCondition(own.y0.divide(below), straight.divide(below.multiply(below)), own.y2);
        }

        /** The rim of such a plate. */
        SurfaceCondition rim(double thickness, double whole, boolean alike) {
            boolean even = alike || permeability.abs() > MAGNETIC;
            Complex depth = (even ? RimDepth.even(gamma, thickness) : RimDepth.along(gamma, thickness))
                    .multiply(thickness / whole);
            Complex y0 =
                    alike ? Complex.ONE.divide(depth) : gamma.multiply(gamma).multiply(depth);
            SurfaceCondition face = face(thickness, whole, alike);
            return new SurfaceCondition(y0.divide(permeability), face.y1, face.y2);
        }
    }
}
