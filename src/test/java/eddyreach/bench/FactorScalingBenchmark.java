package eddyreach.bench;

import eddyreach.fem.LineForms;
import eddyreach.linalg.ElementMatrices;
import eddyreach.linalg.FrontalFactor;
import eddyreach.linalg.FrontalPlan;
import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How the factorisation grows with the unknowns, on square meshes of biquadratic elements with lossy cells. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx8g")
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class FactorScalingBenchmark {

    /** Cells along each side; unknowns are (2 n - 1) squared. */
    @Param({"36", "71", "159", "224"})
    public int cells;

    private FrontalPlan plan;
    private ElementMatrices values;

    /** Unknowns for a number of cells along each side. */
    static int unknowns(int cells) {
        return (2 * cells - 1) * (2 * cells - 1);
    }

    @Setup
    public void prepare() {
        double[] ends = new double[cells + 1];
        int[] degree = new int[cells];
        Arrays.fill(degree, 2);
        for (int i = 0; i <= cells; i++) {
            ends[i] = i;
        }
        Axis axis = new Axis(ends, degree);
        TensorMesh mesh = new TensorMesh(axis, axis);
        double[][] mass = LineForms.mass(axis);
        double[][] stiff = LineForms.stiffness(axis);
        int[][] elements = new int[mesh.cells()][];
        int[][] local = new int[mesh.cells()][];
        for (int c = 0; c < elements.length; c++) {
            int[] u = new int[9];
            int[] l = new int[9];
            int n = 0;
            for (int i = 0; i < 9; i++) {
                int id = mesh.unknown(axis.function(c % cells, i % 3), axis.function(c / cells, i / 3));
                if (id >= 0) {
                    u[n] = id;
                    l[n++] = i;
                }
            }
            elements[c] = Arrays.copyOf(u, n);
            local[c] = Arrays.copyOf(l, n);
        }
        plan = new FrontalPlan(mesh.dissection(0), elements);
        values = (e, re, im) -> {
            int er = e % cells;
            int ez = e / cells;
            int at = 0;
            for (int i = 0; i < local[e].length; i++) {
                for (int j = 0; j <= i; j++, at++) {
                    int a = local[e][i] % 3 * 3 + local[e][j] % 3;
                    int b = local[e][i] / 3 * 3 + local[e][j] / 3;
                    re[at] = stiff[ez][b] * mass[er][a] + mass[ez][b] * stiff[er][a];
                    im[at] = (er + ez) % 3 * mass[ez][b] * mass[er][a];
                }
            }
        };
    }

    @Benchmark
    public Object factor() {
        return new FrontalFactor(plan, values, false);
    }
}
