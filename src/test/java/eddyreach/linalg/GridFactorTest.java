package eddyreach.linalg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_common.DZcs;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_common.DZcsa;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_compress;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_dupl;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_entry;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_lusol;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_util;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Larger systems on nested dissections of tensor meshes against CSparseJ, the Java version of CSparse (Davis, Direct Methods for
 * Sparse Linear Systems, 2006): LU with partial pivoting.
 */
class GridFactorTest {

    @Test
    void fivePointGrid() {
        TensorMesh mesh = mesh(71, 53, 1, 1);
        int nr = mesh.rowLength();
        int n = mesh.unknowns();
        List<int[]> lists = new ArrayList<>();
        for (int u = 0; u < n; u++) {
            lists.add(new int[] {u, n});
        }
        for (int u = 0; u < n; u++) {
            if (u % nr < nr - 1) {
                lists.add(new int[] {u, u + 1});
            }
            if (u + nr < n) {
                lists.add(new int[] {u, u + nr});
            }
        }
        TestElements k = new TestElements(n + 1, lists.toArray(new int[0][]));
        Random random = new Random(11);
        for (int e = 0; e < lists.size(); e++) {
            if (e < n) {
                k.set(e, 0, 0, 0.01, 0.02);
                k.set(e, 1, 0, random.nextDouble(), random.nextDouble());
            } else {
                k.set(e, 0, 0, 1, 0.1);
                k.set(e, 1, 0, -1, -0.1);
                k.set(e, 1, 1, 1, 0.1);
            }
        }
        compare(mesh, k, 1e-12);
    }

    @Test
    void finiteElements() {
        TensorMesh mesh = mesh(14, 11, 4, 3);
        TestElements k = elements(mesh, 1);
        double[] one = new double[k.lists().length];
        Arrays.fill(one, 1);
        k.randomise(new Random(3), one, one);
        compare(mesh, k, 1e-11);
    }

    /** Coefficients over twelve decades from element to element, as skin layers and permeabilities of 500 make them. */
    @Test
    void backwardErrorWithJumps() {
        TensorMesh mesh = mesh(20, 16, 3, 3);
        TestElements k = elements(mesh, 2);
        Random random = new Random(8);
        double[] a = new double[k.lists().length];
        double[] b = new double[a.length];
        for (int e = 0; e < a.length; e++) {
            a[e] = random.nextInt(3) == 0 ? 1 / 500.0 : 1;
            b[e] = Math.pow(10, random.nextInt(13) - 6);
        }
        k.randomise(random, a, b);
        FrontalPlan plan = new FrontalPlan(mesh.dissection(2), k.lists());
        double[][] x = new FrontalFactor(plan, k, true).extend(new double[][] {{1, 0.5}, {0.2, -1}});
        assertThat(k.backwardError(x[0], x[1], mesh.unknowns())).isLessThan(1e-15);
        assertThat(k.componentwiseError(x[0], x[1], mesh.unknowns())).isLessThan(1e-12);
    }

    @Test
    void onePlanServesSeveralSetsOfValues() {
        TensorMesh mesh = mesh(9, 9, 3, 2);
        FrontalPlan plan = new FrontalPlan(mesh.dissection(3), elements(mesh, 3).lists());
        double[][][] first = null;
        for (int seed = 1; seed <= 2; seed++) {
            TestElements k = elements(mesh, 3);
            double[] one = new double[k.lists().length];
            Arrays.fill(one, 1);
            k.randomise(new Random(seed), one, one);
            FrontalFactor shared = new FrontalFactor(plan, k, true);
            FrontalFactor fresh = new FrontalFactor(new FrontalPlan(mesh.dissection(3), k.lists()), k, true);
            assertThat(shared.schurRe()).isDeepEqualTo(fresh.schurRe());
            assertThat(shared.schurIm()).isDeepEqualTo(fresh.schurIm());
            double[][] y = {{1, 2, 3}, {3, 2, 1}};
            assertThat(shared.extend(y)).isDeepEqualTo(fresh.extend(y));
            if (first != null) {
                assertThat(first[0]).isNotEqualTo(shared.schurRe());
            }
            first = new double[][][] {shared.schurRe()};
        }
    }

