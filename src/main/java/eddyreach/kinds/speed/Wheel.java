package eddyreach.kinds.speed;

import java.util.OptionalDouble;

/**
 * How a row moves.
 *
 * @param pitch distance from one tooth to the next, m
 * @param teeth number of teeth of a wheel; 0 for a rack
 * @param speed speed at which it is to run, m/s; empty when only the limit is asked for
 */
record Wheel(double pitch, int teeth, OptionalDouble speed) {

    /** Revolutions in a minute for teeth passing in a second; NaN for a rack. */
    double perMinute(double frequency) {
        return teeth == 0 ? Double.NaN : 60 * frequency / teeth;
    }

    /** Speed of the row for teeth passing in a second, m/s. */
    double speed(double frequency) {
        return frequency * pitch;
    }

    /** Teeth passing in a second as asked for, Hz. */
    OptionalDouble frequency() {
        return speed.isPresent() ? OptionalDouble.of(speed.getAsDouble() / pitch) : OptionalDouble.empty();
    }
}
