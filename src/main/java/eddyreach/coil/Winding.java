package eddyreach.coil;

import eddyreach.geometry.Section;

/**
 * A winding of uniform turn density in a rectangular window.
 *
 * @param section the window filled by the turns
 * @param turns number of turns in series
 * @param wire what it is wound with
 */
public record Winding(Section section, int turns, Wire wire) {

    /** The same moved along the axis by dz metres. */
    public Winding shifted(double dz) {
        return new Winding(section.shifted(dz), turns, wire);
    }

    /** The same held at a temperature, degrees Celsius, whatever that of its surroundings. */
    public Winding at(double celsius) {
        return new Winding(
                section,
                turns,
                new Wire(wire.copperDiameter(), wire.strands(), wire.conductor().heldAt(celsius)));
    }
}
