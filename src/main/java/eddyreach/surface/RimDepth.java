package eddyreach.surface;

import org.apache.commons.math3.complex.Complex;

/**
 * The depth of metal that the rim of a plate adds to what its faces carry already.
 *
 * <p>With the field 1 all round the edge, it is {@code cosh(gamma z)/cosh(gamma t/2)} and, with k = (2n + 1) pi/t and q^2 = k^2 + gamma^2, a
 * sum of cos(kz) exp(qx), whose integral over the section is t times {@code (8/t^2) sum gamma^2 / (k^2 q^3)}: 1/gamma - 8/(pi t
 * gamma^2) for a thick plate, nothing for a foil. So the flux along an edge is guided.
 *
 * <p>Current along an edge is not driven by an even field: what it encloses changes over the thickness, and it crowds. For metal that is not
 * magnetic, the depth over the thickness is then a function of thickness over skin depth alone, as long as the plate is wide. {@link #ALONG} holds it: what
 * makes a disc of 20.3 mm and 0.3 mm thickness, 10 mm beside an air coil, agree with the exact orders, at the 14 ratios listed. Other
 * thicknesses, offsets and materials are the check ({@code SurfaceDiscTest}). Magnetic metal keeps the sum, since its fields at edges are even.
 */
final class RimDepth {

    /** Terms of the sum, which fall as n^-5. */
    private static final int TERMS = 20;

    /** Thickness over skin depth, real and imaginary part of depth over thickness. */
    private static final double[][] ALONG = {
        {0.25, 0.0610, -0.0064},
        {0.5, 0.0823, 0.0355},
        {0.75, 0.1147, 0.0536},
        {1, 0.1478, 0.0539},
        {1.25, 0.1746, 0.0411},
        {1.5, 0.1911, 0.0192},
        {1.75, 0.1953, -0.0052},
        {2, 0.1894, -0.0262},
        {2.5, 0.1657, -0.0504},
        {3, 0.1429, -0.0583},
        {4, 0.1107, -0.0566},
        {5, 0.0920, -0.0520},
        {7, 0.0700, -0.0413},
        {10, 0.0541, -0.0303},
    };

    private RimDepth() {}

    /** Depth for a field that is even round the edge, m. */
    static Complex even(Complex gamma, double thickness) {
        Complex square = gamma.multiply(gamma);
        Complex sum = Complex.ZERO;
        int terms = (int) Math.max(TERMS, TERMS * thickness * gamma.abs());
        for (int n = 0; n < terms; n++) {
            double k = (2 * n + 1) * Math.PI / thickness;
            Complex q2 = square.add(k * k);
            sum = sum.add(square.divide(q2.multiply(q2.sqrt()).multiply(k * k)));
        }
        return sum.multiply(8 / (thickness * thickness));
    }

    /** Depth for current along the edge of metal that is not magnetic, m. */
    static Complex along(Complex gamma, double thickness) {
        double x = thickness * gamma.abs() / Math.sqrt(2);
        double[] last = ALONG[ALONG.length - 1];
        if (x > last[0]) {
            // from there on the ratio to the even field's depth hardly changes
            Complex there = new Complex(1, 1).multiply(last[0] / thickness);
            return even(gamma, thickness)
                    .multiply(new Complex(last[1], last[2]).multiply(thickness).divide(even(there, thickness)));
        }
        int i = 1;
        while (i < ALONG.length - 1 && ALONG[i][0] < x) {
            i++;
        }
        double[] a = ALONG[i - 1];
        double[] b = ALONG[i];
        double s = Math.max(0, (x - a[0]) / (b[0] - a[0]));
        return new Complex(a[1] + s * (b[1] - a[1]), a[2] + s * (b[2] - a[2])).multiply(thickness);
    }
}
