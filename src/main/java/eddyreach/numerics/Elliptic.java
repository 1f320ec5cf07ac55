package eddyreach.numerics;

/**
 * Complete elliptic integrals by the arithmetic-geometric mean (Abramowitz and Stegun 1964, 17.6).
 *
 * <p>The argument is the parameter m = k^2, not the modulus k: {@code K(m) = int_0^{pi/2} (1 - m sin^2 t)^{-1/2} dt},
 * {@code E(m) = int_0^{pi/2} (1 - m sin^2 t)^{1/2} dt}. Where m is close to 1 the complement m1 = 1 - m is the better argument,
 * because 1 - m then loses digits; both forms are given. Accuracy about 2e-15 relative.
 */
public final class Elliptic {

    private static final double CLOSE = 1e-9;

    private Elliptic() {}

    /**
     * Complete elliptic integral of the first kind.
     *
     * @param m parameter, below 1; may be negative
     * @throws IllegalArgumentException if m is not below 1
     */
    public static double k(double m) {
        return kOfComplement(1 - m);
    }

    /**
     * Complete elliptic integral of the second kind.
     *
     * @param m parameter, at most 1; may be negative
     * @throws IllegalArgumentException if m is above 1
     */
    public static double e(double m) {
        return m == 1 ? 1 : eOfComplement(1 - m);
    }

    /**
     * K as function of the complementary parameter.
     *
     * @param m1 complementary parameter 1 - m, above 0
     */
    public static double kOfComplement(double m1) {
        requirePositive(m1);
        double a = 1;
        double b = Math.sqrt(m1);
        while (Math.abs(a - b) > CLOSE * a) {
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
        }
        // the last step from a relative distance of 1e-9 ends 1e-18 from the limit
        return Math.PI / (a + b);
    }

    /**
     * E as function of the complementary parameter.
     *
     * @param m1 complementary parameter 1 - m, above 0
     */
    public static double eOfComplement(double m1) {
        requirePositive(m1);
        double a = 1;
        double b = Math.sqrt(m1);
        double sum = (1 - m1) / 2;
        double power = 0.5;
        while (Math.abs(a - b) > CLOSE * a) {
            double c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            power *= 2;
            sum += power * c * c;
        }
        return Math.PI / (a + b) * (1 - sum);
    }

    private static void requirePositive(double m1) {
        if (!(m1 > 0)) {
            throw new IllegalArgumentException("complementary parameter 1 - m = " + m1 + ", must be above 0");
        }
    }
}
