package eddyreach.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, with a decimal point whatever the locale; NaN becomes "n/a", infinities "inf" and "-inf". */
public final class Numbers {

    private Numbers() {}

    /**
     * Rounded to a number of decimals, half away from zero; no sign on a zero.
     *
     * @param value any number
     * @param decimals digits behind the point, not negative
     */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return special(value);
        }
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /**
     * Rounded to a number of significant digits, half away from zero; trailing zeros are kept. Values from 1e-4 to
     * below 1e6 are written plainly, others as 1.23e-8; 0 is "0".
     *
     * @param value any number
     * @param digits significant digits, at least 1
     */
    public static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return special(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        int exponent = rounded.precision() - rounded.scale() - 1;
        BigDecimal padded = rounded.setScale(digits - 1 - exponent, RoundingMode.UNNECESSARY);
        if (exponent >= -4 && exponent < 6) {
            return padded.scale() < 0 ? padded.setScale(0).toPlainString() : padded.toPlainString();
        }
        return padded.scaleByPowerOfTen(-exponent).toPlainString() + "e" + exponent;
    }

    /** Up to the given significant digits without trailing zeros: "5", "0.6", "1.5e-9". */
    public static String shortest(double value, int digits) {
        String text = significant(value, digits);
        if (!text.contains(".")) {
            return text;
        }
        int e = text.indexOf('e');
        String mantissa = e < 0 ? text : text.substring(0, e);
        return mantissa.replaceFirst("\\.?0+$", "") + (e < 0 ? "" : text.substring(e));
    }

    private static String special(double value) {
        return Double.isNaN(value) ? "n/a" : value > 0 ? "inf" : "-inf";
    }
}
