/** Finite elements of any degree on a tensor mesh: shape functions, one-dimensional forms, assembly; knows no physics. */
package eddyreach.fem;
