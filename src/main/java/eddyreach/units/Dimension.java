package eddyreach.units;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Exponents of the seven SI base units; two quantities may be added only when their dimensions are equal.
 *
 * @param metre exponent of length
 * @param kilogram exponent of mass
 * @param second exponent of time
 * @param ampere exponent of electric current
 * @param kelvin exponent of thermodynamic temperature
 * @param mole exponent of amount of substance
 * @param candela exponent of luminous intensity
 */
public record Dimension(int metre, int kilogram, int second, int ampere, int kelvin, int mole, int candela) {

    /** A plain number. */
    public static final Dimension NONE = of(0, 0, 0, 0, 0);
    /** m. */
    public static final Dimension LENGTH = of(1, 0, 0, 0, 0);
    /** m2. */
    public static final Dimension AREA = of(2, 0, 0, 0, 0);
    /** s. */
    public static final Dimension TIME = of(0, 0, 1, 0, 0);
    /** Hz. */
    public static final Dimension FREQUENCY = of(0, 0, -1, 0, 0);
    /** m/s. */
    public static final Dimension VELOCITY = of(1, 0, -1, 0, 0);
    /** A. */
    public static final Dimension CURRENT = of(0, 0, 0, 1, 0);
    /** V. */
    public static final Dimension VOLTAGE = of(2, 1, -3, -1, 0);
    /** W. */
    public static final Dimension POWER = of(2, 1, -3, 0, 0);
    /** J. */
    public static final Dimension ENERGY = of(2, 1, -2, 0, 0);
    /** ohm. */
    public static final Dimension RESISTANCE = of(2, 1, -3, -2, 0);
    /** S. */
    public static final Dimension CONDUCTANCE = of(-2, -1, 3, 2, 0);
    /** H. */
    public static final Dimension INDUCTANCE = of(2, 1, -2, -2, 0);
    /** F. */
    public static final Dimension CAPACITANCE = of(-2, -1, 4, 2, 0);
    /** Wb. */
    public static final Dimension FLUX = of(2, 1, -2, -1, 0);
    /** T. */
    public static final Dimension FLUX_DENSITY = of(0, 1, -2, -1, 0);
    /** A/m. */
    public static final Dimension FIELD_STRENGTH = of(-1, 0, 0, 1, 0);
    /** A/m2. */
    public static final Dimension CURRENT_DENSITY = of(-2, 0, 0, 1, 0);
    /** S/m. */
    public static final Dimension CONDUCTIVITY = of(-3, -1, 3, 2, 0);
    /** ohm m. */
    public static final Dimension RESISTIVITY = of(3, 1, -3, -2, 0);
    /** K. */
    public static final Dimension TEMPERATURE = of(0, 0, 0, 0, 1);
    /** 1/K. */
    public static final Dimension PER_TEMPERATURE = of(0, 0, 0, 0, -1);

    private record Words(String noun, String example) {}

    private static final Map<Dimension, Words> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put(NONE, new Words("a plain number", "1.5"));
        WORDS.put(LENGTH, new Words("a length", "0.6 mm"));
        WORDS.put(AREA, new Words("an area", "2 mm2"));
        WORDS.put(TIME, new Words("a time", "20 us"));
        WORDS.put(FREQUENCY, new Words("a frequency", "200 kHz"));
        WORDS.put(VELOCITY, new Words("a speed", "0.5 m/s"));
        WORDS.put(CURRENT, new Words("a current", "0.5 mA"));
        WORDS.put(VOLTAGE, new Words("a voltage", "1.2 V"));
        WORDS.put(POWER, new Words("a power", "2 mW"));
        WORDS.put(ENERGY, new Words("an energy", "3 uJ"));
        WORDS.put(RESISTANCE, new Words("a resistance", "4.7 ohm"));
        WORDS.put(CONDUCTANCE, new Words("a conductance", "2 mS"));
        WORDS.put(INDUCTANCE, new Words("an inductance", "150 uH"));
        WORDS.put(CAPACITANCE, new Words("a capacitance", "1 nF"));
        WORDS.put(FLUX, new Words("a magnetic flux", "1 uWb"));
        WORDS.put(FLUX_DENSITY, new Words("a flux density", "2 mT"));
        WORDS.put(FIELD_STRENGTH, new Words("a field strength", "100 A/m"));
        WORDS.put(CURRENT_DENSITY, new Words("a current density", "3 A/mm2"));
        WORDS.put(CONDUCTIVITY, new Words("a conductivity", "58 MS/m"));
        WORDS.put(RESISTIVITY, new Words("a resistivity", "1.7e-8 ohm m"));
        WORDS.put(TEMPERATURE, new Words("a temperature", "23 degC"));
        WORDS.put(PER_TEMPERATURE, new Words("a temperature coefficient", "0.39 %/K"));
    }

    private static Dimension of(int metre, int kilogram, int second, int ampere, int kelvin) {
        return new Dimension(metre, kilogram, second, ampere, kelvin, 0, 0);
    }

    /** The dimension of a product. */
    public Dimension times(Dimension o) {
        return new Dimension(
                metre + o.metre,
                kilogram + o.kilogram,
                second + o.second,
                ampere + o.ampere,
                kelvin + o.kelvin,
                mole + o.mole,
                candela + o.candela);
    }

    /** The dimension of the n-th power. */
    public Dimension power(int n) {
        return new Dimension(metre * n, kilogram * n, second * n, ampere * n, kelvin * n, mole * n, candela * n);
    }

    /** Words for a sentence, such as "a length"; the base units when the dimension has no name here. */
    public String noun() {
        Words words = WORDS.get(this);
        return words == null ? "a quantity in " + baseUnits() : words.noun;
    }

    /** What one would write, such as "0.6 mm"; the base units behind a 1 when the dimension has no name here. */
    public String example() {
        Words words = WORDS.get(this);
        return words == null ? "1 " + baseUnits() : words.example;
    }

    /** Product of SI base units, such as "kg m2 s-3 A-2"; empty for a plain number. */
    public String baseUnits() {
        int[] exponents = {kilogram, metre, second, ampere, kelvin, mole, candela};
        String[] symbols = {"kg", "m", "s", "A", "K", "mol", "cd"};
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < symbols.length; i++) {
            if (exponents[i] != 0) {
                out.append(out.isEmpty() ? "" : " ").append(symbols[i]);
                out.append(exponents[i] == 1 ? "" : Integer.toString(exponents[i]));
            }
        }
        return out.toString();
    }
}
