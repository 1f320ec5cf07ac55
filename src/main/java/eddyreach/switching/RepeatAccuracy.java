package eddyreach.switching;

import eddyreach.numerics.GaussLegendre;
import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.Slope;
import eddyreach.oscillator.UnworkableException;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Scatter of a switching distance by a normal noise of the demodulated amplitude, to first order in the noise: {@code sigma_x = sigma_A / abs(dA/dG dG/dx)}.
 *
 * <p>The noise is taken as constant during one passage and independent from one to the next: drift and slow noise. Noise that is fast against the approach would
 * also turn the output on earlier, as the first of many trials.
 *
 * @param noise standard deviation of the amplitude, V
 * @param slope change of the amplitude with distance at the threshold, V/m
 */
public record RepeatAccuracy(double noise, double slope) {

    /** Beyond so many standard deviations the normal distribution is 0 or 1 to double precision. */
    private static final double TAIL = 9;

    private static final GaussLegendre RULE = GaussLegendre.of(100, 0, TAIL);

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    public RepeatAccuracy {
        UnworkableException.require("noise of the amplitude", noise, "V", 0, Double.MAX_VALUE);
        if (!(Math.abs(slope) > 0 && Math.abs(slope) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("slope of the amplitude " + slope + " V/m: must not be level");
        }
    }

    /**
     * That of a change of the output.
     *
     * @param noise standard deviation of the amplitude, V
     * @param element active element
     * @param threshold conductance at which the output changes, S
     * @param crossing where it does
     * @throws UnworkableException when the oscillation has collapsed at the threshold
     */
    public static RepeatAccuracy of(double noise, ActiveElement element, double threshold, Crossing crossing) {
        return new RepeatAccuracy(noise, Slope.ofAmplitude(element, threshold) * crossing.slope());
    }

    /** Standard deviation of the distance, m. */
    public double deviation() {
        return noise / Math.abs(slope);
    }

    /**
     * Expected difference of the largest and the smallest of several repeats, m.
     *
     * @param repeats number of repeats, at least 2
     */
    public double range(int repeats) {
        return expectedRange(repeats) * deviation();
    }

    /**
     * Expected range of n normal deviates in standard deviations: {@code int [1 - F^n - (1 - F)^n] dx} (L. H. C. Tippett, Biometrika 17 (1925) 364).
     *
     * @param n how many, at least 2
     */
    static double expectedRange(int n) {
        UnworkableException.require("number of repeats", n, "", 2, Integer.MAX_VALUE);
        double half = 0;
        for (int i = 0; i < RULE.size(); i++) {
            double f = NORMAL.cumulativeProbability(RULE.node(i));
            half += RULE.weight(i) * (1 - Math.pow(f, n) - Math.pow(1 - f, n));
        }
        return 2 * half;
    }
}
