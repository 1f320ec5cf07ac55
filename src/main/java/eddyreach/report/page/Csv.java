package eddyreach.report.page;

import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table as comma-separated values (RFC 4180): numbers with a point, missing ones empty. A text that a spreadsheet would take for a formula
 * has an apostrophe before it.
 */
public final class Csv {

    private static final int DIGITS = 9;
    private static final Pattern FORMULA = Pattern.compile("[=+@\\t\\r-].*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9.]+([eE][+-]?[0-9]+)?");

    private final List<Object[]> rows = new ArrayList<>();

    /** How numbers are written. */
    public enum Decimal {

        /** With a point, and a comma between the cells. */
        POINT(','),

        /** With a comma, and a semicolon between the cells: as spreadsheets expect it in most countries of Europe. */
        COMMA(';');

        private final char separator;

        Decimal(char separator) {
            this.separator = separator;
        }

        private String number(double value) {
            String plain = Double.isFinite(value) ? Labels.significant(value, DIGITS) : "";
            return this == COMMA ? plain.replace('.', ',') : plain;
        }

        private String cell(Object field) {
            return field instanceof Double d ? number(d) : quoted(harmless(field.toString()));
        }

        private String quoted(String field) {
            boolean plain = field.chars().noneMatch(c -> c == separator || c == '"' || c == '\r' || c == '\n');
            return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
        }
    }

    public Csv(String... header) {
        row((Object[]) header);
    }

    /** Adds a row: numbers as {@code Double}, all else is text. */
    public void row(Object... fields) {
        rows.add(fields.clone());
    }

    /** The table, with a point in its numbers. */
    public String text() {
        return text(Decimal.POINT);
    }

    /** The table. */
    public String text(Decimal decimal) {
        StringBuilder text = new StringBuilder();
        for (Object[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                text.append(i > 0 ? String.valueOf(decimal.separator) : "").append(decimal.cell(row[i]));
            }
            text.append("\r\n");
        }
        return text.toString();
    }

    private static String harmless(String text) {
        return FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }
}
