package eddyreach.field.axial;

import eddyreach.geometry.Part;
import eddyreach.linalg.ElementMatrices;
import eddyreach.linalg.FrontalFactor;
import eddyreach.linalg.FrontalPlan;
import eddyreach.linalg.SeparatorTree;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;

/**
 * An independent solution for a switch in a countersink: quadratic triangles whose straight edges lie on the cone. The grid's upright and
 * level lines meet on it, so that it runs along diagonals of cells; no map, no waves, no shape functions of the program.
 */
final class ConformingTriangles {

    private static final double[] POINTS;
    private static final double[] WEIGHTS;

    static {
        // Gauss-Legendre with six points on [0, 1] (Abramowitz and Stegun, table 25.4)
        double[] x = {0.2386191860831969, 0.6612093864662645, 0.9324695142031521};
        double[] w = {0.4679139345726910, 0.3607615730481386, 0.1713244923791704};
        POINTS = DoubleStream.of(x)
                .flatMap(t -> DoubleStream.of((1 - t) / 2, (1 + t) / 2))
                .toArray();
        WEIGHTS = DoubleStream.of(w).flatMap(t -> DoubleStream.of(t / 2, t / 2)).toArray();
    }

    private final double[] r;
    private final double[] z;
    private final List<Part> parts;
    private final CoilRegion coil;
    private final int[] part;
    private final int[][] elements;
    private final FrontalPlan plan;

    /**
     * @param parts the parts, exactly one of which flares
     * @param fineness sizes of the cells, relative to a grid that is good to about 1 % of what a countersink changes
     */
    ConformingTriangles(List<Part> parts, CoilRegion coil, double fineness) {
        this(parts, coil, new TriangleLines(parts, coil, fineness));
    }

    /** The same on the lines of a grid that was made for more parts. */
    ConformingTriangles(List<Part> parts, CoilRegion coil, TriangleLines lines) {
        r = lines.r();
        z = lines.z();
        this.parts = parts;
        this.coil = coil;
        int nx = r.length - 1;
        int nz = z.length - 1;
        part = new int[2 * nx * nz];
        elements = new int[part.length][];
        for (int e = 0; e < part.length; e++) {
            int[] u = nodes(e);
            double x = 0;
            double y = 0;
            for (int k = 0; k < 3; k++) {
                x += radius(u[k]) / 3;
                y += height(u[k]) / 3;
            }
            part[e] = -1;
            for (int p = 0; p < parts.size(); p++) {
                part[e] = parts.get(p).section().contains(x, y) ? p : part[e];
            }
            IntStream ids = IntStream.of(u).map(this::unknown).filter(i -> i >= 0);
            elements[e] =
                    (coil.section().contains(x, y) ? IntStream.concat(ids, IntStream.of(unknowns())) : ids).toArray();
        }
        List<int[]> own = new ArrayList<>();
        List<Integer> parent = new ArrayList<>();
        dissect(0, 2 * nx, 0, 2 * nz, own, parent);
        plan = new FrontalPlan(
                new SeparatorTree(
                        own.toArray(new int[0][]),
                        parent.stream().mapToInt(i -> i).toArray(),
                        new int[] {unknowns()}),
                elements);
    }

    private int rows() {
        return 2 * r.length - 1;
    }

    int unknowns() {
        return (rows() - 2) * (2 * z.length - 3);
    }

    /** Lattice numbers of the corners of a triangle, then of the middles opposite to them. */
    private int[] nodes(int e) {
        int cell = e / 2;
        int i = 2 * (cell % (r.length - 1));
        int j = 2 * (cell / (r.length - 1));
        int w = rows();
        int a = j * w + i;
        int b = e % 2 == 0 ? j * w + i + 2 : (j + 2) * w + i + 2;
        int c = e % 2 == 0 ? (j + 2) * w + i + 2 : (j + 2) * w + i;
        return new int[] {a, b, c, (b + c) / 2, (a + c) / 2, (a + b) / 2};
    }

    private double radius(int node) {
        int i = node % rows();
        return (r[i / 2] + r[(i + 1) / 2]) / 2;
    }

    private double height(int node) {
        int j = node / rows();
        return (z[j / 2] + z[(j + 1) / 2]) / 2;
    }

    private int unknown(int node) {
        int i = node % rows();
        int j = node / rows();
        return i == 0 || j == 0 || i == rows() - 1 || j == 2 * z.length - 2 ? -1 : (j - 1) * (rows() - 2) + i - 1;
    }

