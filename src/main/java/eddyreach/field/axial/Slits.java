package eddyreach.field.axial;

import org.apache.commons.math3.complex.Complex;

/**
 * The voltages round slit bodies, eliminated from the Schur complement of a scatterer after the elimination of the mesh.
 *
 * <p>With the complement [A b; b^T d] on (waves and coil, one voltage) a voltage is V = -b^T y / d, and A - b b^T / d is left.
 */
final class Slits {

    private final int[] number;
    private final Complex[] pivot;
    private final Complex[][] row;

    /**
     * Adds what the kept unknowns do to each other directly and eliminates the voltages.
     *
     * @param layout the problem
     * @param media what its parts are made of
     * @param re Schur complement, real part; rows and columns before the first slit are changed in place
     * @param im imaginary part
     */
    Slits(Layout layout, Media media, double[][] re, double[][] im) {
        int count = layout.slitBodies;
        int first = layout.firstSlit();
        number = new int[count];
        pivot = new Complex[count];
        row = new Complex[count][];
        if (count == 0) {
            return;
        }
        addDirect(layout, media, im, first);
        for (int s = count - 1; s >= 0; s--) {
            int at = first + s;
            number[s] = at;
            pivot[s] = new Complex(re[at][at], im[at][at]);
            row[s] = new Complex[at];
            for (int j = 0; j < at; j++) {
                row[s][j] = new Complex(re[at][j], im[at][j]);
            }
            // a body replaced by air has no current to stop
            for (int i = 0; i < at && pivot[s].abs() > 0; i++) {
                Complex factor = row[s][i].divide(pivot[s]);
                for (int j = 0; j < at; j++) {
                    Complex change = factor.multiply(row[s][j]);
                    re[i][j] -= change.getReal();
                    im[i][j] -= change.getImaginary();
                }
            }
        }
    }

    private static void addDirect(Layout layout, Media media, double[][] im, int first) {
        double[] self = WaveProducts.slitSelf(layout.parts, media, layout.slitBody, layout.slitBodies);
        double[][] waves = layout.basis == null
                ? new double[layout.slitBodies][0]
                : WaveProducts.slits(
                        layout.basis, layout.direction, layout.parts, media, layout.slitBody, layout.slitBodies);
        for (int s = 0; s < self.length; s++) {
            im[first + s][first + s] += self[s];
            for (int i = 0; i < waves[s].length; i++) {
                im[first + s][i] += waves[s][i];
                im[i][first + s] += waves[s][i];
            }
        }
    }

    /** Fills the voltages into a vector of kept unknowns whose others are given. */
    void complete(double[] re, double[] im) {
        for (int s = 0; s < number.length; s++) {
            Complex sum = Complex.ZERO;
            for (int j = 0; j < row[s].length; j++) {
                sum = sum.add(row[s][j].multiply(new Complex(re[j], im[j])));
            }
            Complex v = pivot[s].abs() > 0 ? sum.divide(pivot[s]).negate() : Complex.ZERO;
            re[number[s]] = v.getReal();
            im[number[s]] = v.getImaginary();
        }
    }
}
