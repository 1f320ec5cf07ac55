package eddyreach.numerics;

import java.util.Arrays;

/**
 * Bessel functions of the first kind with real argument, and the radial integral of r J1(k r).
 *
 * <p>J0 and J1: for |x| below 8 polynomials in x^2 (below 4 and above), from 8 on the modulus and phase form
 * {@code J_n(x) = sqrt(2/(pi x)) (P_n cos X - Q_n sin X)}, X = x - (2n+1) pi/4 (Abramowitz and Stegun 1964, 9.2.5), with P_n and
 * Q_n as polynomials in t = 2 (8/x)^2 - 1.
 *
 * <p>Accuracy: about 1e-15 of the amplitude (1 for small x, sqrt(2/(pi x)) for large x) up to x about 1e3; beyond, the rounding
 * of x itself costs x times 1e-16.
 */
public final class Bessel {

    private static final double NEAR = 4;
    private static final double SPLIT = 8;
    private static final int MAX_ORDER = 20;
    private static final double RESCALE = 1e150;

    /** Below this the leading term of the series is all. */
    private static final double TINY = 1e-7;

    /** Widest k (r2 - r1) that the 16-point rule integrates to rounding. */
    private static final double ONE_PANEL = 8;

    private static final GaussLegendre PANEL = GaussLegendre.of(16, -1, 1);

    private Bessel() {}

    /** Bessel function J0(x), any finite x. */
    public static double j0(double x) {
        double s = Math.abs(x);
        if (s < NEAR) {
            return polynomial(BesselTables.J0_NEAR, nearVariable(s));
        }
        if (s < SPLIT) {
            return polynomial(BesselTables.J0_MID, middleVariable(s));
        }
        double z = SPLIT / s;
        double t = 2 * z * z - 1;
        double p = polynomial(BesselTables.P0, t);
        double q = z * polynomial(BesselTables.Q0, t);
        double sin = Math.sin(s);
        double cos = Math.cos(s);
        // cos(s - pi/4) and sin(s - pi/4), both times sqrt 2
        return (p * (cos + sin) - q * (sin - cos)) / Math.sqrt(Math.PI * s);
    }

    /** Bessel function J1(x), any finite x; odd, with full relative accuracy near 0. */
    public static double j1(double x) {
        double s = Math.abs(x);
        if (s < NEAR) {
            return x * polynomial(BesselTables.J1_NEAR, nearVariable(s));
        }
        if (s < SPLIT) {
            return x * polynomial(BesselTables.J1_MID, middleVariable(s));
        }
        double z = SPLIT / s;
        double t = 2 * z * z - 1;
        double p = polynomial(BesselTables.P1, t);
        double q = z * polynomial(BesselTables.Q1, t);
        double sin = Math.sin(s);
        double cos = Math.cos(s);
        // cos(s - 3pi/4) and sin(s - 3pi/4), both times sqrt 2
        double value = (p * (sin - cos) + q * (sin + cos)) / Math.sqrt(Math.PI * s);
        return x < 0 ? -value : value;
    }

    /**
     * Bessel function J_n(x): upward recurrence for x above n, Miller's downward recurrence below (Abramowitz and Stegun 1964,
     * 9.1.27 and 9.12).
     *
     * @param n order, 0 to 20
     * @param x any finite argument
     * @throws IllegalArgumentException if the order is out of range
     */
    public static double jn(int n, double x) {
        if (n < 0 || n > MAX_ORDER) {
            throw new IllegalArgumentException("order n = " + n + ", must be 0 to " + MAX_ORDER);
        }
        if (n == 0) {
            return j0(x);
        }
        if (n == 1) {
            return j1(x);
        }
        double s = Math.abs(x);
        if (s == 0) {
            return 0;
        }
        double value = s > n ? upward(n, s) : downward(n, s);
        return x < 0 && n % 2 == 1 ? -value : value;
    }

    /**
     * Bessel functions of all orders from 0 to a highest one at once: upward recurrence for x above it, else Miller's downward one
     * (Abramowitz and Stegun 1964, 9.1.27 and 9.12), normalised by 1 = J0 + 2 J2 + 2 J4 + ... Accuracy about 1e-14 of the amplitude up to
     * the order x, and relative for all higher orders down to 1e-290.
     *
     * @param top highest order, not negative
     * @param x argument, not negative
     * @param out receives J_0(x) to J_top(x)
     */
    public static void orders(int top, double x, double[] out) {
        Arrays.fill(out, 0, top + 1, 0);
        if (x < TINY) {
            for (int n = 0; n <= top; n++) {
                out[n] = leadingTerm(n, x);
            }
            return;
        }
        double twice = 2 / x;
        if (x > top) {
            out[0] = j0(x);
            for (int n = 1; n <= top; n++) {
                out[n] = n == 1 ? j1(x) : (n - 1) * twice * out[n - 1] - out[n - 2];
            }
            return;
        }
        int base = top + 1;
        int start = 2 * ((base + 20 + (int) Math.sqrt(40.0 * base)) / 2);
        double after = 0;
        double now = 1e-200;
        double norm = 0;
        for (int i = start; i > 0; i--) {
            if (i % 2 == 0) {
                norm += 2 * now;
            }
            double before = i * twice * now - after;
            after = now;
            now = before;
            if (i - 1 <= top) {
                out[i - 1] = now;
            }
            if (Math.abs(now) > RESCALE) {
                now /= RESCALE;
                after /= RESCALE;
                norm /= RESCALE;
                for (int n = i - 1; n <= top; n++) {
                    out[n] /= RESCALE;
                }
            }
        }
        norm += now;
        for (int n = 0; n <= top; n++) {
            out[n] /= norm;
        }
    }

