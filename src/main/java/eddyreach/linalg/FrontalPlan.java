package eddyreach.linalg;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Symbolic analysis of a multifrontal factorisation: which unknowns meet in which dense front. It depends on the
 * pattern alone, so one plan serves all frequencies and materials on a mesh.
 *
 * <p>Each element is assembled into the front that eliminates the first of its unknowns. The rows of a front are its own
 * unknowns followed by its border: all later unknowns that its elements and its children touch. (Duff and Reid, ACM Trans.
 * Math. Software 9 (1983) 302.)
 */
public final class FrontalPlan {

    /** A complex number. */
    private static final int BYTES = 2 * Double.BYTES;

    /** Operations from which a subtree is worth a task of its own: about a millisecond. */
    private static final double SPLIT = 2e6;

    final int unknowns;
    final int[][] rows;
    final int[] ownCount;
    final int[][] children;
    final int[][] toParent;
    final int[][] elementsOf;
    final int[][] elementRows;
    final int[] kept;
    final int[] roots;
    final int[][] rootToKept;

    /** Where the columns of each node begin in the factor; the last entry is its length. */
    final long[] start;

    private final double[] work;

    /**
     * @param tree order of elimination
     * @param elements unknowns of each element
     * @throws IllegalArgumentException if an element couples two branches of the tree
     */
    public FrontalPlan(SeparatorTree tree, int[][] elements) {
        unknowns = tree.unknowns();
        kept = tree.kept().clone();
        int nodes = tree.size();
        int[] position = new int[unknowns];
        int[] owner = new int[unknowns];
        Arrays.fill(position, -1);
        int next = 0;
        for (int v = 0; v < nodes; v++) {
            for (int u : tree.own()[v]) {
                position[u] = next++;
                owner[u] = v;
            }
        }
        for (int u : kept) {
            position[u] = next++;
            owner[u] = nodes;
        }
        if (next != unknowns || Arrays.stream(position).anyMatch(p -> p < 0)) {
            throw new IllegalArgumentException("the tree does not name each unknown once");
        }
        children = childrenOf(tree);
        elementsOf = group(elements, owner, nodes);
        rows = new int[nodes][];
        ownCount = new int[nodes];
        toParent = new int[nodes][];
        elementRows = new int[elements.length][];
        List<Integer> rootList = new ArrayList<>();
        List<int[]> rootMap = new ArrayList<>();
        int[] byPosition = new int[unknowns];
        for (int u = 0; u < unknowns; u++) {
            byPosition[position[u]] = u;
        }
        int[] mark = new int[unknowns];
        int[] local = new int[unknowns];
        for (int v = 0; v < nodes; v++) {
            rows[v] = front(v, tree.own()[v], elements, position, byPosition, mark);
            ownCount[v] = tree.own()[v].length;
            for (int i = 0; i < rows[v].length; i++) {
                local[rows[v][i]] = i;
            }
            for (int e : elementsOf[v]) {
                elementRows[e] = Arrays.stream(elements[e]).map(u -> local[u]).toArray();
            }
            for (int c : children[v]) {
                toParent[c] = borderIn(c, local, rows[v]);
            }
            if (tree.parent()[v] < 0) {
                rootList.add(v);
                rootMap.add(keptBorder(v, owner, position, nodes));
            }
        }
        roots = rootList.stream().mapToInt(Integer::intValue).toArray();
        rootToKept = rootMap.toArray(new int[0][]);
        work = subtreeWork();
        start = new long[nodes + 1];
        for (int v = 0; v < nodes; v++) {
            long m = ownCount[v];
            start[v + 1] = start[v] + m * rows[v].length - m * (m - 1) / 2;
        }
    }

