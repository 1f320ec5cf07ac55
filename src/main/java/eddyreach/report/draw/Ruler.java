package eddyreach.report.draw;

import eddyreach.report.words.Labels;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Axes of the drawings to scale: ticks with numbers below and to the left of a rectangle. */
public final class Ruler {

    private static final double TICK = 4;

    private Ruler() {}

    /** The largest of 1, 2 or 5 times a power of ten that gives at least about the wanted number of steps. */
    public static double step(double span, int wanted) {
        double raw = span / wanted;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double mantissa = raw / power;
        return power * (mantissa >= 5 ? 5 : mantissa >= 2 ? 2 : 1);
    }

    /**
     * The axis below a rectangle; numbers left and right of zero are both positive when it is a radius.
     *
     * @param low value at the left edge
     * @param high value at the right edge
     */
    public static void below(Graphics2D g, Rectangle2D box, double low, double high, String label) {
        double step = step(high - low, Math.max(2, (int) (box.getWidth() / 60)));
        for (int k = (int) Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k++) {
            double x = box.getX() + (k * step - low) / (high - low) * box.getWidth();
            g.setColor(Theme.MUTED);
            g.setStroke(Theme.line(0.8));
            g.draw(new Line2D.Double(x, box.getMaxY(), x, box.getMaxY() + TICK));
            g.setColor(Theme.INK);
            String text = Labels.significant(Math.abs(k * step), 6);
            Picture.fitted(g, Theme.text(10.5), text, x, box.getMaxY() + 16, 50, 0.5);
        }
        g.setColor(Theme.INK);
        Picture.fitted(g, Theme.text(11), label, box.getCenterX(), box.getMaxY() + 32, 400, 0.5);
    }

    /**
     * The axis at the left of a rectangle.
     *
     * @param bottom value at the lower edge
     * @param top value at the upper edge; may be below the other
     */
    public static void left(Graphics2D g, Rectangle2D box, double bottom, double top, String label) {
        double low = Math.min(bottom, top);
        double high = Math.max(bottom, top);
        double step = step(high - low, Math.max(2, (int) (box.getHeight() / 45)));
        for (int k = (int) Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k++) {
            double y = box.getMaxY() - (k * step - bottom) / (top - bottom) * box.getHeight();
            g.setColor(Theme.MUTED);
            g.setStroke(Theme.line(0.8));
            g.draw(new Line2D.Double(box.getX() - TICK, y, box.getX(), y));
            g.setColor(Theme.INK);
            Picture.fitted(g, Theme.text(10.5), Labels.significant(k * step, 6), box.getX() - 7, y + 3.7, 50, 1);
        }
        AffineTransform upright = g.getTransform();
        g.rotate(-Math.PI / 2, box.getX() - 38, box.getCenterY());
        g.setColor(Theme.INK);
        Picture.fitted(g, Theme.text(11), label, box.getX() - 38, box.getCenterY(), box.getHeight() + 60, 0.5);
        g.setTransform(upright);
    }
}
