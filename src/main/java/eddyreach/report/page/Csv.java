package eddyreach.report.page;

import eddyreach.report.words.Labels;

/** Tables as comma-separated values (RFC 4180): numbers with a point, missing ones empty. */
public final class Csv {

    private static final int DIGITS = 9;

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
            text.append(fields[i] instanceof Double d ? number(d) : quoted(fields[i].toString()));
        }
        text.append("\r\n");
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Labels.significant(value, DIGITS) : "";
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
