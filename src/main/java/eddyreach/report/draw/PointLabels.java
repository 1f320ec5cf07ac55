package eddyreach.report.draw;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Names beside points of a chart, each at the nearest place that is inside, off all lines and off the other names. */
public final class PointLabels {

    private static final double HEIGHT = 13;
    private static final double NEAR = 9;
    private static final int RINGS = 7;
    private static final double RING = 12;
    private static final int DIRECTIONS = 12;

    /** Chords of a curved line are at most this long, so that its bounds are not mistaken for it. */
    private static final double FLATNESS = 0.5;

    private final Rectangle2D area;
    private final List<Line2D> lines = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();

    /** Labels that stay inside an area. */
    public PointLabels(Rectangle2D area) {
        this.area = area;
    }

    /** Keeps all names off a line. */
    public void avoid(Shape line) {
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator i = line.getPathIterator(new AffineTransform(), FLATNESS); !i.isDone(); i.next()) {
            int kind = i.currentSegment(p);
            if (kind == PathIterator.SEG_LINETO) {
                lines.add(new Line2D.Double(x, y, p[0], p[1]));
            }
            x = p[0];
            y = p[1];
        }
    }

    /** Keeps all names off a box. */
    public void avoid(Rectangle2D box) {
        taken.add(box);
    }

    /** Writes a name near a point, with a line to it where it is not beside it. */
    public void draw(Graphics2D g, String name, Font font, Color color, double x, double y) {
        double width = g.getFontMetrics(font).stringWidth(name);
        Rectangle2D best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Rectangle2D box : places(x, y, width)) {
            double hits = hits(box, x, y);
            if (hits < least) {
                least = hits;
                best = box;
            }
        }
        if (best == null) {
            return;
        }
        taken.add(best);
        g.setColor(color);
        double nearX = Math.max(best.getMinX(), Math.min(x, best.getMaxX()));
        double nearY = Math.max(best.getMinY(), Math.min(y, best.getMaxY()));
        double away = Math.hypot(nearX - x, nearY - y);
        if (away > 1.5 * NEAR) {
            g.setStroke(Theme.line(0.7));
            double from = 5 / away;
            g.draw(new Line2D.Double(x + from * (nearX - x), y + from * (nearY - y), nearX, nearY));
        }
        g.setColor(color.darker());
        Picture.fitted(g, font, name, best.getMinX() + 1, best.getMaxY() - 3, width + 1, 0);
    }

    /** Places inside the area, the best ones first: beside the point, then on rings around it. */
    private List<Rectangle2D> places(double x, double y, double width) {
        List<Rectangle2D> places = new ArrayList<>();
        add(places, x + NEAR, y - HEIGHT / 2, width);
        add(places, x - NEAR - width - 2, y - HEIGHT / 2, width);
        add(places, x - width / 2, y - NEAR - HEIGHT, width);
        add(places, x - width / 2, y + NEAR, width);
        for (int ring = 0; ring < RINGS; ring++) {
            double radius = NEAR + ring * RING;
            for (int k = 0; k < DIRECTIONS; k++) {
                double angle = 2 * Math.PI * k / DIRECTIONS;
                double px = x + radius * Math.cos(angle);
                double left = Math.cos(angle) < -0.1 ? px - width - 2 : Math.cos(angle) > 0.1 ? px : px - width / 2;
                add(places, left, y + radius * Math.sin(angle) - HEIGHT / 2, width);
            }
        }
        return places;
    }

    private void add(List<Rectangle2D> places, double x, double y, double width) {
        Rectangle2D box = new Rectangle2D.Double(x, y, width + 2, HEIGHT);
        if (area.contains(box)) {
            places.add(box);
        }
    }

    /** How much a place is in the way: other names and marks count more than lines. */
    private double hits(Rectangle2D box, double x, double y) {
        long names = taken.stream()
                .filter(box::intersects)
                .filter(t -> !t.contains(x, y) || t.getHeight() == HEIGHT)
                .count();
        return 10.0 * names + lines.stream().filter(l -> l.intersects(box)).count();
    }
}
