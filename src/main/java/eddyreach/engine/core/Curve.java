package eddyreach.engine.core;

/**
 * What the tank sees while one target moves along the axis. Immutable: arrays come in and go out as copies; single
 * values are asked for by their index.
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

    public Curve {
        distance = distance.clone();
        lossResistance = lossResistance.clone();
        inductanceChange = inductanceChange.clone();
        impedanceError = impedanceError.clone();
        resistance = resistance.clone();
        inductance = inductance.clone();
        frequency = frequency.clone();
        conductance = conductance.clone();
        amplitude = amplitude.clone();
    }

    /** Number of distances. */
    public int size() {
        return distance.length;
    }

    @Override
    public double[] distance() {
        return distance.clone();
    }

    /** Distance, m, at an index. */
    public double distance(int i) {
        return distance[i];
    }

    @Override
    public double[] lossResistance() {
        return lossResistance.clone();
    }

    /** Change of the loss resistance, ohm, at an index. */
    public double lossResistance(int i) {
        return lossResistance[i];
    }

    @Override
    public double[] inductanceChange() {
        return inductanceChange.clone();
    }

    /** Change of the inductance, H, at an index. */
    public double inductanceChange(int i) {
        return inductanceChange[i];
    }

    @Override
    public double[] impedanceError() {
        return impedanceError.clone();
    }

    /** Error bar of the change of the impedance, ohm, at an index. */
    public double impedanceError(int i) {
        return impedanceError[i];
    }

    @Override
    public double[] resistance() {
        return resistance.clone();
    }

    /** Series resistance, ohm, at an index. */
    public double resistance(int i) {
        return resistance[i];
    }

    @Override
    public double[] inductance() {
        return inductance.clone();
    }

    /** Inductance, H, at an index. */
    public double inductance(int i) {
        return inductance[i];
    }

    @Override
    public double[] frequency() {
        return frequency.clone();
    }

    /** Frequency, Hz, at an index. */
    public double frequency(int i) {
        return frequency[i];
    }

    @Override
    public double[] conductance() {
        return conductance.clone();
    }

    /** Loss conductance, S, at an index. */
    public double conductance(int i) {
        return conductance[i];
    }

    @Override
    public double[] amplitude() {
        return amplitude.clone();
    }

    /** Amplitude, V peak, at an index. */
    public double amplitude(int i) {
        return amplitude[i];
    }

    /** Fills a curve from its first distance to its last. */
    public static final class Builder {

        private final double[][] rows = new double[9][];
        private int filled;

        /** Room for n distances. */
        public Builder(int n) {
            for (int k = 0; k < rows.length; k++) {
                rows[k] = new double[n];
            }
        }

        /**
         * Adds a distance.
         *
         * @param distance distance from the active face, m
         * @param tank the tank there
         * @param loss change of the loss resistance against no target, ohm
         * @param inductanceChange change of the inductance against no target, H
         * @param error error bar of the change of the impedance, ohm
         * @param amplitude amplitude of the oscillation, V peak
         */
        public void add(
                double distance, TankState tank, double loss, double inductanceChange, double error, double amplitude) {
            double[] column = {
                distance,
                loss,
                inductanceChange,
                error,
                tank.resistance(),
                tank.inductance(),
                tank.omega() / (2 * Math.PI),
                tank.conductance(),
                amplitude
            };
            for (int k = 0; k < rows.length; k++) {
                rows[k][filled] = column[k];
            }
            filled++;
        }

        /** The curve, once all distances are added. */
        public Curve build() {
            if (filled != rows[0].length) {
                throw new IllegalStateException(filled + " of " + rows[0].length + " distances are added");
            }
            return new Curve(rows[0], rows[1], rows[2], rows[3], rows[4], rows[5], rows[6], rows[7], rows[8]);
        }
    }
}
