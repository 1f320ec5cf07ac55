package eddyreach.mesh;

import eddyreach.linalg.SeparatorTree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Tensor mesh in the (r, z) half-plane for a potential that vanishes on the axis and on the outer boundary.
 *
 * <p>Cells are numbered {@code ez * cellsR + er}. Unknowns are the products of the axes' functions without the first and the
 * last vertex of each axis, numbered with r running fastest.
 *
 * @param r radial axis, starting at 0
 * @param z axial axis
 * @param slant how its upright lines lean; the radial axis holds their names
 */
public record TensorMesh(Axis r, Axis z, Slant slant) {

    /** Below this many unknowns a block is eliminated as one dense front. */
    private static final int LEAF = 24;

    /** A mesh of rectangles. */
    public TensorMesh(Axis r, Axis z) {
        this(r, z, Slant.NONE);
    }

    /** True when a cell ends where the radial axis says. */
    public boolean inPlace(int cell) {
        int er = cell % r.elements();
        int ez = cell / r.elements();
        return slant.none() || slant.none(r.end(er), r.end(er + 1), z.end(ez), z.end(ez + 1));
    }

    /** True when a cell is a rectangle. */
    public boolean upright(int cell) {
        int er = cell % r.elements();
        int ez = cell / r.elements();
        return slant.none() || slant.upright(r.end(er), r.end(er + 1), z.end(ez), z.end(ez + 1));
    }

    /** Radius of a side of a cell at its lower end, m: 0 the inner, 1 the outer. */
    public double radius(int cell, int side) {
        return slant.at(r.end(cell % r.elements() + side), z.end(cell / r.elements()))
                .radius();
    }

    /** Number of cells. */
    public int cells() {
        return r.elements() * z.elements();
    }

    /** Unknowns in a row of constant z function. */
    public int rowLength() {
        return r.functions() - 2;
    }

    /** Number of unknowns. */
    public int unknowns() {
        return rowLength() * (z.functions() - 2);
    }

    /** Unknown of the product of radial function ir and axial function iz, or -1 on the boundary. */
    public int unknown(int ir, int iz) {
        if (ir <= 0 || iz <= 0 || ir >= r.functions() - 1 || iz >= z.functions() - 1) {
            return -1;
        }
        return (iz - 1) * rowLength() + ir - 1;
    }

    /** Which unknowns live on the functions of a block; numbers are below those of the kept unknowns. */
    public interface Numbering {

        /** Number of unknowns. */
        int unknowns();

        /**
         * Unknowns of the continuous functions of a block and of the functions confined to elements that belong to it: products of
         * the radial and axial functions ir0..ir1 and iz0..iz1, of functions inside the radial elements er0..er1 with the axial
         * functions, and of the radial functions with functions inside the axial elements ez0..ez1; upper ends excluded.
         */
        int[] block(int ir0, int ir1, int iz0, int iz1, int er0, int er1, int ez0, int ez1);
    }

    /**
     * Order of elimination by nested dissection along mesh lines (George, SIAM J. Numer. Anal. 10 (1973) 345): each block is cut
     * in two by the mesh line with the fewest unknowns for its balance.
     *
     * @param kept number of unknowns to be kept, numbered after those of the mesh
     */
    public SeparatorTree dissection(int kept) {
        return dissection(kept, new Numbering() {
            @Override
            public int unknowns() {
                return TensorMesh.this.unknowns();
            }

            @Override
            public int[] block(int ir0, int ir1, int iz0, int iz1, int er0, int er1, int ez0, int ez1) {
                return products(ir0, ir1, iz0, iz1);
            }
        });
    }

    /**
     * The same for other unknowns on this mesh.
     *
     * @param kept number of unknowns to be kept, numbered after the others
     * @param numbering the unknowns
     */
    public SeparatorTree dissection(int kept, Numbering numbering) {
        List<int[]> own = new ArrayList<>();
        List<Integer> parent = new ArrayList<>();
        dissect(0, r.elements(), 0, z.elements(), numbering, own, parent);
        int[] keep = new int[kept];
        for (int i = 0; i < kept; i++) {
            keep[i] = numbering.unknowns() + i;
        }
        return new SeparatorTree(
                own.toArray(new int[0][]),
                parent.stream().mapToInt(Integer::intValue).toArray(),
                keep);
    }

    /** Appends the tree of the block between vertices r0..r1 and z0..z1 (its border excluded); returns its top node or -1. */
    private int dissect(int r0, int r1, int z0, int z1, Numbering numbering, List<int[]> own, List<Integer> parent) {
        int nr = r.vertex(r1) - r.vertex(r0) - 1;
        int nz = z.vertex(z1) - z.vertex(z0) - 1;
        // what lives on the axis belongs to the block beside it
        int left = r0 == 0 ? 0 : r.vertex(r0) + 1;
        int[] all = numbering.block(left, r.vertex(r1), z.vertex(z0) + 1, z.vertex(z1), r0, r1, z0, z1);
        if (all.length == 0) {
            return -1;
        }
        boolean cutR = r1 - r0 > 1 && (nr >= nz || z1 - z0 == 1);
        boolean leaf = all.length <= LEAF || r1 - r0 == 1 && z1 - z0 == 1;
        int[] children = {-1, -1};
        int[] group;
        if (leaf) {
            group = all;
        } else if (cutR) {
            int c = cut(r, r0, r1);
            children[0] = dissect(r0, c, z0, z1, numbering, own, parent);
            children[1] = dissect(c, r1, z0, z1, numbering, own, parent);
            group = numbering.block(r.vertex(c), r.vertex(c) + 1, z.vertex(z0) + 1, z.vertex(z1), 0, 0, z0, z1);
        } else {
            int c = cut(z, z0, z1);
            children[0] = dissect(r0, r1, z0, c, numbering, own, parent);
            children[1] = dissect(r0, r1, c, z1, numbering, own, parent);
            group = numbering.block(left, r.vertex(r1), z.vertex(c), z.vertex(c) + 1, r0, r1, 0, 0);
        }
        own.add(group);
        parent.add(-1);
        int me = own.size() - 1;
        for (int child : children) {
            if (child >= 0) {
                parent.set(child, me);
            }
        }
        return me;
    }

    /** Unknowns of the products of radial functions ir0..ir1 and axial functions iz0..iz1, upper ends and boundary excluded. */
    public int[] products(int ir0, int ir1, int iz0, int iz1) {
        int[] u = new int[(ir1 - ir0) * (iz1 - iz0)];
        int at = 0;
        for (int iz = iz0; iz < iz1; iz++) {
            for (int ir = ir0; ir < ir1; ir++) {
                int unknown = unknown(ir, iz);
                if (unknown >= 0) {
                    u[at++] = unknown;
                }
            }
        }
        return at == u.length ? u : Arrays.copyOf(u, at);
    }

    /** The inner vertex nearest to the middle of the unknowns. */
    private static int cut(Axis axis, int e0, int e1) {
        int target = (axis.vertex(e0) + axis.vertex(e1)) / 2;
        int best = e0 + 1;
        for (int e = e0 + 1; e < e1; e++) {
            if (Math.abs(axis.vertex(e) - target) < Math.abs(axis.vertex(best) - target)) {
                best = e;
            }
        }
        return best;
    }
}
