package eddyreach.report.page;

import java.util.ArrayList;
import java.util.List;

/** Text for the terminal in 80 columns, with colours if wanted. */
public final class TextPage {

    /** No line is longer, save that of a long path. */
    public static final int WIDTH = 80;

    public static final String BOLD = "\u001b[1m";
    public static final String RED = "\u001b[31m";
    public static final String YELLOW = "\u001b[33m";
    private static final String PLAIN = "\u001b[0m";

    private final StringBuilder out = new StringBuilder();
    private final boolean colour;

    /**
     * An empty page.
     *
     * @param colour whether to mark headings and verdicts with terminal colours
     */
    public TextPage(boolean colour) {
        this.colour = colour;
    }

    public String text() {
        return out.toString();
    }

    /** A text with the colour code given, or plain for an empty code. */
    public String mark(String text, String code) {
        return colour && !code.isEmpty() ? code + text + PLAIN : text;
    }

    /** One line as it is. */
    public void line(String text) {
        out.append(text).append('\n');
    }

    /** An empty line. */
    public void gap() {
        out.append('\n');
    }

    /** A heading, wrapped. */
    public void heading(String text) {
        wrap(text, WIDTH).forEach(line -> line(mark(line, BOLD)));
    }

    /** A wrapped paragraph. */
    public void paragraph(String text) {
        wrap(text, WIDTH).forEach(this::line);
    }

    /**
     * Cells set in columns with a space between.
     *
     * @param columns width of each column; negative for cells set to the left
     */
    public static String row(int[] columns, String... cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            int width = Math.abs(columns[i]);
            String pad = " ".repeat(Math.max(0, width - cells[i].length()));
            boolean last = i == cells.length - 1;
            line.append(i > 0 ? " " : "").append(columns[i] > 0 ? pad + cells[i] : last ? cells[i] : cells[i] + pad);
        }
        return line.toString();
    }

    /** Lines no longer than the width; a word that is longer is broken. */
    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }
}
