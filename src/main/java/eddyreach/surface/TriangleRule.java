package eddyreach.surface;

/**
 * Quadrature on a triangle: points as barycentric coordinates, weights that sum to 1 (Dunavant, Int. J. Numer. Methods Eng. 21 (1985)
 * 1129, degrees 1, 2 and 5), and the last one repeated on the quarters of the triangle.
 *
 * @param points barycentric coordinates, {@code [point][corner]}
 * @param weights weights, summing to 1
 */
record TriangleRule(double[][] points, double[] weights) {

    static final TriangleRule ONE = new TriangleRule(new double[][] {{1.0 / 3, 1.0 / 3, 1.0 / 3}}, new double[] {1});

    static final TriangleRule THREE = new TriangleRule(
            new double[][] {
                {2.0 / 3, 1.0 / 6, 1.0 / 6}, {1.0 / 6, 2.0 / 3, 1.0 / 6}, {1.0 / 6, 1.0 / 6, 2.0 / 3},
            },
            new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3});

    static final TriangleRule SEVEN = seven();

    static final TriangleRule QUARTERS = SEVEN.onQuarters();

    static final TriangleRule SIXTEENTHS = QUARTERS.onQuarters();

    private static TriangleRule seven() {
        double root = Math.sqrt(15);
        double[][] p = new double[7][];
        double[] w = new double[7];
        p[0] = new double[] {1.0 / 3, 1.0 / 3, 1.0 / 3};
        w[0] = 0.225;
        for (int s = 0; s < 2; s++) {
            double sign = s == 0 ? -1 : 1;
            double a = (6 + sign * root) / 21;
            double weight = (155 + sign * root) / 1200;
            for (int i = 0; i < 3; i++) {
                double[] point = {a, a, a};
                point[i] = 1 - 2 * a;
                p[1 + 3 * s + i] = point;
                w[1 + 3 * s + i] = weight;
            }
        }
        return new TriangleRule(p, w);
    }

    private TriangleRule onQuarters() {
        int n = weights.length;
        double[][] p = new double[4 * n][3];
        double[] w = new double[4 * n];
        for (int q = 0; q < 4; q++) {
            for (int i = 0; i < n; i++) {
                for (int c = 0; c < 3; c++) {
                    // three quarters keep a corner, the middle one is turned
                    p[q * n + i][c] = q == 3 ? (1 - points[i][c]) / 2 : (points[i][c] + (c == q ? 1 : 0)) / 2;
                }
                w[q * n + i] = weights[i] / 4;
            }
        }
        return new TriangleRule(p, w);
    }
}
