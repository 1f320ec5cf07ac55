package eddyreach.linalg;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveAction;

/**
 * Multifrontal factorisation K = L D L^T of a complex symmetric matrix along a {@link FrontalPlan}, with the Schur
 * complement on the kept unknowns.
 *
 * <p>Kept unknowns make right-hand sides cheap: append the loads B as kept unknowns, and the Schur complement of
 * {@code [K B; B^T 0]} is {@code -B^T K^-1 B}, found by elimination alone; {@link #extend} gives the columns of
 * K^-1 B by back substitution when the field itself is wanted.
 */
public final class FrontalFactor {

    /** Works all eliminations of this process, each of them with as many threads as are free. */
    private static final class Workers {
        private static final ForkJoinPool POOL = new ForkJoinPool();
    }

    private final FrontalPlan plan;

    /**
     * Eliminated columns of all fronts, one after the other, each with its last row first; null when not kept. One large array is
     * never moved about by the memory's keeper, as thousands of small ones would be.
     */
    private final double[] factorRe;

    private final double[] factorIm;

    private final double[][] schurRe;
    private final double[][] schurIm;

    /**
     * Factorises.
     *
     * @param plan the symbolic analysis
     * @param elements the values
     * @param keep whether the factor is kept for {@link #extend}; without it only the Schur complement is, at a fraction of the
     *     memory
     * @throws SingularMatrixException if a pivot vanishes or is not finite
     * @throws MemoryException if it may not fit into the heap, or is to be kept and has more entries than an array
     */
    public FrontalFactor(FrontalPlan plan, ElementMatrices elements, boolean keep) {
        this.plan = plan;
        int threads = Runtime.getRuntime().availableProcessors();
        long needed = plan.memory(keep, threads);
        if (keep && plan.factorEntries() > Integer.MAX_VALUE) {
            throw new MemoryException(needed, Runtime.getRuntime().maxMemory());
        }
        Memory.HEAP.take(needed);
        int k = plan.kept.length;
        schurRe = new double[k][k];
        schurIm = new double[k][k];
        try {
            factorRe = keep ? new double[(int) plan.factorEntries()] : null;
            factorIm = keep ? new double[factorRe.length] : null;
            // in a pool of its own: who waits here must not be made to begin another one, which may have to wait for
            // this
            Workers.POOL.invoke(ForkJoinTask.adapt(() -> eliminate(elements)));
        } finally {
            Memory.HEAP.give(needed, keep ? plan.factorBytes() : 0);
        }
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < i; j++) {
                schurRe[j][i] = schurRe[i][j];
                schurIm[j][i] = schurIm[i][j];
            }
        }
    }

    private void eliminate(ElementMatrices elements) {
        Elimination elimination = new Elimination(elements);
        for (int r = 0; r < plan.roots.length; r++) {
            elimination.new Branch(plan.roots[r]).invoke();
            int[] map = plan.rootToKept[r];
            double[] blockRe = elimination.blockRe[plan.roots[r]];
            double[] blockIm = elimination.blockIm[plan.roots[r]];
            int at = 0;
            for (int j = 0; j < map.length; j++) {
                addSchur(map, j, blockRe, blockIm, at);
                at += map.length - j;
            }
        }
    }

    private void addSchur(int[] map, int j, double[] blockRe, double[] blockIm, int from) {
        int at = from;
        for (int i = map.length - 1; i >= j; i--, at++) {
            schurRe[map[i]][map[j]] += blockRe[at];
            schurIm[map[i]][map[j]] += blockIm[at];
        }
    }

    /** What is needed while the tree is worked through. */
    private final class Elimination {

        private final ElementMatrices elements;

        /** Schur complement of each front on its border, column after column, last row first, until its parent has taken it. */
        private final double[][] blockRe = new double[plan.rows.length][];

        private final double[][] blockIm = new double[plan.rows.length][];
        private final Recycler recycler = new Recycler();

        private final Queue<Workspace> idle = new ConcurrentLinkedQueue<>();

        Elimination(ElementMatrices elements) {
            this.elements = elements;
        }

        /** One subtree; its branches are independent of each other and run side by side if they are worth it. */
        private final class Branch extends RecursiveAction {
            private static final long serialVersionUID = 1L;
            private final int node;

            Branch(int node) {
                this.node = node;
            }

            @Override
            protected void compute() {
                int[] children = plan.children[node];
                boolean split = children.length == 2 && plan.worthSplitting(node);
                if (split) {
                    invokeAll(new Branch(children[0]), new Branch(children[1]));
                }
                Workspace space = idle.poll();
                if (space == null) {
                    space = new Workspace(plan);
                }
                if (split) {
                    front(node, space);
                } else {
                    subtree(node, space);
                }
                idle.add(space);
            }
        }

        private void subtree(int node, Workspace space) {
            for (int c : plan.children[node]) {
                subtree(c, space);
            }
            front(node, space);
        }

        private void front(int node, Workspace space) {
            Front front = space.front;
            int size = plan.rows[node].length;
            int m = plan.ownCount[node];
            front.clear(size);
            for (int e : plan.elementsOf[node]) {
                elements.fill(e, space.re, space.im);
                space.add(plan.elementRows[e]);
            }
            for (int c : plan.children[node]) {
                extendAdd(front, plan.toParent[c], blockRe[c], blockIm[c]);
                recycler.give(blockRe[c]);
                recycler.give(blockIm[c]);
                blockRe[c] = null;
                blockIm[c] = null;
            }
            front.eliminate(m);
            int border = size - m;
            blockRe[node] = recycler.take(border * (border + 1) / 2);
            blockIm[node] = recycler.take(border * (border + 1) / 2);
            front.copyColumns(m, size, blockRe[node], blockIm[node], 0);
            if (factorRe != null) {
                front.copyColumns(0, m, factorRe, factorIm, (int) plan.start[node]);
            }
        }
    }

    private static void extendAdd(Front front, int[] map, double[] blockRe, double[] blockIm) {
        int at = 0;
        for (int j = 0; j < map.length; j++) {
            extendAdd(front, map, j, blockRe, at, front.re[map[j]]);
            extendAdd(front, map, j, blockIm, at, front.im[map[j]]);
            at += map.length - j;
        }
    }

    /** One column, the last row first; a loop by itself, which is compiled early. */
    private static void extendAdd(Front front, int[] map, int j, double[] block, int from, double[] to) {
        int at = from;
        for (int i = map.length - 1; i >= j; i--, at++) {
            to[front.at(map[i])] += block[at];
        }
    }

    /** Hands out arrays again that have served, by powers of two: a factorisation needs thousands, few at a time. */
    private static final class Recycler {

        private final List<Queue<double[]>> bySize = new ArrayList<>();

        Recycler() {
            for (int i = 0; i <= Integer.SIZE; i++) {
                bySize.add(new ConcurrentLinkedQueue<>());
            }
        }

        private static int order(int size) {
            return Integer.SIZE - Integer.numberOfLeadingZeros(Math.max(1, size) - 1);
        }

        double[] take(int size) {
            int order = order(size);
            double[] used = bySize.get(order).poll();
            return used != null ? used : new double[1 << order];
        }

        void give(double[] array) {
            bySize.get(order(array.length)).add(array);
        }
    }

    /** Memory that one thread uses for front after front. */
    private static final class Workspace {

        private final Front front;
        private final double[] re;
        private final double[] im;

        Workspace(FrontalPlan plan) {
            front = new Front(plan.largestFront());
            int n = plan.largestElement();
            re = new double[n * (n + 1) / 2];
            im = new double[n * (n + 1) / 2];
        }

        /** Adds the element matrix at hand into the front. */
        void add(int[] map) {
            int at = 0;
            for (int i = 0; i < map.length; i++) {
                for (int j = 0; j <= i; j++, at++) {
                    int a = Math.min(map[i], map[j]);
                    int row = front.at(Math.max(map[i], map[j]));
                    front.re[a][row] += re[at];
                    front.im[a][row] += im[at];
                }
            }
        }
    }

    /** Real part of the Schur complement on the kept unknowns, in their order. */
    public double[][] schurRe() {
        return schurRe;
    }

    /** Imaginary part of the Schur complement on the kept unknowns, in their order. */
    public double[][] schurIm() {
        return schurIm;
    }

    /**
     * Extends given values of the kept unknowns to all unknowns by back substitution, so that K x = -B y: row by row, the
     * equations of the eliminated unknowns hold.
     *
     * @param kept values y, {@code [2 * count][kept]}: real then imaginary parts of each set
     * @return {@code [2 * count][unknowns]}, the kept values included
     * @throws IllegalStateException if the factor was not kept
     */
    public double[][] extend(double[][] kept) {
        if (factorRe == null) {
            throw new IllegalStateException("the factor was not kept");
        }
        double[][] x = new double[kept.length][plan.unknowns];
        for (int c = 0; c < kept.length; c++) {
            for (int k = 0; k < plan.kept.length; k++) {
                x[c][plan.kept[k]] = kept[c][k];
            }
        }
        double[][] local = new double[kept.length][plan.largestFront()];
        for (int v = plan.rows.length - 1; v >= 0; v--) {
            backward(v, x, local);
        }
        return x;
    }

    private void backward(int node, double[][] x, double[][] local) {
        int[] rows = plan.rows[node];
        int m = plan.ownCount[node];
        int last = rows.length - 1;
        for (int c = 0; c < x.length; c++) {
            gather(x[c], rows, m, local[c]);
        }
        int column = (int) plan.start[node + 1];
        for (int j = m - 1; j >= 0; j--) {
            column -= rows.length - j;
            for (int c = 0; c < x.length; c += 2) {
                dot(column, local[c], local[c + 1], last - j);
            }
        }
        for (int c = 0; c < x.length; c++) {
            scatter(local[c], rows, m, x[c]);
        }
    }

    /** The values of the border of a front, last row first. */
    private static void gather(double[] x, int[] rows, int own, double[] local) {
        for (int i = own; i < rows.length; i++) {
            local[rows.length - 1 - i] = x[rows[i]];
        }
    }

    private static void scatter(double[] local, int[] rows, int own, double[] x) {
        for (int j = 0; j < own; j++) {
            x[rows[j]] = local[rows.length - 1 - j];
        }
    }

    /** Two independent sums per part keep the adders busy: the compiler may not reorder them by itself. */
    private void dot(int column, double[] xr, double[] xi, int end) {
        double[] lr = factorRe;
        double[] li = factorIm;
        double ar = 0;
        double ai = 0;
        double br = 0;
        double bi = 0;
        double cr = 0;
        double ci = 0;
        double dr = 0;
        double di = 0;
        int i = 0;
        for (; i + 1 < end; i += 2) {
            int l = column + i;
            ar = Math.fma(lr[l], xr[i], ar);
            br = Math.fma(li[l], xi[i], br);
            ai = Math.fma(lr[l], xi[i], ai);
            bi = Math.fma(li[l], xr[i], bi);
            cr = Math.fma(lr[l + 1], xr[i + 1], cr);
            dr = Math.fma(li[l + 1], xi[i + 1], dr);
            ci = Math.fma(lr[l + 1], xi[i + 1], ci);
            di = Math.fma(li[l + 1], xr[i + 1], di);
        }
        if (i < end) {
            ar = Math.fma(lr[column + i], xr[i], ar);
            br = Math.fma(li[column + i], xi[i], br);
            ai = Math.fma(lr[column + i], xi[i], ai);
            bi = Math.fma(li[column + i], xr[i], bi);
        }
        xr[end] = br + dr - ar - cr;
        xi[end] = -(ai + bi + ci + di);
    }
}
