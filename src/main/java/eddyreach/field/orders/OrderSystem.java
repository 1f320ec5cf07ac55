package eddyreach.field.orders;

import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Media;
import eddyreach.linalg.ElementMatrices;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;

/**
 * The discretised field of azimuthal order m, 1 or more, with its incoming waves as kept unknowns.
 *
 * <p>H = T - grad Omega, with J = curl T in conductors only. Of T, T_phi can be taken to be zero: adding grad chi to T and chi to Omega
 * changes no field, and chi = -r T_phi/(jm) removes T_phi; on the surface of a conductor T is normal to it, so chi vanishes there and
 * Omega stays continuous without any cut. With T_r = r q_r, T_z = r q_z, all proportional to exp(jm phi),
 *
 * <pre>J_r = jm q_z,   J_phi = r dq_r/dz - d(r q_z)/dr,   J_z = -jm q_r</pre>
 *
 * has no divergence by construction. Inside, Omega = -r H_phi/(jm). Faraday's law tested by q', without sources of B tested by
 * Omega', both proportional to exp(-jm phi), divided by j w mu0:
 *
 * <pre>
 * int { rho/(j w mu0) [ m^2 (q_r q_r' + q_z q_z') + (r dq_r/dz - d(r q_z)/dr)(r dq_r'/dz - d(r q_z')/dr) ]
 *     + mu_r [ (r q_r - dOmega/dr)(r q_r' - dOmega'/dr) + (r q_z - dOmega/dz)(r q_z' - dOmega'/dz)
 *            + m^2/r^2 Omega Omega' ] } r dr dz = 0
 * </pre>
 *
 * <p>The matrix is complex symmetric; its real part is positive definite and its imaginary part negative semidefinite, so that no
 * pivoting is needed. The load of an incoming potential u is dK u = (K - K_air) u: int (mu_r - 1) grad u . grad Omega' and, in
 * conductors, -int mu_r r (q_r' du/dr + q_z' du/dz). With a lifted potential ({@link OrderLayout#lifted}) the unknown is
 * x + theta u with theta = 1 on all parts, and the load is that of K theta u - dK u: int grad(theta u) . grad Omega' alone. Where
 * theta = 1, this is the flux of grad u through the faces of that box, since u has no sources.
 *
 * @param layout the problem without its order and frequency
 * @param media what the parts are made of
 * @param loads the incoming waves of this order
 * @param order azimuthal order m
 */
record OrderSystem(OrderLayout layout, Media media, OrderLoads loads, int order) implements ElementMatrices {

    @Override
    public void fill(int cell, double[] re, double[] im) {
        Layout base = layout.base;
        int p = base.part[cell];
        double muRe = 1;
        double muIm = 0;
        double rho = 0;
        if (p >= 0) {
            double nuRe = media.nuRe()[p];
            double nuIm = media.nuIm()[p];
            double size = nuRe * nuRe + nuIm * nuIm;
            muRe = nuRe / size;
            muIm = -nuIm / size;
            // rho / (j w mu0) = -j rho
            rho = 1 / media.loss()[p];
        }
        Cell c = new Cell(base.mesh, cell);
        int[] local = base.local(cell);
        int[] localR = layout.localR[cell];
        int[] localZ = layout.localZ[cell];
        int at = potential(c, local, muRe, muIm, re, im);
        at = radial(c, local, localR, muRe, muIm, rho, at, re, im);
        at = axial(c, local, localR, localZ, muRe, muIm, rho, at, re, im);
        if (layout.loaded[cell]) {
            for (int q = 0; q < loads.count(); q++) {
                at = wave(c, loads.wave(q), local, localR, localZ, muRe, muIm, at, re, im);
                Arrays.fill(re, at, at + q + 1, 0);
                Arrays.fill(im, at, at + q + 1, 0);
                at += q + 1;
            }
        }
    }

    /** Place and degrees of a cell. */
    private record Cell(int er, int ez, int pr, int pz) {
        Cell(TensorMesh mesh, int cell) {
            this(
                    cell % mesh.r().elements(),
                    cell / mesh.r().elements(),
                    mesh.r().degree(cell % mesh.r().elements()),
                    mesh.z().degree(cell / mesh.r().elements()));
        }
    }

    private int potential(Cell c, int[] local, double muRe, double muIm, double[] re, double[] im) {
        int nr = c.pr + 1;
        int nz = c.pz + 1;
        double[] massR = layout.base.massR[c.er];
        double[] massZ = layout.base.massZ[c.ez];
        double[] stiffZ = layout.base.stiffZ[c.ez];
        double[] slopeR = layout.forms.slopeR[c.er];
        double[] overR = layout.forms.overR[c.er];
        double square = order * order;
        int at = 0;
        for (int i = 0; i < local.length; i++) {
            int rowR = local[i] % nr * nr;
            int rowZ = local[i] / nr * nz;
            for (int j = 0; j <= i; j++, at++) {
                int a = rowR + local[j] % nr;
                int b = rowZ + local[j] / nr;
                double grad = massZ[b] * (slopeR[a] + square * overR[a]) + stiffZ[b] * massR[a];
                re[at] = muRe * grad;
                im[at] = muIm * grad;
            }
        }
        return at;
    }

