package eddyreach.report.page;

import eddyreach.report.words.Labels;
import java.util.regex.Pattern;

/**
 * Tables as comma-separated values (RFC 4180): numbers with a point, missing ones empty. A text that a spreadsheet would take for a formula
 * has an apostrophe before it.
 */
public final class Csv {

    private static final int DIGITS = 9;
    private static final Pattern FORMULA = Pattern.compile("[=+@\\t\\r-].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9.]+([eE][+-]?[0-9]+)?");

    private final StringBuilder text = new StringBuilder();

    public Csv(String... header) {
        row((Object[]) header);
    }

    /** The table so far. */
    public String text() {
        return text.toString();
    }

    /** Adds a row. */
    public void row(Object... fields) {
        for (int i = 0; i < fields.length; i++) {
            text.append(i > 0 ? "," : "");
            text.append(fields[i] instanceof Double d ? number(d) : quoted(harmless(fields[i].toString())));
        }
        text.append("\r\n");
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Labels.significant(value, DIGITS) : "";
    }

    private static String harmless(String text) {
        return FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
