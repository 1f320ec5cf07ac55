package eddyreach.engine.core;

/**
 * The tank in one state.
 *
 * @param resistance series resistance, ohm
 * @param inductance inductance, H
 * @param frequency frequency of the oscillation, Hz
 * @param conductance loss conductance at resonance, S
 * @param amplitude amplitude, V peak
 */
public record Operating(double resistance, double inductance, double frequency, double conductance, double amplitude) {

    /** Quality of the tank, w L / R. */
    public double quality() {
        return 2 * Math.PI * frequency * inductance / resistance;
    }
}
