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

    /**
     * The difference K - E without the cancellation at small m.
     *
     * @param m parameter, at least 0
     * @param m1 complementary parameter 1 - m, above 0; given apart so that neither loses digits
     */
    public static double kMinusE(double m, double m1) {
        requirePositive(m1);
        double a = 1;
        double b = Math.sqrt(m1);
        double sum = m / 2;
        double power = 0.5;
        while (Math.abs(a - b) > CLOSE * a) {
            double c = (a - b) / 2;
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
            power *= 2;
            sum += power * c * c;
        }
        return Math.PI / (a + b) * sum;
    }

    /**
     * Bulirsch's general complete integral {@code cel(kc, p, a, b) = int_0^{pi/2} (a cos^2 t + b sin^2 t) /
     * ((cos^2 t + p sin^2 t) sqrt(cos^2 t + kc^2 sin^2 t)) dt} (Bulirsch, Numer. Math. 13, 1969, 305), for p above 0.
     *
     * @param kc complementary modulus, not 0
     * @param p characteristic, above 0
     * @param a weight of cos^2
     * @param b weight of sin^2
     */
    public static double cel(double kc, double p, double a, double b) {
        if (!(kc != 0) || !(p > 0)) {
            throw new IllegalArgumentException("kc = " + kc + ", p = " + p + ": kc must not be 0, p must be above 0");
        }
        double k = Math.abs(kc);
        double e = k;
        double mu = 1;
        double pp = Math.sqrt(p);
        double aa = a;
        double bb = b / pp;
        while (true) {
            double f = aa;
            aa += bb / pp;
            double g = e / pp;
            bb = 2 * (bb + f * g);
            pp += g;
            g = mu;
            mu += k;
            if (Math.abs(g - k) <= CLOSE * g) {
                return Math.PI / 2 * (bb + aa * mu) / (mu * (mu + pp));
            }
            k = 2 * Math.sqrt(e);
            e = k * mu;
        }
    }

    private static void requirePositive(double m1) {
        if (!(m1 > 0)) {
            throw new IllegalArgumentException("complementary parameter 1 - m = " + m1 + ", must be above 0");
        }
    }
}
