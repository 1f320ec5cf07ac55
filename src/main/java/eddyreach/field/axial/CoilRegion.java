package eddyreach.field.axial;

import eddyreach.geometry.Section;

/**
 * The winding as the field problem sees it: a window with uniform current density. The proximity loss of its wires enters as
 * a loss part of the window's permeability, so that it follows the field at every distance by itself.
 *
 * @param section the window
 * @param turns number of turns
 * @param muLoss loss part mu'' of the window's relative permeability 1 - j mu'', 0 for ideal turns
 */
public record CoilRegion(Section section, int turns, double muLoss) {

    /** The same winding moved along the axis by dz metres. */
    public CoilRegion shifted(double dz) {
        return new CoilRegion(section.shifted(dz), turns, muLoss);
    }

    /** Turns per area, 1/m2. */
    public double density() {
        return turns / section.area();
    }
}
