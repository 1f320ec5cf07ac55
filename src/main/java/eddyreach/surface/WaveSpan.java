package eddyreach.surface;

/**
 * The combinations of waves that differ on a surface: an orthonormal basis of the space of loads, by Gram-Schmidt with the largest remaining
 * sample first.
 */
final class WaveSpan {

    private WaveSpan() {}

    /**
     * @param samples values of all loads at places, {@code [place][load]}; destroyed
     * @param tolerance samples smaller than this share of the largest are left out
     * @return basis, {@code [vector][load]}
     */
    static double[][] of(double[][] samples, double tolerance) {
        int n = samples.length;
        double[] size = new double[n];
        double largest = 0;
        for (int i = 0; i < n; i++) {
            size[i] = dot(samples[i], samples[i]);
            largest = Math.max(largest, size[i]);
        }
        int most = Math.min(n, samples[0].length);
        double[][] basis = new double[most][];
        int rank = 0;
        while (rank < most) {
            int best = 0;
            for (int i = 1; i < n; i++) {
                if (size[i] > size[best]) {
                    best = i;
                }
            }
            double[] v = samples[best].clone();
            // once more against rounding
            for (int b = 0; b < rank; b++) {
                subtract(v, basis[b], dot(v, basis[b]));
            }
            double norm = Math.sqrt(dot(v, v));
            if (!(norm > tolerance * Math.sqrt(largest))) {
                break;
            }
            for (int l = 0; l < v.length; l++) {
                v[l] /= norm;
            }
            basis[rank++] = v;
            for (int i = 0; i < n; i++) {
                if (size[i] > 0) {
                    subtract(samples[i], v, dot(samples[i], v));
                    size[i] = i == best ? 0 : dot(samples[i], samples[i]);
                }
            }
        }
        return java.util.Arrays.copyOf(basis, rank);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void subtract(double[] from, double[] v, double f) {
        for (int i = 0; i < v.length; i++) {
            from[i] = Math.fma(-f, v[i], from[i]);
        }
    }
}
