package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts over the distance: amplitude with the thresholds, and the change of the coil's impedance. */
public final class CurveCharts {

    private static final int MARKERS_PER_LINE = 8;
    private static final double TAIL = 0.02;

    /** Ratio of the smallest to the largest loss shown. */
    private static final double DECADES = 1e-4;

    private static final Shape POINT = new Ellipse2D.Double(-4, -4, 8, 8);

    /** One of a curve's quantities, in the unit shown. */
    @FunctionalInterface
    private interface Quantity {
        double at(Curve curve, int i);
    }

    private CurveCharts() {}

    /** Amplitude over distance for all targets, both thresholds and the points where the output switches. */
    static JFreeChart amplitude(ApproachResult result) {
        List<XYSeries> lines = new ArrayList<>();
        for (TargetResult target : result.targets()) {
            lines.add(new FineAmplitude(target.curve(), result.model().element()::amplitude).series(lines.size()));
        }
        XYPlot plot = plot(result, Theme.axis(Labels.AMPLITUDE), lines);
        plot.setDomainAxis(distanceAxis());
        ((NumberAxis) plot.getRangeAxis()).setAutoRangeIncludesZero(true);
        DistanceCharts.thresholds(plot, result.trimmed());
        XYSeriesCollection points = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int t = 0; t < result.targets().size(); t++) {
            SwitchDistance d = result.targets().get(t).distance();
            point(points, renderer, "on" + t, d.on(), result.trimmed().onAmplitude(), Theme.series(t), true);
            point(points, renderer, "off" + t, d.off(), result.trimmed().offAmplitude(), Theme.series(t), false);
        }
        plot.setDataset(1, points);
        plot.setRenderer(1, renderer);
        LegendItemCollection legend = plot.getRenderer(0).getLegendItems();
        legend.add(pointItem("switches on", true));
        legend.add(pointItem("switches off", false));
        plot.setFixedLegendItems(legend);
        return Theme.chart(plot, true);
    }

    /** Change of loss resistance and of inductance over distance, one above the other. */
    static JFreeChart impedance(ApproachResult result) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(distanceAxis());
        Theme.ground(both);
        both.setGap(12);
        double largest = result.targets().stream()
                .flatMapToDouble(t -> Arrays.stream(t.curve().lossResistance()))
                .max()
                .orElse(1);
        double least = DECADES * largest;
        // a target that lowers the loss, or has none, has no place on a logarithmic axis: its line ends
        XYPlot loss = plot(
                result,
                Theme.decades(Labels.LOSS_RESISTANCE_CHANGE),
                (c, i) -> c.lossResistance(i) < least ? Double.NaN : c.lossResistance(i));
        if (largest > 0) {
            loss.getRangeAxis().setRange(least, 1.5 * largest);
        }
        XYPlot inductance =
                plot(result, Theme.axis(Labels.INDUCTANCE_CHANGE), (c, i) -> c.inductanceChange(i) * Labels.MICROHENRY);
        inductance.setRangeZeroBaselineVisible(true);
        inductance.setRangeZeroBaselinePaint(Theme.MUTED);
        both.setFixedLegendItems(loss.getLegendItems());
        for (XYPlot plot : new XYPlot[] {loss, inductance}) {
            ValueMarker rated = new ValueMarker(
                    result.model().effectiveDistance() * Labels.MM, Theme.MUTED, Theme.dashed(0.9, 4, 3));
            rated.setAlpha(1);
            if (plot == loss) {
                rated.setLabel("sr " + Labels.millimetres(result.model().effectiveDistance()) + " mm");
                DistanceCharts.label(rated, TextAnchor.TOP_LEFT, RectangleAnchor.TOP_RIGHT);
            }
            plot.addDomainMarker(rated, Layer.BACKGROUND);
            both.add(plot);
        }
        return Theme.chart(both, true);
    }

    /** A target's name with its switch-on distance, or with the reason why there is none. */
    static String legendName(TargetResult target) {
        SwitchDistance d = target.distance();
        String where = switch (d.outcome()) {
            case SWITCHES -> "on at " + Labels.millimetres(d.on()) + " mm";
            case NEVER_ON, NEVER_OFF, BEYOND_RANGE -> Terms.of(d.outcome());
        };
        return target.target().label() + ": " + where;
    }

    private static NumberAxis distanceAxis() {
        NumberAxis axis = Theme.axis(Labels.DISTANCE);
        axis.setAutoRangeStickyZero(false);
        axis.setLowerMargin(0.012);
        axis.setUpperMargin(0.01);
        return axis;
    }

    private static XYPlot plot(ApproachResult result, ValueAxis range, Quantity quantity) {
        List<XYSeries> lines = new ArrayList<>();
        for (TargetResult target : result.targets()) {
            Curve curve = target.curve();
            XYSeries series = new XYSeries(lines.size(), false);
            for (int i = 0; i < curve.size(); i++) {
                series.add(curve.distance(i) * Labels.MM, quantity.at(curve, i), false);
            }
            lines.add(series);
        }
        return plot(result, range, lines);
    }

    private static XYPlot plot(ApproachResult result, ValueAxis range, List<XYSeries> lines) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (int t = 0; t < lines.size(); t++) {
            lines.get(t).setDescription(legendName(result.targets().get(t)));
            data.addSeries(lines.get(t));
        }
        XYLineAndShapeRenderer renderer = Theme.lines(marked(data));
        renderer.setLegendItemLabelGenerator((d, s) -> data.getSeries(s).getDescription());
        XYPlot plot = new XYPlot(data, null, range, renderer);
        Theme.style(plot);
        return plot;
    }

    /**
     * Where lines carry markers: at the start, which the legend shows too, then at a few staggered points, but not in the
     * tail where all lines run together.
     */
    private static boolean[][] marked(XYSeriesCollection data) {
        Range range = data.getRangeBounds(false);
        double tail = range == null ? 0 : TAIL * range.getLength();
        int count = data.getSeriesCount();
        boolean[][] marked = new boolean[count][];
        for (int s = 0; s < count; s++) {
            XYSeries series = data.getSeries(s);
            int n = series.getItemCount();
            int step = Math.max(1, n / MARKERS_PER_LINE);
            int first = Math.max(1, step / 2 + s * step / count);
            marked[s] = new boolean[n];
            for (int i = 0; i < n; i++) {
                double fromEnd = Math.abs(
                        series.getY(i).doubleValue() - series.getY(n - 1).doubleValue());
                // a line that ends before the range has no common tail
                marked[s][i] = i == 0 || i >= first && (i - first) % step == 0 && !(fromEnd <= tail);
            }
        }
        return marked;
    }

    private static void point(
            XYSeriesCollection data,
            XYLineAndShapeRenderer renderer,
            String key,
            double distance,
            double amplitude,
            Color color,
            boolean filled) {
        XYSeries series = new XYSeries(key);
        if (Double.isFinite(distance)) {
            series.add(distance * Labels.MM, amplitude);
        }
        int i = data.getSeriesCount();
        data.addSeries(series);
        renderer.setSeriesShape(i, POINT);
        renderer.setSeriesPaint(i, color);
        renderer.setUseFillPaint(true);
        renderer.setSeriesFillPaint(i, filled ? color : Color.WHITE);
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesOutlinePaint(i, color);
        renderer.setSeriesOutlineStroke(i, Theme.line(1.5));
    }

    private static LegendItem pointItem(String text, boolean filled) {
        return new LegendItem(
                text, null, null, null, POINT, filled ? Theme.INK : Color.WHITE, Theme.line(1.5), Theme.INK);
    }
}
