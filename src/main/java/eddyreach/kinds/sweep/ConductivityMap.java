package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.Material;
import eddyreach.report.draw.Contours;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Ruler;
import eddyreach.report.draw.ScaleDrawing;
import eddyreach.report.draw.ShadeScale;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/**
 * The map of on distances: shade and iso-lines over logarithmic axes, the materials as dots, and the lines that part the regimes, skin depth
 * equal to the thickness and the most loss on either side of it.
 */
record ConductivityMap(ConductivityResult result) implements Picture.Content {

    private static final double LEGEND = 92;
    private static final int PIXELS = 2;
    private static final double DOT = 3;

    /** Dots nearer to the lower edge than this have slanted names. */
    private static final double EDGE = 24;

    private static final double TILT = Math.PI / 3;
    private static final Color REGIME = new Color(0xb4472b);
    private static final Stroke BOUNDARY = Theme.dashed(1.3, 6, 4);
    private static final Stroke OPTIMUM = Theme.dashed(1.6, 2, 3);
    private static final Color LINE = new Color(0x24405e);

    @Override
    public void draw(Graphics2D g, Rectangle2D area) {
        LogAxis across = Theme.decades(Labels.CONDUCTIVITY);
        LogAxis up = Theme.decades(Labels.PERMEABILITY);
        double[] sigma = result.conductivities();
        double[] mu = result.permeabilities();
        range(across, sigma[0] * Labels.MEGASIEMENS, sigma[sigma.length - 1] * Labels.MEGASIEMENS);
        range(up, mu[0], mu[mu.length - 1]);
        XYPlot plot = new XYPlot(null, across, up, null);
        Theme.style(plot);
        plot.setNoDataMessage(null);
        double[][] on = new double[mu.length][sigma.length];
        for (int j = 0; j < mu.length; j++) {
            for (int i = 0; i < sigma.length; i++) {
                SwitchDistance d = result.rows().get(j).get(i);
                on[j][i] = d.on() * Labels.MM;
            }
        }
        ShadeScale shades = shades(on);
        plot.addAnnotation(new Sheets(on, shades));
        Rectangle2D left = new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth() - LEGEND, area.getHeight());
        Theme.chart(plot, false).draw(g, left);
        Rectangle2D bar = new Rectangle2D.Double(left.getMaxX() + 14, area.getY() + 34, 14, 0.55 * area.getHeight());
        shades.legend(g, bar, "on, mm", 1);
        legend(g, bar.getX() - 4, bar.getMaxY() + 34);
    }

    private static void range(LogAxis axis, double first, double last) {
        double margin = Math.pow(last / first, SweepCharts.MARGIN);
        axis.setRange(first / margin, last * margin);
    }

    private static void legend(Graphics2D g, double x, double y) {
        String[][] texts = {{"skin depth =", "thickness"}, {"most loss, thick", "metal, thin sheet"}};
        Stroke[] strokes = {BOUNDARY, OPTIMUM};
        for (int i = 0; i < texts.length; i++) {
            double top = y + 44 * i;
            g.setColor(REGIME);
            g.setStroke(strokes[i]);
            g.draw(new Line2D.Double(x, top, x + 40, top));
            g.setColor(Theme.INK);
            Picture.fitted(g, Theme.text(10), texts[i][0], x, top + 14, LEGEND - 12, 0);
            Picture.fitted(g, Theme.text(10), texts[i][1], x, top + 26, LEGEND - 12, 0);
        }
    }

    /** From a little below the least distance to the largest, so that the least is still shaded. */
    private static ShadeScale shades(double[][] on) {
        double[] all = Arrays.stream(on)
                .flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite)
                .toArray();
        double low = Arrays.stream(all).min().orElse(0);
        double high = Arrays.stream(all).max().orElse(1);
        double step = Ruler.step(Math.max(high - low, 1e-3), 6);
        return new ShadeScale(step * Math.floor(low / step - 0.5), high, false);
    }

    /** Everything inside the axes. */
    private final class Sheets extends AbstractXYAnnotation {

        private static final long serialVersionUID = 1L;
        private final transient double[][] on;
        private final transient ShadeScale shades;
        private final transient List<Shape> taken = new ArrayList<>();

        Sheets(double[][] on, ShadeScale shades) {
            this.on = on;
            this.shades = shades;
        }

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis domainAxis,
                ValueAxis rangeAxis,
                int rendererIndex,
                PlotRenderingInfo info) {
            double[] x = Arrays.stream(result.conductivities()).map(Math::log10).toArray();
            double[] y = Arrays.stream(result.permeabilities()).map(Math::log10).toArray();
            Rectangle2D box = box(plot, area, domainAxis, rangeAxis);
            int columns = (int) (PIXELS * box.getWidth());
            int rows = (int) (PIXELS * box.getHeight());
            ScaleDrawing.image(g, shades.image(x, y, on, even(x, columns, false), even(y, rows, true)), box);
            AffineTransform place = new AffineTransform();
            place.translate(box.getMinX(), box.getMaxY());
            place.scale(box.getWidth() / (x[x.length - 1] - x[0]), -box.getHeight() / (y[y.length - 1] - y[0]));
            place.translate(-x[0], -y[0]);
            regimes(g, box, place, x, y);
            List<double[]> dots = dots(g, area, place);
            isoLines(g, area, place, x, y);
            for (double[] dot : dots) {
                Ellipse2D circle = new Ellipse2D.Double(dot[0] - DOT, dot[1] - DOT, 2 * DOT, 2 * DOT);
                g.setColor(Theme.INK);
                g.fill(circle);
                g.setColor(Color.WHITE);
                g.setStroke(Theme.line(0.8));
                g.draw(circle);
            }
        }

        /** Where the map lies: the axes reach a little farther, so that dots on its edge are whole. */
        private Rectangle2D box(XYPlot plot, Rectangle2D area, ValueAxis across, ValueAxis up) {
            double[] sigma = result.conductivities();
            double[] mu = result.permeabilities();
            double left = across.valueToJava2D(sigma[0] * Labels.MEGASIEMENS, area, plot.getDomainAxisEdge());
            double right =
                    across.valueToJava2D(sigma[sigma.length - 1] * Labels.MEGASIEMENS, area, plot.getDomainAxisEdge());
            double bottom = up.valueToJava2D(mu[0], area, plot.getRangeAxisEdge());
            double top = up.valueToJava2D(mu[mu.length - 1], area, plot.getRangeAxisEdge());
            return new Rectangle2D.Double(left, top, right - left, bottom - top);
        }

        private static double[] even(double[] axis, int n, boolean down) {
            double[] values = new double[n];
            double first = axis[0];
            double last = axis[axis.length - 1];
            for (int i = 0; i < n; i++) {
                double share = (i + 0.5) / n;
                values[i] = first + (down ? 1 - share : share) * (last - first);
            }
            return values;
        }

        /** Skin depth equal to the thickness; the most loss of a thin sheet on its one side and of a thick metal on the other. */
        private void regimes(Graphics2D g, Rectangle2D box, AffineTransform place, double[] x, double[] y) {
            double omega = 2 * Math.PI * result.undamped().frequency();
            double t = result.input().thickness();
            double k = result.wavenumber();
            double product = Math.log10(2 / (omega * Material.MU0 * t * t));
            double sheet = Math.log10(2 * k / (omega * Material.MU0 * t));
            double ratio = Math.log10(omega * Material.MU0 / (k * k));
            Shape before = g.getClip();
            g.clip(box);
            // where the two optima meet the boundary
            double corner = (product - ratio) / 2;
            double end = x[x.length - 1];
            line(g, place, BOUNDARY, x[0], product - x[0], end, product - end);
            if (end > corner) {
                line(g, place, OPTIMUM, corner, corner + ratio, end, end + ratio);
            }
            if (product - sheet > y[0]) {
                line(g, place, OPTIMUM, sheet, y[0], sheet, product - sheet);
            }
            g.setClip(before);
        }

        private static void line(
                Graphics2D g, AffineTransform place, Stroke stroke, double x0, double y0, double x1, double y1) {
            g.setColor(REGIME);
            g.setStroke(stroke);
            g.draw(place.createTransformedShape(new Line2D.Double(x0, y0, x1, y1)));
        }

        /** The dots' places; names beside them where there is room, upwards along the lower edge. */
        private List<double[]> dots(Graphics2D g, Rectangle2D area, AffineTransform place) {
            List<double[]> points = new ArrayList<>();
            for (ConductivityResult.Dot d : result.dots()) {
                double[] p = {
                    Math.log10(d.conductivity()), Math.log10(d.material().muReal())
                };
                place.transform(p, 0, p, 0, 1);
                points.add(p);
                taken.add(new Rectangle2D.Double(p[0] - DOT, p[1] - DOT, 2 * DOT, 2 * DOT));
            }
            Font font = Theme.medium(9.5);
            for (int i = 0; i < points.size(); i++) {
                String name = result.dots().get(i).material().name();
                double[] p = points.get(i);
                if (!area.intersects(p[0] - DOT, p[1] - DOT, 2 * DOT, 2 * DOT)) {
                    continue;
                }
                double half = g.getFontMetrics(font).stringWidth(name) / 2.0 + DOT + 4;
                if (p[1] > area.getMaxY() - EDGE) {
                    boolean done = false;
                    for (double tilt : new double[] {-TILT, TILT}) {
                        double side = Math.signum(-tilt) * half;
                        done = done
                                || place(
                                        g,
                                        area,
                                        font,
                                        name,
                                        p[0] + side * Math.cos(tilt),
                                        p[1] + side * Math.sin(tilt),
                                        tilt,
                                        Theme.INK);
                    }
                    continue;
                }
                double[][] around = {
                    {half, 0}, {-half, 0}, {0, -11}, {0, 11}, {half, -8}, {half, 8}, {-half, -8}, {-half, 8}
                };
                for (double[] shift : around) {
                    if (place(g, area, font, name, p[0] + shift[0], p[1] + shift[1], 0, Theme.INK)) {
                        break;
                    }
                }
            }
            return points;
        }

        private void isoLines(Graphics2D g, Rectangle2D area, AffineTransform place, double[] x, double[] y) {
            double low = Arrays.stream(on)
                    .flatMapToDouble(Arrays::stream)
                    .filter(Double::isFinite)
                    .min()
                    .orElse(0);
            double high = Arrays.stream(on)
                    .flatMapToDouble(Arrays::stream)
                    .filter(Double::isFinite)
                    .max()
                    .orElse(0);
            if (!(high > low)) {
                return;
            }
            double step = Ruler.step(high - low, 8);
            for (int n = (int) Math.ceil(low / step); n * step <= high; n++) {
                String name = Labels.significant(n * step, 4);
                for (double[] line : Contours.lines(x, y, on, n * step)) {
                    double[] p = line.clone();
                    place.transform(p, 0, p, 0, p.length / 2);
                    Path2D path = new Path2D.Double();
                    path.moveTo(p[0], p[1]);
                    for (int i = 2; i < p.length; i += 2) {
                        path.lineTo(p[i], p[i + 1]);
                    }
                    g.setColor(LINE);
                    g.setStroke(Theme.line(0.9));
                    g.draw(path);
                    label(g, area, p, name);
                }
            }
        }

        /** Tries places along a line from its middle outwards. */
        private void label(Graphics2D g, Rectangle2D area, double[] p, String name) {
            int n = p.length / 2;
            for (int i = 0; i < n; i++) {
                int at = Math.min(n - 2, Math.max(0, n / 2 + (i % 2 == 0 ? i / 2 : -(i + 1) / 2)));
                double x = (p[2 * at] + p[2 * at + 2]) / 2;
                double y = (p[2 * at + 1] + p[2 * at + 3]) / 2;
                if (n > 3 && place(g, area, Theme.text(9.5), name, x, y, 0, LINE)) {
                    return;
                }
            }
        }

        /** Writes a name centred at a point if it lies inside and on nothing written before. */
        private boolean place(
                Graphics2D g, Rectangle2D area, Font font, String name, double x, double y, double angle, Color color) {
            double width = g.getFontMetrics(font).stringWidth(name);
            AffineTransform turn = AffineTransform.getTranslateInstance(x, y);
            turn.rotate(angle);
            Shape box = turn.createTransformedShape(new Rectangle2D.Double(-width / 2 - 2, -6, width + 4, 12));
            if (!area.contains(box.getBounds2D()) || taken.stream().anyMatch(s -> overlaps(s, box))) {
                return false;
            }
            taken.add(box);
            g.setColor(new Color(255, 255, 255, 150));
            g.fill(box);
            AffineTransform before = g.getTransform();
            g.transform(turn);
            g.setColor(color);
            Picture.fitted(g, font, name, 0, 3.5, width + 1, 0.5);
            g.setTransform(before);
            return true;
        }

        private static boolean overlaps(Shape a, Shape b) {
            Area common = new Area(a);
            common.intersect(new Area(b));
            return !common.isEmpty();
        }
    }
}
