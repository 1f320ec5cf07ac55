package eddyreach.field.axial;

/** A computed field that can be looked at anywhere. */
public interface Field {

    /**
     * Samples the field on the grid of all pairs (r, z).
     *
     * @param r radii, m, not negative
     * @param z heights, m
     * @throws IllegalArgumentException if a point lies outside what was computed
     */
    MeshField.Samples sample(double[] r, double[] z);
}
