/**
 * The eddy-current problem of switch and target: operators of both by azimuthal order, their join over the air gap on and beside the
 * axis, losses by part, field maps.
 */
package eddyreach.field;
