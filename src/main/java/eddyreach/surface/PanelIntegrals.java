package eddyreach.surface;

/**
 * Integrals over pairs of panels, of G = 1/(4 pi R) and its normal derivatives: exact over the larger panel, by points over the smaller,
 * the more of them the nearer the two are. L_i are linear, Q_j quadratic shape functions.
 *
 * <pre>
 *   single_ij   = int_a dx L_i(x) int_b dy L_j(y) G
 *   layerOn_ij  = int_a dx L_i(x) int_b dy Q_j(y) dG/dn(y)
 *   layerOff_ij = int_b dx L_i(x) int_a dy Q_j(y) dG/dn(y)
 * </pre>
 *
 * <p>One instance holds scratch space and serves one thread.
 */
final class PanelIntegrals {

    private static final double FAR = 6;
    private static final double NEAR = 2;
    private static final double QUARTER = 1 / (4 * Math.PI);

    private final TrianglePotential potential = new TrianglePotential();
    private final double[] point = new double[3];
    private final double[] direction = new double[3];
    private final double[] quadratic = new double[6];

    final double[][] single = new double[3][3];
    final double[][] layerOn = new double[3][6];
    final double[][] layerOff = new double[3][6];

    /**
     * Evaluates.
     *
     * @param a the panel that is replaced by points, the smaller one
     * @param sign -1 for the axes along which a is replaced by its mirror image, else 1
     * @param middle height about which z is mirrored
     * @param b the panel that is integrated exactly
     */
    void of(Panel a, double[] sign, double middle, Panel b) {
        for (int i = 0; i < 3; i++) {
            java.util.Arrays.fill(single[i], 0);
            java.util.Arrays.fill(layerOn[i], 0);
            java.util.Arrays.fill(layerOff[i], 0);
            direction[i] = sign[i] * a.normal[i];
        }
        TriangleRule rule = rule(a, sign, middle, b);
        for (int q = 0; q < rule.weights().length; q++) {
            double[] n = rule.points()[q];
            a.point(n, point);
            image(point, sign, middle);
            potential.at(b, point, direction);
            for (int j = 0; j < 3; j++) {
                quadratic[j] = n[j] * (2 * n[j] - 1);
                quadratic[3 + j] = 4 * n[(j + 1) % 3] * n[(j + 2) % 3];
            }
            double w = rule.weights()[q] * a.area * QUARTER;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    single[i][j] += w * n[i] * potential.single[j];
                }
                for (int j = 0; j < 6; j++) {
                    layerOn[i][j] += w * n[i] * potential.layer[j];
                    layerOff[i][j] += w * quadratic[j] * potential.derivative[i];
                }
            }
        }
    }

    private static void image(double[] x, double[] sign, double middle) {
        x[0] *= sign[0];
        x[1] *= sign[1];
        x[2] = sign[2] < 0 ? 2 * middle - x[2] : x[2];
    }

    private TriangleRule rule(Panel a, double[] sign, double middle, Panel b) {
        System.arraycopy(a.centre, 0, point, 0, 3);
        image(point, sign, middle);
        double sum = 0;
        for (int c = 0; c < 3; c++) {
            sum += (point[c] - b.centre[c]) * (point[c] - b.centre[c]);
        }
        double apart = Math.sqrt(sum) - b.radius;
        if (apart > FAR * a.radius) {
            return TriangleRule.THREE;
        }
        return apart > NEAR * a.radius ? TriangleRule.SEVEN : TriangleRule.QUARTERS;
    }
}
