package eddyreach.linalg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One dense front and the small solver against EJML's LU with pivoting, and against the plain row-by-row LDL^T. */
class DenseFrontTest {

    /** Sizes around the widths at which the elimination changes from blocks of columns to single ones. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 4", "4, 3", "5, 2", "23, 5", "24, 6", "25, 7", "49, 3", "100, 20"})
    void schurComplementOfOneFront(int eliminated, int kept) {
        int n = eliminated + kept;
        TestElements k = one(n, 17 + n);
        FrontalFactor factor = new FrontalFactor(plan(eliminated, kept), k, true);
        Complex[][] dense = k.dense();

        ZMatrixRMaj a = matrix(dense, 0, eliminated, 0, eliminated);
        ZMatrixRMaj b = matrix(dense, 0, eliminated, eliminated, n);
        ZMatrixRMaj x = new ZMatrixRMaj(eliminated, kept);
        assertThat(CommonOps_ZDRM.solve(a, b, x)).isTrue();
        ZMatrixRMaj bt = matrix(dense, eliminated, n, 0, eliminated);
        ZMatrixRMaj product = new ZMatrixRMaj(kept, kept);
        CommonOps_ZDRM.mult(bt, x, product);

        Complex[][] plain = new UpLookingLdl(dense, eliminated).schur(dense);
        double scale = CommonOps_ZDRM.elementMaxAbs(matrix(dense, eliminated, n, eliminated, n));
        for (int i = 0; i < kept; i++) {
            for (int j = 0; j < kept; j++) {
                Complex lu = dense[eliminated + i][eliminated + j].subtract(
                        new Complex(product.getReal(i, j), product.getImag(i, j)));
                Complex fast = new Complex(factor.schurRe()[i][j], factor.schurIm()[i][j]);
                assertThat(fast.subtract(lu).abs()).isLessThan(1e-13 * n * scale);
                assertThat(fast.subtract(plain[i][j]).abs()).isLessThan(1e-13 * n * scale);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 24, 60})
    void extensionOfOneFront(int eliminated) {
        TestElements k = one(eliminated + 2, 5);
        FrontalFactor factor = new FrontalFactor(plan(eliminated, 2), k, true);
        double[][] x = factor.extend(new double[][] {{0.3, -1}, {0.8, 0.1}, {1, 0}, {0, 0}});
        Complex[] plain = new UpLookingLdl(k.dense(), eliminated)
                .extend(new Complex[] {new Complex(0.3, 0.8), new Complex(-1, 0.1)});
        for (int i = 0; i < eliminated; i++) {
            assertThat(x[0][i]).isCloseTo(plain[i].getReal(), within(1e-12));
            assertThat(x[1][i]).isCloseTo(plain[i].getImaginary(), within(1e-12));
        }
        assertThat(x[0][eliminated]).isEqualTo(0.3);
        assertThat(x[1][eliminated + 1]).isEqualTo(0.1);
        assertThat(k.backwardError(x[0], x[1], eliminated)).isLessThan(1e-14);
        assertThat(k.backwardError(x[2], x[3], eliminated)).isLessThan(1e-14);
    }

    @Test
    void vanishingOrUndefinedPivotIsSingular() {
        FrontalPlan plan = plan(2, 0);
        TestElements rankOne = new TestElements(2, new int[][] {{0, 1}});
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j <= i; j++) {
                rankOne.set(0, i, j, 1, 1);
            }
        }
        assertThatThrownBy(() -> new FrontalFactor(plan, rankOne, true))
                .isInstanceOf(SingularMatrixException.class)
                .hasMessageContaining("column 1");
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            TestElements wrong = new TestElements(2, new int[][] {{0, 1}});
            wrong.set(0, 0, 0, bad, 0);
            wrong.set(0, 1, 1, 1, 0);
            assertThatThrownBy(() -> new FrontalFactor(plan, wrong, true)).isInstanceOf(SingularMatrixException.class);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 20, 24})
    void smallSolver(int n) {
        TestElements k = one(n, 3 * n);
        Complex[][] dense = k.dense();
        Random random = new Random(n);
        double[] xr = random.doubles(n, -1, 1).toArray();
        double[] xi = random.doubles(n, -1, 1).toArray();
        ZMatrixRMaj b = new ZMatrixRMaj(n, 1);
        SmallSymmetric solver = new SmallSymmetric(n);
        for (int j = 0; j < n; j++) {
            b.set(j, 0, xr[j], xi[j]);
            for (int i = j; i < n; i++) {
                solver.columnRe(j)[i] = dense[i][j].getReal();
                solver.columnIm(j)[i] = dense[i][j].getImaginary();
            }
        }
        ZMatrixRMaj x = new ZMatrixRMaj(n, 1);
        assertThat(CommonOps_ZDRM.solve(matrix(dense, 0, n, 0, n), b, x)).isTrue();
        solver.solve(xr, xi);
        double scale = CommonOps_ZDRM.elementMaxAbs(x);
        for (int i = 0; i < n; i++) {
            assertThat(xr[i]).isCloseTo(x.getReal(i, 0), within(1e-11 * scale));
            assertThat(xi[i]).isCloseTo(x.getImag(i, 0), within(1e-11 * scale));
        }
    }

    @Test
    void smallSolverReportsSingularity() {
        SmallSymmetric solver = new SmallSymmetric(2);
        solver.columnRe(0)[0] = 1;
        solver.columnRe(0)[1] = 2;
        solver.columnRe(1)[1] = 4;
        assertThatThrownBy(() -> solver.solve(new double[2], new double[2]))
                .isInstanceOf(SingularMatrixException.class)
                .hasMessage("pivot 1 of 2 vanishes");
    }

    private static TestElements one(int n, long seed) {
        int[][] all = {IntStream.range(0, n).toArray()};
        return new TestElements(n, all).randomise(new Random(seed), new double[] {1}, new double[] {3});
    }

    private static FrontalPlan plan(int eliminated, int kept) {
        int[][] own = {IntStream.range(0, eliminated).toArray()};
        int[] rest = IntStream.range(eliminated, eliminated + kept).toArray();
        int[][] all = {IntStream.range(0, eliminated + kept).toArray()};
        return new FrontalPlan(new SeparatorTree(own, new int[] {-1}, rest), all);
    }

    private static ZMatrixRMaj matrix(Complex[][] k, int i0, int i1, int j0, int j1) {
        ZMatrixRMaj m = new ZMatrixRMaj(i1 - i0, j1 - j0);
        for (int i = i0; i < i1; i++) {
            for (int j = j0; j < j1; j++) {
                m.set(i - i0, j - j0, k[i][j].getReal(), k[i][j].getImaginary());
            }
        }
        return m;
    }
}
