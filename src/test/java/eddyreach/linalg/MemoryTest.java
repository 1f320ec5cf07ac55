package eddyreach.linalg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The bound on a factorisation's memory, and the refusal of what would not fit. */
class MemoryTest {

    @Test
    void refusesWhatDoesNotFitBeforeAnythingIsDone() {
        int n = (int) Math.sqrt(Runtime.getRuntime().maxMemory() / 4.0);
        int[] all = IntStream.range(0, n).toArray();
        FrontalPlan plan =
                new FrontalPlan(new SeparatorTree(new int[][] {all}, new int[] {-1}, new int[0]), new int[][] {all});
        assertThat(plan.memory(false, 1)).isGreaterThan(Runtime.getRuntime().maxMemory());
        assertThatThrownBy(() -> new FrontalFactor(
                        plan,
                        (e, re, im) -> {
                            throw new AssertionError("must not be asked for values");
                        },
                        false))
                .isInstanceOf(MemoryException.class)
                .hasMessageMatching(
                        "the field problem may need \\d+ MB and the Java heap has \\d+ MB left: ask for less accuracy"
                                + " or give Java more memory with -Xmx");
    }

    /** The bound of a dissected mesh: at least the factor, and growing not much faster than n log n. */
    @Test
    void boundFollowsTheProblem() {
        long small = plan(10).memory(true, 2);
        long large = plan(40).memory(true, 2);
        assertThat(small).isGreaterThanOrEqualTo(16 * plan(10).factorEntries());
        assertThat((double) large / small).isBetween(16.0, 16 * 3.0);
    }

    private static FrontalPlan plan(int cells) {
        double[] ends = IntStream.rangeClosed(0, cells).asDoubleStream().toArray();
        int[] degree = IntStream.range(0, cells).map(i -> 2).toArray();
        Axis axis = new Axis(ends, degree);
        TensorMesh mesh = new TensorMesh(axis, axis);
        int[][] elements = IntStream.range(0, mesh.cells())
                .mapToObj(c -> IntStream.range(0, 9)
                        .map(i -> mesh.unknown(axis.function(c % cells, i % 3), axis.function(c / cells, i / 3)))
                        .filter(u -> u >= 0)
                        .toArray())
                .toArray(int[][]::new);
        return new FrontalPlan(mesh.dissection(0), elements);
    }
}
