package eddyreach.engine.core;

import org.apache.commons.math3.complex.Complex;

/**
 * The tank with a target at one distance.
 *
 * @param omega angular frequency of the oscillation, rad/s
 * @param impedance impedance of the coil with everything around it, ohm
 * @param change change of the impedance by the target, ohm
 * @param conductance loss conductance of the tank at resonance, S
 */
public record TankState(double omega, Complex impedance, Complex change, double conductance) {

    /** Series resistance, ohm. */
    public double resistance() {
        return impedance.getReal();
    }

    /** Inductance, H. */
    public double inductance() {
        return impedance.getImaginary() / omega;
    }

    /** Change of the conductance per change of the resistance at the same inductance, S/ohm. */
    public double conductancePerOhm() {
        return conductance / resistance();
    }
}
