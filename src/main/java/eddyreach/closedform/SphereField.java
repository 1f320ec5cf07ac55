package eddyreach.closedform;

import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;

/**
 * The field about the axis that a sphere answers to given waves: what it adds outside, everything inside, as sums of multipoles
 *
 * <pre>A_phi = sum_l beta_l f_l(R) P_l^1(cos theta),  f = chi_l (l+1)/l (a/R)^(l+1) outside,  (1 + chi_l (l+1)/l) j_l(x R/a)/j_l(x) inside,</pre>
 *
 * beta_l belonging to the incoming (R/a)^l. See {@link SphereMultipoles}.
 */
public final class SphereField {

    private static final double NEGLIGIBLE = 1e-12;
    private static final int MOST = 400;

    private final double radius;
    private final Complex square;
    private final Complex[] outside;
    private final Complex[] inside;
    private final Complex[] rho;

    /** Values at one point, T m and T. */
    public record Point(Complex a, Complex br, Complex bz) {}

    SphereField(SphereMultipoles sphere, Complex square, double omega, double[] k, double[] re, double[] im) {
        radius = sphere.radius();
        this.square = square;
        Complex[] beta = incoming(k, re, im);
        Complex[] chi = sphere.polarisabilities(omega, beta.length - 1);
        rho = SphereMultipoles.ratios(square, beta.length);
        outside = new Complex[beta.length];
        inside = new Complex[beta.length];
        for (int l = 1; l < beta.length; l++) {
            outside[l] = beta[l].multiply(chi[l]).multiply((l + 1.0) / l);
            inside[l] = beta[l].add(outside[l]);
        }
    }

    /** beta_l = (-1)^(l+1) sum_k b exp(-ka) (ka)^l / (l+1)!, up to where all terms are negligible. */
    private Complex[] incoming(double[] k, double[] re, double[] im) {
        double[] term = new double[k.length];
        for (int q = 0; q < k.length; q++) {
            term[q] = Math.exp(-k[q] * radius);
        }
        Complex[] beta = new Complex[MOST + 1];
        double largest = 0;
        int l = 1;
        for (; l <= MOST; l++) {
            double x = 0;
            double y = 0;
            double size = 0;
            for (int q = 0; q < k.length; q++) {
                term[q] *= k[q] * radius / (l + 1);
                x += re[q] * term[q];
                y += im[q] * term[q];
                size += Math.hypot(re[q], im[q]) * term[q];
            }
            beta[l] = new Complex(x, y).multiply(l % 2 == 1 ? 1 : -1);
            largest = Math.max(largest, size);
            if (size < NEGLIGIBLE * largest) {
                break;
            }
        }
        return Arrays.copyOf(beta, Math.min(l, MOST) + 1);
    }

    /** True when a point lies in the sphere. */
    public boolean contains(double r, double z) {
        return Math.hypot(r, z - radius) <= radius;
    }

    /**
     * Outside what the sphere adds to the waves, inside the whole field.
     *
     * @param r distance from the axis, m
     * @param z height above the sphere's nearest point, m
     */
    public Point at(double r, double z) {
        double distance = Math.max(1e-9 * radius, Math.hypot(r, z - radius));
        boolean within = contains(r, z);
        double cos = Math.max(-1, Math.min(1, (z - radius) / distance));
        double sin = Math.min(1, r / distance);
        double s = distance / radius;
        Complex[] here = within ? SphereMultipoles.ratios(square.multiply(s * s), inside.length) : null;
        Complex f = within ? first(s) : new Complex(1 / (s * s));
        Complex a = Complex.ZERO;
        Complex radial = Complex.ZERO;
        Complex polar = Complex.ZERO;
        double before = 1;
        double legendre = cos;
        for (int l = 1; l < inside.length; l++) {
            // P_l^1 = sin P_l', from (1 - x^2) P_l' = l (P_(l-1) - x P_l)
            double associated = sin > 1e-12 ? l * (before - cos * legendre) / sin : 0;
            Complex value = (within ? inside[l] : outside[l]).multiply(f);
            a = a.add(value.multiply(associated));
            radial = radial.add(value.multiply(l * (l + 1) * legendre));
            Complex slope = within ? here[l].subtract(l) : new Complex(-l);
            polar = polar.subtract(value.multiply(slope).multiply(associated));
            double next = ((2 * l + 1) * cos * legendre - l * before) / (l + 1);
            before = legendre;
            legendre = next;
            // j_(l+1)(xs)/j_(l+1)(x) over j_l(xs)/j_l(x) is s rho_(l+1)(x)/rho_(l+1)(xs)
            f = within ? f.multiply(s).multiply(rho[l + 1]).divide(here[l + 1]) : f.divide(s);
        }
        Complex bR = radial.divide(distance);
        Complex bT = polar.divide(distance);
        return new Point(
                a, bR.multiply(sin).add(bT.multiply(cos)), bR.multiply(cos).subtract(bT.multiply(sin)));
    }

    /** j_1(xs)/j_1(x), from j_0 = sin(x)/x and the ratios. */
    private Complex first(double s) {
        Complex[] here = SphereMultipoles.ratios(square.multiply(s * s), 1);
        if (square.abs() < 1e-8) {
            return new Complex(s);
        }
        Complex x = square.sqrt();
        if (x.getImaginary() > 0) {
            x = x.negate();
        }
        // sin(xs)/sin(x) for Im x below 0, without overflow: exp(jx) is the large one
        Complex two = x.multiply(new Complex(0, -2));
        Complex j0 = x.multiply(Complex.I)
                .multiply(s - 1)
                .exp()
                .multiply(Complex.ONE.subtract(two.multiply(s).exp()))
                .divide(Complex.ONE.subtract(two.exp()))
                .divide(s);
        return j0.multiply(s).multiply(rho[1]).divide(here[1]);
    }
}
