/** The axisymmetric eddy-current problem: operators of switch and target, their join over the air gap, losses by part, field maps. */
package eddyreach.field;
