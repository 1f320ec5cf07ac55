package eddyreach.solved;

import eddyreach.fem.LineForms;
import eddyreach.linalg.ElementMatrices;
import eddyreach.linalg.FrontalPlan;
import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;

/** A square mesh of biquadratic elements with lossy cells: the matrix that solvers are timed on. */
final class BiquadraticGrid implements ElementMatrices {

    final TensorMesh mesh;
    final int[][] elements;
    private final int cells;
    private final int[][] local;
    private final double[][] mass;
    private final double[][] stiff;

    BiquadraticGrid(int cells) {
        this.cells = cells;
        double[] ends = new double[cells + 1];
        int[] degree = new int[cells];
        Arrays.fill(degree, 2);
        for (int i = 0; i <= cells; i++) {
            ends[i] = i;
        }
        Axis axis = new Axis(ends, degree);
        mesh = new TensorMesh(axis, axis);
        mass = LineForms.mass(axis);
        stiff = LineForms.stiffness(axis);
        elements = new int[mesh.cells()][];
        local = new int[mesh.cells()][];
        for (int c = 0; c < elements.length; c++) {
            int[] u = new int[9];
            int[] l = new int[9];
            int n = 0;
            for (int i = 0; i < 9; i++) {
                int id = mesh.unknown(axis.function(c % cells, i % 3), axis.function(c / cells, i / 3));
                if (id >= 0) {
                    u[n] = id;
                    l[n++] = i;
                }
            }
            elements[c] = Arrays.copyOf(u, n);
            local[c] = Arrays.copyOf(l, n);
        }
    }

    /** Unknowns for a number of cells along each side. */
    static int unknowns(int cells) {
        return (2 * cells - 1) * (2 * cells - 1);
    }

    FrontalPlan plan() {
        return new FrontalPlan(mesh.dissection(0), elements);
    }

    @Override
    public void fill(int e, double[] re, double[] im) {
        int er = e % cells;
        int ez = e / cells;
        int at = 0;
        for (int i = 0; i < local[e].length; i++) {
            for (int j = 0; j <= i; j++, at++) {
                int a = local[e][i] % 3 * 3 + local[e][j] % 3;
                int b = local[e][i] / 3 * 3 + local[e][j] / 3;
                re[at] = stiff[ez][b] * mass[er][a] + mass[ez][b] * stiff[er][a];
                im[at] = (er + ez) % 3 * mass[ez][b] * mass[er][a];
            }
        }
    }
}
