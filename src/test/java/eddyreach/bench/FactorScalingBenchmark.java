package eddyreach.solved;

import eddyreach.linalg.FrontalFactor;
import eddyreach.linalg.FrontalPlan;
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

/** How the factorisation grows with the unknowns. */
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
    private BiquadraticGrid grid;

    @Setup
    public void prepare() {
        grid = new BiquadraticGrid(cells);
        plan = grid.plan();
    }

    @Benchmark
    public Object factor() {
        return new FrontalFactor(plan, grid, false);
    }
}
