package eddyreach.field.axial;

import eddyreach.geometry.Role;

/**
 * The loss in one part as a series resistance of the coil.
 *
 * @param name the part
 * @param role what it belongs to
 * @param resistance loss resistance, ohm
 */
public record PartLoss(String name, Role role, double resistance) {}
