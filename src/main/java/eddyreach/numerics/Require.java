package eddyreach.numerics;

/** Checks of arguments; a NaN never passes. */
public final class Require {

    private Require() {}

    /**
     * Passes a positive finite value through.
     *
     * @param name what the value is, for the message
     * @param value the value
     * @param unit its unit, for the message; empty for a pure number
     * @throws IllegalArgumentException when it is zero, negative, infinite or NaN
     */
    public static double positive(String name, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(message(name, value, unit, "must be positive and finite"));
        }
        return value;
    }

    /**
     * Passes a finite value through that is not negative.
     *
     * @param name what the value is, for the message
     * @param value the value
     * @param unit its unit, for the message; empty for a pure number
     * @throws IllegalArgumentException when it is negative, infinite or NaN
     */
    public static double notNegative(String name, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(message(name, value, unit, "must be finite and not negative"));
        }
        return value;
    }

    private static String message(String name, double value, String unit, String rule) {
        return name + " " + value + (unit.isEmpty() ? "" : " " + unit) + ": " + rule;
    }
}
