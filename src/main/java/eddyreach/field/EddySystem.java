package eddyreach.field;

import eddyreach.fem.LineForms;
import eddyreach.linalg.ElementMatrices;
import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;

/**
 * The discretised eddy-current problem for A_phi, divided by nu0, with its loads as kept unknowns:
 *
 * <pre>
 * int 1/mu_r [dz A dz v + (1/r d(rA)/dr)(1/r d(rv)/dr)] r dr dz + j w mu0 int sigma A v r dr dz = mu0 int J v r dr dz
 * </pre>
 *
 * <p>Kept unknowns, in this order: one per incoming wave u, with the load dK u = (K - K_air) u that scatters it, then one for the coil
 * with the load int n v r dr dz, n being its turns per area. The Schur complement on them holds everything that
 * the operators of switch and target are made of.
 */
final class EddySystem implements ElementMatrices {

    final TensorMesh mesh;
    private final Media media;
    private final WaveTables waves;
    private final int waveCount;
    private final boolean[] inCoil;
    private final double density;
    private final double[][] massR;
    private final double[][] curlR;
    private final double[][] massZ;
    private final double[][] stiffZ;
    private final double[][] plainR;
    private final double[][] plainZ;
    private final int[][] elements;

    /**
     * @param mesh the mesh
     * @param media what fills its cells
     * @param basis incoming waves, or null for none
     * @param direction +1 for waves exp(kz) falling on a switch, -1 for waves exp(-kz) falling on a target
     * @param coil the winding, or null for none
     */
    EddySystem(TensorMesh mesh, Media media, WaveBasis basis, int direction, CoilRegion coil) {
        this.mesh = mesh;
        this.media = media;
        Axis r = mesh.r();
        Axis z = mesh.z();
        waveCount = basis == null ? 0 : basis.size();
        inCoil = new boolean[mesh.cells()];
        boolean[] useR = new boolean[r.elements()];
        boolean[] useZ = new boolean[z.elements()];
        for (int c = 0; c < mesh.cells(); c++) {
            int er = c % r.elements();
            int ez = c / r.elements();
            inCoil[c] = coil != null && coil.section().contains(r.middle(er), z.middle(ez));
            useR[er] |= media.active(c);
            useZ[ez] |= media.active(c);
        }
        density = coil == null ? 0 : coil.density();
        waves = basis == null ? null : new WaveTables(basis, direction, r, z, useR, useZ);
        massR = LineForms.radialMass(r);
        curlR = LineForms.radialCurl(r);
        massZ = LineForms.mass(z);
        stiffZ = LineForms.stiffness(z);
        plainR = LineForms.radialMean(r);
        plainZ = LineForms.mean(z);
        elements = new int[mesh.cells()][];
        int keptCount = keptCount();
        for (int c = 0; c < elements.length; c++) {
            elements[c] = unknowns(c, keptCount);
        }
    }

    int keptCount() {
        return waveCount + (density != 0 ? 1 : 0);
    }

    /** Unknowns of each cell, kept ones included. */
    int[][] elements() {
        return elements;
    }

    private boolean scatters(int cell) {
        return waveCount > 0 && media.active(cell);
    }

    private int[] unknowns(int cell, int keptCount) {
        int er = cell % mesh.r().elements();
        int ez = cell / mesh.r().elements();
        int pr = mesh.r().degree(er);
        int pz = mesh.z().degree(ez);
        int[] u = new int[(pr + 1) * (pz + 1) + keptCount];
        int n = 0;
        for (int b = 0; b <= pz; b++) {
            for (int a = 0; a <= pr; a++) {
                int id = mesh.unknown(mesh.r().function(er, a), mesh.z().function(ez, b));
                if (id >= 0) {
                    u[n++] = id;
                }
            }
        }
        if (scatters(cell)) {
            for (int i = 0; i < waveCount; i++) {
                u[n++] = mesh.unknowns() + i;
            }
        }
        if (inCoil[cell]) {
            u[n++] = mesh.unknowns() + waveCount;
        }
        return Arrays.copyOf(u, n);
    }

    @Override
    public void fill(int cell, double[] re, double[] im) {
        int er = cell % mesh.r().elements();
        int ez = cell / mesh.r().elements();
        int nr = mesh.r().degree(er) + 1;
        int nz = mesh.z().degree(ez) + 1;
        int[] local = new int[nr * nz];
        int n = 0;
        for (int b = 0; b < nz; b++) {
            for (int a = 0; a < nr; a++) {
                if (mesh.unknown(mesh.r().function(er, a), mesh.z().function(ez, b)) >= 0) {
                    local[n++] = b * nr + a;
                }
            }
        }
        double nuRe = media.nuRe()[cell];
        double nuIm = media.nuIm()[cell];
        double loss = media.loss()[cell];
        int at = 0;
        for (int i = 0; i < n; i++) {
            int ai = local[i] % nr;
            int bi = local[i] / nr;
            for (int j = 0; j <= i; j++, at++) {
                int ar = ai * nr + local[j] % nr;
                int bz = bi * nz + local[j] / nr;
                double curl = stiffZ[ez][bz] * massR[er][ar] + massZ[ez][bz] * curlR[er][ar];
                double mass = massZ[ez][bz] * massR[er][ar];
                re[at] = nuRe * curl;
                im[at] = nuIm * curl + loss * mass;
            }
        }
        if (scatters(cell)) {
            for (int q = 0; q < waveCount; q++) {
                for (int j = 0; j < n; j++, at++) {
                    int a = local[j] % nr;
                    int b = local[j] / nr;
                    double curl = waves.axialSlope[q][ez][b] * waves.radial[q][er][a]
                            + waves.axial[q][ez][b] * waves.radialCurl[q][er][a];
                    double mass = waves.axial[q][ez][b] * waves.radial[q][er][a];
                    re[at] = (nuRe - 1) * curl;
                    im[at] = nuIm * curl + loss * mass;
                }
                Arrays.fill(re, at, at + q + 1, 0);
                Arrays.fill(im, at, at + q + 1, 0);
                at += q + 1;
            }
        }
        if (inCoil[cell]) {
            for (int j = 0; j < n; j++, at++) {
                re[at] = density * plainR[er][local[j] % nr] * plainZ[ez][local[j] / nr];
                im[at] = 0;
            }
            int rest = (scatters(cell) ? waveCount : 0) + 1;
            Arrays.fill(re, at, at + rest, 0);
            Arrays.fill(im, at, at + rest, 0);
        }
    }
}