    private static int[][] childrenOf(SeparatorTree tree) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int v = 0; v < tree.size(); v++) {
            lists.add(new ArrayList<>());
        }
        for (int v = 0; v < tree.size(); v++) {
            if (tree.parent()[v] >= 0) {
                lists.get(tree.parent()[v]).add(v);
            }
        }
        return lists.stream()
                .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private static int[][] group(int[][] elements, int[] owner, int nodes) {
        int[] count = new int[nodes];
        int[] first = new int[elements.length];
        for (int e = 0; e < elements.length; e++) {
            int v = nodes;
            for (int u : elements[e]) {
                v = Math.min(v, owner[u]);
            }
            if (v == nodes) {
                throw new IllegalArgumentException("element " + e + " touches kept unknowns only");
            }
            first[e] = v;
            count[v]++;
        }
        int[][] of = new int[nodes][];
        for (int v = 0; v < nodes; v++) {
            of[v] = new int[count[v]];
        }
        for (int e = elements.length - 1; e >= 0; e--) {
            of[first[e]][--count[first[e]]] = e;
        }
        return of;
    }

    private int[] front(int v, int[] own, int[][] elements, int[] position, int[] byPosition, int[] mark) {
        int stamp = v + 1;
        for (int u : own) {
            mark[u] = stamp;
        }
        int[] border = new int[64];
        int n = 0;
        for (int e : elementsOf[v]) {
            for (int u : elements[e]) {
                if (mark[u] != stamp) {
                    mark[u] = stamp;
                    border = n == border.length ? Arrays.copyOf(border, 2 * n) : border;
                    border[n++] = position[u];
                }
            }
        }
        for (int c : children[v]) {
            for (int i = ownCount[c]; i < rows[c].length; i++) {
                int u = rows[c][i];
                if (mark[u] != stamp) {
                    mark[u] = stamp;
                    border = n == border.length ? Arrays.copyOf(border, 2 * n) : border;
                    border[n++] = position[u];
                }
            }
        }
        Arrays.sort(border, 0, n);
        int last = own.length == 0 ? -1 : position[own[own.length - 1]];
        if (n > 0 && border[0] <= last) {
            throw new IllegalArgumentException("an element couples two branches of the separator tree");
        }
        int[] all = Arrays.copyOf(own, own.length + n);
        for (int i = 0; i < n; i++) {
            all[own.length + i] = byPosition[border[i]];
        }
        return all;
    }

    private int[] borderIn(int child, int[] local, int[] parentRows) {
        int m = ownCount[child];
        int[] map = new int[rows[child].length - m];
        for (int i = 0; i < map.length; i++) {
            int u = rows[child][m + i];
            map[i] = local[u];
            if (local[u] >= parentRows.length || parentRows[local[u]] != u) {
                throw new IllegalArgumentException("unknown " + u + " is missing in the parent's front");
            }
        }
        return map;
    }

    private int[] keptBorder(int root, int[] owner, int[] position, int nodes) {
        int base = unknowns - kept.length;
        int[] map = new int[rows[root].length - ownCount[root]];
        for (int i = 0; i < map.length; i++) {
            int u = rows[root][ownCount[root] + i];
            if (owner[u] != nodes) {
                throw new IllegalArgumentException("an element couples two trees");
            }
            map[i] = position[u] - base;
        }
        return map;
    }

    /** Number of unknowns, the kept ones included. */
    public int unknowns() {
        return unknowns;
    }

    /** Number of complex numbers that a kept factor holds. */
    public long factorEntries() {
        return start[start.length - 1];
    }

    /**
     * Upper bound of the memory that a factorisation takes at once, bytes: the factor if it is kept, the blocks that wait for their
     * parents at the worst moment of the walk through the tree, and one front for each thread.
     *
     * @param keep whether the factor is kept
     * @param threads number of threads that may work
     */
    public long memory(boolean keep, int threads) {
        long waiting = 0;
        long most = 0;
        for (int v = 0; v < rows.length; v++) {
            waiting += block(v);
            most = Math.max(most, waiting);
            for (int c : children[v]) {
                waiting -= block(c);
            }
        }
        long front = (long) largestFront() * (largestFront() + 1) / 2;
        // blocks are handed out in powers of two, and each thread may stand at another place of the tree
        return BYTES * ((keep ? factorEntries() : 0) + 2 * threads * most + threads * front);
    }

    private long block(int v) {
        long border = rows[v].length - ownCount[v];
        return border * (border + 1) / 2;
    }

    /** Real multiplications and additions of the elimination, counted as 8 per complex multiply-add. */
    public double operations() {
        double sum = 0;
        for (int root : roots) {
            sum += work[root];
        }
        return sum;
    }

    /** True when both branches below a node are large enough to be given to two threads. */
    boolean worthSplitting(int node) {
        return Math.min(work[children[node][0]], work[children[node][1]]) > SPLIT;
    }

    /** Operations of the subtrees up to each node. */
    private double[] subtreeWork() {
        double[] sum = new double[rows.length];
        for (int v = 0; v < rows.length; v++) {
            double n = rows[v].length;
            for (int j = 0; j < ownCount[v]; j++) {
                sum[v] += 4 * (n - j) * (n - j);
            }
            for (int c : children[v]) {
                sum[v] += sum[c];
            }
        }
        return sum;
    }

    /** Length of the longest list of unknowns of an element. */
    int largestElement() {
        return Arrays.stream(elementRows).mapToInt(r -> r.length).max().orElse(0);
    }

    /** Order of the largest front. */
    public int largestFront() {
        return Arrays.stream(rows).mapToInt(r -> r.length).max().orElse(0);
    }
}
