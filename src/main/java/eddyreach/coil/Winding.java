package eddyreach.coil;

import eddyreach.geometry.Section;

/**
 * A winding of uniform turn density in a rectangular window.
 *
 * @param section the window filled by the turns
 * @param turns number of turns in series
 * @param wire what it is wound with
 */
public record Winding(Section section, int turns, Wire wire) {}
