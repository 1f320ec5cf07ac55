package eddyreach.units;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Strict reading of quantities such as {@code 0.6 mm}, {@code 58 MS/m}, {@code 0.39 %/K}: a decimal number with a
 * point, then a unit. Independent of the locale. No thousands separators, no decimal comma, no hexadecimal numbers, no
 * NaN, no infinities; a unit may be left out only for plain numbers.
 */
public final class Units {

    private static final Set<String> NOT_PRINTED = Set.of("cm", "in", "mil");
    private static final int LONGEST = 100;
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]{1,4}(?![0-9]))?");
    private static final Pattern COMMA = Pattern.compile("([+-]?[0-9]+),([0-9]+)(.*)", Pattern.DOTALL);
    private static final Pattern NO_NUMBER = Pattern.compile("(?i)[+-]?\\.?(nan|inf|infinity)\\b.*", Pattern.DOTALL);
    private static final Pattern HEX = Pattern.compile("(?i)[+-]?0x.*", Pattern.DOTALL);
    private static final Pattern LEADING_POINT = Pattern.compile("[+-]?\\.[0-9].*", Pattern.DOTALL);
    private static final Pattern GROUPED = Pattern.compile("[+-]?[0-9]{1,3}([ '_])[0-9]{3}(?![0-9]).*", Pattern.DOTALL);

    private Units() {}

    /**
     * Reads a quantity of a known dimension.
     *
     * @param text such as "0.6 mm"
     * @param expected the dimension it must have
     * @return the value in SI units (a temperature in K)
     * @throws QuantityFormatException when the text is malformed or of another dimension
     */
    public static double parse(String text, Dimension expected) {
        PhysicalValue value = parse(text, expected, true);
        if (!value.dimension().equals(expected)) {
            throw mismatch(text, value.dimension(), expected.noun() + " such as " + expected.example());
        }
        return value.si();
    }

    /**
     * Reads a conductivity, also given as a resistivity.
     *
     * @param text such as "58 MS/m", "61 %IACS" or "1.68e-8 ohm m"
     * @return the conductivity in S/m
     * @throws QuantityFormatException when the text is malformed or neither of the two
     */
    public static double parseConductivity(String text) {
        PhysicalValue value = parse(text, Dimension.CONDUCTIVITY, true);
        if (value.dimension().equals(Dimension.CONDUCTIVITY)) {
            return value.si();
        }
        if (!value.dimension().equals(Dimension.RESISTIVITY)) {
            throw mismatch(
                    text, value.dimension(), "a conductivity such as 58 MS/m or a resistivity such as 1.7e-8 ohm m");
        }
        if (!(value.si() > 0)) {
            throw new QuantityFormatException(Texts.excerpt(text) + ": a resistivity must be above zero");
        }
        return 1 / value.si();
    }

    /**
     * Reads a quantity of any dimension.
     *
     * @throws QuantityFormatException when the text is malformed
     */
    public static PhysicalValue parseAny(String text) {
        return parse(text, Dimension.NONE, false);
    }

    /**
     * A quantity for a message, with a fitting prefix and at most six digits, such as "0.6 mm".
     *
     * @param si value in SI units
     * @param dimension its dimension
     */
    public static String text(double si, Dimension dimension) {
        if (dimension.equals(Dimension.NONE)) {
            return Numbers.shortest(si, 6);
        }
        String example = dimension.example();
        String symbol = example.substring(example.indexOf(' ') + 1);
        double factor = parseAny("1 " + symbol).si();
        // the trade writes 0.6 mm, not 600 um
        if (dimension.equals(Dimension.LENGTH) && Math.abs(si) >= 0.99e-4 && Math.abs(si) < 1) {
            return Numbers.shortest(si * 1e3, 6) + " mm";
        }
        if (dimension.equals(Dimension.TEMPERATURE)) {
            double celsius = si - UnitTable.CELSIUS_OFFSET.doubleValue();
            return Numbers.shortest(celsius, 6) + " " + UnitTable.CELSIUS;
        }
        double largest = 0;
        for (Map.Entry<String, UnitTable.Unit> entry : UnitTable.all().entrySet()) {
            UnitTable.Unit unit = entry.getValue();
            double size = unit.factor().doubleValue();
            boolean prefixed = unit.dimension().equals(dimension)
                    && !NOT_PRINTED.contains(entry.getKey())
                    && !entry.getKey().equals(UnitTable.CELSIUS)
                    && !entry.getKey().equals(UnitTable.IACS);
            if (prefixed && size > largest && size <= Math.abs(si) * (1 + 1e-12)) {
                largest = size;
                factor = size;
                symbol = entry.getKey();
            }
        }
        return Numbers.shortest(si / factor, 6) + " " + symbol;
    }

    /** A length in a message or a name, m, as {@link #text} has it: "0.6 mm", "35 um". */
    public static String length(double metres) {
        return text(metres, Dimension.LENGTH);
    }

    /** The same as it is printed in results: with the sign for micro instead of the letter that is typed for it. */
    public static String printed(double si, Dimension dimension) {
        return text(si, dimension).replace(" u", " \u00b5");
    }

    private static PhysicalValue parse(String raw, Dimension expected, boolean strict) {
        String text = raw.replaceAll("[\\u00a0\\u2009\\u202f]", " ").strip();
        String needs = strict ? ", needs " + expected.noun() + " such as " + expected.example() : "";
        if (text.isEmpty()) {
            throw new QuantityFormatException("empty" + needs);
        }
        if (text.length() > LONGEST) {
            throw error(text, "longer than any quantity" + needs);
        }
        Matcher number = NUMBER.matcher(text);
        String complaint = complaint(text);
        if (complaint != null) {
            throw error(text, complaint);
        }
        if (!number.lookingAt()) {
            throw error(text, "does not start with a number" + needs);
        }
        String rest = text.substring(number.end());
        checkRest(text, rest);
        String symbols = rest.strip();
        if (symbols.isEmpty() && strict && !expected.equals(Dimension.NONE)) {
            throw error(text, "no unit" + needs);
        }
        BigDecimal value = decimal(text, number.group());
        return scaled(text, value, symbols, strict ? expected : null);
    }

    private static PhysicalValue scaled(String text, BigDecimal value, String symbols, Dimension expected) {
        String canonical = UnitTable.canonical(symbols);
        if (symbols.isEmpty()) {
            return new PhysicalValue(value.doubleValue(), Dimension.NONE);
        }
        if (canonical.equals(UnitTable.CELSIUS)) {
            BigDecimal kelvin = value.add(UnitTable.CELSIUS_OFFSET);
            if (kelvin.signum() < 0) {
                throw error(text, "below absolute zero");
            }
            return new PhysicalValue(kelvin.doubleValue(), Dimension.TEMPERATURE);
        }
        UnitTable.Unit unit = canonical.equals(UnitTable.IACS)
                ? UnitTable.all().get(canonical)
                : new UnitParser(text, symbols, expected).parse();
        double si = value.multiply(unit.factor()).doubleValue();
        if (Double.isInfinite(si) || si == 0 && value.signum() != 0) {
            throw error(text, "outside the range of numbers");
        }
        return new PhysicalValue(si, unit.dimension());
    }

    private static BigDecimal decimal(String text, String digits) {
        BigDecimal value = new BigDecimal(digits);
        double rounded = value.doubleValue();
        if (Double.isInfinite(rounded) || rounded == 0 && value.signum() != 0) {
            throw error(text, "outside the range of numbers");
        }
        return value;
    }

    /** What is wrong with a number that the grammar would misread or reject, or null. */
    private static String complaint(String text) {
        Matcher comma = COMMA.matcher(text);
        if (comma.matches()) {
            String point = comma.group(1) + "." + comma.group(2) + comma.group(3);
            if (comma.group(2).length() == 3) {
                return "comma in a number, write " + comma.group(1) + comma.group(2) + comma.group(3) + " or " + point;
            }
            return "decimal comma, write " + point;
        }
        if (text.charAt(0) == '\u2212' || text.charAt(0) == '\u2013') {
            return "this dash is no minus sign, write -" + text.substring(1);
        }
        if (NO_NUMBER.matcher(text).matches()) {
            return "not a finite number";
        }
        if (HEX.matcher(text).matches()) {
            return "hexadecimal numbers are not accepted, write a decimal number";
        }
        if (LEADING_POINT.matcher(text).matches()) {
            return "a digit is needed before the decimal point, write " + text.replaceFirst("\\.", "0.");
        }
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.matches()) {
            return "digits must not be grouped, write "
                    + text.substring(0, grouped.start(1))
                    + text.substring(grouped.end(1));
        }
        return null;
    }

    private static void checkRest(String text, String rest) {
        String next = rest.strip();
        if (rest.startsWith("..") || next.startsWith("-") || next.startsWith("+") || next.startsWith("\u00b1")) {
            throw error(text, "one value is needed, not a range or a tolerance");
        }
        if (rest.startsWith(".")) {
            throw error(
                    text,
                    rest.length() > 1 && Character.isDigit(rest.charAt(1))
                            ? "two decimal points in one number"
                            : "a digit is needed after the decimal point");
        }
        if (rest.matches("(?s)[eE][+-]?[0-9].*")) {
            throw error(text, "outside the range of numbers");
        }
        if (!rest.isEmpty() && Character.isDigit(next.charAt(0)) && !next.matches("(?s)1 ?/.*")) {
            throw error(text, "a unit is needed after the number");
        }
    }

    private static QuantityFormatException error(String text, String message) {
        return new QuantityFormatException(Texts.excerpt(text) + ": " + message);
    }

    private static QuantityFormatException mismatch(String text, Dimension got, String needs) {
        return new QuantityFormatException(
                "got " + got.noun() + " (" + Texts.excerpt(text.strip()) + "), needs " + needs);
    }
}
