package eddyreach.report.draw;

import eddyreach.engine.core.FieldPair;
import eddyreach.engine.core.FieldPicture;
import eddyreach.geometry.Part;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.DoubleSummaryStatistics;

/**
 * A section through the axis, to scale: field strength as shading, flux lines, the parts and the winding, mirrored to
 * both sides of the axis.
 *
 * @param field what is drawn on the right, with its names
 * @param left what is drawn on the left, of the same extent
 * @param leftName what that is; empty when both sides are the same
 * @param rightName what the right side is
 * @param shades shading of the field strength; the same for all pictures of a study, so that they compare
 * @param step flux between neighbouring lines, Wb; the same for all pictures too
 */
public record FieldDrawing(
        FieldPicture field, FieldPicture left, String leftName, String rightName, ShadeScale shades, double step)
        implements Picture.Content {

    private static final int LINES = 18;
    private static final double NAMES_WIDTH = 116;
    private static final double LEGEND_WIDTH = 84;
    private static final double LEFT = 54;
    private static final double BOTTOM = 40;
    private static final double SIDE = 8;
    private static final double SIZE = 11;

    /** Points of a flux line closer than this on the sheet are left out. */
    private static final double LEAST_STEP = 0.8;

    /** One field on both sides. */
    public FieldDrawing(FieldPicture field, ShadeScale shades, double step) {
        this(field, field, "", "", shades, step);
    }

    /** Two fields, one on either side. */
    public FieldDrawing(FieldPair pair, ShadeScale shades, double step) {
        this(pair.right(), pair.left(), Terms.left(pair.comparison()), Terms.right(pair.comparison()), shades, step);
    }

    /** Flux between neighbouring lines, Wb, that suits a picture. */
    public static double fluxStep(FieldPicture field) {
        DoubleSummaryStatistics range = range(field);
        return range.getCount() == 0 ? 0 : (range.getMax() - range.getMin()) / LINES;
    }

    /** Plain loops: streams over grids cost much on a cold machine. */
    private static DoubleSummaryStatistics range(FieldPicture field) {
        DoubleSummaryStatistics range = new DoubleSummaryStatistics();
        for (double[] row : field.flux()) {
            for (double v : row) {
                if (Double.isFinite(v)) {
                    range.accept(v);
                }
            }
        }
        return range;
    }

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        SectionView view = view(area);
        Rectangle2D box = view.box();
        if (leftName.isEmpty()) {
            field(g, view, field);
        } else {
            half(g, view, left, box.getMinX());
            half(g, view, field, view.x(0));
            name(g, view, leftName, box.getMinX() + SIDE);
            name(g, view, rightName, view.x(0) + SIDE);
        }
        g.setColor(Theme.INK);
        g.setStroke(Theme.dashed(1, 6, 4));
        g.draw(new Line2D.Double(box.getX(), view.y(0), box.getMaxX(), view.y(0)));
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.dashed(0.7, 9, 3));
        g.draw(new Line2D.Double(view.x(0), box.getY(), view.x(0), box.getMaxY()));
        g.setStroke(Theme.line(0.8));
        g.draw(box);
        double r = box.getWidth() / 2 / view.scale();
        Ruler.below(g, box, -r * Labels.MM, r * Labels.MM, Labels.RADIUS);
        double[] z = field.z();
        Ruler.left(g, box, z[0] * Labels.MM, z[z.length - 1] * Labels.MM, Labels.HEIGHT);
        names(g, view);
        double x = box.getMaxX() + NAMES_WIDTH + 14;
        shades.legend(
                g,
                new Rectangle2D.Double(x, area.getY() + 44, 16, Math.max(120, area.getHeight() - 130)),
                Labels.FIELD_STRENGTH,
                1);
    }

    private void field(Graphics2D g, SectionView view, FieldPicture of) {
        shade(g, view, of);
        for (Part part : of.parts()) {
            PartDrawing.fill(g, view, part);
        }
        of.ball().ifPresent(b -> PartDrawing.ball(g, view, b, true));
        fluxLines(g, view, of);
        of.ball().ifPresent(b -> PartDrawing.ball(g, view, b, false));
        for (Part part : of.parts()) {
            PartDrawing.outline(g, view, part);
        }
        PartDrawing.winding(g, view, of.winding());
    }

    /** A field on one side of the axis only. */
    private void half(Graphics2D g, SectionView view, FieldPicture of, double from) {
        Shape clip = g.getClip();
        Rectangle2D box = view.box();
        g.clip(new Rectangle2D.Double(from, box.getMinY(), box.getWidth() / 2, box.getHeight()));
        field(g, view, of);
        g.setClip(clip);
    }

    private static void name(Graphics2D g, SectionView view, String text, double x) {
        double w = g.getFontMetrics(Theme.medium(SIZE)).stringWidth(text);
        double y = view.box().getMinY() + SIDE;
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(x, y, w + 8, SIZE + 6));
        g.setColor(Theme.INK);
        Picture.fitted(g, Theme.medium(SIZE), text, x + 4, y + SIZE + 1, w + 1, 0);
    }

    /** The largest picture to equal scale that leaves room for axes, names and legend, centred. */
    private SectionView view(Rectangle2D area) {
        double[] r = field.r();
        double[] z = field.z();
        double radius = r[r.length - 1];
        double height = z[z.length - 1] - z[0];
        double free = area.getWidth() - LEFT - NAMES_WIDTH - LEGEND_WIDTH;
        double scale = Math.min(free / (2 * radius), (area.getHeight() - BOTTOM - 8) / height);
        double w = 2 * radius * scale;
        double h = height * scale;
        double x = area.getX() + LEFT + (free - w) / 2;
        double y = area.getY() + 6 + (area.getHeight() - BOTTOM - 8 - h) / 2;
        return new SectionView(new Rectangle2D.Double(x, y, w, h), x + w / 2, y + z[z.length - 1] * scale, scale);
    }

    private void shade(Graphics2D g, SectionView view, FieldPicture of) {
        Rectangle2D box = view.box();
        double[] columns = new double[(int) Math.ceil(box.getWidth())];
        double[] rows = new double[(int) Math.ceil(box.getHeight())];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = Math.abs((i + 0.5) / columns.length - 0.5) * box.getWidth() / view.scale();
        }
        double[] z = field.z();
        for (int j = 0; j < rows.length; j++) {
            rows[j] = z[z.length - 1] - (j + 0.5) / rows.length * box.getHeight() / view.scale();
        }
        ScaleDrawing.image(g, shades.image(of.r(), of.z(), of.strength(), columns, rows), box);
    }

    private void fluxLines(Graphics2D g, SectionView view, FieldPicture of) {
        if (!(step > 0)) {
            return;
        }
        DoubleSummaryStatistics range = range(of);
        Path2D all = new Path2D.Double();
        for (int k = (int) Math.floor(range.getMin() / step); (k + 0.5) * step < range.getMax(); k++) {
            for (double[] line : Contours.lines(of.r(), of.z(), of.flux(), (k + 0.5) * step)) {
                append(all, line, view, 1);
                append(all, line, view, -1);
            }
        }
        g.setColor(Theme.INK);
        g.setStroke(Theme.line(0.75));
        g.draw(all);
    }

    private static void append(Path2D path, double[] line, SectionView view, int side) {
        double lastX = Double.NaN;
        double lastY = Double.NaN;
        for (int i = 0; i < line.length; i += 2) {
            double x = view.x(side * line[i]);
            double y = view.y(line[i + 1]);
            if (i == 0) {
                path.moveTo(x, y);
            } else if (i + 2 < line.length && Math.hypot(x - lastX, y - lastY) < LEAST_STEP) {
                continue;
            } else {
                path.lineTo(x, y);
            }
            lastX = x;
            lastY = y;
        }
    }

    private void names(Graphics2D g, SectionView view) {
        PartNames names = new PartNames(view);
        field.parts().forEach(names::add);
        field.ball().ifPresent(names::add);
        names.addWinding(field.winding());
        names.draw(g, NAMES_WIDTH - 22);
    }
}
