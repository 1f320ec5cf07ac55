package eddyreach.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * Reads one unit expression. Grammar:
 *
 * <pre>
 * unit    := product [ "/" divisor ] | [ "1" ] "/" divisor
 * divisor := factor | "(" product ")"
 * product := factor { ( space | "*" | "·" ) factor }
 * factor  := symbol [ [ "^" ] [ "-" ] digit ]      also with superscript 1 to 9 and superscript minus
 * </pre>
 */
final class UnitParser {

    private static final String SUPERSCRIPTS = "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";
    private static final char SUPERSCRIPT_MINUS = '\u207b';

    private final String text;
    private final String unit;
    private final Dimension expected;
    private int at;
    private BigDecimal factor = BigDecimal.ONE;
    private Dimension dimension = Dimension.NONE;

    /** For the unit part of a text; expected (may be null) only shapes the messages. */
    UnitParser(String text, String unit, Dimension expected) {
        this.text = text;
        this.unit = unit;
        this.expected = expected;
    }

    UnitTable.Unit parse() {
        if (unit.startsWith("1/") || unit.startsWith("1 /")) {
            at = unit.indexOf('/');
        } else if (peek() != '/') {
            product(1);
        }
        if (peek() == '/') {
            at++;
            divisor();
        }
        skipSpaces();
        if (at < unit.length()) {
            throw error(
                    peek() == '/'
                            ? "more than one \"/\", write one divisor in parentheses"
                            : "\"" + Texts.excerpt(unit.substring(at)) + "\" is not part of a unit");
        }
        return new UnitTable.Unit(factor, dimension);
    }

    private void divisor() {
        skipSpaces();
        if (peek() == '(') {
            at++;
            product(-1);
            if (peek() != ')') {
                throw error("a closing parenthesis is missing");
            }
            at++;
            return;
        }
        factor(-1);
        skipSpaces();
        if (isSymbol(peek()) || isDot(peek())) {
            throw error("what belongs to the divisor is unclear, write it in parentheses");
        }
    }

    private void product(int sign) {
        skipSpaces();
        factor(sign);
        while (true) {
            skipSpaces();
            if (isDot(peek())) {
                at++;
                skipSpaces();
            } else if (!isSymbol(peek())) {
                return;
            }
            factor(sign);
        }
    }

    private void factor(int sign) {
        int start = at;
        while (isSymbol(peek())) {
            at++;
        }
        if (at == start) {
            throw error(
                    Character.getType(peek()) == Character.FORMAT
                            ? String.format("an invisible character U+%04X before the unit", (int) peek())
                            : "a unit symbol is missing");
        }
        String symbol = unit.substring(start, at);
        String canonical = UnitTable.canonical(symbol);
        UnitTable.Unit found = UnitTable.all().get(canonical);
        if (found == null) {
            throw error(unknown(symbol, canonical));
        }
        if (canonical.equals(UnitTable.CELSIUS)) {
            throw error("degC stands only alone, use K for differences and coefficients");
        }
        if (canonical.equals(UnitTable.IACS)) {
            throw error("%IACS stands only alone");
        }
        int exponent = sign * exponent();
        factor = factor.multiply(powerOfTenSafe(found.factor(), exponent));
        dimension = dimension.times(found.dimension().power(exponent));
    }

    private static BigDecimal powerOfTenSafe(BigDecimal base, int exponent) {
        // every factor but the inch's is a power of ten, so that its reciprocal is exact too
        return exponent >= 0 ? base.pow(exponent) : BigDecimal.ONE.divide(base.pow(-exponent), MathContext.DECIMAL128);
    }

    private int exponent() {
        boolean caret = peek() == '^';
        if (caret) {
            at++;
        }
        boolean minus = peek() == '-' || peek() == SUPERSCRIPT_MINUS;
        if (minus) {
            at++;
        }
        char c = peek();
        int value = c >= '0' && c <= '9' ? c - '0' : SUPERSCRIPTS.indexOf(c);
        if (value < 0 && !caret && !minus) {
            return 1;
        }
        if (value < 1) {
            throw error("an exponent from 1 to 9 is needed");
        }
        at++;
        return minus ? -value : value;
    }

    private String unknown(String symbol, String canonical) {
        StringBuilder message = new StringBuilder("unknown unit \"" + Texts.excerpt(symbol) + "\"");
        List<String> similar = UnitTable.sameButCase(canonical);
        if (expected != null && similar.size() > 1) {
            List<String> fitting = similar.stream()
                    .filter(s -> UnitTable.all().get(s).dimension().equals(expected))
                    .toList();
            similar = fitting.isEmpty() ? similar : fitting;
        }
        if (!similar.isEmpty()) {
            return message.append(", did you mean ")
                    .append(String.join(" or ", similar))
                    .append("?")
                    .toString();
        }
        if (expected != null) {
            message.append(", needs ")
                    .append(expected.noun())
                    .append(" such as ")
                    .append(expected.example());
        }
        return message.toString();
    }

    private QuantityFormatException error(String message) {
        return new QuantityFormatException(Texts.excerpt(text) + ": " + message);
    }

    private char peek() {
        return at < unit.length() ? unit.charAt(at) : '\0';
    }

    private void skipSpaces() {
        while (peek() == ' ') {
            at++;
        }
    }

    private static boolean isDot(char c) {
        return c == '*' || c == '\u00b7' || c == '\u22c5';
    }

    private static boolean isSymbol(char c) {
        return c >= 'a' && c <= 'z'
                || c >= 'A' && c <= 'Z'
                || c == '%'
                || c == '\u00b5'
                || c == '\u03bc'
                || c == '\u03a9'
                || c == '\u2126'
                || c == '\u00b0';
    }
}
