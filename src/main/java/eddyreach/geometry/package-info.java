/** Parts of revolution with rectangular sections in (r, z), and the checks on their extent and overlap. */
package eddyreach.geometry;