    /** Branches run side by side in any order, but each sum has one order: not a bit may differ. */
    @Test
    void everyRunGivesTheSameBits() {
        TensorMesh mesh = mesh(16, 16, 3, 3);
        TestElements k = elements(mesh, 2);
        double[] one = new double[k.lists().length];
        Arrays.fill(one, 1);
        k.randomise(new Random(4), one, one);
        FrontalPlan plan = new FrontalPlan(mesh.dissection(2), k.lists());
        FrontalFactor reference = new FrontalFactor(plan, k, true);
        double[][] y = {{1, -1}, {0, 1}};
        double[][] x = reference.extend(y);
        for (int run = 0; run < 6; run++) {
            FrontalFactor again = new FrontalFactor(plan, k, true);
            assertThat(again.schurRe()).isDeepEqualTo(reference.schurRe());
            assertThat(again.schurIm()).isDeepEqualTo(reference.schurIm());
            assertThat(again.extend(y)).isDeepEqualTo(x);
        }
    }

    @Test
    void singularBranchIsReportedFromWhereverItRuns() {
        TensorMesh mesh = mesh(12, 12, 2, 2);
        TestElements k = elements(mesh, 1);
        double[] a = new double[k.lists().length];
        Arrays.fill(a, 1);
        // a cell's inner function belongs to no other cell: without values it has no pivot
        a[77] = 0;
        k.randomise(new Random(6), a, a);
        FrontalPlan plan = new FrontalPlan(mesh.dissection(1), k.lists());
        assertThatThrownBy(() -> new FrontalFactor(plan, k, true)).isInstanceOf(SingularMatrixException.class);
    }

    /** Solution of K x = b, b being the column of the last unknown, by both. */
    private static void compare(TensorMesh mesh, TestElements k, double tolerance) {
        int n = mesh.unknowns();
        FrontalFactor factor = new FrontalFactor(new FrontalPlan(mesh.dissection(1), k.lists()), k, true);
        double[][] x = factor.extend(new double[][] {{-1}, {0}});
        assertThat(k.backwardError(x[0], x[1], n)).isLessThan(1e-15);

        DZcs triplets = DZcs_util.cs_spalloc(n, n, 16, true, true);
        DZcsa b = new DZcsa(n);
        double[] corner = new double[2];
        k.forEach((i, j, re, im) -> {
            if (i < n && j < n) {
                DZcs_entry.cs_entry(triplets, i, j, re, im);
            } else if (i < n) {
                b.set(i, b.real(i) + re, b.imag(i) + im);
            } else if (j == n) {
                corner[0] += re;
                corner[1] += im;
            }
        });
        double[] load = b.x.clone();
        DZcs matrix = DZcs_compress.cs_compress(triplets);
        DZcs_dupl.cs_dupl(matrix);
        assertThat(DZcs_lusol.cs_lusol(1, matrix, b, 1.0)).isTrue();
        double largest = 0;
        double worst = 0;
        double[] product = new double[2];
        for (int i = 0; i < n; i++) {
            largest = Math.max(largest, Math.hypot(b.real(i), b.imag(i)));
            worst = Math.max(worst, Math.hypot(x[0][i] - b.real(i), x[1][i] - b.imag(i)));
            product[0] += load[2 * i] * b.real(i) - load[2 * i + 1] * b.imag(i);
            product[1] += load[2 * i] * b.imag(i) + load[2 * i + 1] * b.real(i);
        }
        assertThat(worst).isLessThan(tolerance * largest);
        double size = Math.hypot(product[0], product[1]);
        assertThat(Math.hypot(
                        factor.schurRe()[0][0] - corner[0] + product[0],
                        factor.schurIm()[0][0] - corner[1] + product[1]))
                .isLessThan(tolerance * size);
    }

    private static TensorMesh mesh(int cellsR, int cellsZ, int degreeR, int degreeZ) {
        return new TensorMesh(axis(cellsR, degreeR), axis(cellsZ, degreeZ));
    }

    private static Axis axis(int cells, int degree) {
        double[] ends = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            ends[i] = i;
        }
        int[] degrees = new int[cells];
        Arrays.fill(degrees, degree);
        return new Axis(ends, degrees);
    }

    /** The unknowns of each cell followed by the kept ones. */
    private static TestElements elements(TensorMesh mesh, int kept) {
        int[][] lists = new int[mesh.cells()][];
        for (int c = 0; c < lists.length; c++) {
            int er = c % mesh.r().elements();
            int ez = c / mesh.r().elements();
            List<Integer> u = new ArrayList<>();
            for (int b = 0; b <= mesh.z().degree(ez); b++) {
                for (int a = 0; a <= mesh.r().degree(er); a++) {
                    int id = mesh.unknown(mesh.r().function(er, a), mesh.z().function(ez, b));
                    if (id >= 0) {
                        u.add(id);
                    }
                }
            }
            for (int i = 0; i < kept; i++) {
                u.add(mesh.unknowns() + i);
            }
            lists[c] = u.stream().mapToInt(Integer::intValue).toArray();
        }
        return new TestElements(mesh.unknowns() + kept, lists);
    }
}
