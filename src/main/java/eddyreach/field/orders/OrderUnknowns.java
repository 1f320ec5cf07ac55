package eddyreach.field.orders;

import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;

/**
 * The numbers of the unknowns of a field of azimuthal order 1 or more: the scalar potential everywhere and, in conductors, q_r
 * (continuous in z, free to jump in r) and q_z (continuous in r, free to jump in z), without those on the conductors' surface that would
 * make a current flow out of it.
 */
final class OrderUnknowns implements TensorMesh.Numbering {

    private final TensorMesh mesh;

    /** {@code [inner radial function][axial function]}, -1 for none. */
    private final int[][] radial;

    /** {@code [radial function][inner axial function]}, -1 for none. */
    private final int[][] axial;

    private final int count;

    /**
     * @param mesh the mesh
     * @param conducting whether a cell conducts
     */
    OrderUnknowns(TensorMesh mesh, boolean[] conducting) {
        this.mesh = mesh;
        Axis r = mesh.r();
        Axis z = mesh.z();
        radial = filled(r.functions() - 1, z.functions());
        axial = filled(r.functions(), z.functions() - 1);
        int next = mesh.unknowns();
        int rows = r.elements();
        for (int c = 0; c < conducting.length; c++) {
            if (!conducting[c]) {
                continue;
            }
            int er = c % rows;
            int ez = c / rows;
            // the face below is inside the conductor if the cell below conducts too; the upper one comes with the cell
            // above
            int lowest = ez > 0 && conducting[c - rows] ? z.vertex(ez) : z.vertex(ez) + 1;
            for (int iz = lowest; iz < z.vertex(ez + 1); iz++) {
                for (int jr = r.vertex(er); jr < r.vertex(er + 1); jr++) {
                    radial[jr][iz] = next++;
                }
            }
            // nothing is prescribed on the axis
            int first = er == 0 || conducting[c - 1] ? r.vertex(er) : r.vertex(er) + 1;
            for (int jz = z.vertex(ez); jz < z.vertex(ez + 1); jz++) {
                for (int ir = first; ir < r.vertex(er + 1); ir++) {
                    axial[ir][jz] = next++;
                }
            }
        }
        count = next;
    }

    private static int[][] filled(int rows, int columns) {
        int[][] a = new int[rows][columns];
        for (int[] row : a) {
            Arrays.fill(row, -1);
        }
        return a;
    }

    @Override
    public int unknowns() {
        return count;
    }

    /** Unknown of q_r at inner radial function jr and axial function iz, or -1. */
    int radial(int jr, int iz) {
        return radial[jr][iz];
    }

    /** Unknown of q_z at radial function ir and inner axial function jz, or -1. */
    int axial(int ir, int jz) {
        return axial[ir][jz];
    }

    @Override
    public int[] block(int ir0, int ir1, int iz0, int iz1, int er0, int er1, int ez0, int ez1) {
        Axis r = mesh.r();
        Axis z = mesh.z();
        int[] potential = mesh.products(ir0, ir1, iz0, iz1);
        int jr0 = r.vertex(er0);
        int jr1 = r.vertex(er1);
        int jz0 = z.vertex(ez0);
        int jz1 = z.vertex(ez1);
        int most = potential.length + (jr1 - jr0) * (iz1 - iz0) + (ir1 - ir0) * (jz1 - jz0);
        int[] u = Arrays.copyOf(potential, most);
        int at = potential.length;
        for (int jr = jr0; jr < jr1; jr++) {
            for (int iz = iz0; iz < iz1; iz++) {
                if (radial[jr][iz] >= 0) {
                    u[at++] = radial[jr][iz];
                }
            }
        }
        for (int ir = ir0; ir < ir1; ir++) {
            for (int jz = jz0; jz < jz1; jz++) {
                if (axial[ir][jz] >= 0) {
                    u[at++] = axial[ir][jz];
                }
            }
        }
        return Arrays.copyOf(u, at);
    }
}
