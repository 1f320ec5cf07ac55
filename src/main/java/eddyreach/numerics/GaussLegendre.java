package eddyreach.numerics;

/**
 * A Gauss-Legendre quadrature rule: {@code int_a^b f(x) dx} is about {@code sum_i weights[i] f(nodes[i])}, exact for polynomials
 * up to degree 2n - 1.
 *
 * <p>Nodes are the roots of the Legendre polynomial P_n by Newton's method, weights {@code 2 / ((1 - x^2) P_n'(x)^2)} (Abramowitz
 * and Stegun 1964, 25.4.29). Accuracy about 1e-15 for n up to several hundred.
 *
 * @param nodes abscissae in rising order
 * @param weights weights, all positive, sum b - a
 */
public record GaussLegendre(double[] nodes, double[] weights) {

    /** Takes copies, so that a rule never changes. */
    public GaussLegendre {
        if (nodes.length != weights.length) {
            throw new IllegalArgumentException(
                    "nodes " + nodes.length + ", weights " + weights.length + ": must be as many");
        }
        nodes = nodes.clone();
        weights = weights.clone();
    }

    /**
     * The n-point rule on [a, b].
     *
     * @param n number of nodes, at least 1
     * @param a lower end
     * @param b upper end
     */
    public static GaussLegendre of(int n, double a, double b) {
        if (n < 1) {
            throw new IllegalArgumentException("number of nodes n = " + n + ", must be at least 1");
        }
        double[] x = new double[n];
        double[] w = new double[n];
        double half = (b - a) / 2;
        double middle = (a + b) / 2;
        for (int i = 0; i < (n + 1) / 2; i++) {
            double root = 2 * i + 1 == n ? 0 : root(n, i);
            double slope = legendreAndSlope(n, root)[1];
            double weight = 2 / ((1 - root * root) * slope * slope);
            x[i] = middle - half * root;
            x[n - 1 - i] = middle + half * root;
            w[i] = half * weight;
            w[n - 1 - i] = w[i];
        }
        return new GaussLegendre(x, w);
    }

    /** The i-th root of P_n from the upper end, by Newton's method from Tricomi's estimate. */
    private static double root(int n, int i) {
        double x = Math.cos(Math.PI * (i + 0.75) / (n + 0.5)) * (1 - (n - 1) / (8.0 * n * n * n));
        // the estimate is good to 1/n^4 and Newton squares the error: four steps reach rounding, from n = 2 on
        for (int step = 0; step < 5; step++) {
            double[] p = legendreAndSlope(n, x);
            x -= p[0] / p[1];
        }
        return x;
    }

    private static double[] legendreAndSlope(int n, double x) {
        double before = 1;
        double now = x;
        for (int m = 2; m <= n; m++) {
            double next = ((2 * m - 1) * x * now - (m - 1) * before) / m;
            before = now;
            now = next;
        }
        return new double[] {now, n * (before - x * now) / (1 - x * x)};
    }

    /** Number of nodes. */
    public int size() {
        return nodes.length;
    }

    /** The i-th abscissa. */
    public double node(int i) {
        return nodes[i];
    }

    /** The i-th weight. */
    public double weight(int i) {
        return weights[i];
    }

    /** A copy of the abscissae. */
    @Override
    public double[] nodes() {
        return nodes.clone();
    }

    /** A copy of the weights. */
    @Override
    public double[] weights() {
        return weights.clone();
    }
}
