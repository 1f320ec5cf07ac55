package eddyreach.surface;

import eddyreach.linalg.MemoryException;
import org.ejml.data.DMatrixRMaj;

/**
 * The matrices of Galerkin's method on a surface, for each class of mirror symmetry: charges linear on each panel (shape functions
 * L, free at each corner of each panel), potentials quadratic and continuous, also round edges (Q).
 *
 * <pre>
 *   S_ij = int L_i int L_j G        D_ij = int L_i int Q_j dG/dn'        W_ij = int int G curl Q_i . curl Q_j        M_ij = int L_i Q_j
 * </pre>
 *
 * A class is a number whose bit p is set if the fields in it change sign in mirror plane p.
 */
final class Assembly {

    private final SurfaceMesh mesh;
    private final int panels;
    private final int charges;
    private final int nodes;

    /** Mirror operations as sets of planes. */
    private final int[] images;

    private final double[][] single;
    private final double[][] layer;
    private final double[][] curl;

    Assembly(SurfaceMesh mesh) {
        this.mesh = mesh;
        panels = mesh.panels.size();
        charges = 3 * panels;
        nodes = mesh.nodes.size();
        int planes = (mesh.mirror[0] ? 1 : 0) | (mesh.mirror[1] ? 2 : 0) | (mesh.mirror[2] ? 4 : 0);
        images = subsets(planes);
        refuseIfTooLarge();
        single = new double[images.length][charges * charges];
        layer = new double[images.length][charges * nodes];
        curl = new double[images.length][nodes * nodes];
        pairs();
        closeSolidAngles();
    }

    private void refuseIfTooLarge() {
        // the matrices themselves, and the largest class's once more while it is solved, complex and for two unknowns a
        // node
        double entries = (double) charges * charges + (double) charges * nodes + (double) nodes * nodes;
        double needed = 8 * (images.length * entries + entries + 8.0 * nodes * nodes);
        Runtime runtime = Runtime.getRuntime();
        long free = runtime.maxMemory() - (runtime.totalMemory() - runtime.freeMemory());
        if (needed > free || (double) charges * charges > Integer.MAX_VALUE) {
            throw new MemoryException((long) needed, free);
        }
    }

    /** All subsets of a set of bits. */
    static int[] subsets(int set) {
        int[] out = new int[1 << Integer.bitCount(set)];
        int at = 0;
        for (int s = 0; s <= set; s++) {
            if ((s & ~set) == 0) {
                out[at++] = s;
            }
        }
        return out;
    }

    /** The classes, which are as many as the images. */
    int[] classes() {
        return images.clone();
    }

    private void pairs() {
        PanelIntegrals integrals = new PanelIntegrals();
        int count = images.length;
        double[][] signs = new double[count][];
        for (int g = 0; g < count; g++) {
            signs[g] = new double[] {sign(images[g], 1), sign(images[g], 2), sign(images[g], 4)};
        }
        double[][] s = new double[count][9];
        double[][] on = new double[count][18];
        double[][] off = new double[count][18];
        for (int i = 0; i < panels; i++) {
            for (int j = 0; j <= i; j++) {
                boolean smaller = mesh.panels.get(i).radius <= mesh.panels.get(j).radius;
                int a = smaller ? i : j;
                int b = smaller ? j : i;
                for (int g = 0; g < count; g++) {
                    integrals.of(mesh.panels.get(a), signs[g], mesh.middle, mesh.panels.get(b));
                    for (int k = 0; k < 3; k++) {
                        System.arraycopy(integrals.single[k], 0, s[g], 3 * k, 3);
                        System.arraycopy(integrals.layerOn[k], 0, on[g], 6 * k, 6);
                        System.arraycopy(integrals.layerOff[k], 0, off[g], 6 * k, 6);
                    }
                }
                for (int c = 0; c < count; c++) {
                    addSingle(c, a, b, s, signs);
                    addLayers(c, a, b, on);
                    if (a != b) {
                        addLayers(c, b, a, off);
                    }
                }
            }
        }
    }

    private static double sign(int image, int planes) {
        return Integer.bitCount(image & planes) % 2 == 0 ? 1 : -1;
    }

