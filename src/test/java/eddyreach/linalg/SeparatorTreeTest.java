package eddyreach.linalg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Trees of every shape, several roots and empty groups included, against the plain LDL^T; and trees or elements that are wrong. */
class SeparatorTreeTest {

    /** A tree with elements that respect it. */
    private record Case(SeparatorTree tree, TestElements elements, int kept) {

        static Case random(long seed) {
            Random random = new Random(seed);
            int nodes = 1 + random.nextInt(12);
            int kept = random.nextInt(4);
            int[][] own = new int[nodes][];
            int[] parent = new int[nodes];
            List<Integer> names = new ArrayList<>();
            int eliminated = 0;
            for (int v = 0; v < nodes; v++) {
                own[v] = new int[random.nextInt(6)];
                eliminated += own[v].length;
                parent[v] = v == nodes - 1 || random.nextInt(8) == 0 ? -1 : v + 1 + random.nextInt(nodes - v - 1);
            }
            for (int u = 0; u < eliminated; u++) {
                names.add(u);
            }
            Collections.shuffle(names, random);
            for (int[] group : own) {
                for (int i = 0; i < group.length; i++) {
                    group[i] = names.remove(names.size() - 1);
                }
            }
            int[] keep = new int[kept];
            for (int i = 0; i < kept; i++) {
                keep[i] = eliminated + i;
            }
            SeparatorTree tree = new SeparatorTree(own, parent, keep);
            int[][] lists = elements(tree, random);
            double[] a = random.doubles(lists.length, 0.5, 2).toArray();
            TestElements values = new TestElements(tree.unknowns(), lists).randomise(random, a, a);
            return new Case(tree, values, kept);
        }

        private static int[][] elements(SeparatorTree tree, Random random) {
            List<int[]> lists = new ArrayList<>();
            for (int v = 0; v < tree.size(); v++) {
                for (int first : tree.own()[v]) {
                    List<Integer> more = new ArrayList<>();
                    for (int up = v; up >= 0; up = tree.parent()[up]) {
                        for (int u : tree.own()[up]) {
                            if (u != first && random.nextBoolean()) {
                                more.add(u);
                            }
                        }
                    }
                    for (int u : tree.kept()) {
                        if (random.nextInt(3) == 0) {
                            more.add(u);
                        }
                    }
                    more.add(first);
                    Collections.shuffle(more, random);
                    lists.add(more.stream().mapToInt(Integer::intValue).toArray());
                }
            }
            return lists.toArray(new int[0][]);
        }
    }

    static List<Long> seeds() {
        List<Long> seeds = new ArrayList<>();
        for (long s = 1; s <= 60; s++) {
            seeds.add(s);
        }
        return seeds;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyTreeGivesThePlainResult(long seed) {
        Case c = Case.random(seed);
        FrontalPlan plan = new FrontalPlan(c.tree(), c.elements().lists());
        FrontalFactor factor = new FrontalFactor(plan, c.elements(), true);
        int m = c.tree().unknowns() - c.kept();
        Complex[][] dense = c.elements().dense();
        UpLookingLdl plain = new UpLookingLdl(dense, m);
        Complex[][] schur = plain.schur(dense);
        for (int i = 0; i < c.kept(); i++) {
            for (int j = 0; j < c.kept(); j++) {
                Complex fast = new Complex(factor.schurRe()[i][j], factor.schurIm()[i][j]);
                assertThat(fast.subtract(schur[i][j]).abs()).isLessThan(1e-11);
            }
        }
        Random random = new Random(seed);
        double[][] y = {
            random.doubles(c.kept(), -1, 1).toArray(),
            random.doubles(c.kept(), -1, 1).toArray()
        };
        double[][] x = factor.extend(y);
        Complex[] given = new Complex[c.kept()];
        for (int i = 0; i < given.length; i++) {
            given[i] = new Complex(y[0][i], y[1][i]);
        }
        Complex[] expected = plain.extend(given);
        for (int i = 0; i < m; i++) {
            assertThat(new Complex(x[0][i], x[1][i]).subtract(expected[i]).abs())
                    .isLessThan(1e-11);
        }
    }

    @Test
    void countsOfAChain() {
        // unknown 0 couples to 1, 1 to 2, 2 to the kept 3: three fronts of two rows each
        SeparatorTree tree = new SeparatorTree(new int[][] {{0}, {1}, {2}}, new int[] {1, 2, -1}, new int[] {3});
        FrontalPlan plan = new FrontalPlan(tree, new int[][] {{0, 1}, {1, 2}, {2, 3}});
        assertThat(plan.unknowns()).isEqualTo(4);
        assertThat(plan.largestFront()).isEqualTo(2);
        assertThat(plan.factorEntries()).isEqualTo(6);
        assertThat(plan.operations()).isEqualTo(3 * 4 * 4);
    }

    @Test
    void elementThatCouplesTwoBranches() {
        SeparatorTree tree = new SeparatorTree(new int[][] {{0}, {1}, {2}}, new int[] {2, 2, -1}, new int[0]);
        assertThatThrownBy(() -> new FrontalPlan(tree, new int[][] {{0, 1, 2}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an element couples two branches of the separator tree");
    }

    @Test
    void elementThatCouplesTwoBranchesBelowAnEmptyGroup() {
        SeparatorTree tree = new SeparatorTree(new int[][] {{0}, {1}, {}}, new int[] {2, 2, -1}, new int[0]);
        assertThatThrownBy(() -> new FrontalPlan(tree, new int[][] {{0, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("an element couples two");
    }

    @Test
    void elementThatCouplesTwoTrees() {
        SeparatorTree tree = new SeparatorTree(new int[][] {{0}, {1}}, new int[] {-1, -1}, new int[0]);
        assertThatThrownBy(() -> new FrontalPlan(tree, new int[][] {{0, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an element couples two trees");
    }

    @Test
    void elementOfKeptUnknownsOnly() {
        SeparatorTree tree = new SeparatorTree(new int[][] {{0}}, new int[] {-1}, new int[] {1, 2});
        assertThatThrownBy(() -> new FrontalPlan(tree, new int[][] {{0, 1}, {1, 2}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("element 1 touches kept unknowns only");
    }

    @Test
    void unknownNamedTwiceAndAnotherMissing() {
        SeparatorTree twice = new SeparatorTree(new int[][] {{0, 0}}, new int[] {-1}, new int[] {2});
        assertThatThrownBy(() -> new FrontalPlan(twice, new int[][] {{0, 2}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the tree does not name each unknown once");
    }

    @Test
    void parentListedBeforeItsChild() {
        assertThatThrownBy(() -> new SeparatorTree(new int[][] {{0}, {1}}, new int[] {-1, 0}, new int[0]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("node 1 is listed after its parent 0");
        assertThatThrownBy(() -> new SeparatorTree(new int[][] {{0}}, new int[] {0}, new int[0]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SeparatorTree(new int[][] {{0}}, new int[0], new int[0]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("1 groups but 0 parents");
    }
}
