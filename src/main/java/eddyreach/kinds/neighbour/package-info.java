/** Kind neighbour: two switches near each other. */
package eddyreach.kinds.neighbour;
