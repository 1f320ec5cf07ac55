package eddyreach.report.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the values of contour lines on them, each where it touches nothing written before and no other line; where lines are too close for
 * that, a line goes without.
 */
public final class ContourLabels {

    private static final double SIZE = 9.5;
    private static final double HEIGHT = 12;

    /** Places tried within each piece of a line. */
    private static final int PLACES = 4;

    private final Rectangle2D box;
    private final List<Rectangle2D> taken;
    private final List<double[]> lines = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();

    /**
     * @param box what labels stay inside, on the sheet
     * @param taken what they keep off
     */
    public ContourLabels(Rectangle2D box, List<Rectangle2D> taken) {
        this.box = box;
        this.taken = new ArrayList<>(taken);
    }

    /**
     * Adds a line on which nothing else may stand.
     *
     * @param line {@code {x0, y0, x1, y1, ...}} on the sheet
     * @param text what is written on it; empty for nothing
     */
    public void add(double[] line, String text) {
        lines.add(line);
        texts.add(text);
    }

    /** Writes all. */
    public void write(Graphics2D g, Color color) {
        for (int i = 0; i < lines.size(); i++) {
            if (!texts.get(i).isEmpty()) {
                write(g, color, i);
            }
        }
    }

    /** From the middle of a line outwards. */
    private void write(Graphics2D g, Color color, int index) {
        double[] line = lines.get(index);
        double width = g.getFontMetrics(Theme.text(SIZE)).stringWidth(texts.get(index)) + 4.0;
        int n = PLACES * (line.length / 2 - 1);
        for (int k = 0; k <= n; k++) {
            int at = Math.min(n, Math.max(0, n / 2 + (k % 2 == 0 ? k / 2 : -(k + 1) / 2)));
            int piece = Math.min(line.length / 2 - 2, at / PLACES);
            double t = (at - PLACES * piece) / (double) PLACES;
            double x = line[2 * piece] + t * (line[2 * piece + 2] - line[2 * piece]);
            double y = line[2 * piece + 1] + t * (line[2 * piece + 3] - line[2 * piece + 1]);
            Rectangle2D place = new Rectangle2D.Double(x - width / 2, y - HEIGHT / 2, width, HEIGHT);
            if (free(place, index)) {
                taken.add(place);
                g.setColor(new Color(255, 255, 255, 170));
                g.fill(place);
                g.setColor(color);
                Picture.fitted(g, Theme.text(SIZE), texts.get(index), x, y + 3.5, width, 0.5);
                return;
            }
        }
    }

    private boolean free(Rectangle2D place, int own) {
        if (!box.contains(place) || taken.stream().anyMatch(place::intersects)) {
            return false;
        }
        for (int i = 0; i < lines.size(); i++) {
            if (i != own && crosses(lines.get(i), place)) {
                return false;
            }
        }
        return true;
    }

    private static boolean crosses(double[] line, Rectangle2D place) {
        for (int i = 0; i + 3 < line.length; i += 2) {
            if (new Line2D.Double(line[i], line[i + 1], line[i + 2], line[i + 3]).intersects(place)) {
                return true;
            }
        }
        return false;
    }
}
