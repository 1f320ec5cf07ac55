/**
 * Metal parts of any outline before the face of a switch: their surface as flat triangles, the scalar potential outside them by boundary
 * elements with the impedance condition of the metal, and from it the operator that couples azimuthal orders, joined with the switch.
 */
package eddyreach.surface;
