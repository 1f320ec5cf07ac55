package eddyreach.closedform;

/** Checks of arguments; each comparison is false for NaN. */
final class Args {

    private Args() {}

    static double positive(String name, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " = " + value + ", must be above 0");
        }
        return value;
    }

    static double notNegative(String name, double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(name + " = " + value + ", must not be below 0");
        }
        return value;
    }
}
