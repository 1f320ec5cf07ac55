package eddyreach.units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The unit symbols the parser knows: SI symbols with prefixes, and the few others of the field. */
final class UnitTable {

    /**
     * One unit.
     *
     * @param factor value in SI base units, exact
     * @param dimension its dimension
     */
    record Unit(BigDecimal factor, Dimension dimension) {}

    /** Temperature in degrees Celsius has an offset and stands only alone. */
    static final String CELSIUS = "degC";

    /** Conductivity relative to the International Annealed Copper Standard stands only alone. */
    static final String IACS = "%IACS";

    /** 0 degC in K. */
    static final BigDecimal CELSIUS_OFFSET = new BigDecimal("273.15");

    private static final String[] PREFIXES = {"T", "G", "M", "k", "m", "u", "n", "p"};
    private static final int[] POWERS = {12, 9, 6, 3, -3, -6, -9, -12};

    private static final Map<String, Unit> UNITS = build();

    private UnitTable() {}

    private static Map<String, Unit> build() {
        Map<String, Unit> units = new LinkedHashMap<>();
        prefixed(units, "m", Dimension.LENGTH);
        units.put("cm", new Unit(new BigDecimal("0.01"), Dimension.LENGTH));
        // exact since 1959
        units.put("in", new Unit(new BigDecimal("0.0254"), Dimension.LENGTH));
        units.put("mil", new Unit(new BigDecimal("25.4e-6"), Dimension.LENGTH));
        prefixed(units, "s", Dimension.TIME);
        prefixed(units, "Hz", Dimension.FREQUENCY);
        prefixed(units, "A", Dimension.CURRENT);
        prefixed(units, "V", Dimension.VOLTAGE);
        prefixed(units, "W", Dimension.POWER);
        prefixed(units, "J", Dimension.ENERGY);
        prefixed(units, "ohm", Dimension.RESISTANCE);
        prefixed(units, "S", Dimension.CONDUCTANCE);
        prefixed(units, "H", Dimension.INDUCTANCE);
        prefixed(units, "F", Dimension.CAPACITANCE);
        prefixed(units, "Wb", Dimension.FLUX);
        prefixed(units, "T", Dimension.FLUX_DENSITY);
        prefixed(units, "K", Dimension.TEMPERATURE);
        units.put(CELSIUS, new Unit(BigDecimal.ONE, Dimension.TEMPERATURE));
        units.put("%", new Unit(new BigDecimal("0.01"), Dimension.NONE));
        units.put("ppm", new Unit(new BigDecimal("1e-6"), Dimension.NONE));
        // 100 %IACS = 58.0 MS/m at 20 degC (ASTM E1004)
        units.put(IACS, new Unit(new BigDecimal("0.58e6"), Dimension.CONDUCTIVITY));
        return Collections.unmodifiableMap(units);
    }

    private static void prefixed(Map<String, Unit> units, String symbol, Dimension dimension) {
        units.put(symbol, new Unit(BigDecimal.ONE, dimension));
        for (int i = 0; i < PREFIXES.length; i++) {
            units.put(PREFIXES[i] + symbol, new Unit(BigDecimal.ONE.scaleByPowerOfTen(POWERS[i]), dimension));
        }
    }

    /** Every symbol with its unit. */
    static Map<String, Unit> all() {
        return UNITS;
    }

    /** The symbol in the spelling of the table: both micro signs become u, the ohm signs ohm, the degree sign deg. */
    static String canonical(String symbol) {
        return symbol.replace('\u00b5', 'u')
                .replace('\u03bc', 'u')
                .replace("\u03a9", "ohm")
                .replace("\u2126", "ohm")
                .replace("\u00b0", "deg");
    }

    /** Symbols that differ from the given one only in upper and lower case. */
    static List<String> sameButCase(String symbol) {
        List<String> found = new ArrayList<>();
        String lower = symbol.toLowerCase(Locale.ROOT);
        for (String known : UNITS.keySet()) {
            if (known.toLowerCase(Locale.ROOT).equals(lower)) {
                found.add(known);
            }
        }
        return found;
    }
}
