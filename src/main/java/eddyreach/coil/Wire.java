package eddyreach.coil;

import eddyreach.materials.Material;

/**
 * Round wire, or a bundle of insulated strands (litz).
 *
 * @param copperDiameter diameter of one bare strand, m
 * @param strands number of strands, 1 for a plain wire
 * @param conductor the strands' material
 */
public record Wire(double copperDiameter, int strands, Material conductor) {}
