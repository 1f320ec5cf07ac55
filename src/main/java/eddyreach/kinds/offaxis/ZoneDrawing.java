package eddyreach.kinds.offaxis;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.geometry.Part;
import eddyreach.report.draw.Contours;
import eddyreach.report.draw.PartDrawing;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Ruler;
import eddyreach.report.draw.SectionView;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;

/**
 * The detection zones to scale: for each target the line on which it is recognised and the one on which it is lost, over the sideways
 * offset of its axis and the distance of its near face, mirrored to both sides, with the switch under them.
 */
record ZoneDrawing(ZoneResult result) implements Picture.Content {

    private static final double LEFT = 54;
    private static final double RIGHT = 8;
    private static final double TOP = 6;
    private static final double BOTTOM = 40;
    private static final double ROW = 17;
    private static final double KEY = 24;
    private static final Font FONT = Theme.text(10.5);

    /** Height shown over the highest point of all zones, relative. */
    private static final double ABOVE = 1.2;

    /** Depth shown under the face at least, relative to the depth of the winding. */
    private static final double BELOW = 1.5;

    /** Every so many offsets carry a marker. */
    private static final int MARKED = 8;

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        int columns = columns(g, area);
        SectionView view = view(area, columns);
        Rectangle2D box = view.box();
        g.setColor(new Color(0xf6f7f8));
        g.fill(new Rectangle2D.Double(box.getX(), view.y(0), box.getWidth(), box.getMaxY() - view.y(0)));
        grid(g, view);
        for (Part part : result.model().parts()) {
            PartDrawing.fill(g, view, part);
        }
        for (Part part : result.model().parts()) {
            PartDrawing.outline(g, view, part);
        }
        PartDrawing.winding(g, view, result.model().winding().section());
        Shape clip = g.getClip();
        g.clip(new Rectangle2D.Double(box.getX(), box.getY(), box.getWidth(), view.y(0) - box.getY()));
        for (int t = 0; t < result.targets().size(); t++) {
            zone(g, view, t);
        }
        g.setClip(clip);
        g.setColor(Theme.INK);
        g.setStroke(Theme.line(1.2));
        g.draw(new Line2D.Double(box.getX(), view.y(0), box.getMaxX(), view.y(0)));
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.dashed(0.7, 9, 3));
        g.draw(new Line2D.Double(view.x(0), box.getY(), view.x(0), box.getMaxY()));
        g.setStroke(Theme.line(0.8));
        g.draw(box);
        double r = box.getWidth() / 2 / view.scale();
        Ruler.below(g, box, -r * Labels.MM, r * Labels.MM, Labels.OFFSET);
        double bottom = (view.faceY() - box.getMaxY()) / view.scale();
        double top = (view.faceY() - box.getY()) / view.scale();
        Ruler.left(g, box, bottom * Labels.MM, top * Labels.MM, Labels.DISTANCE);
        legend(g, box, columns);
    }

    /** The largest picture to equal scale that leaves room for axes and the legend below. */
    private SectionView view(Rectangle2D area, int columns) {
        double[] offset = result.targets().get(0).offset();
        double width = 2 * offset[offset.length - 1];
        double top = ABOVE * highest();
        double deepest = -result.model().winding().section().z0();
        double body = BELOW * deepest;
        double freeWidth = area.getWidth() - LEFT - RIGHT;
        double freeHeight = area.getHeight() - BOTTOM - TOP - rows(columns) * ROW;
        double scale = Math.min(freeWidth / width, freeHeight / (top + body));
        double shown = Math.min(freeHeight / scale, top + 2 * body);
        double y = area.getY() + TOP + (freeHeight - shown * scale) / 2;
        return new SectionView(
                new Rectangle2D.Double(area.getX() + LEFT, y, freeWidth, shown * scale),
                area.getX() + LEFT + freeWidth / 2,
                y + top * scale,
                scale);
    }

    /** Columns of the legend: two, or one when a text is too long for half the width. */
    private int columns(Graphics2D g, Rectangle2D area) {
        double room = (area.getWidth() - LEFT - RIGHT) / 2 - KEY - 14;
        FontMetrics metrics = g.getFontMetrics(FONT);
        return result.targets().stream().allMatch(t -> metrics.stringWidth(text(t)) <= room) ? 2 : 1;
    }

    /** Rows of the legend: the targets, then the kinds of line. */
    private int rows(int columns) {
        return (result.targets().size() + columns - 1) / columns + 1;
    }

    /** The largest distance at which any target switches, m. */
    private double highest() {
        double most = result.model().effectiveDistance();
        for (ZoneTarget t : result.targets()) {
            for (SwitchDistance d : t.distances()) {
                most = Math.max(most, Double.isFinite(d.off()) ? d.off() : Double.isFinite(d.on()) ? d.on() : 0);
            }
        }
        return most;
    }

    private static void grid(Graphics2D g, SectionView view) {
        Rectangle2D box = view.box();
        g.setColor(Theme.GRID);
        g.setStroke(Theme.line(0.6));
        double r = box.getWidth() / 2 / view.scale() * Labels.MM;
        double step = Ruler.step(2 * r, Math.max(2, (int) (box.getWidth() / 60)));
        for (int k = (int) Math.ceil(-r / step); k * step <= r; k++) {
            double x = view.x(k * step / Labels.MM);
            g.draw(new Line2D.Double(x, box.getY(), x, view.y(0)));
        }
        double top = (view.faceY() - box.getY()) / view.scale() * Labels.MM;
        double bottom = (view.faceY() - box.getMaxY()) / view.scale() * Labels.MM;
        double rise = Ruler.step(top - bottom, Math.max(2, (int) (box.getHeight() / 45)));
        for (int k = 1; k * rise <= top; k++) {
            double y = view.y(k * rise / Labels.MM);
            g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
        }
    }

    private void zone(Graphics2D g, SectionView view, int t) {
        ZoneTarget zone = result.targets().get(t);
        double[][] byDistance = new double[zone.distance().length][zone.offset().length];
        for (int i = 0; i < zone.offset().length; i++) {
            for (int j = 0; j < zone.distance().length; j++) {
                byDistance[j][i] = zone.conductance()[i][j];
            }
        }
        Color color = Theme.series(t);
        g.setColor(color);
        g.setStroke(Theme.line(2));
        g.draw(contour(view, zone, byDistance, result.trimmed().onConductance()));
        g.setStroke(Theme.dashed(1.2, 5, 3));
        g.draw(contour(view, zone, byDistance, result.trimmed().offConductance()));
        Shape marker = Theme.marker(t);
        for (int side = -1; side <= 1; side += 2) {
            for (int i = MARKED / 2; i < zone.offset().length; i += MARKED) {
                double on = zone.distances().get(i).on();
                if (Double.isFinite(on)) {
                    mark(g, marker, view.x(side * zone.offset()[i]), view.y(on));
                }
            }
        }
    }

    private static void mark(Graphics2D g, Shape marker, double x, double y) {
        g.translate(x, y);
        g.fill(marker);
        g.translate(-x, -y);
    }

    private static Path2D contour(SectionView view, ZoneTarget zone, double[][] byDistance, double level) {
        Path2D path = new Path2D.Double();
        for (double[] line : Contours.lines(zone.offset(), zone.distance(), byDistance, level)) {
            for (int side = -1; side <= 1; side += 2) {
                for (int i = 0; i < line.length; i += 2) {
                    double x = view.x(side * line[i]);
                    double y = view.y(line[i + 1]);
                    if (i == 0) {
                        path.moveTo(x, y);
                    } else {
                        path.lineTo(x, y);
                    }
                }
            }
        }
        return path;
    }

    private static String text(ZoneTarget zone) {
        return zone.target().label() + ": " + where(zone);
    }

    private void legend(Graphics2D g, Rectangle2D box, int columns) {
        double y = box.getMaxY() + BOTTOM + ROW - 4;
        double half = box.getWidth() / 2;
        for (int t = 0; t < result.targets().size(); t++) {
            ZoneTarget zone = result.targets().get(t);
            int column = t % columns;
            double x = box.getX() + column * half;
            key(g, x, y, Theme.series(t), Theme.line(2));
            mark(g, Theme.marker(t), x + 11, y - 4);
            g.setColor(Theme.INK);
            double room = box.getWidth() / columns - KEY - 14;
            Picture.fitted(g, FONT, text(zone), x + KEY + 6, y, room, 0);
            boolean end = column == columns - 1 || t == result.targets().size() - 1;
            y += end ? ROW : 0;
        }
        key(g, box.getX(), y, Theme.MUTED, Theme.line(2));
        key(g, box.getX() + half, y, Theme.MUTED, Theme.dashed(1.2, 5, 3));
        g.setColor(Theme.MUTED);
        Picture.fitted(g, FONT, "detected when it comes inside", box.getX() + KEY + 6, y, half, 0);
        Picture.fitted(g, FONT, "lost when it goes outside", box.getX() + half + KEY + 6, y, half, 0);
    }

    private static void key(Graphics2D g, double x, double y, Color color, Stroke stroke) {
        g.setColor(color);
        g.setStroke(stroke);
        g.draw(new Line2D.Double(x, y - 4, x + KEY, y - 4));
    }

    private static String where(ZoneTarget zone) {
        double on = zone.distances().get(0).on();
        if (!Double.isFinite(on)) {
            return "on the axis " + Terms.of(zone.distances().get(0).outcome());
        }
        String edge = zone.onEdge().found()
                ? String.format(
                        Locale.ROOT, ", to %.1f mm beside it", zone.onEdge().offset() * Labels.MM)
                : "";
        return Labels.millimetres(on) + " mm on the axis" + edge;
    }
}
