package eddyreach.kinds.sweep;

import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Ruler;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.study.StudyResult;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** What the charts of sweeps have in common: one line per curve, which is broken where a target is never on, and marks on it. */
final class SweepCharts {

    private static final int MARKERS_PER_LINE = 7;
    private static final int TICKS = 10;

    /** Room for marks at the ends of an axis, over its length. */
    static final double MARGIN = 0.015;

    /** Marks that stand on lines. */
    enum Mark {
        DOT(new Ellipse2D.Double(-3.6, -3.6, 7.2, 7.2), true),
        RING(new Ellipse2D.Double(-3.6, -3.6, 7.2, 7.2), false),
        TICK(new Line2D.Double(0, -7, 0, 7), false),
        DIAMOND(diamond(), false),
        BEYOND(triangle(), true);

        private final Shape shape;
        private final boolean filled;

        Mark(Shape shape, boolean filled) {
            this.shape = shape;
            this.filled = filled;
        }

        private static Shape diamond() {
            Path2D path = new Path2D.Double();
            path.moveTo(0, -5);
            path.lineTo(5, 0);
            path.lineTo(0, 5);
            path.lineTo(-5, 0);
            path.closePath();
            return path;
        }

        private static Shape triangle() {
            Path2D path = new Path2D.Double();
            path.moveTo(0, 0);
            path.lineTo(3.5, 7);
            path.lineTo(-3.5, 7);
            path.closePath();
            return path;
        }
    }

    /** What is shown of a point, in the unit of the axis. */
    @FunctionalInterface
    interface Ordinate {

        /**
         * @param curve number of the curve
         * @param point a point of it
         * @return the ordinate, NaN where there is none
         */
        double at(int curve, SweepPoint point);
    }

    private final XYPlot plot;
    private final XYSeriesCollection marks = new XYSeriesCollection();
    private final XYLineAndShapeRenderer markRenderer = new XYLineAndShapeRenderer(false, true);
    private final LegendItemCollection legend = new LegendItemCollection();
    private final double factorAcross;

    /**
     * A chart of curves.
     *
     * @param curves the curves
     * @param names what the legend says of each
     * @param across axis of the varied quantity
     * @param unit factor from its SI value to the axis
     * @param up axis of the ordinate
     * @param ordinate what is shown of a point
     */
    SweepCharts(
            List<SweepCurve> curves,
            List<String> names,
            ValueAxis across,
            double unit,
            NumberAxis up,
            Ordinate ordinate) {
        factorAcross = unit;
        XYSeriesCollection data = new XYSeriesCollection();
        boolean[][] marked = new boolean[curves.size()][];
        for (int c = 0; c < curves.size(); c++) {
            List<SweepPoint> points = curves.get(c).points();
            XYSeries series = new XYSeries(c, false);
            int curve = c;
            points.forEach(p -> series.add(p.value() * unit, ordinate.at(curve, p), false));
            data.addSeries(series);
            marked[c] = staggered(points.size(), c, curves.size());
        }
        XYLineAndShapeRenderer lines = Theme.lines(marked);
        lines.setLegendItemLabelGenerator((d, s) -> names.get(s));
        up.setAutoRangeIncludesZero(true);
        plot = new XYPlot(data, across, up, lines);
        Theme.style(plot);
        legend.addAll(lines.getLegendItems());
        markRenderer.setUseFillPaint(true);
        markRenderer.setUseOutlinePaint(true);
        plot.setDataset(1, marks);
        plot.setRenderer(1, markRenderer);
    }

