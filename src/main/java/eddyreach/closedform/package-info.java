/** Exact solutions of eddy-current and inductance problems: the fast path for layered plates and the reference for tests. */
package eddyreach.closedform;
