package eddyreach.kinds.mount;

import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Ruler;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Bars of what a tenth of a millimetre in each dimension of a mount does to the switch-on distance.
 *
 * @param effects the dimensions, at least one
 */
record EffectChart(List<DimensionEffect> effects) implements Picture.Content {

    private static final double NAMES = 170;

    /** A range of effects, mm, below which they do not matter and are not spread over the sheet. */
    private static final double NOTHING = 2e-3;

    private static final double TENTH = 1e-4;
    private static final Color BAR = new Color(0x5b98c0);
    private static final Color LESS = new Color(0xb4472b);

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        double low = 0;
        double high = 0;
        for (DimensionEffect e : effects) {
            double spread = Double.isNaN(e.spread()) ? 0 : e.spread();
            low = Math.min(low, (e.slope() - spread) * TENTH * Labels.MM);
            high = Math.max(high, (e.slope() + spread) * TENTH * Labels.MM);
        }
        if (high - low < NOTHING) {
            low = -NOTHING / 2;
            high = NOTHING / 2;
        }
        double span = high - low;
        // room for the numbers at the ends of the bars
        low -= low < 0 ? 0.22 * span : 0.02 * span;
        high += high > 0 ? 0.22 * span : 0.02 * span;
        Rectangle2D box = new Rectangle2D.Double(
                area.getX() + NAMES, area.getY() + 10, area.getWidth() - NAMES - 16, area.getHeight() - 56);
        double row = Math.min(58, box.getHeight() / effects.size());
        Rectangle2D bars = new Rectangle2D.Double(box.getX(), box.getY(), box.getWidth(), row * effects.size());
        double zero = x(bars, low, high, 0);
        for (int i = 0; i < effects.size(); i++) {
            DimensionEffect e = effects.get(i);
            double y = bars.getY() + row * (i + 0.5);
            double value = e.slope() * TENTH * Labels.MM;
            double end = x(bars, low, high, value);
            g.setColor(value < 0 ? LESS : BAR);
            g.fill(new Rectangle2D.Double(Math.min(zero, end), y - 0.3 * row, Math.abs(end - zero), 0.6 * row));
            double tip = end;
            if (!Double.isNaN(e.spread())) {
                double spread = e.spread() * TENTH * Labels.MM;
                double x0 = x(bars, low, high, value - spread);
                double x1 = x(bars, low, high, value + spread);
                g.setColor(Theme.INK);
                g.setStroke(Theme.line(1.3));
                g.draw(new Line2D.Double(x0, y, x1, y));
                g.draw(new Line2D.Double(x0, y - 4, x0, y + 4));
                g.draw(new Line2D.Double(x1, y - 4, x1, y + 4));
                tip = value < 0 ? Math.min(tip, x0) : Math.max(tip, x1);
            }
            g.setColor(Theme.INK);
            Picture.fitted(g, Theme.text(11), e.label(), area.getX() + NAMES - 12, y - 2, NAMES - 16, 1);
            g.setColor(Theme.MUTED);
            String now = Labels.millimetres(e.value()) + " mm" + (Double.isNaN(e.spread()) ? ", one-sided" : "");
            Picture.fitted(g, Theme.text(9.5), now, area.getX() + NAMES - 12, y + 11, NAMES - 16, 1);
            g.setColor(Theme.INK);
            Picture.fitted(
                    g,
                    Theme.medium(10.5),
                    Math.abs(end - zero) < 1 ? MountWords.change(e.slope() * TENTH) : shown(value),
                    tip + (value < 0 ? -6 : 6),
                    y + 4,
                    80,
                    value < 0 ? 1 : 0);
        }
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.line(1));
        g.draw(new Line2D.Double(zero, bars.getMinY(), zero, bars.getMaxY()));
        axis(g, bars, low, high);
    }

    private static void axis(Graphics2D g, Rectangle2D box, double low, double high) {
        double step = step(g, box, low, high);
        g.setStroke(Theme.line(0.8));
        g.setColor(Theme.MUTED);
        g.draw(new Line2D.Double(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMaxY()));
        for (int k = (int) Math.ceil(low / step); k * step <= high; k++) {
            double x = x(box, low, high, k * step);
            g.setColor(Theme.MUTED);
            g.draw(new Line2D.Double(x, box.getMaxY(), x, box.getMaxY() + 4));
            g.setColor(Theme.INK);
            Picture.fitted(g, Theme.text(10.5), Labels.significant(k * step, 4), x, box.getMaxY() + 16, 60, 0.5);
        }
        Picture.fitted(
                g,
                Theme.text(11),
                "change of the switch-on distance by 0.1 mm more, mm",
                box.getCenterX(),
                box.getMaxY() + 33,
                box.getWidth(),
                0.5);
    }

    /** The finest step whose numbers stand apart. */
    private static double step(Graphics2D g, Rectangle2D box, double low, double high) {
        FontMetrics metrics = g.getFontMetrics(Theme.text(10.5));
        for (int wanted = 6; ; wanted--) {
            double step = Ruler.step(high - low, wanted);
            double widest = 0;
            for (int k = (int) Math.ceil(low / step); k * step <= high; k++) {
                widest = Math.max(widest, metrics.stringWidth(Labels.significant(k * step, 4)));
            }
            if (wanted == 1 || widest + 8 <= step / (high - low) * box.getWidth()) {
                return step;
            }
        }
    }

    /** A change, mm, of a bar that can be seen: never 0. */
    private static String shown(double value) {
        return Math.abs(value) < 1e-3
                ? (value > 0 ? "+" : "") + Labels.significant(value, 1)
                : MountWords.change(value / Labels.MM);
    }

    private static double x(Rectangle2D box, double low, double high, double value) {
        return box.getX() + (value - low) / (high - low) * box.getWidth();
    }
}
