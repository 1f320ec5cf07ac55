package eddyreach.report.page;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Writes JSON (RFC 8259) from maps, lists, texts, numbers and truth values. Numbers that are not finite become null.
 * Lists of plain values stay on one line.
 */
public final class Json {

    private final StringBuilder out = new StringBuilder();

    private Json() {}

    /** The text of a document, ending with a line break. */
    public static String write(Map<String, ?> document) {
        Json json = new Json();
        json.value(document, 0);
        return json.out.append('\n').toString();
    }

    private void value(Object v, int depth) {
        if (v == null || v instanceof Double d && !Double.isFinite(d)) {
            out.append("null");
        } else if (v instanceof Map<?, ?> map) {
            map(map, depth);
        } else if (v instanceof List<?> list) {
            list(list, depth);
        } else if (v instanceof Double || v instanceof Integer || v instanceof Boolean) {
            out.append(v);
        } else if (v instanceof String s) {
            text(s);
        } else {
            throw new IllegalArgumentException("no JSON for " + v.getClass().getName());
        }
    }

    private void map(Map<?, ?> map, int depth) {
        out.append('{');
        Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
        while (entries.hasNext()) {
            Map.Entry<?, ?> entry = entries.next();
            line(depth + 1);
            text((String) entry.getKey());
            out.append(": ");
            value(entry.getValue(), depth + 1);
            out.append(entries.hasNext() ? "," : "");
        }
        if (!map.isEmpty()) {
            line(depth);
        }
        out.append('}');
    }

    private void list(List<?> list, int depth) {
        boolean nested = list.stream().anyMatch(v -> v instanceof Map || v instanceof List);
        out.append('[');
        for (int i = 0; i < list.size(); i++) {
            if (nested) {
                line(depth + 1);
            } else if (i > 0) {
                out.append(' ');
            }
            value(list.get(i), depth + 1);
            out.append(i + 1 < list.size() ? "," : "");
        }
        if (nested) {
            line(depth);
        }
        out.append(']');
    }

    private void line(int depth) {
        out.append('\n').append("  ".repeat(depth));
    }

    private void text(String s) {
        out.append('"');
        for (int i = 0; i < s.length(); i++) {
            char c = s.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                    if (c < 0x20 || Character.isSurrogate(c) && !paired(s, i)) {
                        out.append("\\u").append(hex(c));
                    } else {
                        out.append(c);
                    }
                }
            }
        }
        out.append('"');
    }

    /** A lone surrogate has no UTF-8 form, so it must be escaped. */
    private static boolean paired(String s, int i) {
        return Character.isHighSurrogate(s.charAt(i))
                ? i + 1 < s.length() && Character.isLowSurrogate(s.charAt(i + 1))
                : i > 0 && Character.isHighSurrogate(s.charAt(i - 1));
    }

    private static String hex(char c) {
        String digits = Integer.toHexString(c);
        return "0".repeat(4 - digits.length()) + digits;
    }
}
