package eddyreach.geometry;

import eddyreach.materials.Material;

/**
 * A named ring of one material.
 *
 * @param name name shown to the user, unique within a switch, mount or target
 * @param role what it belongs to
 * @param section the ring's section; the active face is the plane z = 0, the switch lies in z below 0
 * @param material what it is made of
 * @param slit whether a narrow cut through the section keeps current from flowing round the axis
 */
public record Part(String name, Role role, Section section, Material material, boolean slit) {

    public Part {
        if (slit && section.r0() == 0) {
            throw new IllegalArgumentException(name + " is slit but reaches the axis");
        }
    }

    /** A closed ring. */
    public Part(String name, Role role, Section section, Material material) {
        this(name, role, section, material, false);
    }

    /** The same part of another material. */
    public Part of(Material other) {
        return new Part(name, role, section, other, slit);
    }

    /** The same part moved along the axis by dz metres. */
    public Part shifted(double dz) {
        return new Part(name, role, section.shifted(dz), material, slit);
    }
}
