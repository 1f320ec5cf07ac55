package eddyreach.report;

import eddyreach.units.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Labels and number formats of charts and tables, made from {@link Quantity}. */
final class Labels {

    static final double MM = Quantity.DISTANCE.factor();
    static final double MICROMETRE = Quantity.THIN_DEPTH.factor();

    /** Lengths below this, m, are shown in micrometres. */
    static final double THIN = 1e-4;

    static final double KHZ = Quantity.FREQUENCY.factor();
    static final double MICROHENRY = Quantity.INDUCTANCE.factor();
    static final double AMPERE_PER_MM2 = Quantity.CURRENT_DENSITY.factor();
    static final double NANOWEBER = 1e9;

    static final String DISTANCE = Quantity.DISTANCE.axisLabel();
    static final String OFFSET = Quantity.OFFSET.axisLabel();
    static final String AMPLITUDE = Quantity.AMPLITUDE.axisLabel();
    static final String LOSS_RESISTANCE_CHANGE = Quantity.LOSS_RESISTANCE_CHANGE.axisLabel();
    static final String INDUCTANCE_CHANGE = Quantity.INDUCTANCE_CHANGE.axisLabel();
    static final String FACTOR = Quantity.CORRECTION_FACTOR.axisLabel();
    static final String LOSS_RESISTANCE = Quantity.LOSS_RESISTANCE.axisLabel();
    static final String NORMALISED_RESISTANCE = "change of loss resistance / reactance without target, ΔR / (ωL0)";
    static final String NORMALISED_REACTANCE = "inductance / inductance without target, L / L0";
    static final String RADIUS = Quantity.RADIUS.axisLabel();
    static final String HEIGHT = Quantity.HEIGHT.axisLabel();
    static final String DEPTH = Quantity.DEPTH.axisLabel();
    static final String DEPTH_THIN = Quantity.THIN_DEPTH.axisLabel();
    static final String FIELD_STRENGTH =
            Quantity.FIELD_STRENGTH.symbol() + ", " + Quantity.FIELD_STRENGTH.printedUnit() + " per A";
    static final String CURRENT_DENSITY =
            Quantity.CURRENT_DENSITY.symbol() + ", " + Quantity.CURRENT_DENSITY.printedUnit() + " per A";

    static final String ON_DISTANCE = Quantity.SWITCH_ON_DISTANCE.axisLabel();
    static final String OFF_DISTANCE = Quantity.SWITCH_OFF_DISTANCE.axisLabel();
    static final String THICKNESS = Quantity.THICKNESS.bareLabel();
    static final String COATING = "coating " + Quantity.THICKNESS.axisLabel();
    static final String SIDE = Quantity.SIZE.axisLabel();
    static final String DIAMETER = Quantity.DIAMETER.axisLabel();
    static final String SIZE_RATIO = Quantity.SIZE_RATIO.axisLabel();
    static final String SHARE_OF_STANDARD_SIZE = "switch-on distance / that at the size of the standard target";
    static final String SHARE_OF_BARE = "switch-on distance / that of the bare base";
    static final String SHARE_OF_SR = "switch-on distance / sr";
    static final String CONDUCTIVITY = "conductivity σ, " + Quantity.CONDUCTIVITY.printedUnit();
    static final String PERMEABILITY = "relative permeability µr";
    static final double MEGASIEMENS = Quantity.CONDUCTIVITY.factor();

    static final String CAUTION = "computed estimate, to be confirmed on the machine";

    private Labels() {}

    /** A number with fixed decimals, never with a locale's comma. */
    static String fixed(double value, int decimals) {
        String s = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return s.matches("-0\\.?0*") ? s.substring(1) : s;
    }

    /** A number rounded to significant digits, without trailing zeros; exponent only far from 1. */
    static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal d = new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        double magnitude = Math.abs(value);
        return magnitude >= 1e-4 && magnitude < 1e9 ? d.toPlainString() : d.toString();
    }

    static String millimetres(double metres) {
        return fixed(metres * MM, 2);
    }

    /** Hundredths of a millimetre; the error is rounded up, so that it never promises too much. */
    static String uncertain(double metres, double error) {
        if (!Double.isFinite(metres)) {
            return "-";
        }
        String value = millimetres(metres);
        double hundredths = Math.ceil(error * MM * 100 - 1e-9);
        return Double.isFinite(error) ? value + " ± " + fixed(hundredths / 100, 2) : value;
    }

    static String frequency(double hertz) {
        return hertz >= 1e6 ? significant(hertz * 1e-6, 4) + " MHz" : significant(hertz * KHZ, 4) + " kHz";
    }

    static String length(double metres) {
        return length(metres, 3);
    }

    static String length(double metres, int digits) {
        return metres < THIN * (1 - 1e-9)
                ? significant(metres * MICROMETRE, digits) + " µm"
                : significant(metres * MM, digits) + " mm";
    }
}
