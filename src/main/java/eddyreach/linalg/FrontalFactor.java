package eddyreach.linalg;

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

    private final FrontalPlan plan;
    private final Front[] fronts;
    private final boolean keep;
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
     */
    public FrontalFactor(FrontalPlan plan, ElementMatrices elements, boolean keep) {
        this.plan = plan;
        this.keep = keep;
        fronts = new Front[plan.rows.length];
        int k = plan.kept.length;
        schurRe = new double[k][k];
        schurIm = new double[k][k];
        for (int r = 0; r < plan.roots.length; r++) {
            new Branch(plan.roots[r], elements).invoke();
            Front root = fronts[plan.roots[r]];
            int m = plan.ownCount[plan.roots[r]];
            int[] map = plan.rootToKept[r];
            for (int j = 0; j < map.length; j++) {
                for (int i = j; i < map.length; i++) {
                    schurRe[map[i]][map[j]] += root.re[m + j][root.at(m + i)];
                    schurIm[map[i]][map[j]] += root.im[m + j][root.at(m + i)];
                }
            }
        }
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < i; j++) {
                schurRe[j][i] = schurRe[i][j];
                schurIm[j][i] = schurIm[i][j];
            }
        }
    }

    /** One subtree; its branches are independent of each other and run side by side. */
    private final class Branch extends RecursiveAction {
        private static final long serialVersionUID = 1L;
        private final int node;
        private final transient ElementMatrices elements;

        Branch(int node, ElementMatrices elements) {
            this.node = node;
            this.elements = elements;
        }

        @Override
        protected void compute() {
            int[] children = plan.children[node];
            if (children.length == 2) {
                invokeAll(new Branch(children[0], elements), new Branch(children[1], elements));
            } else {
                for (int c : children) {
                    new Branch(c, elements).compute();
                }
            }
            int size = plan.rows[node].length;
            Front front = new Front(size);
            for (int e : plan.elementsOf[node]) {
                add(front, e, elements);
            }
            for (int c : children) {
                extendAdd(front, c);
            }
            front.eliminate(plan.ownCount[node]);
            fronts[node] = front;
        }
    }

    private void add(Front front, int e, ElementMatrices elements) {
        int[] map = plan.elementRows[e];
        int size = map.length * (map.length + 1) / 2;
        double[] re = new double[size];
        double[] im = new double[size];
        elements.fill(e, re, im);
        int at = 0;
        for (int i = 0; i < map.length; i++) {
            for (int j = 0; j <= i; j++, at++) {
                int a = Math.min(map[i], map[j]);
                int b = Math.max(map[i], map[j]);
                front.re[a][front.at(b)] += re[at];
                front.im[a][front.at(b)] += im[at];
            }
        }
    }

    private void extendAdd(Front front, int child) {
        Front c = fronts[child];
        int m = plan.ownCount[child];
        int[] map = plan.toParent[child];
        for (int j = 0; j < map.length; j++) {
            double[] fromRe = c.re[m + j];
            double[] fromIm = c.im[m + j];
            double[] toRe = front.re[map[j]];
            double[] toIm = front.im[map[j]];
            // the last row comes first
            for (int t = 0, i = map.length - 1; i >= j; t++, i--) {
                int row = front.at(map[i]);
                toRe[row] += fromRe[t];
                toIm[row] += fromIm[t];
            }
            // the block has gone to the parent: only the eliminated columns are needed from here on
            c.re[m + j] = null;
            c.im[m + j] = null;
        }
        if (!keep) {
            fronts[child] = null;
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
        if (!keep) {
            throw new IllegalStateException("the factor was not kept");
        }
        double[][] x = new double[kept.length][plan.unknowns];
        for (int c = 0; c < kept.length; c++) {
            for (int k = 0; k < plan.kept.length; k++) {
                x[c][plan.kept[k]] = kept[c][k];
            }
        }
        for (int v = fronts.length - 1; v >= 0; v--) {
            backward(fronts[v], plan.rows[v], plan.ownCount[v], x);
        }
        return x;
    }

    private static void backward(Front f, int[] rows, int m, double[][] x) {
        double[][] local = new double[x.length][rows.length];
        for (int c = 0; c < x.length; c++) {
            for (int i = m; i < rows.length; i++) {
                local[c][f.at(i)] = x[c][rows[i]];
            }
        }
        for (int j = m - 1; j >= 0; j--) {
            for (int c = 0; c < x.length; c += 2) {
                dot(f.re[j], f.im[j], local[c], local[c + 1], f.at(j));
            }
        }
        for (int c = 0; c < x.length; c++) {
            for (int j = 0; j < m; j++) {
                x[c][rows[j]] = local[c][f.at(j)];
            }
        }
    }

    /** Two independent sums per part keep the adders busy: the compiler may not reorder them by itself. */
    private static void dot(double[] lr, double[] li, double[] xr, double[] xi, int end) {
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
            ar = Math.fma(lr[i], xr[i], ar);
            br = Math.fma(li[i], xi[i], br);
            ai = Math.fma(lr[i], xi[i], ai);
            bi = Math.fma(li[i], xr[i], bi);
            cr = Math.fma(lr[i + 1], xr[i + 1], cr);
            dr = Math.fma(li[i + 1], xi[i + 1], dr);
            ci = Math.fma(lr[i + 1], xi[i + 1], ci);
            di = Math.fma(li[i + 1], xr[i + 1], di);
        }
        if (i < end) {
            ar = Math.fma(lr[i], xr[i], ar);
            br = Math.fma(li[i], xi[i], br);
            ai = Math.fma(lr[i], xi[i], ai);
            bi = Math.fma(li[i], xr[i], bi);
        }
        xr[end] = br + dr - ar - cr;
        xi[end] = -(ai + bi + ci + di);
    }
}
