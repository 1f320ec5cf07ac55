package eddyreach.report.draw;

import eddyreach.engine.core.FieldPicture;
import eddyreach.geometry.Part;
import eddyreach.model.values.Body;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.report.words.Labels;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A target beside the axis of the switch, to scale, with its offset and its distance.
 *
 * @param model the switch
 * @param target the target, with a radius and an offset
 * @param distance at which it is drawn, m
 */
public record OffAxisDrawing(SwitchModel model, Target target, double distance) implements Picture.Content {

    private static final double SIDE = 70;
    private static final double TOP = 34;
    private static final double BOTTOM = 8;
    private static final double ABOVE_BOX = 14;

    /** How much of a large target is shown, in diameters of the face. */
    private static final double SHOWN = 1.5;

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        double face = model.faceDiameter();
        double left = Math.min(-face / 2, Math.max(target.offset() - target.radius(), -SHOWN * face)) - 0.1 * face;
        double right = Math.max(face / 2, target.offset() + Math.min(target.radius(), SHOWN * face)) + 0.1 * face;
        double high = distance + Math.min(target.thickness(), SHOWN * face) + 0.1 * face;
        double low = 1.5 * model.winding().section().z0();
        double scale = Math.min(
                (area.getWidth() - 2 * SIDE) / (right - left), (area.getHeight() - TOP - BOTTOM) / (high - low));
        double width = (right - left) * scale;
        double height = (high - low) * scale;
        double x = area.getX() + (area.getWidth() - width) / 2;
        double y = area.getY() + TOP + (area.getHeight() - TOP - BOTTOM - height) / 2;
        Rectangle2D box = new Rectangle2D.Double(x, y, width, height);
        SectionView own = new SectionView(box, x - left * scale, y + high * scale, scale);
        SectionView beside = new SectionView(box, own.x(target.offset()), own.y(distance), scale);
        parts(g, own, model.parts());
        PartDrawing.winding(g, own, model.winding().section());
        target(g, beside);
        axis(g, own.x(0), box);
        axis(g, beside.x(0), box);
        g.setColor(Theme.INK);
        g.setStroke(Theme.line(1.2));
        g.draw(new Line2D.Double(box.getX(), own.y(0), box.getMaxX(), own.y(0)));
        Picture.fitted(g, Theme.text(9), "active face", box.getX() - 4, own.y(0) + 3, SIDE - 8, 1);
        DimensionLine.across(
                g, own.x(0), beside.x(0), box.getY() - ABOVE_BOX, Labels.millimetres(target.offset()) + " mm");
        double edge = box.getMaxX() + 24;
        DimensionLine.thin(g);
        g.draw(new Line2D.Double(box.getMaxX(), own.y(0), edge + 3, own.y(0)));
        double nearest = target.body() instanceof Body.Ball ? 0 : target.radius();
        g.draw(new Line2D.Double(Math.min(box.getMaxX(), beside.x(nearest)), beside.y(0), edge + 3, beside.y(0)));
        DimensionLine.along(g, edge, own.y(0), beside.y(0), Labels.millimetres(distance) + " mm");
    }

    private void target(Graphics2D g, SectionView view) {
        Shape clip = g.getClip();
        g.clip(view.box());
        if (target.body() instanceof Body.Ball ball) {
            FieldPicture.Ball shape = new FieldPicture.Ball(target.id(), ball.radius(), ball.radius(), 1);
            PartDrawing.ball(g, view, shape, true);
            PartDrawing.ball(g, view, shape, false);
        } else {
            parts(g, view, target.parts());
        }
        g.setClip(clip);
    }

    private static void parts(Graphics2D g, SectionView view, List<Part> parts) {
        for (Part part : parts) {
            PartDrawing.fill(g, view, part);
        }
        for (Part part : parts) {
            PartDrawing.outline(g, view, part);
        }
    }

    private static void axis(Graphics2D g, double x, Rectangle2D box) {
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.dashed(0.7, 9, 3));
        g.draw(new Line2D.Double(x, box.getY() - ABOVE_BOX - 5, x, box.getMaxY()));
    }
}
