package eddyreach.fem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.mesh.Axis;
import eddyreach.numerics.GaussLegendre;
import org.junit.jupiter.api.Test;

/** One-dimensional forms against integrals done by hand and against much finer quadrature. */
class LineFormsTest {

    private static final double A = 1.5;
    private static final double B = 2.25;
    private static final double H = B - A;

    /** Linear functions on [a, b]: every form in closed form. */
    @Test
    void linearElementByHand() {
        Axis axis = new Axis(new double[] {A, B}, new int[] {1});
        check(LineForms.mass(axis)[0], H / 3, H / 6, H / 3);
        check(LineForms.stiffness(axis)[0], 1 / H, -1 / H, 1 / H);
        check(LineForms.radialMass(axis)[0], H * (3 * A + B) / 12, H * (A + B) / 12, H * (A + 3 * B) / 12);
        // (u/x + u') (v/x + v') x = uv/x + (uv)' + u'v'x
        double l = Math.log(B / A);
        double mean = (A + B) / (2 * H);
        check(
                LineForms.radialCurl(axis)[0],
                (B * B * l - 2 * B * H + (B * B - A * A) / 2) / (H * H) - 1 + mean,
                (-A * B * l + (A + B) * H - (B * B - A * A) / 2) / (H * H) - mean,
                (A * A * l - 2 * A * H + (B * B - A * A) / 2) / (H * H) + 1 + mean);
        assertThat(LineForms.mean(axis)[0]).containsExactly(new double[] {H / 2, H / 2}, within(1e-15));
        assertThat(LineForms.radialMean(axis)[0])
                .containsExactly(new double[] {H * (2 * A + B) / 6, H * (A + 2 * B) / 6}, within(1e-15));
    }

    private static void check(double[] m, double first, double mixed, double last) {
        // the 1/x of the curl is no polynomial: see quadratureError, here 6e-10
        assertThat(m).containsExactly(new double[] {first, mixed, mixed, last}, within(1e-9));
    }

    /**
     * Error of the n-point Gauss rule for int u v / x dx, from that for 1/(t + c) on [-1, 1], 2 pi / rho^(2n + 1) with
     * rho = c + sqrt(c^2 - 1) (Davis and Rabinowitz, Methods of Numerical Integration, 1984, section 4.6).
     */
    private static double quadratureError(Axis axis, int e, int a, int b) {
        int p = axis.degree(e);
        double c = axis.middle(e) / (axis.length(e) / 2);
        double rho = c + Math.sqrt(c * c - 1);
        double[] v = new double[p + 1];
        Shape.values(p, -c, v);
        return 2 * Math.PI * Math.abs(v[a] * v[b]) * Math.pow(rho, -(2 * (p + 4) + 1));
    }

    /** On the element at the axis the function x/h gives int (2/h)^2 x dx = 2 for the curl. */
    @Test
    void elementAtTheAxis() {
        Axis axis = new Axis(new double[] {0, 0.7}, new int[] {3});
        assertThat(LineForms.radialCurl(axis)[0][5]).isCloseTo(2, within(1e-13));
        assertThat(LineForms.radialMass(axis)[0][5]).isCloseTo(0.7 * 0.7 / 4, within(1e-14));
    }

    @Test
    void unequalDegreesAgainstFineQuadrature() {
        // elements at the axis, of moderate and of small relative length, as graded meshes have them
        Axis axis = new Axis(new double[] {0, 0.2, 0.8, 2.0, 2.001}, new int[] {2, 5, 8, 1});
        double[][] mass = LineForms.mass(axis);
        double[][] stiff = LineForms.stiffness(axis);
        double[][] radial = LineForms.radialMass(axis);
        double[][] curl = LineForms.radialCurl(axis);
        double[][] mean = LineForms.mean(axis);
        double[][] radialMean = LineForms.radialMean(axis);
        for (int e = 0; e < axis.elements(); e++) {
            int n = axis.degree(e) + 1;
            double[][] fine = fine(axis, e);
            for (int i = 0; i < n * n; i++) {
                assertThat(mass[e][i]).isCloseTo(fine[0][i], within(1e-13));
                assertThat(stiff[e][i]).isCloseTo(fine[1][i], within(1e-13 * (1 + 1 / axis.length(e))));
                assertThat(radial[e][i]).isCloseTo(fine[2][i], within(1e-13));
                if (e > 0) {
                    double size = 1 + Math.abs(fine[3][i]);
                    assertThat(curl[e][i])
                            .isCloseTo(fine[3][i], within(1e-12 * size + 2 * quadratureError(axis, e, i % n, i / n)));
                } else if (i % n > 0 && i / n > 0) {
                    assertThat(curl[e][i]).isCloseTo(fine[3][i], within(1e-12));
                }
            }
            for (int a = 0; a < n; a++) {
                assertThat(mean[e][a]).isCloseTo(fine[4][a], within(1e-14));
                assertThat(radialMean[e][a]).isCloseTo(fine[5][a], within(1e-14));
            }
        }
    }

    /** The six forms by a rule of 60 points. */
    private static double[][] fine(Axis axis, int e) {
        int n = axis.degree(e) + 1;
        double[][] out = new double[6][n * n];
        double half = axis.length(e) / 2;
        GaussLegendre rule = GaussLegendre.of(60, -1, 1);
        double[] v = new double[n];
        double[] d = new double[n];
        for (int q = 0; q < rule.size(); q++) {
            Shape.values(n - 1, rule.node(q), v);
            Shape.derivatives(n - 1, rule.node(q), d);
            double x = axis.middle(e) + half * rule.node(q);
            double w = rule.weight(q) * half;
            for (int a = 0; a < n; a++) {
                out[4][a] += w * v[a];
                out[5][a] += w * v[a] * x;
                for (int b = 0; b < n; b++) {
                    double da = d[a] / half;
                    double db = d[b] / half;
                    out[0][a * n + b] += w * v[a] * v[b];
                    out[1][a * n + b] += w * da * db;
                    out[2][a * n + b] += w * v[a] * v[b] * x;
                    out[3][a * n + b] += w * (v[a] / x + da) * (v[b] / x + db) * x;
                }
            }
        }
        return out;
    }
}
