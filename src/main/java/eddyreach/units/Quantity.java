package eddyreach.units;

/**
 * What a column or an axis shows: name, symbol and display unit, stated once for tables, charts and pages. Values are
 * SI; only the formatting methods apply the factor.
 */
public enum Quantity {
    DISTANCE("distance from the active face", "s", "mm", 1e3, Dimension.LENGTH),
    OFFSET("offset of the target's axis", "y", "mm", 1e3, Dimension.LENGTH),
    SWITCH_ON_DISTANCE("switch-on distance", "s", "mm", 1e3, Dimension.LENGTH),
    SWITCH_OFF_DISTANCE("switch-off distance", "s", "mm", 1e3, Dimension.LENGTH),
    THICKNESS("thickness", "t", "um", 1e6, Dimension.LENGTH),
    SIZE("side of the target", "a", "mm", 1e3, Dimension.LENGTH),
    DIAMETER("diameter of the target", "d", "mm", 1e3, Dimension.LENGTH),
    SIZE_RATIO("size of the target / size of the standard target", "a/a0", "", 1, Dimension.NONE),
    RADIUS("distance from the axis", "r", "mm", 1e3, Dimension.LENGTH),
    HEIGHT("height above the active face", "z", "mm", 1e3, Dimension.LENGTH),
    DEPTH("depth below the near face", "t", "mm", 1e3, Dimension.LENGTH),
    THIN_DEPTH("depth below the near face", "t", "um", 1e6, Dimension.LENGTH),
    FREQUENCY("frequency", "f", "kHz", 1e-3, Dimension.FREQUENCY),
    LOSS_RESISTANCE("series loss resistance", "R", "ohm", 1, Dimension.RESISTANCE),
    LOSS_RESISTANCE_CHANGE("loss", "\u0394R", "ohm", 1, Dimension.RESISTANCE),
    INDUCTANCE("inductance", "L", "uH", 1e6, Dimension.INDUCTANCE),
    INDUCTANCE_CHANGE("inductance", "\u0394L", "uH", 1e6, Dimension.INDUCTANCE),
    AMPLITUDE("oscillator amplitude, peak", "A", "V", 1, Dimension.VOLTAGE),
    CONDUCTIVITY("conductivity", "sigma", "MS/m", 1e-6, Dimension.CONDUCTIVITY),
    PERMEABILITY("relative permeability", "mu_r", "", 1, Dimension.NONE),
    FIELD_STRENGTH("field strength", "|H|", "A/m", 1, Dimension.FIELD_STRENGTH),
    CURRENT_DENSITY("current density", "|J|", "A/mm2", 1e-6, Dimension.CURRENT_DENSITY),
    CORRECTION_FACTOR("switch-on distance / sr, correction factor", "K", "", 1, Dimension.NONE);

    private final String title;
    private final String symbol;
    private final String unit;
    private final double factor;
    private final Dimension dimension;

    Quantity(String title, String symbol, String unit, double factor, Dimension dimension) {
        this.title = title;
        this.symbol = symbol;
        this.unit = unit;
        this.factor = factor;
        this.dimension = dimension;
    }

    /** Symbol in letters, such as "s". */
    public String symbol() {
        return symbol;
    }

    /** Display unit in plain letters as the parser reads it, such as "uH"; empty for a plain number. */
    public String unit() {
        return unit;
    }

    /** Display unit as it is printed, such as "µH", "Ω" or "A/mm²"; empty for a plain number. */
    public String printedUnit() {
        String text = unit.replace("ohm", "\u03a9").replace('2', '\u00b2');
        return text.startsWith("u") ? "\u00b5" + text.substring(1) : text;
    }

    /** Display units per SI unit: 1e3 for mm. */
    public double factor() {
        return factor;
    }

    /** The dimension of the SI value. */
    public Dimension dimension() {
        return dimension;
    }

    /** The SI value in the display unit with the given significant digits, without the unit. */
    public String format(double si, int significantDigits) {
        return Numbers.significant(si * factor, significantDigits);
    }

    /** The SI value in the display unit with the given decimals, without the unit. */
    public String fixed(double si, int decimals) {
        return Numbers.fixed(si * factor, decimals);
    }

    /** The SI value with significant digits and unit, as the parser reads it, such as "3.46 mm". */
    public String text(double si, int significantDigits) {
        String number = format(si, significantDigits);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** Title and symbol without the unit, for an axis whose ticks carry it. */
    public String bareLabel() {
        return title + " " + symbol;
    }

    /** Axis label such as "distance from the active face s, mm"; name and symbol alone for a plain number. */
    public String axisLabel() {
        return title + " " + symbol + (unit.isEmpty() ? "" : ", " + printedUnit());
    }
}
