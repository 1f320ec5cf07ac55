package eddyreach.proof;

import eddyreach.units.Numbers;
import java.math.BigDecimal;
import org.apache.commons.math3.complex.Complex;

/** What a check expects, in the unit of the check. */
public sealed interface Expected {

    /** As it is shown beside the computed value. */
    String text();

    /** How far a computed value is away, 0 where nothing is missing; NaN for NaN. */
    double deviation(Complex computed);

    /** The largest deviation that passes. */
    double allowed();

    /** The computed value in digits that suit the expected ones. */
    String show(Complex computed);

    /** True when the computed value passes; false for NaN. */
    default boolean accepts(Complex computed) {
        return Math.abs(deviation(computed)) <= allowed();
    }

    /**
     * A real number.
     *
     * @param text the digits as printed
     * @param allowed largest deviation
     */
    record Value(String text, double allowed) implements Expected {

        /** Allowance for the rounding of doubles where half a printed digit is asked for. */
        private static final double ROUNDING = 1e-9;

        /** Decimals beyond which a double near 1 says nothing. */
        private static final int FINEST = 15;

        /** Allows half a unit of the last printed digit. */
        static Value printed(String text) {
            return new Value(text, (1 + ROUNDING) * 0.5 * Math.pow(10, -decimals(text)));
        }

        /** Allows a fraction of the value. */
        static Value relative(String text, double fraction) {
            return new Value(text, fraction * Math.abs(Double.parseDouble(text)));
        }

        @Override
        public double deviation(Complex computed) {
            return computed.getReal() - Double.parseDouble(text);
        }

        @Override
        public String show(Complex computed) {
            return Numbers.fixed(computed.getReal(), Math.min(decimals(text) + 1, FINEST));
        }
    }

    /**
     * A complex number.
     *
     * @param re digits of the real part as printed
     * @param im digits of the imaginary part as printed
     * @param allowed largest magnitude of the difference
     */
    record Pair(String re, String im, double allowed) implements Expected {

        private Complex value() {
            return new Complex(Double.parseDouble(re), Double.parseDouble(im));
        }

        /** Allows a fraction of the magnitude, and half a unit of the last printed digit. */
        static Pair relative(String re, String im, double fraction) {
            double digit = 0.5 * Math.pow(10, -decimals(im));
            return new Pair(re, im, fraction * new Pair(re, im, 0).value().abs() + digit);
        }

        @Override
        public String text() {
            return join(re, im);
        }

        @Override
        public double deviation(Complex computed) {
            return computed.subtract(value()).abs();
        }

        @Override
        public String show(Complex computed) {
            return join(
                    Numbers.fixed(computed.getReal(), decimals(re)),
                    Numbers.fixed(computed.getImaginary(), decimals(im)));
        }

        private static String join(String re, String im) {
            return re + (im.startsWith("-") ? im : "+" + im) + "j";
        }
    }

    /**
     * A range.
     *
     * @param low lower end, may be -infinity
     * @param high upper end, may be infinity
     */
    record Range(double low, double high) implements Expected {

        private static final int DIGITS = 4;

        @Override
        public String text() {
            if (Double.isInfinite(low)) {
                return "at most " + Numbers.shortest(high, DIGITS);
            }
            if (Double.isInfinite(high)) {
                return "at least " + Numbers.shortest(low, DIGITS);
            }
            return Numbers.shortest(low, DIGITS) + " to " + Numbers.shortest(high, DIGITS);
        }

        @Override
        public double deviation(Complex computed) {
            double x = computed.getReal();
            return x < low ? x - low : x > high ? x - high : 0 * x;
        }

        @Override
        public double allowed() {
            return 0;
        }

        @Override
        public String show(Complex computed) {
            return Numbers.significant(computed.getReal(), DIGITS);
        }
    }

    /** Digits behind the point. */
    private static int decimals(String text) {
        return Math.max(0, new BigDecimal(text).scale());
    }
}
