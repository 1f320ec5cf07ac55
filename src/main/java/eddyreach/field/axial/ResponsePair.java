package eddyreach.field.axial;

/** A response matrix over a band of frequencies, linear in the frequency, with square roots of the weights on both sides. */
public final class ResponsePair {

    private final Band band;
    private final double[] lowRe;
    private final double[] lowIm;
    private final double[] highRe;
    private final double[] highIm;

    /**
     * @param band the two frequencies
     * @param w weights of the waves
     * @param low real and imaginary part at the lower frequency, waves without weights
     * @param high the same at the higher one
     */
    public ResponsePair(Band band, double[] w, double[][][] low, double[][][] high) {
        this.band = band;
        lowRe = scaled(low[0], w);
        lowIm = scaled(low[1], w);
        highRe = scaled(high[0], w);
        highIm = scaled(high[1], w);
    }

    /** The matrix row by row; real then imaginary part. */
    public double[][] at(double omega) {
        double[][] out = new double[2][lowRe.length];
        at(omega, out);
        return out;
    }

    /** The same into given arrays: a tank asks for many frequencies. */
    public void at(double omega, double[][] out) {
        double t = share(band, omega);
        mix(lowRe, highRe, t, out[0]);
        mix(lowIm, highIm, t, out[1]);
    }

    /** Where a frequency lies in a band: 0 at its lower end, 1 at its higher. */
    static double share(Band band, double omega) {
        return (omega - band.low()) / (band.high() - band.low());
    }

    static double[] mix(double[] a, double[] b, double t) {
        double[] out = new double[a.length];
        mix(a, b, t, out);
        return out;
    }

    private static void mix(double[] a, double[] b, double t, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = a[i] + t * (b[i] - a[i]);
        }
    }

    private static double[] scaled(double[][] m, double[] w) {
        int n = w.length;
        double[] out = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                out[i * n + j] = Math.sqrt(w[i] * w[j]) * m[i][j];
            }
        }
        return out;
    }
}
