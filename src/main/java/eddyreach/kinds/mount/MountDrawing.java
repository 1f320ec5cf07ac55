package eddyreach.kinds.mount;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.draw.DimensionLine;
import eddyreach.report.draw.PartDrawing;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.SectionView;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The dimensioned section of a mount, to scale, with a title block. It is no drawing for manufacture, and says so.
 *
 * @param model the switch
 * @param found the mount and what was found for it
 */
record MountDrawing(SwitchModel model, MountCase found) implements Picture.Content {

    private static final double BLOCK = 176;
    private static final double ROW = 17;
    private static final double COLUMN = 30;
    private static final double HATCH = 7;

    /** Half width of the picture over the distance of an edge. */
    static final double EDGE_SHOWN = 1.25;

    /** So many times as wide as what lies near the switch a picture gets to show a plate whole. */
    private static final double WHOLE = 3;

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        List<MountDimension> all = MountDimension.of(found.mount(), model);
        List<MountDimension> above = of(all, k -> k == MountDimension.Kind.DIAMETER_ABOVE);
        List<MountDimension> below = of(all, MountDimension.Kind::below);
        List<MountDimension> heights = of(all, k -> k == MountDimension.Kind.HEIGHT);
        SectionView view = view(area, above.size(), below.size(), heights.size());
        section(g, view);
        for (int i = 0; i < above.size(); i++) {
            across(g, view, above.get(i), view.box().getMinY() - 6 - ROW * i);
        }
        for (int i = 0; i < below.size(); i++) {
            across(g, view, below.get(i), view.box().getMaxY() + 16 + ROW * i);
        }
        for (int i = 0; i < heights.size(); i++) {
            along(g, view, heights.get(i), view.box().getMaxX() + 22 + COLUMN * i);
        }
        block(g, area);
    }

    private static List<MountDimension> of(List<MountDimension> all, Predicate<MountDimension.Kind> kind) {
        return all.stream().filter(d -> kind.test(d.kind())).toList();
    }

    private SectionView view(Rectangle2D area, int above, int below, int heights) {
        double radius = radius();
        double bottom = bottom();
        double top = top();
        double left = 8;
        double right = BLOCK + 24 + COLUMN * heights;
        double head = 10 + ROW * above;
        double foot = 10 + ROW * below;
        double scale = Math.min(
                (area.getWidth() - left - right) / (2 * radius), (area.getHeight() - head - foot) / (top - bottom));
        double w = 2 * radius * scale;
        double h = (top - bottom) * scale;
        double x = area.getX() + left + (area.getWidth() - left - right - w) / 2;
        double y = area.getY() + head + (area.getHeight() - head - foot - h) / 2;
        return new SectionView(new Rectangle2D.Double(x, y, w, h), x + w / 2, y + top * scale, scale);
    }

    private double radius() {
        double widest = Stream.concat(
                        found.mount().wall().stream()
                                .flatMap(w -> w.openings().stream().map(Mount.Opening::front)),
                        found.mount().rings().stream().map(p -> 2 * p.section().r1()))
                .reduce(model.faceDiameter(), Math::max);
        double near = 0.62 * widest + 0.3 * model.faceDiameter();
        // what has an end is drawn whole unless the switch would be too small to see
        double whole = Stream.of(
                        found.mount().wall().map(Mount.Wall::diameter),
                        found.mount().cover().map(Mount.Cover::diameter),
                        found.mount().background().map(b -> b.plate().diameter()))
                .flatMap(Optional::stream)
                .filter(Double::isFinite)
                .reduce(0.0, Math::max);
        double free = Math.max(near, Math.min(WHOLE * near, 0.55 * whole));
        return found.mount().edged()
                ? Math.max(free, EDGE_SHOWN * found.mount().wall().orElseThrow().edge())
                : free;
    }

    private double bottom() {
        double lowest = found.parts().stream()
                .map(Part::section)
                .mapToDouble(Section::z0)
                .min()
                .orElse(0);
        return Math.min(lowest, -model.faceDiameter()) - 0.15 * model.faceDiameter();
    }

    private double top() {
        double highest = found.parts().stream()
                .map(Part::section)
                .mapToDouble(Section::z1)
                .max()
                .orElse(0);
        double background = found.mount()
                .background()
                .map(b -> b.distance() + b.plate().thickness())
                .orElse(0.0);
        return Math.max(Math.max(highest, 0), background) + 0.25 * model.faceDiameter();
    }

    private void section(Graphics2D g, SectionView view) {
        Shape clip = g.getClip();
        g.clip(view.box());
        found.mount().wall().ifPresent(w -> metal(g, wall(w, view), false));
        found.parts().stream()
                .filter(p -> !p.name().startsWith("wall"))
                .forEach(p -> metal(
                        g,
                        p.name().equals("nut") ? BodyDrawing.nut(view, p.section()) : rectangles(view, endless(p)),
                        true));
        new BodyDrawing(model).draw(g, view);
        found.mount().background().ifPresent(b -> {
            double r = Math.min(b.plate().diameter() / 2, 2 * radius());
            Section s = new Section(0, r, b.distance(), b.distance() + b.plate().thickness());
            metal(g, rectangles(view, s), true);
        });
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.dashed(0.7, 9, 3));
        g.draw(new Line2D.Double(
                view.x(0), view.box().getMinY(), view.x(0), view.box().getMaxY()));
        g.setColor(Theme.INK);
        g.setStroke(Theme.dashed(1, 6, 4));
        g.draw(new Line2D.Double(view.box().getMinX(), view.y(0), view.box().getMaxX(), view.y(0)));
        g.setClip(clip);
        g.setColor(Theme.INK);
        Picture.fitted(g, Theme.text(9), "active face", view.box().getMinX() + 3, view.y(0) - 3, 60, 0);
    }

    /** A cover without an end goes on beyond the picture. */
    private Section endless(Part p) {
        boolean cut = p.name().equals("cover")
                && found.mount()
                        .cover()
                        .map(c -> Double.isInfinite(c.diameter()))
                        .orElse(false);
        Section s = p.section();
        return cut ? new Section(s.r0(), 2 * radius(), s.z0(), s.z1()) : s;
    }

    private static Area rectangles(SectionView view, Section s) {
        Area area = new Area();
        for (int side = -1; side <= 1; side += 2) {
            double x = side > 0 ? view.x(s.r0()) : view.x(-s.r1());
            area.add(new Area(new Rectangle2D.Double(
                    x, view.y(s.z1()), (s.r1() - s.r0()) * view.scale(), (s.z1() - s.z0()) * view.scale())));
        }
        return area;
    }

    /** The wall with its true outline: what is cut for the computation goes on here. */
    private Area wall(Mount.Wall w, SectionView view) {
        double surface = found.mount().surface();
        double end = Math.min(w.diameter() / 2, 2 * radius());
        Area area = new Area();
        for (int side = -1; side <= 1; side += 2) {
            double outer = side > 0 ? Math.min(end, w.edge()) : end;
            Path2D path = new Path2D.Double();
            path.moveTo(view.x(side * outer), view.y(surface));
            double depth = 0;
            for (Mount.Opening o : w.openings()) {
                path.lineTo(view.x(side * o.front() / 2), view.y(surface - o.from()));
                path.lineTo(view.x(side * o.back() / 2), view.y(surface - o.to()));
                depth = o.to();
            }
            path.lineTo(view.x(side * w.bore() / 2), view.y(surface - depth));
            path.lineTo(view.x(side * w.bore() / 2), view.y(surface - w.thickness()));
            path.lineTo(view.x(side * outer), view.y(surface - w.thickness()));
            path.closePath();
            area.add(new Area(path));
        }
        return area;
    }

    private static void metal(Graphics2D g, Area area, boolean backward) {
        g.setColor(PartDrawing.ground(Role.MOUNT));
        g.fill(area);
        Shape clip = g.getClip();
        g.clip(area);
        Rectangle2D box = area.getBounds2D();
        g.setColor(PartDrawing.edge(Role.MOUNT));
        g.setStroke(Theme.line(0.5));
        Path2D lines = new Path2D.Double();
        double h = box.getHeight();
        for (double x = box.getMinX() - h; x < box.getMaxX() + h; x += HATCH) {
            lines.moveTo(x, backward ? box.getMinY() : box.getMaxY());
            lines.lineTo(x + h, backward ? box.getMaxY() : box.getMinY());
        }
        g.draw(lines);
        g.setClip(clip);
        g.setStroke(Theme.line(1.3));
        g.draw(area);
    }

    private static void across(Graphics2D g, SectionView view, MountDimension d, double y) {
        double x0 = Math.max(view.box().getMinX(), view.x(d.from()));
        double x1 = Math.min(view.box().getMaxX(), view.x(d.to()));
        boolean whole = x1 == view.x(d.to());
        double feature = Math.max(view.box().getMinY(), Math.min(view.box().getMaxY(), view.y(d.at())));
        DimensionLine.thin(g);
        double over = y < feature ? -3 : 3;
        if (!whole) {
            DimensionLine.beyond(g, x0, x1, y, d.text());
            return;
        }
        // the axis is there already
        g.draw(new Line2D.Double(x0, d.kind() == MountDimension.Kind.EDGE_BELOW ? y - over : feature, x0, y + over));
        g.draw(new Line2D.Double(x1, feature, x1, y + over));
        DimensionLine.across(g, x0, x1, y, d.text());
    }

    private static void along(Graphics2D g, SectionView view, MountDimension d, double x) {
        double y0 = view.y(d.from());
        double y1 = view.y(d.to());
        DimensionLine.thin(g);
        double from = view.box().getMaxX() - 2;
        g.draw(new Line2D.Double(from, y0, x + 3, y0));
        g.draw(new Line2D.Double(from, y1, x + 3, y1));
        DimensionLine.along(g, x, y0, y1, d.text());
    }

    private void block(Graphics2D g, Rectangle2D area) {
        List<String> lines = new ArrayList<>();
        Mount mount = found.mount();
        lines.add(model.name());
        mount.wall().ifPresent(w -> lines.add("wall: " + w.material().name() + endless(w.diameter())));
        mount.cover().ifPresent(c -> lines.add("cover: " + c.material().name() + endless(c.diameter())));
        mount.rings().forEach(p -> lines.add(p.name() + ": " + p.material().name()));
        mount.background()
                .ifPresent(b -> lines.add("background: " + b.plate().material().name()));
        lines.add(position(mount).orElse("face level with the surface"));
        mount.wall()
                .filter(w -> mount.edged())
                .ifPresent(w -> lines.add("straight edge " + Labels.length(w.edge(), 4) + " from the axis"));
        lines.add("millimetres; " + (mount.edged() ? "else " : "") + "axisymmetric");
        double h = 15.0 * lines.size() + 40;
        double x = area.getMaxX() - BLOCK;
        double y = area.getMaxY() - h - 2;
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(x, y, BLOCK, h));
        g.setColor(Theme.INK);
        g.setStroke(Theme.line(1));
        g.draw(new Rectangle2D.Double(x, y, BLOCK, h));
        g.draw(new Line2D.Double(x, y + 22, x + BLOCK, y + 22));
        Picture.fitted(g, Theme.medium(11), mount.id(), x + 6, y + 15, BLOCK - 12, 0);
        for (int i = 0; i < lines.size(); i++) {
            Picture.fitted(g, Theme.text(9.5), lines.get(i), x + 6, y + 36 + 15 * i, BLOCK - 12, 0);
        }
        Picture.fitted(g, Theme.medium(9.5), "exploration, not for manufacture", x + 6, y + h - 6, BLOCK - 12, 0);
    }

    private static String endless(double diameter) {
        return Double.isInfinite(diameter) ? ", no end" : "";
    }

    private static Optional<String> position(Mount mount) {
        String by = Labels.length(Math.abs(mount.surface()));
        return mount.surface() == 0
                ? mount.wall().isPresent() ? Optional.empty() : Optional.of("no wall around the switch")
                : Optional.of(mount.surface() > 0 ? "face sunk by " + by : "face proud by " + by);
    }
}
