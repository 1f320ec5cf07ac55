package eddyreach.engine.core;

/**
 * What the tank sees while one target moves along the axis. All arrays have the length of {@code distance}.
 *
 * @param distance distance from the active face, m, ascending from 0
 * @param lossResistance change of the loss resistance against no target, ohm
 * @param inductanceChange change of the inductance against no target, H
 * @param impedanceError numerical error bar of the change of the impedance, ohm
 * @param resistance total series resistance of the coil with everything around it, ohm
 * @param inductance inductance, H
 * @param frequency frequency of the oscillation, Hz
 * @param conductance loss conductance of the tank at resonance, S
 * @param amplitude amplitude of the oscillation, V peak, 0 when it has collapsed
 */
public record Curve(
        double[] distance,
        double[] lossResistance,
        double[] inductanceChange,
        double[] impedanceError,
        double[] resistance,
        double[] inductance,
        double[] frequency,
        double[] conductance,
        double[] amplitude) {

    /** Room for n distances. */
    public static Curve of(int n) {
        return new Curve(
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n]);
    }
}
