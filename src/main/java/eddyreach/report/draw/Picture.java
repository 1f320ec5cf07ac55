package eddyreach.report.draw;

import eddyreach.report.words.Cautions;
import eddyreach.report.words.Program;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.Locale;

/**
 * One page-like picture: heading, content and footnote, drawn on a sheet of {@value #WIDTH} by {@value #HEIGHT} units.
 *
 * @param name file name without ending
 * @param title heading
 * @param subtitle line below: switch, frequency and what else matters
 * @param source right part of the footnote, before the name of the program
 * @param content what fills the sheet
 */
public record Picture(String name, String title, String subtitle, String source, Content content) {

    /** Width of the sheet; one unit is two pixels of the PNG. */
    public static final int WIDTH = 700;

    /** Height of the sheet. */
    public static final int HEIGHT = 450;

    private static final int MARGIN = 22;

    /** The name is made one that fits into a link and on any disk. */
    public Picture {
        name = fileName(name);
    }

    /** A text as part of a file name: lower case letters, digits, dots and hyphens only. */
    public static String fileName(String text) {
        String name = text.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9.-]+", "-")
                .replaceAll("-{2,}", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        return name.isEmpty() ? "unnamed" : name;
    }

    /** What is drawn between heading and footnote. */
    @FunctionalInterface
    public interface Content {

        /** Draws into the area; the graphics' state may be left changed. */
        void draw(Graphics2D g, Rectangle2D area);
    }

    /** Draws the whole sheet, without changing anything but the graphics. */
    public void draw(Graphics2D g) {
        quality(g);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        int width = WIDTH - 2 * MARGIN;
        g.setColor(Theme.INK);
        fitted(g, Theme.medium(17), title, MARGIN, 30, width, 0);
        g.setColor(Theme.MUTED);
        fitted(g, Theme.text(11.5), subtitle, MARGIN, 48, width, 0);
        double caution = fitted(g, Theme.text(9.5), Cautions.TAG, MARGIN, HEIGHT - 11, width / 2.0, 0);
        String foot = source + " · " + Program.title();
        fitted(g, Theme.text(9.5), foot, WIDTH - MARGIN, HEIGHT - 11, width - caution - 2 * MARGIN, 1);
        content.draw(g, new Rectangle2D.Double(MARGIN - 6, 58, width + 12, HEIGHT - 58 - 28));
    }

    /** How lines and texts are drawn, and hence measured. */
    public static void quality(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }

    /**
     * Draws a text no wider than allowed: smaller when it is too long, shortened when it is far too long.
     *
     * @param align 0 when x is the left end, 0.5 the middle, 1 the right end
     * @return the width drawn
     */
    public static double fitted(Graphics2D g, Font font, String text, double x, double y, double width, double align) {
        FontMetrics metrics = g.getFontMetrics(font);
        String shown = text;
        Font used = font;
        double w = metrics.stringWidth(text);
        if (w > width) {
            used = font.deriveFont((float) (font.getSize2D() * Math.max(0.8, width / w)));
            metrics = g.getFontMetrics(used);
            w = metrics.stringWidth(text);
            for (int n = text.length() - 1; w > width && n > 1; n--) {
                shown = text.substring(0, n) + "…";
                w = metrics.stringWidth(shown);
            }
        }
        g.setFont(used);
        g.drawString(shown, (float) (x - align * w), (float) y);
        return w;
    }
}
