package eddyreach.report.draw;

import eddyreach.engine.core.FieldPicture;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Parts of revolution in a section through the axis, on both sides of it. */
public final class PartDrawing {

    private PartDrawing() {}

    private static Color tint(Role role) {
        return switch (role) {
            case WINDING -> new Color(0xa86a3a);
            case CORE -> new Color(0x4a5560);
            case HOUSING -> new Color(0xb08a2e);
            case MOUNT -> new Color(0x5f8f4e);
            case TARGET -> new Color(0xb4472b);
        };
    }

    /** Translucent ground of a role. */
    public static Color ground(Role role) {
        Color c = tint(role);
        return new Color(c.getRed(), c.getGreen(), c.getBlue(), 62);
    }

    /** Outlines of a role. */
    public static Color edge(Role role) {
        return tint(role).darker();
    }

    /** A part's ground. */
    public static void fill(Graphics2D g, SectionView view, Part part) {
        g.setColor(ground(part.role()));
        for (int side = -1; side <= 1; side += 2) {
            if (part.section().flare() > 0) {
                g.fill(leaning(view, part.section(), side));
                continue;
            }
            Rectangle2D shape = view.rectangle(part.section(), side);
            if (!shape.isEmpty()) {
                g.fill(shape);
            }
        }
    }

    /** A part's outline. */
    public static void outline(Graphics2D g, SectionView view, Part part) {
        g.setColor(edge(part.role()));
        g.setStroke(Theme.line(1.2));
        Section s = part.section();
        Path2D path = new Path2D.Double();
        for (int side = -1; side <= 1; side += 2) {
            if (s.flare() > 0) {
                path.append(leaning(view, s, side), false);
                continue;
            }
            Rectangle2D shape = view.rectangle(s, side);
            if (shape.isEmpty()) {
                continue;
            }
            // a part on the axis is one body: no line along the axis
            double inner = side > 0 ? shape.getMinX() : shape.getMaxX();
            double outer = side > 0 ? shape.getMaxX() : shape.getMinX();
            path.moveTo(inner, shape.getMinY());
            path.lineTo(outer, shape.getMinY());
            path.lineTo(outer, shape.getMaxY());
            path.lineTo(inner, shape.getMaxY());
            if (s.r0() > 0) {
                path.closePath();
            }
        }
        g.draw(path);
    }

    /** A section whose inner side leans, on one side of the axis, cut off at the box. */
    private static Area leaning(SectionView view, Section s, int side) {
        Path2D path = new Path2D.Double();
        path.moveTo(view.x(side * s.r0()), view.y(s.z0()));
        path.lineTo(view.x(side * s.r1()), view.y(s.z0()));
        path.lineTo(view.x(side * s.r1()), view.y(s.z1()));
        path.lineTo(view.x(side * s.innerAt(s.z1())), view.y(s.z1()));
        path.closePath();
        Area area = new Area(path);
        area.intersect(new Area(view.box()));
        return area;
    }

    /** A ball as it lies across the axis, cut off at the box: its ground or its outline. */
    static void ball(Graphics2D g, SectionView view, FieldPicture.Ball ball, boolean ground) {
        double r = ball.radius() * view.scale();
        Area shape = new Area(new Ellipse2D.Double(view.x(0) - r, view.y(ball.z()) - r, 2 * r, 2 * r));
        shape.intersect(new Area(view.box()));
        Color c = tint(Role.TARGET);
        g.setColor(ground ? new Color(c.getRed(), c.getGreen(), c.getBlue(), 62) : c.darker());
        g.setStroke(Theme.line(1.2));
        if (ground) {
            g.fill(shape);
        } else {
            g.draw(shape);
        }
    }

    /** The winding: hatched. */
    public static void winding(Graphics2D g, SectionView view, Section winding) {
        g.setColor(Theme.INK);
        for (int side = -1; side <= 1; side += 2) {
            Rectangle2D box = view.rectangle(winding, side);
            if (box.isEmpty()) {
                continue;
            }
            g.setColor(new Color(255, 255, 255, 150));
            g.fill(box);
            g.setColor(Theme.INK);
            g.setStroke(Theme.line(0.7));
            g.draw(hatch(box, 4));
            g.setStroke(Theme.line(1.1));
            g.draw(box);
        }
    }

    /** A sample of a part's ground; a winding's is hatched. */
    static void sample(Graphics2D g, Rectangle2D box, Role role) {
        g.setColor(ground(role));
        g.fill(box);
        g.setColor(edge(role));
        g.setStroke(Theme.line(0.8));
        if (role == Role.WINDING) {
            g.draw(hatch(box, 4));
        }
        g.draw(box);
    }

    /** Lines at 45 degrees inside a rectangle, a distance apart. */
    private static Path2D hatch(Rectangle2D box, double distance) {
        Path2D path = new Path2D.Double();
        double first = Math.ceil((box.getMinX() + box.getMinY()) / distance) * distance;
        for (double sum = first; sum < box.getMaxX() + box.getMaxY(); sum += distance) {
            double x0 = Math.max(box.getMinX(), sum - box.getMaxY());
            double x1 = Math.min(box.getMaxX(), sum - box.getMinY());
            path.moveTo(x0, sum - x0);
            path.lineTo(x1, sum - x1);
        }
        return path;
    }
}