    private void addSingle(int c, int a, int b, double[][] s, double[][] signs) {
        double[][] tensor = new double[9][3];
        for (int ij = 0; ij < 9; ij++) {
            double sum = 0;
            for (int g = 0; g < images.length; g++) {
                double value = sign(images[g], images[c]) * s[g][ij];
                sum += value;
                // curls are axial vectors
                value *= sign(images[g], 7);
                for (int k = 0; k < 3; k++) {
                    tensor[ij][k] += value * signs[g][k];
                }
            }
            int row = 3 * a + ij / 3;
            int column = 3 * b + ij % 3;
            if (a == b) {
                // by points on one side alone it is not quite symmetric
                single[c][row * charges + column] += sum / 2;
                single[c][column * charges + row] += sum / 2;
            } else {
                single[c][row * charges + column] = sum;
                single[c][column * charges + row] = sum;
            }
        }
        int[] ca = mesh.corners.get(a);
        int[] cb = mesh.corners.get(b);
        double[][][] curlA = mesh.panels.get(a).curl;
        double[][][] curlB = mesh.panels.get(b).curl;
        double[] flow = new double[9];
        for (int i = 0; i < 6; i++) {
            // curl of Q_i against the linear functions of b
            for (int q = 0; q < 3; q++) {
                for (int k = 0; k < 3; k++) {
                    flow[3 * q + k] = tensor[q][k] * curlA[i][0][k]
                            + tensor[3 + q][k] * curlA[i][1][k]
                            + tensor[6 + q][k] * curlA[i][2][k];
                }
            }
            for (int j = 0; j < 6; j++) {
                double value = 0;
                for (int q = 0; q < 3; q++) {
                    double[] other = curlB[j][q];
                    value += flow[3 * q] * other[0] + flow[3 * q + 1] * other[1] + flow[3 * q + 2] * other[2];
                }
                if (a == b) {
                    value /= 2;
                }
                curl[c][ca[i] * nodes + cb[j]] += value;
                curl[c][cb[j] * nodes + ca[i]] += value;
            }
        }
    }

    /** Adds the double layers of panel b on panel a. */
    private void addLayers(int c, int a, int b, double[][] values) {
        int[] corner = mesh.corners.get(b);
        for (int ij = 0; ij < 18; ij++) {
            double sum = 0;
            for (int g = 0; g < images.length; g++) {
                sum += sign(images[g], images[c]) * values[g][ij];
            }
            layer[c][(3 * a + ij / 6) * nodes + corner[ij % 6]] += sum;
        }
    }

    /**
     * A constant potential must radiate nothing: its double layer is -1/2 on the surface. What the points miss of that goes to the panel
     * itself.
     */
    private void closeSolidAngles() {
        for (int row = 0; row < charges; row++) {
            Panel p = mesh.panels.get(row / 3);
            double sum = 0;
            for (int j = 0; j < nodes; j++) {
                sum += layer[0][row * nodes + j];
            }
            double missing = -p.area / 6 - sum;
            int[] corner = mesh.corners.get(row / 3);
            for (double[] l : layer) {
                for (int j = 0; j < 6; j++) {
                    l[row * nodes + corner[j]] += missing * 3 * p.mass(row % 3, j) / p.area;
                }
            }
        }
    }

    /** Nodes whose potential is free in a class. */
    int[] free(int c) {
        int[] out = new int[nodes];
        int at = 0;
        for (int i = 0; i < nodes; i++) {
            boolean fixed = false;
            for (int p = 0; p < 3; p++) {
                fixed |= (images[c] >> p & 1) == 1 && mesh.on(i, p);
            }
            if (!fixed) {
                out[at++] = i;
            }
        }
        return java.util.Arrays.copyOf(out, at);
    }

    /** S of a class. */
    DMatrixRMaj single(int c) {
        return DMatrixRMaj.wrap(charges, charges, single[c]);
    }

    /** M/2 - D of a class on its free nodes, M_ij = int L_i Q_j. */
    DMatrixRMaj outside(int c, int[] free) {
        DMatrixRMaj out = mass(free);
        for (int a = 0; a < charges; a++) {
            for (int j = 0; j < free.length; j++) {
                out.set(a, j, out.get(a, j) / 2 - layer[c][a * nodes + free[j]]);
            }
        }
        return out;
    }

    /** M on the free nodes. */
    DMatrixRMaj mass(int[] free) {
        DMatrixRMaj out = new DMatrixRMaj(charges, free.length);
        int[] place = places(free);
        for (int row = 0; row < charges; row++) {
            int[] corner = mesh.corners.get(row / 3);
            for (int j = 0; j < 6; j++) {
                if (place[corner[j]] >= 0) {
                    out.set(row, place[corner[j]], mesh.panels.get(row / 3).mass(row % 3, j));
                }
            }
        }
        return out;
    }

    /** W of a class on its free nodes. */
    DMatrixRMaj curl(int c, int[] free) {
        DMatrixRMaj out = new DMatrixRMaj(free.length, free.length);
        for (int i = 0; i < free.length; i++) {
            for (int j = 0; j < free.length; j++) {
                out.set(i, j, curl[c][free[i] * nodes + free[j]]);
            }
        }
        return out;
    }

    /** Place of each node among the free ones, -1 if it is none. */
    int[] places(int[] free) {
        int[] place = new int[nodes];
        java.util.Arrays.fill(place, -1);
        for (int i = 0; i < free.length; i++) {
            place[free[i]] = i;
        }
        return place;
    }
}
