package eddyreach.fem;

/**
 * Hierarchical shape functions on the reference element [-1, 1]: two linear vertex functions and the integrated
 * Legendre polynomials {@code (P_k - P_(k-2)) / sqrt(2 (2k - 1))} for k = 2, 3, ..., which vanish at both ends
 * (Szabo and Babuska, Finite Element Analysis, 1991, chapter 3).
 */
public final class Shape {

    private Shape() {}

    /**
     * Values of the functions 0 to p at x.
     *
     * @param p degree
     * @param x reference coordinate in [-1, 1]
     * @param out receives p + 1 values
     */
    public static void values(int p, double x, double[] out) {
        out[0] = (1 - x) / 2;
        out[1] = (1 + x) / 2;
        double before = 1;
        double now = x;
        for (int k = 2; k <= p; k++) {
            double next = ((2 * k - 1) * x * now - (k - 1) * before) / k;
            out[k] = (next - before) / Math.sqrt(2.0 * (2 * k - 1));
            before = now;
            now = next;
        }
    }

    /**
     * Derivatives with respect to the reference coordinate of the functions 0 to p at x: {@code sqrt((2k - 1) / 2) P_(k-1)}
     * for the inner ones.
     *
     * @param p degree
     * @param x reference coordinate in [-1, 1]
     * @param out receives p + 1 values
     */
    public static void derivatives(int p, double x, double[] out) {
        out[0] = -0.5;
        out[1] = 0.5;
        double before = 1;
        double now = x;
        for (int k = 2; k <= p; k++) {
            out[k] = Math.sqrt((2 * k - 1) / 2.0) * now;
            double next = ((2 * k - 1) * x * now - (k - 1) * before) / k;
            before = now;
            now = next;
        }
    }
}
