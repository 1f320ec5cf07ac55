/** Kinds thickness, size, conductivity and layers: distances over one or two quantities. */
package eddyreach.kinds.sweep;
