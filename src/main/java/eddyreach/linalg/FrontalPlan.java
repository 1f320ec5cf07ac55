package eddyreach.linalg;

import java.util.Arrays;

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

    private final int largestElement;
    private final int largestFront;

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
        number(tree, position, owner);
        int[] byPosition = inverse(position);
        children = childrenOf(tree);
        elementsOf = group(elements, owner, nodes);
        rows = new int[nodes][];
        ownCount = new int[nodes];
        toParent = new int[nodes][];
        elementRows = new int[elements.length][];
        Border border = new Border(unknowns);
        int[] local = new int[unknowns];
        for (int v = 0; v < nodes; v++) {
            ownCount[v] = tree.own()[v].length;
            rows[v] = front(v, tree.own()[v], elements, position, byPosition, border);
            invert(rows[v], local);
            for (int e : elementsOf[v]) {
                elementRows[e] = picked(local, elements[e]);
            }
            for (int c : children[v]) {
                toParent[c] = borderIn(c, local, rows[v]);
            }
        }
        roots = rootsOf(tree);
        rootToKept = new int[roots.length][];
        for (int r = 0; r < roots.length; r++) {
            rootToKept[r] = keptBorder(roots[r], owner, position, nodes);
        }
        work = subtreeWork();
        start = starts();
        largestElement = longest(elementRows);
        largestFront = longest(rows);
    }

    /** Numbers the unknowns in the order of their elimination, the kept ones last; their owner is no node. */
    private static void number(SeparatorTree tree, int[] position, int[] owner) {
        Arrays.fill(position, -1);
        int next = 0;
        for (int v = 0; v < tree.size(); v++) {
            next = number(tree.own()[v], v, next, position, owner);
        }
        number(tree.kept(), tree.size(), next, position, owner);
        for (int p : position) {
            if (p < 0) {
                throw new IllegalArgumentException("the tree does not name each unknown once");
            }
        }
    }

    private static int number(int[] group, int node, int from, int[] position, int[] owner) {
        int next = from;
        for (int u : group) {
            position[u] = next++;
            owner[u] = node;
        }
        return next;
    }

    private static int[] inverse(int[] position) {
        int[] out = new int[position.length];
        invert(position, out);
        return out;
    }

    /** Writes at each value the place where it stands. */
    private static void invert(int[] values, int[] place) {
        for (int i = 0; i < values.length; i++) {
            place[values[i]] = i;
        }
    }

    private static int[] picked(int[] from, int[] places) {
        int[] out = new int[places.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = from[places[i]];
        }
        return out;
    }

    private static int[][] childrenOf(SeparatorTree tree) {
        int[] count = new int[tree.size()];
        for (int p : tree.parent()) {
            if (p >= 0) {
                count[p]++;
            }
        }
        int[][] of = new int[count.length][];
        for (int v = 0; v < of.length; v++) {
            of[v] = new int[count[v]];
        }
        for (int v = of.length - 1; v >= 0; v--) {
            int p = tree.parent()[v];
            if (p >= 0) {
                of[p][--count[p]] = v;
            }
        }
        return of;
    }

    private static int[] rootsOf(SeparatorTree tree) {
        int[] roots = new int[tree.size()];
        int n = 0;
        for (int v = 0; v < roots.length; v++) {
            if (tree.parent()[v] < 0) {
                roots[n++] = v;
            }
        }
        return Arrays.copyOf(roots, n);
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

    /** Collects the border of one front after the other. */
    private static final class Border {

        private final int[] mark;
        private int stamp;
        private int[] positions = new int[64];
        private int count;

        Border(int unknowns) {
            mark = new int[unknowns];
        }

        /** Starts the border of another front, whose own unknowns do not belong to it. */
        void start(int[] own) {
            stamp++;
            count = 0;
            for (int u : own) {
                mark[u] = stamp;
            }
        }

        /** Adds the positions of unknowns, from an index on, that it does not have yet. */
        void add(int[] unknowns, int from, int[] position) {
            int most = count + unknowns.length - from;
            if (most > positions.length) {
                positions = Arrays.copyOf(positions, 2 * most);
            }
            for (int i = from; i < unknowns.length; i++) {
                int u = unknowns[i];
                if (mark[u] != stamp) {
                    mark[u] = stamp;
                    positions[count++] = position[u];
                }
            }
        }

        int[] sorted() {
            int[] all = Arrays.copyOf(positions, count);
            Arrays.sort(all);
            return all;
        }
    }

    private int[] front(int v, int[] own, int[][] elements, int[] position, int[] byPosition, Border border) {
        border.start(own);
        for (int e : elementsOf[v]) {
            border.add(elements[e], 0, position);
        }
        for (int c : children[v]) {
            border.add(rows[c], ownCount[c], position);
        }
        int[] later = border.sorted();
        int last = own.length == 0 ? -1 : position[own[own.length - 1]];
        if (later.length > 0 && later[0] <= last) {
            throw new IllegalArgumentException("an element couples two branches of the separator tree");
        }
        int[] all = Arrays.copyOf(own, own.length + later.length);
        System.arraycopy(picked(byPosition, later), 0, all, own.length, later.length);
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

    /** Bytes that a kept factor holds. */
    long factorBytes() {
        return BYTES * factorEntries();
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
            sum[v] = frontWork(rows[v].length, ownCount[v]);
            for (int c : children[v]) {
                sum[v] += sum[c];
            }
        }
        return sum;
    }

    private static double frontWork(double order, int own) {
        double sum = 0;
        for (int j = 0; j < own; j++) {
            sum += 4 * (order - j) * (order - j);
        }
        return sum;
    }

    private long[] starts() {
        long[] at = new long[rows.length + 1];
        for (int v = 0; v < rows.length; v++) {
            long m = ownCount[v];
            at[v + 1] = at[v] + m * rows[v].length - m * (m - 1) / 2;
        }
        return at;
    }

    private static int longest(int[][] lists) {
        int most = 0;
        for (int[] list : lists) {
            most = Math.max(most, list.length);
        }
        return most;
    }

    /** Length of the longest list of unknowns of an element. */
    int largestElement() {
        return largestElement;
    }

    /** Order of the largest front. */
    public int largestFront() {
        return largestFront;
    }
}
