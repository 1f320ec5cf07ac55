package eddyreach.field.axial;

import eddyreach.linalg.ElementMatrices;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;

/**
 * The discretised eddy-current problem for A_phi, divided by nu0, with its loads as kept unknowns:
 *
 * <pre>
 * int 1/mu_r [dz A dz v + (1/r d(rA)/dr)(1/r d(rv)/dr)] r dr dz + j w mu0 int sigma A v r dr dz = mu0 int J v r dr dz
 * </pre>
 *
 * <p>The load of an incoming wave u is dK u = (K - K_air) u, which scatters it; the load of the coil is int n v r dr dz, n being
 * its turns per area. The Schur complement on the kept unknowns holds everything that the operators of switch and target are
 * made of.
 *
 * <p>Round a slit body flows no net current: charges at the slit make a voltage U, J = sigma (-j w A + U / (2 pi r)), here with the
 * unknown V = U / (2 pi j w), J = -j w sigma (A - V / r). Its equation, that the current over the section vanishes, is the same
 * form with v = -1/r, so that the matrix stays symmetric.
 *
 * @param layout the problem without its frequency
 * @param media what the parts are made of
 * @param density turns per area of the coil, 1/m2
 */
record EddySystem(Layout layout, Media media, double density) implements ElementMatrices {

    @Override
    public void fill(int cell, double[] re, double[] im) {
        TensorMesh mesh = layout.mesh;
        int er = cell % mesh.r().elements();
        int ez = cell / mesh.r().elements();
        int p = layout.part[cell];
        double nuRe = p < 0 ? 1 : media.nuRe()[p];
        double nuIm = p < 0 ? 0 : media.nuIm()[p];
        double loss = p < 0 ? 0 : media.loss()[p];
        int[] local = layout.local(cell);
        SlantedCell slanted = layout.slanted[cell];
        int at = slanted == null
                ? stiffness(local, cell, ez, nuRe, nuIm, loss, re, im)
                : combined(slanted.curl, slanted.mass, nuRe, nuIm, loss, 0, re, im);
        int kept = 0;
        if (layout.scatters(cell)) {
            for (; kept < layout.waveCount(); kept++) {
                at = slanted == null
                        ? wave(kept, local, cell, ez, nuRe - 1, nuIm, loss, at, re, im)
                        : combined(slanted.waveCurl[kept], slanted.waveMass[kept], nuRe - 1, nuIm, loss, at, re, im);
                at = zeros(kept + 1, at, re, im);
            }
        }
        if (layout.inCoil[cell]) {
            int nr = mesh.r().degree(er) + 1;
            for (int i = 0; i < local.length; i++) {
                re[at] = slanted == null
                        ? density * layout.radial[cell].mean()[local[i] % nr] * layout.meanZ[ez][local[i] / nr]
                        : density * slanted.mean[i];
                im[at++] = 0;
            }
            at = zeros(kept + 1, at, re, im);
            kept++;
        }
        if (layout.slitBody(cell) >= 0) {
            int nr = mesh.r().degree(er) + 1;
            for (int i = 0; i < local.length; i++) {
                double mean = slanted == null
                        ? layout.radial[cell].meanFlat()[local[i] % nr] * layout.meanZ[ez][local[i] / nr]
                        : slanted.meanFlat[i];
                re[at] = 0;
                im[at++] = -loss * mean;
            }
            zeros(kept + 1, at, re, im);
        }
    }

    /** nu times the one, j w mu0 sigma times the other. */
    private static int combined(
            double[] curl, double[] mass, double nuRe, double nuIm, double loss, int from, double[] re, double[] im) {
        for (int i = 0; i < curl.length; i++) {
            re[from + i] = nuRe * curl[i];
            im[from + i] = nuIm * curl[i] + loss * mass[i];
        }
        return from + curl.length;
    }

    private int stiffness(
            int[] local, int cell, int ez, double nuRe, double nuIm, double loss, double[] re, double[] im) {
        int nr = layout.mesh.r().degree(cell % layout.mesh.r().elements()) + 1;
        int nz = layout.mesh.z().degree(ez) + 1;
        double[] massR = layout.radial[cell].mass();
        double[] curlR = layout.radial[cell].curl();
        double[] massZ = layout.massZ[ez];
        double[] stiffZ = layout.stiffZ[ez];
        int at = 0;
        for (int i = 0; i < local.length; i++) {
            int rowR = local[i] % nr * nr;
            int rowZ = local[i] / nr * nz;
            for (int j = 0; j <= i; j++, at++) {
                int a = rowR + local[j] % nr;
                int b = rowZ + local[j] / nr;
                double curl = stiffZ[b] * massR[a] + massZ[b] * curlR[a];
                re[at] = nuRe * curl;
                im[at] = nuIm * curl + loss * massZ[b] * massR[a];
            }
        }
        return at;
    }

    private int wave(
            int q,
            int[] local,
            int cell,
            int ez,
            double nuRe,
            double nuIm,
            double loss,
            int from,
            double[] re,
            double[] im) {
        double[] radial = layout.radial[cell].wave()[q];
        double[] radialCurl = layout.radial[cell].waveCurl()[q];
        double[] axial = layout.waves.axial[q][ez];
        double[] axialSlope = layout.waves.axialSlope[q][ez];
        int nr = radial.length;
        int at = from;
        for (int l : local) {
            int a = l % nr;
            int b = l / nr;
            double curl = axialSlope[b] * radial[a] + axial[b] * radialCurl[a];
            re[at] = nuRe * curl;
            im[at++] = nuIm * curl + loss * axial[b] * radial[a];
        }
        return at;
    }

    /** What kept unknowns do to each other directly is exact and added to the Schur complement, see {@link WaveProducts}. */
    private static int zeros(int count, int from, double[] re, double[] im) {
        Arrays.fill(re, from, from + count, 0);
        Arrays.fill(im, from, from + count, 0);
        return from + count;
    }
}
