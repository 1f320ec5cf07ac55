package eddyreach.report.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Dimension lines with arrows and their text, as in a workshop drawing. */
public final class DimensionLine {

    private static final double ARROW = 5;
    private static final double SIZE = 10.5;
    private static final double OUTSIDE = 12;

    private DimensionLine() {}

    /** The pen of dimension and extension lines. */
    public static void thin(Graphics2D g) {
        g.setColor(Theme.INK);
        g.setStroke(Theme.line(0.6));
    }

    /** From x0 to a larger x1, the arrows between them. */
    public static void across(Graphics2D g, double x0, double x1, double y, String text) {
        thin(g);
        g.draw(new Line2D.Double(x0, y, x1, y));
        arrow(g, x0, y, 1, 0);
        arrow(g, x1, y, -1, 0);
        text(g, text, (x0 + x1) / 2, y);
    }

    /** Of a dimension that goes on beyond x0 and x1, without arrows. */
    public static void beyond(Graphics2D g, double x0, double x1, double y, String text) {
        thin(g);
        g.draw(new Line2D.Double(x0, y, x1, y));
        text(g, text, (x0 + x1) / 2, y);
    }

    /** From y0 up to y1, the arrows outside where there is no room for the text between them. */
    public static void along(Graphics2D g, double x, double y0, double y1, String text) {
        thin(g);
        boolean room = y0 - y1 > 2.4 * SIZE;
        double out = room ? 0 : OUTSIDE;
        g.draw(new Line2D.Double(x, y0 + out, x, y1 - out));
        arrow(g, x, y0, 0, room ? -1 : 1);
        arrow(g, x, y1, 0, room ? 1 : -1);
        text(g, text, x, room ? (y0 + y1) / 2 : y1 - OUTSIDE - 5);
    }

    private static void text(Graphics2D g, String text, double x, double y) {
        double w = g.getFontMetrics(Theme.text(SIZE)).stringWidth(text);
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(x - w / 2 - 2, y - 6, w + 4, 12));
        g.setColor(Theme.INK);
        Picture.fitted(g, Theme.text(SIZE), text, x, y + 3.7, w + 1, 0.5);
    }

    /** A filled arrow head with its tip at a point, its shaft leading away in a direction. */
    private static void arrow(Graphics2D g, double x, double y, double dx, double dy) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y);
        path.lineTo(x + dx * ARROW - dy * 1.6, y + dy * ARROW + dx * 1.6);
        path.lineTo(x + dx * ARROW + dy * 1.6, y + dy * ARROW - dx * 1.6);
        path.closePath();
        g.fill(path);
    }
}