    /**
     * The pictures of many curves, on as many sheets as it takes that no colour and marker come twice on one.
     *
     * @param curves what each curve is of
     * @param sheet makes the pictures of some of them
     */
    static <T> List<Picture> sheets(List<T> curves, Function<List<T>, List<Picture>> sheet) {
        int count = Math.max(1, (curves.size() + Theme.DISTINCT - 1) / Theme.DISTINCT);
        List<Picture> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<T> shown = curves.subList(i * curves.size() / count, (i + 1) * curves.size() / count);
            String number = i == 0 ? "" : "-" + (i + 1);
            for (Picture p : sheet.apply(shown)) {
                all.add(new Picture(p.name() + number, p.title(), p.subtitle(), p.source(), p.content()));
            }
        }
        return all;
    }

    XYPlot plot() {
        return plot;
    }

    /** Puts a mark on a curve, the value in SI and the ordinate in the unit of its axis; nothing where it is not a number. */
    void mark(int curve, Mark mark, double value, double ordinate) {
        if (!Double.isFinite(value * factorAcross + ordinate)) {
            return;
        }
        int s = marks.getSeriesCount();
        XYSeries series = new XYSeries(s);
        series.add(value * factorAcross, ordinate);
        marks.addSeries(series);
        Color color = Theme.series(curve);
        markRenderer.setSeriesShape(s, mark.shape);
        markRenderer.setSeriesPaint(s, color);
        markRenderer.setSeriesFillPaint(s, mark.filled ? color : Color.WHITE);
        markRenderer.setSeriesOutlinePaint(s, color);
        markRenderer.setSeriesOutlineStroke(s, Theme.line(mark == Mark.TICK ? 2.2 : 1.5));
    }

    /** Shows no more than a height, in the unit of the axis; what is higher runs out of the picture. */
    void upTo(double top) {
        if (plot.getRangeAxis().getUpperBound() > top) {
            plot.getRangeAxis().setRange(0, top);
        }
    }

    /** Marks at the upper edge of the chart where a target switches beyond the distances searched. */
    void markBeyond(List<SweepCurve> curves) {
        double top = plot.getRangeAxis().getUpperBound();
        boolean any = false;
        for (int c = 0; c < curves.size(); c++) {
            for (SweepPoint p : curves.get(c).points()) {
                if (p.beyond()) {
                    mark(c, Mark.BEYOND, p.value(), top);
                    any = true;
                }
            }
        }
        if (any) {
            explain(Mark.BEYOND, "beyond the distances searched");
        }
    }

    /** Says in the legend what a mark means. */
    void explain(Mark mark, String text) {
        LegendItem item = new LegendItem(
                text,
                null,
                null,
                null,
                mark.shape,
                mark.filled ? Theme.INK : Color.WHITE,
                Theme.line(mark == Mark.TICK ? 2.2 : 1.5),
                Theme.INK);
        legend.add(item);
    }

    /** Adds a line of its own to the legend. */
    void explain(LegendItem item) {
        legend.add(item);
    }

    /** A dashed level with a name at its left or right end. */
    void level(double value, String name, boolean right) {
        ValueMarker marker = new ValueMarker(value, Theme.MUTED, Theme.dashed(0.9, 4, 3));
        marker.setAlpha(1);
        marker.setLabel(name);
        marker.setLabelFont(Theme.text(10));
        marker.setLabelPaint(Theme.INK);
        marker.setLabelBackgroundColor(new Color(255, 255, 255, 0));
        marker.setLabelAnchor(right ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.TOP_LEFT);
        marker.setLabelTextAnchor(right ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
        plot.addRangeMarker(marker, Layer.BACKGROUND);
    }

    JFreeChart chart() {
        plot.setFixedLegendItems(legend);
        return Theme.chart(plot, true);
    }

    /** A material's name with the values at which it is never on. */
    static String name(SweepCurve curve) {
        if (curve.firstSeen().isEmpty()) {
            return curve.label() + ": never on";
        }
        return curve.label()
                + curve.lastUnseen()
                        .map(p -> ": never on up to " + Labels.length(p.value(), 2))
                        .orElse("");
    }

    /** Sets a linear axis to a range with a margin for marks at its ends, and to ticks that fit. */
    static NumberAxis range(NumberAxis axis, double low, double high) {
        double margin = MARGIN * (high - low);
        axis.setRange(low - margin, high + margin);
        DecimalFormat format = new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT));
        axis.setTickUnit(new NumberTickUnit(Ruler.step(high - low, TICKS), format));
        return axis;
    }

    static String heading(StudyResult result) {
        return result.model().name() + " · "
                + Labels.frequency(result.undamped().frequency());
    }

    /** The largest numerical error of switch-on distances, for a subtitle. */
    static String errors(List<SweepCurve> curves) {
        double worst = curves.stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(p -> p.distance().onError())
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        return "numerical error up to ± " + Labels.significant(Math.ceil(worst * Labels.MM * 1000) / 1000, 2) + " mm";
    }

    private static boolean[] staggered(int n, int curve, int curves) {
        boolean[] marked = new boolean[n];
        int step = Math.max(1, n / MARKERS_PER_LINE);
        int first = Math.max(1, step / 2 + curve * step / curves);
        for (int i = 0; i < n; i++) {
            marked[i] = i == 0 || i >= first && (i - first) % step == 0;
        }
        return marked;
    }
}
