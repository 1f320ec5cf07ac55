package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.Tank;

/**
 * The tank as a target leaves it.
 *
 * @param resistance series resistance of the coil, ohm
 * @param inductance inductance of the coil, H
 * @param conductance loss conductance at resonance, S
 * @param frequency frequency of the oscillation, Hz
 */
public record TankState(double resistance, double inductance, double conductance, double frequency) {

    public TankState {
        Require.notNegative("resistance", resistance, "ohm");
        Require.positive("inductance", inductance, "H");
        Require.notNegative("conductance", conductance, "S");
        Require.positive("frequency", frequency, "Hz");
    }

    /** The state of a tank whose coil has an inductance, H, and a resistance, ohm. */
    public static TankState of(Tank tank, double inductance, double resistance) {
        return new TankState(
                resistance,
                inductance,
                tank.conductance(inductance, resistance),
                tank.frequency(inductance, resistance) / (2 * Math.PI));
    }
}