    private int dissect(int i0, int i1, int j0, int j1, List<int[]> own, List<Integer> parent) {
        int[] group;
        int[] children = {-1, -1};
        if (i1 - i0 <= 4 && j1 - j0 <= 4) {
            group = block(i0 + 1, i1, j0 + 1, j1);
        } else if (i1 - i0 >= j1 - j0) {
            int c = (i0 + i1) / 4 * 2;
            children[0] = dissect(i0, c, j0, j1, own, parent);
            children[1] = dissect(c, i1, j0, j1, own, parent);
            group = block(c, c + 1, j0 + 1, j1);
        } else {
            int c = (j0 + j1) / 4 * 2;
            children[0] = dissect(i0, i1, j0, c, own, parent);
            children[1] = dissect(i0, i1, c, j1, own, parent);
            group = block(i0 + 1, i1, c, c + 1);
        }
        own.add(group);
        parent.add(-1);
        for (int c : children) {
            if (c >= 0) {
                parent.set(c, own.size() - 1);
            }
        }
        return own.size() - 1;
    }

    private int[] block(int i0, int i1, int j0, int j1) {
        return IntStream.range(j0, j1)
                .flatMap(j -> IntStream.range(i0, i1).map(i -> unknown(j * rows() + i)))
                .filter(u -> u >= 0)
                .toArray();
    }

    /** Impedance of the coil, ohm. */
    Complex impedance(double omega) {
        FrontalFactor f = new FrontalFactor(plan, new Matrices(omega), false);
        return new Complex(f.schurIm()[0][0], -f.schurRe()[0][0]).multiply(2 * Math.PI * Material.MU0 * omega);
    }

    private final class Matrices implements ElementMatrices {

        private final double omega;

        Matrices(double omega) {
            this.omega = omega;
        }

        @Override
        public void fill(int e, double[] re, double[] im) {
            Complex nu = Complex.ONE;
            double loss = 0;
            if (part[e] >= 0) {
                Material m = parts.get(part[e]).material();
                nu = m.permeability().reciprocal();
                loss = omega * Material.MU0 * m.conductivity(20);
            }
            int[] u = nodes(e);
            boolean turns = elements[e].length > 0 && elements[e][elements[e].length - 1] == unknowns();
            double[][] curl = new double[6][6];
            double[][] mass = new double[6][6];
            double[] load = new double[6];
            integrate(u, curl, mass, load);
            int at = 0;
            for (int i = 0; i < 6; i++) {
                if (unknown(u[i]) < 0) {
                    continue;
                }
                for (int j = 0; j <= i; j++) {
                    if (unknown(u[j]) >= 0) {
                        re[at] = nu.getReal() * curl[i][j];
                        im[at++] = nu.getImaginary() * curl[i][j] + loss * mass[i][j];
                    }
                }
            }
            if (turns) {
                for (int i = 0; i < 6; i++) {
                    if (unknown(u[i]) >= 0) {
                        re[at] = coil.density() * load[i];
                        im[at++] = 0;
                    }
                }
                re[at] = 0;
                im[at] = 0;
            }
        }
    }

    private void integrate(int[] u, double[][] curl, double[][] mass, double[] load) {
        double[] x = {radius(u[0]), radius(u[1]), radius(u[2])};
        double[] y = {height(u[0]), height(u[1]), height(u[2])};
        double det = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
        double[] value = new double[6];
        double[] dr = new double[6];
        double[] dz = new double[6];
        for (int p = 0; p < POINTS.length; p++) {
            for (int q = 0; q < POINTS.length; q++) {
                // a square folded onto the triangle
                double b = POINTS[p];
                double c = POINTS[q] * (1 - b);
                double w = WEIGHTS[p] * WEIGHTS[q] * (1 - b) * det;
                double[] l = {1 - b - c, b, c};
                double radius = l[0] * x[0] + l[1] * x[1] + l[2] * x[2];
                for (int k = 0; k < 3; k++) {
                    int m = (k + 1) % 3;
                    int n = (k + 2) % 3;
                    value[k] = l[k] * (2 * l[k] - 1);
                    dr[k] = (4 * l[k] - 1) * (y[m] - y[n]) / det;
                    dz[k] = (4 * l[k] - 1) * (x[n] - x[m]) / det;
                    value[k + 3] = 4 * l[m] * l[n];
                    dr[k + 3] = 4 * (l[m] * (y[k] - y[m]) + l[n] * (y[n] - y[k])) / det;
                    dz[k + 3] = 4 * (l[m] * (x[m] - x[k]) + l[n] * (x[k] - x[n])) / det;
                }
                for (int i = 0; i < 6; i++) {
                    load[i] += w * radius * value[i];
                    for (int j = 0; j <= i; j++) {
                        mass[i][j] += w * radius * value[i] * value[j];
                        curl[i][j] += w
                                * radius
                                * ((dr[i] + value[i] / radius) * (dr[j] + value[j] / radius) + dz[i] * dz[j]);
                    }
                }
            }
        }
    }
}
