/** Conductivity, permeability, temperature coefficient and skin depth of materials; each value with its source. */
package eddyreach.materials;
