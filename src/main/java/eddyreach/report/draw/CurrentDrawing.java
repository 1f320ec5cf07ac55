package eddyreach.report.draw;

import eddyreach.engine.core.CurrentPicture;
import eddyreach.geometry.Section;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Target;
import eddyreach.report.words.Labels;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * Eddy-current density inside a target over radius and depth, the depth drawn larger where the target is thin.
 *
 * @param current what is drawn
 * @param target the target, for the borders of its layers
 */
public record CurrentDrawing(CurrentPicture current, Optional<Target> target) implements Picture.Content {

    private static final double LEFT = 58;
    private static final double RIGHT = 120;
    private static final double TOP = 22;
    private static final double BOTTOM = 40;

    /** Below this the picture is drawn to equal scale rather than slightly distorted. */
    private static final double LEAST_MAGNIFICATION = 1.5;

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        double[] r = current.r();
        double[] z = current.z();
        double radius = r[r.length - 1];
        double depth = z[z.length - 1];
        double w = area.getWidth() - LEFT - RIGHT;
        double h = area.getHeight() - TOP - BOTTOM;
        double magnification = h / depth / (w / radius);
        if (magnification < LEAST_MAGNIFICATION) {
            double scale = Math.min(w / radius, h / depth);
            w = radius * scale;
            h = depth * scale;
            magnification = 1;
        }
        Rectangle2D box = new Rectangle2D.Double(
                area.getX() + LEFT + (area.getWidth() - LEFT - RIGHT - w) / 2, area.getY() + TOP, w, h);
        ShadeScale ramp = ShadeScale.linear(current.density());
        shade(g, box, ramp);
        lines(g, box);
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.line(0.8));
        g.draw(box);
        Ruler.below(g, box, 0, radius * Labels.MM, Labels.RADIUS);
        String times = magnification > 1 ? " (drawn " + Labels.significant(magnification, 2) + " times larger)" : "";
        boolean thin = depth < Labels.THIN;
        Ruler.left(
                g,
                box,
                thin ? depth * Labels.MICROMETRE : depth * Labels.MM,
                0,
                (thin ? Labels.DEPTH_THIN : Labels.DEPTH) + times);
        g.setColor(Theme.MUTED);
        Picture.fitted(g, Theme.text(10), "near face, towards the switch", box.getX(), box.getY() - 7, w, 0);
        Rectangle2D bar = new Rectangle2D.Double(box.getMaxX() + 26, area.getY() + 44, 16, area.getHeight() - 130);
        ramp.legend(g, bar, Labels.CURRENT_DENSITY, Labels.AMPERE_PER_MM2);
    }

    private void shade(Graphics2D g, Rectangle2D box, ShadeScale ramp) {
        double[] r = current.r();
        double[] z = current.z();
        double[] columns = new double[(int) Math.ceil(box.getWidth())];
        double[] rows = new double[(int) Math.ceil(box.getHeight())];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = (i + 0.5) / columns.length * r[r.length - 1];
        }
        for (int j = 0; j < rows.length; j++) {
            rows[j] = (j + 0.5) / rows.length * z[z.length - 1];
        }
        ScaleDrawing.image(g, ramp.image(r, z, current.density(), columns, rows), box);
    }

    /** The borders of rings inside the picture. */
    private void outlines(Graphics2D g, Rectangle2D box, Target t) {
        double perR = box.getWidth() / current.r()[current.r().length - 1];
        double perZ = box.getHeight() / current.z()[current.z().length - 1];
        Path2D path = new Path2D.Double();
        if (t.body() instanceof Body.Rings rings) {
            for (Ring ring : rings.rings()) {
                Section s = ring.section();
                path.append(
                        new Rectangle2D.Double(
                                box.getX() + s.r0() * perR,
                                box.getY() + s.z0() * perZ,
                                (s.r1() - s.r0()) * perR,
                                (s.z1() - s.z0()) * perZ),
                        false);
            }
        }
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(box);
        inside.setColor(Theme.INK);
        inside.setStroke(Theme.line(1));
        inside.draw(path);
        inside.dispose();
    }

    /** Skin depth, and the borders and names of layers. */
    private void lines(Graphics2D g, Rectangle2D box) {
        double depth = current.z()[current.z().length - 1];
        if (target.isPresent() && target.get().layers().size() > 1) {
            double z = 0;
            for (Layer layer : target.get().layers()) {
                g.setColor(Theme.INK);
                double y = box.getY() + z / depth * box.getHeight();
                if (z > 0 && z < depth) {
                    g.setStroke(Theme.line(1));
                    g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
                }
                if (z < depth) {
                    String name = layer.material().name();
                    double middle = y + Math.min(layer.thickness(), depth - z) / depth * box.getHeight() / 2;
                    Picture.fitted(g, Theme.text(10), name, box.getX() + 6, middle + 3.5, box.getWidth() - 12, 0);
                }
                z += layer.thickness();
            }
        }
        target.ifPresent(t -> outlines(g, box, t));
        double skin = target.map(Target::frontDepth).orElse(0.0) + current.skinDepth();
        if (skin < depth) {
            double y = box.getY() + skin / depth * box.getHeight();
            g.setColor(Theme.INK);
            g.setStroke(Theme.dashed(1.2, 7, 4));
            g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
            String text = "skin depth " + Labels.length(current.skinDepth());
            Picture.fitted(
                    g,
                    Theme.medium(10.5),
                    text,
                    box.getMaxX() - 8,
                    y + (y < box.getY() + 16 ? 13 : -5),
                    box.getWidth() / 2,
                    1);
        }
    }
}
