package eddyreach.closedform;

import org.apache.commons.math3.complex.Complex;

/**
 * A long conducting cylinder in an axial alternating field: its mean flux density is mu_eff mu0 mu_r H0 with
 * {@code mu_eff = 2 J1(x)/(x J0(x))}, x^2 = -j w mu0 mu_r sigma a^2 (Foerster and Stambke, Z. Metallkunde 45, 1954, 166). Foerster's
 * frequency ratio f/fg is w mu0 mu_r sigma a^2.
 */
public final class CylinderInField {

    private static final int EXTRA_TERMS = 40;
    private static final double LARGEST_RATIO = 1e6;

    private CylinderInField() {}

    /**
     * Effective permeability, 1 at low frequency.
     *
     * <p>Continued fraction of the Bessel ratio, 2/(2 - x^2/(4 - x^2/(6 - ...))) (Abramowitz and Stegun 1964, 9.1.73), from the tail;
     * more terms than abs(x) converge it to rounding.
     *
     * @param frequencyRatio f/fg, 0 to 1e6
     */
    public static Complex effectivePermeability(double frequencyRatio) {
        double ratio = Args.notNegative("frequency ratio f/fg", frequencyRatio);
        if (ratio > LARGEST_RATIO) {
            throw new IllegalArgumentException(
                    "frequency ratio f/fg = " + ratio + ", must be at most " + LARGEST_RATIO);
        }
        Complex square = new Complex(0, -ratio);
        int terms = EXTRA_TERMS + (int) (1.5 * Math.sqrt(ratio));
        Complex fraction = new Complex(2 * terms);
        for (int n = terms - 1; n > 0; n--) {
            fraction = new Complex(2 * n).subtract(square.divide(fraction));
        }
        return new Complex(2).divide(fraction);
    }
}
