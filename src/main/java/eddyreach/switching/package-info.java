/**
 * From the tank to the output: principles and factory trim, switching distances, the output in time, rows of targets, hysteresis, the spread of a series, the
 * standard's quantities.
 */
package eddyreach.switching;
