package eddyreach.model.values;

import eddyreach.materials.Material;

/**
 * One layer of a target, counted from the switch.
 *
 * @param material what it is made of
 * @param thickness thickness, m
 */
public record Layer(Material material, double thickness) {}
