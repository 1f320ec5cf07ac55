package eddyreach.report.draw;

import eddyreach.engine.core.CurrentPicture;
import eddyreach.geometry.Section;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Target;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Eddy-current density inside a target over radius and depth, the depth drawn larger where the target is thin.
 *
 * @param current what is drawn
 * @param target the target, for the borders of its parts
 */
public record CurrentDrawing(CurrentPicture current, Optional<Target> target) implements Picture.Content {

    private static final double LEFT = 58;
    private static final double RIGHT = 120;
    private static final double TOP = 22;
    private static final double BOTTOM = 40;

    /** Below this the picture is drawn to equal scale rather than slightly distorted. */
    private static final double LEAST_MAGNIFICATION = 1.5;

    /** Height of a line of text. */
    private static final double LINE = 14;

    /** A conductor narrower than this, a plated edge say, has no line of its own. */
    private static final double LEAST_WIDTH = 12;

    /** Between a label and an edge. */
    private static final double ASIDE = 8;

    private static final Font SKIN = Theme.medium(10.5);
    private static final Color HALO = new Color(255, 255, 255, 210);

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
        ShadeScale shades = ShadeScale.linear(current.density());
        shade(g, box, shades);
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
        shades.legend(g, bar, Labels.CURRENT_DENSITY, Labels.AMPERE_PER_MM2);
    }

    private void shade(Graphics2D g, Rectangle2D box, ShadeScale shades) {
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
        ScaleDrawing.image(g, shades.image(r, z, current.density(), columns, rows), box);
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

    /** The borders and names of layers, and each conductor's skin depth where it ends inside it. */
    private void lines(Graphics2D g, Rectangle2D box) {
        target.ifPresent(t -> outlines(g, box, t));
        target.filter(t -> t.layers().size() > 1).ifPresent(t -> layers(g, box, t.layers()));
        double depth = current.z()[current.z().length - 1];
        double perR = box.getWidth() / current.r()[current.r().length - 1];
        double perZ = box.getHeight() / depth;
        double last = Double.NEGATIVE_INFINITY;
        for (CurrentPicture.Skin skin : current.skins()) {
            Section s = skin.where();
            double z = s.z0() + skin.depth();
            double width = (Math.min(s.r1() * perR, box.getWidth()) - s.r0() * perR);
            if (z >= Math.min(s.z1(), depth) || width < LEAST_WIDTH) {
                continue;
            }
            double left = box.getX() + s.r0() * perR;
            double y = box.getY() + z * perZ;
            g.setColor(Theme.INK);
            g.setStroke(Theme.dashed(1.2, 7, 4));
            g.draw(new Line2D.Double(left, y, left + width, y));
            String text = "skin depth " + Labels.length(skin.depth());
            boolean above = skin.depth() * perZ > LINE && y - LINE > last;
            double needed = g.getFontMetrics(SKIN).stringWidth(text) + 2 * ASIDE;
            double base = above ? y - 5 : y + 13;
            if (needed < width) {
                Picture.fitted(g, SKIN, text, left + width - ASIDE, base, width, 1);
            } else if (left - needed > box.getX()) {
                Picture.fitted(g, SKIN, text, left - ASIDE, y + 4, needed, 1);
            } else {
                Picture.fitted(g, SKIN, text, left + width + ASIDE, y + 4, needed, 0);
            }
            last = above ? y : y + LINE;
        }
    }

    /** Borders, and names beside the left edge; names of thin layers are moved apart and led to their place. */
    private void layers(Graphics2D g, Rectangle2D box, List<Layer> layers) {
        double perZ = box.getHeight() / current.z()[current.z().length - 1];
        List<String> names = new ArrayList<>();
        List<Double> middles = new ArrayList<>();
        double y = box.getY();
        for (Layer layer : layers) {
            double end = Math.min(box.getMaxY(), y + layer.thickness() * perZ);
            if (y >= box.getMaxY()) {
                break;
            }
            g.setColor(Theme.INK);
            g.setStroke(Theme.line(1));
            if (end < box.getMaxY()) {
                g.draw(new Line2D.Double(box.getX(), end, box.getMaxX(), end));
            }
            names.add(layer.material().name());
            middles.add((y + end) / 2);
            y = end;
        }
        double[] wanted = middles.stream().mapToDouble(m -> m).toArray();
        double[] at = LabelColumn.apart(wanted, LINE, box.getMinY() + LINE / 2, box.getMaxY() - LINE / 2);
        for (int i = 0; i < at.length; i++) {
            double x = box.getX() + 30;
            g.setColor(Theme.INK);
            g.setStroke(Theme.line(0.6));
            g.draw(new Line2D.Double(box.getX(), wanted[i], x - 3, at[i]));
            double w = g.getFontMetrics(Theme.text(10)).stringWidth(names.get(i));
            g.setColor(HALO);
            g.fill(new Rectangle2D.Double(x - 2, at[i] - LINE / 2 + 1, w + 4, LINE - 2));
            g.setColor(Theme.INK);
            Picture.fitted(g, Theme.text(10), names.get(i), x, at[i] + 3.5, box.getWidth() / 2, 0);
        }
    }
}
