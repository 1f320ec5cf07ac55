package eddyreach.switching;

import org.apache.commons.math3.special.Erf;

/**
 * Random numbers that are a function of seed, unit and draw alone, so that a series comes out the same on any number of threads and in any order: Philox4x32 with
 * ten rounds (J. K. Salmon et al., Parallel Random Numbers: As Easy as 1, 2, 3, SC11, 2011).
 *
 * @param seed seed of the series
 */
public record RandomStream(long seed) {

    private static final int ROUNDS = 10;
    private static final long MULTIPLIER_0 = 0xD2511F53L;
    private static final long MULTIPLIER_1 = 0xCD9E8D57L;
    private static final int WEYL_0 = 0x9E3779B9;
    private static final int WEYL_1 = 0xBB67AE85;
    private static final long WORD = 0xFFFFFFFFL;
    private static final double TO_UNIT = 0x1p-53;

    /**
     * An even deviate between 0 and 1, both excluded.
     *
     * @param unit number of the unit
     * @param draw number of the deviate within the unit
     */
    public double uniform(long unit, int draw) {
        int[] block = block((int) unit, (int) (unit >>> 32), draw, 0, (int) seed, (int) (seed >>> 32));
        long bits = (block[0] & WORD) << 21 ^ (block[1] & WORD) >>> 11;
        return (bits + 0.5) * TO_UNIT;
    }

    /**
     * A normal deviate of mean 0 and standard deviation 1, by the inverse of the distribution.
     *
     * @param unit number of the unit
     * @param draw number of the deviate within the unit
     */
    public double normal(long unit, int draw) {
        double u = uniform(unit, draw);
        // from the nearer tail, where 2u loses nothing
        return u < 0.5 ? -Math.sqrt(2) * Erf.erfcInv(2 * u) : Math.sqrt(2) * Erf.erfcInv(2 * (1 - u));
    }

    /**
     * A normal deviate of mean 0 and standard deviation 1 of those within a number of standard deviations, by the inverse of their distribution.
     *
     * @param unit number of the unit
     * @param draw number of the deviate within the unit
     * @param most largest deviate either way
     */
    public double normalWithin(long unit, int draw, double most) {
        double tail = Erf.erfc(most / Math.sqrt(2)) / 2;
        double u = tail + (1 - 2 * tail) * uniform(unit, draw);
        return u < 0.5 ? -Math.sqrt(2) * Erf.erfcInv(2 * u) : Math.sqrt(2) * Erf.erfcInv(2 * (1 - u));
    }

    /** The four words of a block for a counter of four words and a key of two. */
    static int[] block(int c0, int c1, int c2, int c3, int key0, int key1) {
        int w0 = c0;
        int w1 = c1;
        int w2 = c2;
        int w3 = c3;
        for (int i = 0; i < ROUNDS; i++) {
            long p0 = MULTIPLIER_0 * (w0 & WORD);
            long p1 = MULTIPLIER_1 * (w2 & WORD);
            w0 = (int) (p1 >>> 32) ^ w1 ^ (key0 + i * WEYL_0);
            w2 = (int) (p0 >>> 32) ^ w3 ^ (key1 + i * WEYL_1);
            w1 = (int) p1;
            w3 = (int) p0;
        }
        return new int[] {w0, w1, w2, w3};
    }
}
