package eddyreach.kinds.mount;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.values.MetricThread;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.draw.PartDrawing;
import eddyreach.report.draw.SectionView;
import eddyreach.report.draw.Theme;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The body of a switch as one sees it cut open: cap and filling, in which the core sits, and the barrel with its thread. Cap and filling are
 * no metal and are not computed; the thread is computed as a smooth tube of its pitch diameter.
 *
 * @param model the switch
 */
record BodyDrawing(SwitchModel model) {

    private static final Color FILLING = new Color(0xf1eee6);
    private static final Color CAP = new Color(0xb9b3a4);

    /** Lower end of what is drawn, m; without a housing that of core and winding. */
    private double rear() {
        return model.rearEnd()
                .orElseGet(() -> model.parts().stream()
                        .mapToDouble(p -> p.section().z0())
                        .reduce(model.winding().section().z0(), Math::min));
    }

    /** The tube that carries the thread: the outermost one of the housing. */
    private boolean threaded(Part p) {
        return p.role() == Role.HOUSING
                && model.thread().isPresent()
                && p.section().r1() > model.bodyDiameter() / 2 - 1e-9;
    }

    void draw(Graphics2D g, SectionView view) {
        double r = model.bodyDiameter() / 2;
        Rectangle2D all = new Rectangle2D.Double(view.x(-r), view.y(0), 2 * r * view.scale(), -rear() * view.scale());
        g.setColor(FILLING);
        g.fill(all);
        g.setColor(CAP);
        g.setStroke(Theme.line(1.2));
        g.draw(all);
        for (Part part : model.parts()) {
            if (threaded(part)) {
                Area tube = barrel(view, part.section(), model.thread().orElseThrow());
                g.setColor(Color.WHITE);
                g.fill(tube);
                g.setColor(PartDrawing.ground(Role.HOUSING));
                g.fill(tube);
                g.setColor(PartDrawing.edge(Role.HOUSING));
                g.setStroke(Theme.line(1));
                g.draw(tube);
            } else {
                PartDrawing.fill(g, view, part);
                PartDrawing.outline(g, view, part);
            }
        }
        PartDrawing.winding(g, view, model.winding().section());
    }

    /** Both cut sides of the barrel, with the profile of the thread. */
    private static Area barrel(SectionView view, Section s, MetricThread thread) {
        Area area = new Area();
        double crest = thread.nominal() / 2;
        double root = thread.minor() / 2;
        for (int side = -1; side <= 1; side += 2) {
            Path2D path = new Path2D.Double();
            path.moveTo(view.x(side * s.r0()), view.y(s.z1()));
            path.lineTo(view.x(side * root), view.y(s.z1()));
            double z = s.z1();
            // half a pitch to the crest and half a pitch back
            while (z - thread.pitch() >= s.z0()) {
                path.lineTo(view.x(side * crest), view.y(z - thread.pitch() / 2));
                path.lineTo(view.x(side * root), view.y(z - thread.pitch()));
                z -= thread.pitch();
            }
            path.lineTo(view.x(side * root), view.y(s.z0()));
            path.lineTo(view.x(side * s.r0()), view.y(s.z0()));
            path.closePath();
            area.add(new Area(path));
        }
        return area;
    }

    /** A hexagon nut cut across its corners, with its chamfers; its thread engages with the body's. */
    static Area nut(SectionView view, Section s) {
        double chamfer = Math.min(0.15 * (s.z1() - s.z0()), 0.12 * s.r1());
        double flat = 2 * chamfer;
        Area area = new Area();
        for (int side = -1; side <= 1; side += 2) {
            Path2D path = new Path2D.Double();
            path.moveTo(view.x(side * s.r0()), view.y(s.z1()));
            path.lineTo(view.x(side * (s.r1() - flat)), view.y(s.z1()));
            path.lineTo(view.x(side * s.r1()), view.y(s.z1() - chamfer));
            path.lineTo(view.x(side * s.r1()), view.y(s.z0() + chamfer));
            path.lineTo(view.x(side * (s.r1() - flat)), view.y(s.z0()));
            path.lineTo(view.x(side * s.r0()), view.y(s.z0()));
            path.closePath();
            area.add(new Area(path));
        }
        return area;
    }
}
