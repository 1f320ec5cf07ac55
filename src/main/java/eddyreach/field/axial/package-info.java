/** The axisymmetric eddy-current problem: mesh of switch, target or both, elimination to reflection operators, losses by part, field maps. */
package eddyreach.field.axial;