    /**
     * The integral of r J1(k r) over r from r1 to r2, in units of r squared: the radial part of a coil of rectangular section.
     *
     * <p>{@code (F(k r2) - F(k r1)) / k^2} with {@link #moment1}; where the two would cancel, Gauss quadrature of the integrand
     * instead. Accuracy: 1e-14 of the amplitude {@code r2^(1/2) k^(-3/2)} or of the value, whichever is larger.
     *
     * @param k spatial frequency, 1/m, not negative
     * @param r1 inner radius, m, not negative
     * @param r2 outer radius, m
     */
    public static double integralRJ1(double k, double r1, double r2) {
        double half = (r2 - r1) / 2;
        if (2 * Math.abs(half) * k > ONE_PANEL) {
            return (moment1(k * r2) - moment1(k * r1)) / (k * k);
        }
        double middle = (r1 + r2) / 2;
        double sum = 0;
        for (int i = 0; i < PANEL.size(); i++) {
            double r = middle + half * PANEL.node(i);
            sum += PANEL.weight(i) * r * j1(k * r);
        }
        return half * sum;
    }

    /**
     * F(x), the integral of t J1(t) over t from 0 to x: {@code (pi x/2)(J1(x) H0(x) - J0(x) H1(x))} with Struve functions H
     * (Abramowitz and Stegun 1964, 11.1.7 with F = int J0 - x J0). Computed from polynomials below 8 and as
     * {@code 1 - int_x^inf J0 dt - x J0(x)} above, the integral in modulus and phase form.
     *
     * @param x not negative
     */
    public static double moment1(double x) {
        if (x < NEAR) {
            return x * x * x * polynomial(BesselTables.M1_NEAR, nearVariable(x));
        }
        if (x < SPLIT) {
            return x * x * x * polynomial(BesselTables.M1_MID, middleVariable(x));
        }
        double z = SPLIT / x;
        double t = 2 * z * z - 1;
        double p = z * polynomial(BesselTables.IA, t);
        double q = polynomial(BesselTables.IB, t);
        double sin = Math.sin(x);
        double cos = Math.cos(x);
        double tail = (p * (cos + sin) - q * (sin - cos)) / Math.sqrt(Math.PI * x);
        return 1 - tail - x * j0(x);
    }

    private static double nearVariable(double x) {
        return x * x / 8 - 1;
    }

    private static double middleVariable(double x) {
        return (x * x - 40) / 24;
    }

    private static double upward(int n, double x) {
        double before = j0(x);
        double now = j1(x);
        for (int i = 1; i < n; i++) {
            double next = 2 * i / x * now - before;
            before = now;
            now = next;
        }
        return now;
    }

    private static double downward(int n, double x) {
        if (x * x < 1e-12) {
            return leadingTerm(n, x);
        }
        int start = 2 * ((n + 30) / 2);
        double after = 0;
        double now = 1e-200;
        double wanted = 0;
        // 1 = J0 + 2 J2 + 2 J4 + ... fixes the scale
        double norm = 0;
        for (int i = start; i > 0; i--) {
            if (i % 2 == 0) {
                norm += 2 * now;
            }
            double before = 2 * i / x * now - after;
            after = now;
            now = before;
            if (i - 1 == n) {
                wanted = now;
            }
            if (Math.abs(now) > RESCALE) {
                now /= RESCALE;
                after /= RESCALE;
                norm /= RESCALE;
                wanted /= RESCALE;
            }
        }
        return wanted / (norm + now);
    }

    private static double leadingTerm(int n, double x) {
        double value = 1;
        for (int i = 1; i <= n; i++) {
            value *= x / 2 / i;
        }
        return value;
    }

    /** Two interleaved Horner chains: the processor overlaps them, one chain would be bound by latency. */
    private static double polynomial(double[] c, double t) {
        double t2 = t * t;
        int top = c.length - 1;
        double a = c[top];
        double b = c[top - 1];
        for (int i = top - 2; i > 0; i -= 2) {
            a = a * t2 + c[i];
            b = b * t2 + c[i - 1];
        }
        if (top % 2 == 0) {
            return a * t2 + c[0] + b * t;
        }
        return a * t + b;
    }
}
