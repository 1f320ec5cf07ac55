/** The tank and the active element: conductance, resonance, amplitude, its course in time, and what disturbs it from outside. */
package eddyreach.oscillator;
