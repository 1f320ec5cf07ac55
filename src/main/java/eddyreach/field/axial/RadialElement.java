package eddyreach.field.axial;

import eddyreach.fem.LineForms;
import eddyreach.mesh.Axis;

/**
 * The integrals over one element of the radial axis of which those over its cells are products, or over such an element as it lies where
 * the mesh lines stand upright but elsewhere, above and below a cone.
 *
 * @param mass int u v r dr
 * @param curl int (1/r d(ru)/dr)(1/r d(rv)/dr) r dr
 * @param mean int v r dr
 * @param meanFlat int v dr
 * @param wave int J1(kr) v r dr, {@code [wave][function]}
 * @param waveCurl int k J0(kr) (1/r d(rv)/dr) r dr, the same
 */
record RadialElement(
        double[] mass, double[] curl, double[] mean, double[] meanFlat, double[][] wave, double[][] waveCurl) {

    /**
     * All elements of an axis.
     *
     * @param waves null for none
     */
    static RadialElement[] all(Axis axis, WaveTables waves) {
        double[][] mass = LineForms.radialMass(axis);
        double[][] curl = LineForms.radialCurl(axis);
        double[][] mean = LineForms.radialMean(axis);
        double[][] meanFlat = LineForms.mean(axis);
        RadialElement[] all = new RadialElement[axis.elements()];
        int n = waves == null ? 0 : waves.radial.length;
        for (int e = 0; e < all.length; e++) {
            double[][] wave = new double[n][];
            double[][] waveCurl = new double[n][];
            for (int q = 0; q < n; q++) {
                wave[q] = waves.radial[q][e];
                waveCurl[q] = waves.radialCurl[q][e];
            }
            all[e] = new RadialElement(mass[e], curl[e], mean[e], meanFlat[e], wave, waveCurl);
        }
        return all;
    }

    /** One element of a degree between two radii, m. */
    static RadialElement between(double r0, double r1, int degree, WaveBasis basis, int direction) {
        Axis axis = new Axis(new double[] {r0, r1}, new int[] {degree});
        WaveTables waves = basis == null
                ? null
                : new WaveTables(basis, direction, axis, axis, new boolean[] {true}, new boolean[] {false});
        return all(axis, waves)[0];
    }
}
