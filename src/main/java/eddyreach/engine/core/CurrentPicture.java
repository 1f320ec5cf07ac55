package eddyreach.engine.core;

/**
 * Eddy-current density inside one target, for one ampere peak in the coil. The grid is indexed {@code [iz][ir]}.
 *
 * @param id the target's id
 * @param title readable title
 * @param skinDepth skin depth of the conductor nearest to the switch, m; infinite if nothing conducts
 * @param r radii, m, ascending from 0
 * @param z depth below the target's near face, m, ascending from 0
 * @param density magnitude of the current density, A/m2
 */
public record CurrentPicture(String id, String title, double skinDepth, double[] r, double[] z, double[][] density) {}
