package eddyreach.field.orders;

/**
 * A function of one coordinate that rises linearly from 0 at a to 1 at b, stays there up to c and falls to 0 at d.
 *
 * @param a begin, m
 * @param b end of the rise, m
 * @param c begin of the fall, m
 * @param d end, m
 */
record Taper(double a, double b, double c, double d) {

    /** 1 everywhere. */
    static final Taper NONE = new Taper(
            Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    double value(double x) {
        return x < b ? (x <= a ? 0 : (x - a) / (b - a)) : x <= c ? 1 : x >= d ? 0 : (d - x) / (d - c);
    }

    double slope(double x) {
        return x < b ? (x <= a ? 0 : 1 / (b - a)) : x <= c || x >= d ? 0 : -1 / (d - c);
    }

    /** True when the function is 1 at x. */
    boolean full(double x) {
        return x >= b && x <= c;
    }

    /** True when the function is not zero at x. */
    boolean covers(double x) {
        return x > a && x < d;
    }
}
