package eddyreach.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.linalg.SeparatorTree;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nested dissection of meshes of all sizes and mixed degrees. */
class DissectionTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void namesEachUnknownOnceAndSeparates(long seed) {
        Random random = new Random(seed);
        TensorMesh mesh = new TensorMesh(axis(random), axis(random));
        SeparatorTree tree = mesh.dissection(3);

        int[] node = new int[mesh.unknowns()];
        int[] times = new int[mesh.unknowns()];
        for (int v = 0; v < tree.size(); v++) {
            for (int u : tree.own()[v]) {
                node[u] = v;
                times[u]++;
            }
        }
        assertThat(times).containsOnly(1);
        assertThat(tree.kept()).containsExactly(mesh.unknowns(), mesh.unknowns() + 1, mesh.unknowns() + 2);
        assertThat(Arrays.stream(tree.parent()).filter(p -> p == -1).count()).isEqualTo(1);

        for (int ez = 0; ez < mesh.z().elements(); ez++) {
            for (int er = 0; er < mesh.r().elements(); er++) {
                // all unknowns of a cell lie on one way to the root
                int lowest = tree.size();
                for (int u : unknowns(mesh, er, ez)) {
                    lowest = u < 0 ? lowest : Math.min(lowest, node[u]);
                }
                for (int u : unknowns(mesh, er, ez)) {
                    if (u >= 0) {
                        int up = lowest;
                        while (up != -1 && up != node[u]) {
                            up = tree.parent()[up];
                        }
                        assertThat(up).isEqualTo(node[u]);
                    }
                }
            }
        }
    }

    private static int[] unknowns(TensorMesh mesh, int er, int ez) {
        int nr = mesh.r().degree(er) + 1;
        int[] u = new int[nr * (mesh.z().degree(ez) + 1)];
        for (int i = 0; i < u.length; i++) {
            u[i] = mesh.unknown(mesh.r().function(er, i % nr), mesh.z().function(ez, i / nr));
        }
        return u;
    }

    private static Axis axis(Random random) {
        int n = 2 + random.nextInt(20);
        double[] ends = new double[n + 1];
        int[] degree = new int[n];
        for (int i = 0; i < n; i++) {
            ends[i + 1] = ends[i] + Math.exp(4 * random.nextGaussian());
            degree[i] = 1 + random.nextInt(5);
        }
        return new Axis(ends, degree);
    }
}
