package eddyreach.linalg;

/**
 * The order in which unknowns are eliminated, as a tree of groups: a group's unknowns couple only to those of its
 * own group, of its descendants and of its ancestors. Nodes are listed children first.
 *
 * @param own unknowns eliminated at each node, {@code [node][...]}
 * @param parent parent of each node, greater than the node itself; -1 at a root
 * @param kept unknowns that are never eliminated; the Schur complement is formed on them
 */
public record SeparatorTree(int[][] own, int[] parent, int[] kept) {

    public SeparatorTree {
        if (own.length != parent.length) {
            throw new IllegalArgumentException(own.length + " groups but " + parent.length + " parents");
        }
        for (int v = 0; v < parent.length; v++) {
            if (parent[v] != -1 && parent[v] <= v) {
                throw new IllegalArgumentException("node " + v + " is listed after its parent " + parent[v]);
            }
        }
    }

    /** Number of nodes. */
    public int size() {
        return own.length;
    }

    /** Number of unknowns, the kept ones included. */
    public int unknowns() {
        int n = kept.length;
        for (int[] g : own) {
            n += g.length;
        }
        return n;
    }
}
