/** Bessel functions, elliptic integrals, quadrature rules and roots; knows no physics. */
package eddyreach.numerics;
