/** The tank and the active element: conductance, resonance, amplitude. */
package eddyreach.oscillator;
