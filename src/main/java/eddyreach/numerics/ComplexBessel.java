package eddyreach.numerics;

import org.apache.commons.math3.complex.Complex;

/**
 * Bessel functions J0 and J1 of a complex argument, and ratios of neighbouring orders.
 *
 * <p>Below {@code |z| = 25}: backward recurrence {@code J_{n-1} = (2n/z) J_n - J_{n+1}} (Abramowitz and Stegun
 * 9.1.27) started far above {@code |z|} and scaled by {@code J0 + 2 sum (+-j)^n J_n = exp(+-j z)} (9.1.44 and
 * 9.1.45), the sign taken so that the exponential is the large one and nothing cancels. Above: Hankel's asymptotic
 * series (9.2.5, 9.2.9 and 9.2.10), cut at its smallest term.
 *
 * <p>Accuracy: relative error below 1e-13 for {@code |z| <= 100} off the real axis, in particular on the ray
 * {@code arg z = -45 degrees} of the skin effect; near the real axis the error is that fraction of
 * {@code sqrt(2/(pi |z|))}, as close to a zero it must be. J0 and J1 overflow for {@code |Im z| > 700}; the ratios
 * do not. With {@code x > 0}: {@code ber x + j bei x = J0(x exp(3 pi j / 4))} (9.9.1).
 *
 * <p>Reference: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, chapter 9.
 */
public final class ComplexBessel {

    private static final double ASYMPTOTIC_FROM = 25;

    private ComplexBessel() {}

    /** J0(z). */
    public static Complex j0(Complex z) {
        Scaled s = scaled(rightHalf(z));
        return s.j0.multiply(Math.exp(s.exponent));
    }

    /** J1(z). */
    public static Complex j1(Complex z) {
        Scaled s = scaled(rightHalf(z));
        Complex value = s.j1.multiply(Math.exp(s.exponent));
        return mirrored(z) ? value.negate() : value;
    }

    /** J1(z) / J0(z), without overflow. */
    public static Complex ratio10(Complex z) {
        Complex right = rightHalf(z);
        Complex value;
        if (right.abs() < ASYMPTOTIC_FROM) {
            value = ratios(right)[0];
        } else {
            Scaled s = hankel(right);
            value = s.j1.divide(s.j0);
        }
        return mirrored(z) ? value.negate() : value;
    }

    /** J2(z) / J0(z), without overflow and without cancellation at small z. */
    public static Complex ratio20(Complex z) {
        Complex right = rightHalf(z);
        if (right.abs() < ASYMPTOTIC_FROM) {
            Complex[] r = ratios(right);
            return r[0].multiply(r[1]);
        }
        Scaled s = hankel(right);
        return s.j1.divide(s.j0).multiply(2).divide(right).subtract(1);
    }

    /** J0 and J1 divided by exp(exponent). */
    private record Scaled(Complex j0, Complex j1, double exponent) {}

    private static boolean mirrored(Complex z) {
        return z.getReal() < 0;
    }

    private static Complex rightHalf(Complex z) {
        if (z.isNaN() || z.isInfinite()) {
            throw new IllegalArgumentException("Bessel function of " + z);
        }
        return mirrored(z) ? z.negate() : z;
    }

    private static Scaled scaled(Complex z) {
        return z.abs() < ASYMPTOTIC_FROM ? recurrence(z) : hankel(z);
    }

    /** An order at which J_n is below 1e-20 of the largest order for arguments up to |z|. */
    private static int startOrder(double modulus) {
        return (int) (1.4 * modulus + 30);
    }

    private static Scaled recurrence(Complex z) {
        if (z.equals(Complex.ZERO)) {
            return new Scaled(Complex.ONE, Complex.ZERO, 0);
        }
        double sign = z.getImaginary() <= 0 ? 1 : -1;
        Complex unit = new Complex(0, sign);
        Complex[] powers = {Complex.ONE, unit, Complex.ONE.negate(), unit.negate()};
        Complex above = Complex.ZERO;
        Complex here = new Complex(1e-300);
        Complex sum = Complex.ZERO;
        for (int n = startOrder(z.abs()); n > 0; n--) {
            sum = sum.add(here.multiply(powers[n % 4]));
            Complex below = here.multiply(2.0 * n).divide(z).subtract(above);
            above = here;
            here = below;
            if (here.abs() > 1e200) {
                here = here.multiply(1e-300);
                above = above.multiply(1e-300);
                sum = sum.multiply(1e-300);
            }
        }
        Complex scale = unit.multiply(z).exp().divide(sum.multiply(2).add(here));
        return new Scaled(here.multiply(scale), above.multiply(scale), 0);
    }

    /** J1/J0 and J2/J1 by r_n = 1 / (2n/z - r_{n+1}). */
    private static Complex[] ratios(Complex z) {
        if (z.equals(Complex.ZERO)) {
            return new Complex[] {Complex.ZERO, Complex.ZERO};
        }
        double x = z.getReal();
        double y = z.getImaginary();
        double re = 0;
        double im = 0;
        Complex second = Complex.ZERO;
        for (int n = startOrder(z.abs()); n > 0; n--) {
            if (n == 1) {
                second = new Complex(re, im);
            }
            // z / (2n - z r) rather than 1 / (2n/z - r): no overflow at tiny z; no objects, since a tank asks hundreds
            // of times
            double a = 2.0 * n - x * re + y * im;
            double b = -x * im - y * re;
            double size = a * a + b * b;
            re = (x * a + y * b) / size;
            im = (y * a - x * b) / size;
        }
        return new Complex[] {new Complex(re, im), second};
    }

    private static Scaled hankel(Complex z) {
        double exponent = Math.abs(z.getImaginary());
        Complex front = new Complex(2 / Math.PI).divide(z).sqrt();
        return new Scaled(
                front.multiply(hankelSum(0, z, exponent)), front.multiply(hankelSum(1, z, exponent)), exponent);
    }

    /** P cos chi - Q sin chi, times exp(-exponent), with chi = z - (order/2 + 1/4) pi. */
    private static Complex hankelSum(int order, Complex z, double exponent) {
        double mu = 4.0 * order * order;
        Complex p = Complex.ONE;
        Complex q = Complex.ZERO;
        Complex term = Complex.ONE;
        for (int k = 1; k < 60; k++) {
            double odd = 2.0 * k - 1;
            Complex next = term.multiply((mu - odd * odd) / (8.0 * k)).divide(z);
            if (next.abs() >= term.abs() || next.abs() < 1e-18) {
                break;
            }
            term = next;
            double sign = (k / 2) % 2 == 0 ? 1 : -1;
            if (k % 2 == 0) {
                p = p.add(term.multiply(sign));
            } else {
                q = q.add(term.multiply(sign));
            }
        }
        Complex chi = z.subtract((order / 2.0 + 0.25) * Math.PI);
        Complex turn = Complex.I.multiply(chi);
        Complex plus = turn.subtract(exponent).exp();
        Complex minus = turn.negate().subtract(exponent).exp();
        Complex cos = plus.add(minus).multiply(0.5);
        Complex sin = plus.subtract(minus).divide(new Complex(0, 2));
        return p.multiply(cos).subtract(q.multiply(sin));
    }
}
