package eddyreach.model.values;

import eddyreach.geometry.Section;
import eddyreach.materials.Material;

/**
 * A ring of a target, about the axis.
 *
 * @param name what it is called within its target, such as head
 * @param section its section, in coordinates whose origin is the target's nearest point
 * @param material what it is made of
 * @param slit whether a narrow cut keeps current from flowing round the axis; then it does not reach the axis
 */
public record Ring(String name, Section section, Material material, boolean slit) {}
