/** Immutable descriptions of switches, targets and mounts, in SI units. */
package eddyreach.model.values;
