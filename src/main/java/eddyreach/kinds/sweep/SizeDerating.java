package eddyreach.kinds.sweep;

import eddyreach.materials.FactorBand;
import java.util.Optional;

/**
 * What the trade commonly reckons for steel targets smaller than the standard one: distance over that of the standard target, against
 * the ratio of the sides. The shape of the curve is common practice, the numbers are from memory.
 */
public final class SizeDerating {

    /** Where the numbers come from, for captions. */
    public static final String SOURCE = "common practice of the trade, from memory";

    private static final double[][] USUAL = {
        {0.2, 0.25, 0.50}, {0.25, 0.35, 0.60}, {0.33, 0.50, 0.72}, {0.5, 0.70, 0.88}, {0.75, 0.90, 0.97}, {1, 1, 1}
    };

    private SizeDerating() {}

    /** Ratios of the sides at which the trade names a range, ascending; in between {@link #usual} is linear. */
    public static double[] ratios() {
        double[] ratios = new double[USUAL.length];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = USUAL[i][0];
        }
        return ratios;
    }

    /**
     * The usual range at a ratio; empty outside the ratios that are named.
     *
     * @param ratio side over side of the standard target
     */
    public static Optional<FactorBand> usual(double ratio) {
        for (int i = 0; i + 1 < USUAL.length; i++) {
            if (ratio >= USUAL[i][0] && ratio <= USUAL[i + 1][0]) {
                double t = (ratio - USUAL[i][0]) / (USUAL[i + 1][0] - USUAL[i][0]);
                return Optional.of(new FactorBand(
                        (1 - t) * USUAL[i][1] + t * USUAL[i + 1][1],
                        (1 - t) * USUAL[i][2] + t * USUAL[i + 1][2],
                        SOURCE));
            }
        }
        return Optional.empty();
    }
}
