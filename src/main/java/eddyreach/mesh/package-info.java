/** Graded tensor meshes whose cells resolve the skin depth, with the degree of the polynomials chosen per interval. */
package eddyreach.mesh;