    /** Rows of q_r. */
    private int radial(
            Cell c,
            int[] local,
            int[] localR,
            double muRe,
            double muIm,
            double rho,
            int from,
            double[] re,
            double[] im) {
        int nr = c.pr + 1;
        int nz = c.pz + 1;
        OrderForms f = layout.forms;
        double[] massZ = layout.base.massZ[c.ez];
        double[] stiffZ = layout.base.stiffZ[c.ez];
        double[] inner = f.innerR[c.er];
        double[] cube = f.innerCubeR[c.er];
        double[] slope = f.innerSlopeR[c.er];
        double square = order * order;
        int at = from;
        for (int i = 0; i < localR.length; i++) {
            int a = localR[i] % nr;
            int b = localR[i] / nr;
            for (int l : local) {
                double mixed = -slope[a * nr + l % nr] * massZ[b * nz + l / nr];
                re[at] = muRe * mixed;
                im[at++] = muIm * mixed;
            }
            for (int j = 0; j <= i; j++, at++) {
                int x = a * c.pr + localR[j] % nr;
                int y = b * nz + localR[j] / nr;
                double mass = cube[x] * massZ[y];
                re[at] = muRe * mass;
                im[at] = muIm * mass - rho * (square * inner[x] * massZ[y] + cube[x] * stiffZ[y]);
            }
        }
        return at;
    }

    /** Rows of q_z. */
    private int axial(
            Cell c,
            int[] local,
            int[] localR,
            int[] localZ,
            double muRe,
            double muIm,
            double rho,
            int from,
            double[] re,
            double[] im) {
        int nr = c.pr + 1;
        int nz = c.pz + 1;
        OrderForms f = layout.forms;
        double[] innerZ = f.innerZ[c.ez];
        double[] slopeZ = f.innerSlopeZ[c.ez];
        double[] massR = layout.base.massR[c.er];
        double[] squareR = f.squareR[c.er];
        double[] cube = f.cubeR[c.er];
        double[] moment = f.momentR[c.er];
        double[] cross = f.innerMomentR[c.er];
        double square = order * order;
        int at = from;
        for (int i = 0; i < localZ.length; i++) {
            int a = localZ[i] % nr;
            int b = localZ[i] / nr;
            for (int l : local) {
                double mixed = -squareR[a * nr + l % nr] * slopeZ[b * nz + l / nr];
                re[at] = muRe * mixed;
                im[at++] = muIm * mixed;
            }
            for (int l : localR) {
                re[at] = 0;
                im[at++] = rho * cross[l % nr * nr + a] * slopeZ[b * nz + l / nr];
            }
            for (int j = 0; j <= i; j++, at++) {
                int x = a * nr + localZ[j] % nr;
                int y = b * c.pz + localZ[j] / nr;
                double mass = cube[x] * innerZ[y];
                re[at] = muRe * mass;
                im[at] = muIm * mass - rho * innerZ[y] * (square * massR[x] + moment[x]);
            }
        }
        return at;
    }

    private int wave(
            Cell c,
            int q,
            int[] local,
            int[] localR,
            int[] localZ,
            double muRe,
            double muIm,
            int from,
            double[] re,
            double[] im) {
        int nr = c.pr + 1;
        OrderWaves waves = loads.radial();
        OrderWaves along = loads.axial();
        double[] axial = along.value[q][c.ez];
        double[] axialSlope = (layout.boxR[c.er] ? along.outflow : along.slope)[q][c.ez];
        double[] radial = waves.value[q][c.er];
        double[] radialSlope = (layout.boxZ[c.ez] ? waves.outflow : waves.slope)[q][c.er];
        double factorRe = layout.lifted ? 1 : muRe - 1;
        double factorIm = layout.lifted ? 0 : muIm;
        int at = from;
        for (int l : local) {
            double grad = axial[l / nr] * radialSlope[l % nr] + axialSlope[l / nr] * radial[l % nr];
            re[at] = factorRe * grad;
            im[at++] = factorIm * grad;
        }
        if (layout.lifted) {
            int q1 = at + localR.length + localZ.length;
            Arrays.fill(re, at, q1, 0);
            Arrays.fill(im, at, q1, 0);
            return q1;
        }
        for (int l : localR) {
            double grad = -waves.inner[q][c.er][l % nr] * axial[l / nr];
            re[at] = muRe * grad;
            im[at++] = muIm * grad;
        }
        for (int l : localZ) {
            double grad = -waves.square[q][c.er][l % nr] * along.inner[q][c.ez][l / nr];
            re[at] = muRe * grad;
            im[at++] = muIm * grad;
        }
        return at;
    }
}
