package eddyreach.solved;

import eddyreach.linalg.FrontalFactor;
import eddyreach.linalg.FrontalPlan;
import eddyreach.linalg.SeparatorTree;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_common.DZcs;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_common.DZcss;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_compress;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_dupl;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_entry;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_lu;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_sqr;
import edu.emory.mathcs.csparsej.tdcomplex.DZcs_util;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The same matrix of 19 881 unknowns factorised by the product, by its plain up-looking version and by CSparseJ (LU, own ordering). */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx4g")
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class SolverComparisonBenchmark {

    private static final int CELLS = 71;
    private static final double PIVOT = 1e-3;

    private final BiquadraticGrid grid = new BiquadraticGrid(CELLS);
    private final FrontalPlan plan = grid.plan();
    private int n;
    private int[] start;
    private int[] rows;
    private double[] re;
    private double[] im;
    private DZcs matrix;

    @Setup
    public void prepare() {
        SeparatorTree tree = grid.mesh.dissection(0);
        n = tree.unknowns();
        int[] position = new int[n];
        int next = 0;
        for (int[] group : tree.own()) {
            for (int u : group) {
                position[u] = next++;
            }
        }
        TreeMap<Long, double[]> upper = new TreeMap<>();
        DZcs triplets = DZcs_util.cs_spalloc(n, n, 16, true, true);
        double[] kr = new double[45];
        double[] ki = new double[45];
        for (int e = 0; e < grid.elements.length; e++) {
            int[] u = grid.elements[e];
            grid.fill(e, kr, ki);
            int at = 0;
            for (int i = 0; i < u.length; i++) {
                for (int j = 0; j <= i; j++, at++) {
                    int a = Math.min(position[u[i]], position[u[j]]);
                    int b = Math.max(position[u[i]], position[u[j]]);
                    double[] sum = upper.computeIfAbsent((long) b * n + a, k -> new double[2]);
                    sum[0] += kr[at];
                    sum[1] += ki[at];
                    DZcs_entry.cs_entry(triplets, u[i], u[j], kr[at], ki[at]);
                    if (i != j) {
                        DZcs_entry.cs_entry(triplets, u[j], u[i], kr[at], ki[at]);
                    }
                }
            }
        }
        start = new int[n + 1];
        rows = new int[upper.size()];
        re = new double[upper.size()];
        im = new double[upper.size()];
        int p = 0;
        for (var entry : upper.entrySet()) {
            start[(int) (entry.getKey() / n) + 1]++;
            rows[p] = (int) (entry.getKey() % n);
            re[p] = entry.getValue()[0];
            im[p++] = entry.getValue()[1];
        }
        for (int k = 0; k < n; k++) {
            start[k + 1] += start[k];
        }
        matrix = DZcs_compress.cs_compress(triplets);
        DZcs_dupl.cs_dupl(matrix);
    }

    @Benchmark
    public Object solverOwn() {
        return new FrontalFactor(plan, grid, true);
    }

    @Benchmark
    public Object solverPlainUpLooking() {
        return new SparseUpLooking(n, start, rows, re, im);
    }

    @Benchmark
    public Object solverCsparsej() {
        DZcss order = DZcs_sqr.cs_sqr(1, matrix, false);
        return DZcs_lu.cs_lu(matrix, order, PIVOT);
    }
}
