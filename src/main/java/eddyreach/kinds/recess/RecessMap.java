package eddyreach.kinds.recess;

import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountTarget;
import eddyreach.kinds.mount.SafeDimension;
import eddyreach.report.draw.ContourLabels;
import eddyreach.report.draw.Contours;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Ruler;
import eddyreach.report.draw.ScaleDrawing;
import eddyreach.report.draw.ShadeScale;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Maps of the switch-on distance over diameter and depth of a recess, one per material of the wall. */
record RecessMap(RecessResult result) implements Picture.Content {

    private static final double LEGEND = 112;
    private static final int PIXELS = 2;
    private static final double HATCH = 7;
    private static final double SYMBOL = 26;

    /** The ground of what is hatched. */
    private static final Color BLANK = new Color(0xf4f2f0);

    private static final Color LINE = new Color(0x24405e);
    private static final Color LIMIT = new Color(0xb4472b);
    private static final Stroke TENTH = Theme.line(2.2);
    private static final Stroke CAREFUL = Theme.dashed(1.5, 5, 3);

    /** A shift that stands for a latched cell, and the largest one shown: lines then run between the cells. */
    private static final double FAR = 0.3;

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        int n = result.panels().size();
        int columns = n == 4 ? 2 : Math.min(3, n);
        int rows = (n + columns - 1) / columns;
        double width = (area.getWidth() - LEGEND) / columns;
        double height = area.getHeight() / rows;
        ShadeScale shades = shades();
        for (int p = 0; p < n; p++) {
            double x = area.getX() + width * (p % columns);
            double y = area.getY() + height * (p / columns);
            Rectangle2D box = new Rectangle2D.Double(x + 50, y + 22, width - 62, height - 62);
            panel(g, box, result.panels().get(p), shades);
        }
        Rectangle2D bar =
                new Rectangle2D.Double(area.getMaxX() - LEGEND + 14, area.getY() + 34, 14, 0.32 * area.getHeight());
        shades.legend(g, bar, "on, mm", 1);
        legend(g, bar.getX() - 4, bar.getMaxY() + 30);
    }

    private ShadeScale shades() {
        double[] all = result.panels().stream()
                .flatMap(p -> p.rows().stream())
                .flatMap(List::stream)
                .flatMap(Optional::stream)
                .mapToDouble(c -> c.distance().on() * Labels.MM)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        if (all.length == 0) {
            return new ShadeScale(0, 1, false);
        }
        // the distance grows without limit towards a latched switch
        double high = Math.max(all[(int) (0.9 * (all.length - 1))], all[0] + 0.1);
        double step = Ruler.step(high - all[0], 6);
        return new ShadeScale(step * Math.floor(all[0] / step - 0.5), step * Math.ceil(high / step), false);
    }

    private void legend(Graphics2D g, double x, double y) {
        double at = y;
        Rectangle2D swatch = new Rectangle2D.Double(x, at - 8, SYMBOL, 16);
        g.setColor(BLANK);
        g.fill(swatch);
        hatch(g, swatch, (px, py) -> true);
        g.setColor(LIMIT);
        g.setStroke(Theme.line(1));
        g.draw(swatch);
        at = label(g, x, at, "latched");
        g.setColor(LIMIT);
        g.setStroke(TENTH);
        g.draw(new Line2D.Double(x, at, x + SYMBOL, at));
        at = label(g, x, at, "on moved by", "10 % of sr");
        g.setColor(LIMIT);
        g.setStroke(CAREFUL);
        g.draw(new Line2D.Double(x, at, x + SYMBOL, at));
        at = label(g, x, at, "half of the", "reserve used");
        drawn(g, x + SYMBOL / 2, at);
        boolean drawn = result.input().drawn().isPresent();
        at = label(g, x, at, drawn ? "on the" : "middle of", drawn ? "drawing" : "the map");
        if (result.panels().stream().anyMatch(p -> !found(p).isEmpty())) {
            proposed(g, x + SYMBOL / 2, at);
            at = label(g, x, at, "nearest safe");
        }
        if (result.done() < result.cells()) {
            missing(g, new Rectangle2D.Double(x, at - 7, SYMBOL, 14));
            label(g, x, at, "not", "computed");
        }
    }

    /** Writes beside a symbol at a height, and tells the height of the next one. */
    private static double label(Graphics2D g, double x, double y, String... lines) {
        g.setColor(Theme.INK);
        for (int i = 0; i < lines.length; i++) {
            double line = y + 3.5 + 12 * (i - (lines.length - 1) / 2.0);
            Picture.fitted(g, Theme.text(10), lines[i], x + SYMBOL + 7, line, LEGEND - SYMBOL - 14, 0);
        }
        return y + 31;
    }

    private void panel(Graphics2D g, Rectangle2D box, RecessResult.Panel panel, ShadeScale shades) {
        double[] x = Arrays.stream(result.diameters()).map(d -> d * Labels.MM).toArray();
        double[] y = Arrays.stream(result.depths()).map(d -> d * Labels.MM).toArray();
        View view = new View(box, x, y);
        double[][] on = RecessGrid.of(panel, c -> c.distance().on() * Labels.MM);
        double[][] used = RecessGrid.of(panel, RecessCell::used);
        double[][] shift = RecessGrid.of(panel, RecessMap::shift);
        g.setColor(Color.WHITE);
        g.fill(box);
        if (panel.done() > 0) {
            double[] columns = RecessGrid.even(x, (int) (PIXELS * box.getWidth()), false);
            double[] lines = RecessGrid.even(y, (int) (PIXELS * box.getHeight()), true);
            BufferedImage image = shades.image(x, y, RecessGrid.filled(on), columns, lines);
            for (int j = 0; j < lines.length; j++) {
                for (int i = 0; i < columns.length; i++) {
                    double px = box.getX() + (i + 0.5) / PIXELS;
                    double py = box.getY() + (j + 0.5) / PIXELS;
                    if (view.at(used, px, py) >= result.holds()) {
                        image.setRGB(i, j, BLANK.getRGB());
                    }
                }
            }
            ScaleDrawing.image(g, image, box);
        }
        Shape clip = g.getClip();
        g.clip(box);
        ContourLabels labels = new ContourLabels(box, spots(view, panel));
        isoLines(g, view, on, shades, labels);
        hatch(g, box, (px, py) -> view.at(used, px, py) >= result.holds());
        contour(g, view, labels, used, result.holds(), LIMIT, Theme.line(1));
        contour(g, view, labels, used, MountCase.CAREFUL, LIMIT, CAREFUL);
        contour(g, view, labels, shift, MountTarget.LARGEST_SHIFT, LIMIT, TENTH);
        contour(g, view, labels, shift, -MountTarget.LARGEST_SHIFT, LIMIT, TENTH);
        labels.write(g, LINE);
        for (int j = 0; j < y.length; j++) {
            for (int i = 0; i < x.length; i++) {
                if (panel.rows().get(j).get(i).isEmpty()) {
                    missing(g, view.cell(i, j));
                }
            }
        }
        g.setClip(clip);
        g.setColor(Theme.MUTED);
        g.setStroke(Theme.line(0.8));
        g.draw(box);
        marks(g, view, panel);
        Ruler.below(g, box, x[0], x[x.length - 1], "recess diameter, mm");
        Ruler.left(g, box, y[0], y[y.length - 1], "recess depth, mm");
        g.setColor(Theme.INK);
        String done = result.done() < result.cells()
                ? " · partial: " + panel.done() + " of " + x.length * y.length + " cells"
                : "";
        Picture.fitted(
                g, Theme.medium(11.5), panel.material().name() + done, box.getX(), box.getY() - 7, box.getWidth(), 0);
    }

    private static List<SafeDimension> found(RecessResult.Panel panel) {
        return panel.judged().stream()
                .flatMap(c -> c.proposals().stream())
                .filter(p -> p.found().isPresent())
                .toList();
    }

    /** Where marks will be, so that numbers keep away. */
    private List<Rectangle2D> spots(View view, RecessResult.Panel panel) {
        List<Rectangle2D> spots = new ArrayList<>();
        spots.add(view.around(
                result.input().judged().diameter(), result.input().judged().depth()));
        found(panel).forEach(p -> spots.add(view.around(p.safeDiameter(), p.safeDepth())));
        return spots;
    }

    private void marks(Graphics2D g, View view, RecessResult.Panel panel) {
        double x = view.x(result.input().judged().diameter() * Labels.MM);
        double y = view.y(result.input().judged().depth() * Labels.MM);
        for (SafeDimension p : found(panel)) {
            double px = view.x(p.safeDiameter() * Labels.MM);
            double py = view.y(p.safeDepth() * Labels.MM);
            if (view.box().contains(px, py) && view.box().contains(x, y)) {
                g.setColor(Theme.INK);
                g.setStroke(Theme.line(1.2));
                g.draw(new Line2D.Double(x, y, px, py));
                proposed(g, px, py);
            }
        }
        if (view.box().contains(x, y)) {
            drawn(g, x, y);
        }
    }

    private static void drawn(Graphics2D g, double x, double y) {
        mark(g, new Ellipse2D.Double(x - 4.5, y - 4.5, 9, 9), Color.WHITE);
    }

    private static void proposed(Graphics2D g, double x, double y) {
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(x, y - 6);
        diamond.lineTo(x + 6, y);
        diamond.lineTo(x, y + 6);
        diamond.lineTo(x - 6, y);
        diamond.closePath();
        mark(g, diamond, new Color(0x1f9484));
    }

    private static void mark(Graphics2D g, Shape shape, Color color) {
        g.setColor(color);
        g.fill(shape);
        g.setColor(Theme.INK);
        g.setStroke(Theme.line(1.4));
        g.draw(shape);
    }

    private static void missing(Graphics2D g, Rectangle2D cell) {
        g.setColor(Color.WHITE);
        g.fill(cell);
        g.setColor(Theme.GRID);
        g.setStroke(Theme.line(0.8));
        g.draw(cell);
        g.draw(new Line2D.Double(cell.getMinX(), cell.getMinY(), cell.getMaxX(), cell.getMaxY()));
    }

    /** A latched switch moves the line as a large shift does; one that is never reached as a large one the other way. */
    private static double shift(RecessCell c) {
        if (c.verdict() != MountCase.Verdict.RELEASED) {
            return FAR;
        }
        return switch (c.distance().outcome()) {
            case SWITCHES -> Math.max(-FAR, Math.min(FAR, c.shift()));
            case NEVER_ON -> -FAR;
            case BEYOND_RANGE, NEVER_OFF -> FAR;
        };
    }

    private static void isoLines(Graphics2D g, View view, double[][] on, ShadeScale shades, ContourLabels labels) {
        double step = Ruler.step(shades.high() - shades.low(), 8);
        for (int n = (int) Math.ceil(shades.low() / step); n * step <= shades.high() + 1e-9; n++) {
            for (double[] line : Contours.lines(view.across(), view.up(), on, n * step)) {
                g.setColor(LINE);
                g.setStroke(Theme.line(0.9));
                g.draw(view.path(line));
                labels.add(view.onSheet(line), Labels.significant(n * step, 4));
            }
        }
    }

    private static void contour(
            Graphics2D g, View view, ContourLabels labels, double[][] f, double level, Color color, Stroke stroke) {
        g.setColor(color);
        g.setStroke(stroke);
        Contours.lines(view.across(), view.up(), f, level).forEach(line -> {
            g.draw(view.path(line));
            labels.add(view.onSheet(line), "");
        });
    }

    /** Whether a point of the sheet is hatched. */
    @FunctionalInterface
    private interface Inside {
        boolean test(double x, double y);
    }

    private static void hatch(Graphics2D g, Rectangle2D box, Inside inside) {
        g.setColor(LIMIT);
        g.setStroke(new BasicStroke(0.9f));
        double h = box.getHeight();
        Path2D lines = new Path2D.Double();
        for (double x = box.getMinX() - h + HATCH / 2; x < box.getMaxX(); x += HATCH) {
            double start = Double.NaN;
            for (double t = 0; t <= h; t++) {
                double px = x + t;
                double py = box.getMaxY() - t;
                boolean in = px >= box.getMinX() && px <= box.getMaxX() && inside.test(px, py);
                if (in && Double.isNaN(start)) {
                    start = t;
                } else if (!in && !Double.isNaN(start)) {
                    lines.moveTo(x + start, box.getMaxY() - start);
                    lines.lineTo(px - 1, py + 1);
                    start = Double.NaN;
                }
            }
            if (!Double.isNaN(start)) {
                lines.moveTo(x + start, box.getMaxY() - start);
                lines.lineTo(x + h, box.getMaxY() - h);
            }
        }
        g.draw(lines);
    }

    /** Where the cells of a map lie on the sheet, both axes in mm. */
    private record View(Rectangle2D box, double[] across, double[] up) {

        double x(double value) {
            return box.getX() + (value - across[0]) / (across[across.length - 1] - across[0]) * box.getWidth();
        }

        double y(double value) {
            return box.getMaxY() - (value - up[0]) / (up[up.length - 1] - up[0]) * box.getHeight();
        }

        /** The surroundings of a recess, both in m. */
        Rectangle2D around(double diameter, double depth) {
            return new Rectangle2D.Double(x(diameter * Labels.MM) - 8, y(depth * Labels.MM) - 8, 16, 16);
        }

        double[] onSheet(double[] line) {
            double[] p = new double[line.length];
            for (int i = 0; i < p.length; i += 2) {
                p[i] = x(line[i]);
                p[i + 1] = y(line[i + 1]);
            }
            return p;
        }

        Path2D path(double[] line) {
            double[] p = onSheet(line);
            Path2D path = new Path2D.Double();
            path.moveTo(p[0], p[1]);
            for (int i = 2; i < p.length; i += 2) {
                path.lineTo(p[i], p[i + 1]);
            }
            return path;
        }

        Rectangle2D cell(int i, int j) {
            double w = box.getWidth() / (across.length - 1);
            double h = box.getHeight() / (up.length - 1);
            return new Rectangle2D.Double(x(across[i]) - w / 2, y(up[j]) - h / 2, w, h);
        }

        /** The value at a point of the sheet, bilinear; not a number where it was not computed. */
        double at(double[][] f, double px, double py) {
            double u = (px - box.getX()) / box.getWidth() * (across.length - 1);
            double v = (box.getMaxY() - py) / box.getHeight() * (up.length - 1);
            int i = Math.max(0, Math.min(across.length - 2, (int) u));
            int j = Math.max(0, Math.min(up.length - 2, (int) v));
            double a = u - i;
            double b = v - j;
            double value =
                    (1 - b) * ((1 - a) * f[j][i] + a * f[j][i + 1]) + b * ((1 - a) * f[j + 1][i] + a * f[j + 1][i + 1]);
            // beside a cell that was not computed the value of the cell itself
            return Double.isNaN(value) ? f[b < 0.5 ? j : j + 1][a < 0.5 ? i : i + 1] : value;
        }
    }
}
