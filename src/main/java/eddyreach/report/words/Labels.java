package eddyreach.report.words;

import eddyreach.units.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Labels and number formats of charts and tables, made from {@link Quantity}. */
public final class Labels {

    public static final double MM = Quantity.DISTANCE.factor();
    public static final double MICROMETRE = Quantity.THIN_DEPTH.factor();

    /** An error of so many hundredths of a millimetre comes from rounding alone. */
    private static final double EXACT = 1e-9;

    /** Lengths below this, m, are shown in micrometres. */
    public static final double THIN = 1e-4;

    public static final double KHZ = Quantity.FREQUENCY.factor();
    public static final double MICROHENRY = Quantity.INDUCTANCE.factor();
    public static final double AMPERE_PER_MM2 = Quantity.CURRENT_DENSITY.factor();
    public static final double NANOWEBER = 1e9;

    public static final String DISTANCE = Quantity.DISTANCE.axisLabel();
    public static final String OFFSET = Quantity.OFFSET.axisLabel();
    public static final String AMPLITUDE = Quantity.AMPLITUDE.axisLabel();
    public static final String LOSS_RESISTANCE_CHANGE = Quantity.LOSS_RESISTANCE_CHANGE.axisLabel();
    public static final String INDUCTANCE_CHANGE = Quantity.INDUCTANCE_CHANGE.axisLabel();
    public static final String FACTOR = Quantity.CORRECTION_FACTOR.axisLabel();
    public static final String LOSS_RESISTANCE = Quantity.LOSS_RESISTANCE.axisLabel();
    public static final String NORMALISED_RESISTANCE =
            "change of loss resistance / reactance without target, ΔR / (ωL0)";
    public static final String NORMALISED_REACTANCE = "inductance / inductance without target, L / L0";
    public static final String RADIUS = Quantity.RADIUS.axisLabel();
    public static final String HEIGHT = Quantity.HEIGHT.axisLabel();
    public static final String DEPTH = Quantity.DEPTH.axisLabel();
    public static final String DEPTH_THIN = Quantity.THIN_DEPTH.axisLabel();
    public static final String FIELD_STRENGTH =
            Quantity.FIELD_STRENGTH.symbol() + ", " + Quantity.FIELD_STRENGTH.printedUnit() + " per A";
    public static final String CURRENT_DENSITY =
            Quantity.CURRENT_DENSITY.symbol() + ", " + Quantity.CURRENT_DENSITY.printedUnit() + " per A";

    public static final String ON_DISTANCE = Quantity.SWITCH_ON_DISTANCE.axisLabel();
    public static final String OFF_DISTANCE = Quantity.SWITCH_OFF_DISTANCE.axisLabel();
    public static final String THICKNESS = Quantity.THICKNESS.bareLabel();
    public static final String COATING = "coating " + Quantity.THICKNESS.axisLabel();
    public static final String SIDE = Quantity.SIZE.axisLabel();
    public static final String DIAMETER = Quantity.DIAMETER.axisLabel();
    public static final String SIZE_RATIO = Quantity.SIZE_RATIO.axisLabel();
    public static final String SHARE_OF_STANDARD_SIZE = "switch-on distance / that at the size of the standard target";
    public static final String SHARE_OF_BARE = "switch-on distance / that of the bare base";
    public static final String SHARE_OF_SR = "switch-on distance / sr";
    public static final String CONDUCTIVITY = "conductivity σ, " + Quantity.CONDUCTIVITY.printedUnit();
    public static final String PERMEABILITY = "relative permeability µr";
    public static final double MEGASIEMENS = Quantity.CONDUCTIVITY.factor();

    private Labels() {}

    /** A number with fixed decimals, never with a locale's comma. */
    public static String fixed(double value, int decimals) {
        String s = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return s.matches("-0\\.?0*") ? s.substring(1) : s;
    }

    /** A number rounded to significant digits, without trailing zeros; exponent only far from 1. */
    public static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal d = new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        double magnitude = Math.abs(value);
        return magnitude >= 1e-4 && magnitude < 1e9 ? d.toPlainString() : d.toString();
    }

    public static String millimetres(double metres) {
        return fixed(metres * MM, 2);
    }

    /**
     * A distance in a sentence, hundredths of a millimetre. The error is rounded up, so that it never promises too much; a
     * distance to which the switch is trimmed has none.
     */
    public static String uncertain(double metres, double error) {
        if (!Double.isFinite(metres)) {
            return "-";
        }
        String value = millimetres(metres);
        return Double.isFinite(error) && !exact(error)
                ? value + " ± " + fixed(Math.ceil(error * MM * 100 - EXACT) / 100, 2)
                : value;
    }

    /** The same in a table, where a distance without an error says that the trim sets it. */
    public static String uncertainCell(double metres, double error) {
        return Double.isFinite(metres) && exact(error) ? millimetres(metres) + " (trim)" : uncertain(metres, error);
    }

    private static boolean exact(double error) {
        return error * MM * 100 <= EXACT;
    }

    public static String frequency(double hertz) {
        return hertz >= 1e6 ? significant(hertz * 1e-6, 4) + " MHz" : significant(hertz * KHZ, 4) + " kHz";
    }

    /** A share in percent, such as "12 %". */
    public static String percent(double share, int digits) {
        return significant(100 * share, digits) + " %";
    }

    /** A computed length such as a skin depth: always two significant digits, so that it reads the same wherever it stands. */
    public static String computed(double metres) {
        double size = Math.abs(metres);
        if (size < 0.995e-7) {
            return fixed(metres * 1e9, size < 0.995e-8 ? 1 : 0) + " nm";
        }
        return size < 0.995e-4 ? twoDigits(metres * MICROMETRE) + " µm" : twoDigits(metres * MM) + " mm";
    }

    private static String twoDigits(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(2, RoundingMode.HALF_EVEN));
        return rounded.scale() < 0 ? rounded.toBigInteger().toString() : rounded.toPlainString();
    }

    /** A length that is given, as it was given: up to three significant digits, no trailing zeros. */
    public static String length(double metres) {
        return length(metres, 3);
    }

    public static String length(double metres, int digits) {
        return metres < THIN * (1 - 1e-9)
                ? significant(metres * MICROMETRE, digits) + " µm"
                : significant(metres * MM, digits) + " mm";
    }
}
