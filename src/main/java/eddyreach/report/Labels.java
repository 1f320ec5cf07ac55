package eddyreach.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Names, units and number formats shown to the user: the one place where SI becomes a display unit. */
final class Labels {

    static final double MM = 1e3;
    static final double MICROMETRE = 1e6;

    /** Lengths below this, m, are shown in micrometres. */
    static final double THIN = 1e-4;

    static final double KHZ = 1e-3;
    static final double MICROHENRY = 1e6;
    static final double AMPERE_PER_MM2 = 1e-6;
    static final double NANOWEBER = 1e9;

    static final String DISTANCE = "distance from the active face, mm";
    static final String AMPLITUDE = "oscillator amplitude, V peak";
    static final String LOSS_RESISTANCE_CHANGE = "loss ΔR, Ω";
    static final String INDUCTANCE_CHANGE = "inductance ΔL, µH";
    static final String FACTOR = "correction factor (switch-on distance / sr)";
    static final String LOSS_RESISTANCE = "series loss resistance, Ω";
    static final String NORMALISED_RESISTANCE = "change of loss resistance / reactance without target, ΔR / (ωL0)";
    static final String NORMALISED_REACTANCE = "inductance / inductance without target, L / L0";
    static final String RADIUS = "distance from the axis r, mm";
    static final String HEIGHT = "height above the active face z, mm";
    static final String DEPTH = "depth below the near face, mm";
    static final String DEPTH_THIN = "depth below the near face, µm";
    static final String FIELD_STRENGTH = "|H|, A/m per A";
    static final String CURRENT_DENSITY = "|J|, A/mm² per A";

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

    static String frequency(double hertz) {
        return hertz >= 1e6 ? significant(hertz * 1e-6, 4) + " MHz" : significant(hertz * KHZ, 4) + " kHz";
    }

    static String length(double metres) {
        return metres < THIN ? significant(metres * MICROMETRE, 3) + " µm" : significant(metres * MM, 3) + " mm";
    }
}
