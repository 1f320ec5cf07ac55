package eddyreach.linalg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.numerics.SelfCheckException;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GmresTest {

    /** Against elimination with pivoting, for matrices near the identity and far from it. */
    @Test
    void agreesWithElimination() {
        Random random = new Random(5);
        int n = 30;
        for (double size : new double[] {0.01, 0.1, 1}) {
            double[][] re = new double[n][n];
            double[][] im = new double[n][n];
            SmallGeneral direct = new SmallGeneral(n);
            for (int j = 0; j < n; j++) {
                for (int i = 0; i < n; i++) {
                    re[j][i] = size * random.nextGaussian() + (i == j ? 1 : 0);
                    im[j][i] = size * random.nextGaussian();
                }
                System.arraycopy(re[j], 0, direct.columnRe(j), 0, n);
                System.arraycopy(im[j], 0, direct.columnIm(j), 0, n);
            }
            double[] br = random.doubles(n).toArray();
            double[] bi = random.doubles(n).toArray();
            double[] xr = new double[n];
            double[] xi = random.doubles(n).toArray();
            int steps = new Gmres(n, n).solve(product(re, im), br, bi, xr, xi, 1e-11);
            assertThat(steps).isBetween(1, n);
            direct.solve(br, bi);
            for (int i = 0; i < n; i++) {
                assertThat(Math.hypot(xr[i] - br[i], xi[i] - bi[i])).isLessThan(1e-8);
            }
            // the solution as first guess needs no step
            double[] cr = new double[n];
            double[] ci = new double[n];
            product(re, im).apply(xr, xi, cr, ci);
            assertThat(new Gmres(n, n).solve(product(re, im), cr, ci, xr, xi, 1e-9))
                    .isZero();
        }
    }

    @Test
    void saysWhenStepsDoNotSuffice() {
        double[][] turn = {{0, 1}, {1, 0}};
        double[] x = new double[2];
        assertThatThrownBy(() -> new Gmres(2, 1)
                        .solve(
                                product(turn, new double[2][2]),
                                new double[] {1, 0},
                                new double[2],
                                x,
                                new double[2],
                                1e-6))
                .isInstanceOf(SelfCheckException.class)
                .hasMessageContaining("1 steps");
        assertThatThrownBy(() -> new Gmres(2, 1)
                        .solve(
                                product(turn, new double[2][2]),
                                new double[] {Double.NaN, 0},
                                new double[2],
                                x,
                                new double[2],
                                1e-6))
                .isInstanceOf(SelfCheckException.class);
    }

    /** Product with the matrix given by columns. */
    private static Gmres.Operator product(double[][] re, double[][] im) {
        return (xr, xi, yr, yi) -> {
            for (int i = 0; i < xr.length; i++) {
                yr[i] = 0;
                yi[i] = 0;
                for (int j = 0; j < xr.length; j++) {
                    yr[i] += re[j][i] * xr[j] - im[j][i] * xi[j];
                    yi[i] += re[j][i] * xi[j] + im[j][i] * xr[j];
                }
            }
        };
    }
}
