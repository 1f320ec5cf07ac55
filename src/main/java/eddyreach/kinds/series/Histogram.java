package eddyreach.kinds.series;

import eddyreach.switching.Spread;

/**
 * How many units switch between two distances.
 *
 * @param low lower end of the first bin, m
 * @param high upper end of the last, m
 * @param on numbers of units by on distance
 * @param off numbers of units by off distance
 */
record Histogram(double low, double high, int[] on, int[] off) {

    private static final int BINS = 80;

    /** All but a ten thousandth at either end is drawn. */
    private static final double DRAWN = 1e-4;

    static Histogram of(Spread on, Spread off) {
        double low = on.quantile(DRAWN).value();
        double high = Double.isFinite(off.quantile(1 - DRAWN).value())
                ? off.quantile(1 - DRAWN).value()
                : 2 * on.quantile(0.5).value();
        if (!(high > low)) {
            low -= DRAWN;
            high = low + 2 * DRAWN;
        }
        return new Histogram(low, high, counts(on, low, high), counts(off, low, high));
    }

    private static int[] counts(Spread s, double low, double high) {
        int[] counts = new int[BINS];
        double width = (high - low) / BINS;
        for (int i = 0; i < BINS; i++) {
            double from = low + i * width;
            // a unit on an edge belongs to the bin above it
            counts[i] = (int) Math.round(s.size() * s.within(from, Math.nextDown(from + width)));
        }
        return counts;
    }

    /** Lower end of a bin, or the upper end of the one before, m. */
    double edge(int i) {
        return low + i * (high - low) / BINS;
    }
}
