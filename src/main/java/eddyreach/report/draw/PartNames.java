package eddyreach.report.draw;

import eddyreach.engine.core.FieldPicture;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Names beside a section through the axis. A part whose line to the edge of the drawing is free has a leader; what lies inside the pot, and the
 * core itself, is named by a sample of its ground, so that no leader runs across the core.
 */
final class PartNames {

    private static final double GAP = 15;
    private static final double SAMPLE = 9;
    private static final Font FONT = Theme.text(10.5);

    private final SectionView view;
    private final List<Part> parts = new ArrayList<>();
    private final List<Name> led = new ArrayList<>();
    private final Map<String, Role> samples = new LinkedHashMap<>();

    /** A name and the point of the part it belongs to. */
    private record Name(String text, double x, double y) {}

    PartNames(SectionView view) {
        this.view = view;
        led.add(new Name("active face", view.box().getMaxX() - 3, view.y(0)));
    }

    void add(Part part) {
        parts.add(part);
    }

    void add(FieldPicture.Ball ball) {
        double half = ball.radius() * view.scale();
        Rectangle2D round = new Rectangle2D.Double(view.x(0), view.y(ball.z()) - half, half, 2 * half);
        lead(ball.name(), round.createIntersection(view.box()));
    }

    void addWinding(Section winding) {
        if (!view.rectangle(winding, 1).isEmpty()) {
            samples.put("winding", Role.WINDING);
        }
    }

    private void sort() {
        // a plated part has thin rings on every side, whose names would hide everything
        boolean plated = parts.stream().filter(this::thin).count() > 2;
        for (Part part : parts) {
            // one name for all rings of a wall
            boolean ringOfWall = part.role() == Role.MOUNT && part.name().matches("wall [0-9]+");
            Rectangle2D shape = view.rectangle(part.section(), 1);
            if (shape.isEmpty() || ringOfWall || plated && thin(part)) {
                continue;
            }
            if (part.role() == Role.CORE) {
                samples.put("core", Role.CORE);
            } else if (parts.stream().anyMatch(p -> p.role() == Role.CORE && hides(p.section(), part.section()))) {
                samples.put(part.name(), part.role());
            } else {
                lead(part.name(), shape);
            }
        }
    }

    /** Whether a core's section lies farther out at the middle of another part. */
    private static boolean hides(Section core, Section part) {
        double middle = (part.z0() + part.z1()) / 2;
        return core.r1() > part.r1() && core.z0() <= middle && middle <= core.z1();
    }

    private void lead(String text, Rectangle2D shape) {
        if (!shape.isEmpty()) {
            double x = Math.max(shape.getCenterX(), shape.getMaxX() - 12);
            led.add(new Name(text, x, shape.getCenterY()));
        }
    }

    /**
     * Draws the names in a column to the right of the drawing.
     *
     * @param width of the column
     */
    void draw(Graphics2D g, double width) {
        sort();
        Rectangle2D box = view.box();
        led.sort(Comparator.comparingDouble(Name::y).thenComparing(Comparator.comparingDouble(Name::x)));
        double column = box.getMaxX() + 16;
        double bottom = box.getMaxY() - 4 - samples.size() * GAP;
        boolean tall = led.stream().anyMatch(n -> split(g, n.text(), width) > 0);
        double[] wanted = led.stream().mapToDouble(Name::y).toArray();
        double[] y = LabelColumn.apart(wanted, tall ? 1.7 * GAP : GAP, box.getMinY() + 6, bottom - 6);
        for (int i = 0; i < y.length; i++) {
            Name name = led.get(i);
            g.setColor(Theme.INK);
            g.setStroke(Theme.line(0.6));
            Path2D leader = new Path2D.Double();
            leader.moveTo(name.x(), name.y());
            leader.lineTo(box.getMaxX() + 3, name.y() + (y[i] - name.y()) * 0.6);
            leader.lineTo(column - 3, y[i]);
            g.draw(leader);
            g.fill(new Ellipse2D.Double(name.x() - 1.6, name.y() - 1.6, 3.2, 3.2));
            text(g, name.text(), column, y[i], width);
        }
        for (Map.Entry<String, Role> sample : samples.entrySet()) {
            bottom += GAP;
            Rectangle2D square = new Rectangle2D.Double(column, bottom - GAP / 2 - SAMPLE / 2, SAMPLE, SAMPLE);
            PartDrawing.sample(g, square, sample.getValue());
            g.setColor(Theme.INK);
            double left = column + SAMPLE + 5;
            Picture.fitted(g, FONT, sample.getKey(), left, bottom - GAP / 2 + 3.7, width - SAMPLE - 5, 0);
        }
    }

    /** A name on one line, or on two when it is too long. */
    private static void text(Graphics2D g, String text, double x, double y, double width) {
        int at = split(g, text, width);
        if (at < 0) {
            Picture.fitted(g, FONT, text, x, y + 3.7, width, 0);
        } else {
            Picture.fitted(g, FONT, text.substring(0, at), x, y - 2.3, width, 0);
            Picture.fitted(g, FONT, text.substring(at + 1), x, y + 9.7, width, 0);
        }
    }

    /** The space at which a name too long for one line is broken, after a word rather than within a size; -1 if none. */
    private static int split(Graphics2D g, String text, double width) {
        if (g.getFontMetrics(FONT).stringWidth(text) <= width) {
            return -1;
        }
        int at = text.lastIndexOf(' ');
        while (at > 0
                && (g.getFontMetrics(FONT).stringWidth(text.substring(0, at)) > width
                        || !text.substring(0, at).matches(".*\\p{L}{2},?"))) {
            at = text.lastIndexOf(' ', at - 1);
        }
        return at;
    }

    private boolean thin(Part part) {
        Section s = part.section();
        return part.role() == Role.TARGET && Math.min(s.r1() - s.r0(), s.z1() - s.z0()) * view.scale() < 1;
    }
}
