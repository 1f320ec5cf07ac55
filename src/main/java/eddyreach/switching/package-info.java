/** Factory trim, switch-on and switch-off distances, differential travel and the standard's quantities. */
package eddyreach.switching;
