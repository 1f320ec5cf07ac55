package eddyreach.field;

import eddyreach.mesh.MeshMaker.Fineness;

/**
 * How finely a field problem is resolved, all in one place. The numerical error of a result is the difference between two
 * resolutions that differ in mesh, degree, domain and wavenumbers at once.
 *
 * @param body fineness of the mesh around a switch
 * @param target fineness of the mesh around a target
 * @param waves number of wavenumbers in the gap
 * @param reach largest wavenumber times the radius of the core
 * @param fields whether fields, losses and pictures will be asked for, which takes memory
 */
public record Resolution(Fineness body, Fineness target, int waves, double reach, boolean fields) {

    /** For results. */
    public static final Resolution FINE =
            new Resolution(new Fineness(4, 0.02, 1, 4, 1, 20), new Fineness(4, 0.02, 0.7, 3, 0.6, 20), 24, 24, true);

    /** For the error estimate: coarser in every respect. */
    public static final Resolution COARSE =
            new Resolution(new Fineness(3, 0.02, 0.8, 4, 1, 12), new Fineness(3, 0.02, 0.5, 3, 0.6, 12), 20, 20, false);

    /** The wavenumbers for a core or coil of the given radius, m. */
    public WaveBasis waves(double radius) {
        return WaveBasis.of(waves, reach / radius);
    }
}
