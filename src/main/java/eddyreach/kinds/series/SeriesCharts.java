package eddyreach.kinds.series;

import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.switching.StandardQuantities;
import java.awt.Color;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** The histogram and the shares of the variance. */
final class SeriesCharts {

    private SeriesCharts() {}

    /** Histogram of on and off distances. */
    static JFreeChart histogram(SeriesResult r) {
        Histogram h = Histogram.of(r.on(), r.off());
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        data.addSeries(series("on distance", h, h.on()));
        data.addSeries(series("off distance", h, h.off()));
        XYBarRenderer bars = new XYBarRenderer();
        bars.setBarPainter(new StandardXYBarPainter());
        bars.setShadowVisible(false);
        for (int s = 0; s < 2; s++) {
            Color c = Theme.series(s + 1);
            bars.setSeriesPaint(s, new Color(c.getRed(), c.getGreen(), c.getBlue(), 170));
        }
        NumberAxis range = Theme.axis("units");
        range.setAutoRangeIncludesZero(true);
        range.setUpperMargin(0.28);
        XYPlot plot = new XYPlot(data, Theme.axis(Labels.DISTANCE), range, bars);
        Theme.style(plot);
        double nominal = r.nominal().on() * Labels.MM;
        IntervalMarker band = new IntervalMarker(
                StandardQuantities.minUsable(nominal), StandardQuantities.maxUsable(nominal), Theme.BAND);
        band.setAlpha(0.5f);
        plot.addDomainMarker(band, Layer.BACKGROUND);
        mark(plot, r.assuredOn().value(), SeriesText.share(r.input().share()) + " on", 0, h);
        mark(plot, r.assuredOff().value(), SeriesText.share(r.input().share()) + " off", 1, h);
        mark(plot, r.worst().assuredOn(), "worst case on", 2, h);
        mark(plot, r.worst().assuredOff(), "worst case off", 3, h);
        double low = Math.min(h.low(), finite(r.worst().assuredOn(), h.low()));
        double high = Math.max(h.high(), finite(r.worst().assuredOff(), h.high()));
        double room = 0.05 * (high - low);
        plot.getDomainAxis().setRange((low - room) * Labels.MM, (high + room) * Labels.MM);
        return Theme.chart(plot, true);
    }

    private static double finite(double value, double otherwise) {
        return Double.isFinite(value) && value > 0 ? value : otherwise;
    }

    private static XYIntervalSeries series(String name, Histogram h, int[] counts) {
        XYIntervalSeries series = new XYIntervalSeries(name);
        for (int i = 0; i < counts.length; i++) {
            double from = h.edge(i) * Labels.MM;
            double to = h.edge(i + 1) * Labels.MM;
            series.add((from + to) / 2, from, to, counts[i], 0, counts[i]);
        }
        return series;
    }

    /** A line with its name, each at a height of its own. */
    private static void mark(XYPlot plot, double metres, String name, int line, Histogram h) {
        if (!(Double.isFinite(metres) && metres > 0)) {
            return;
        }
        boolean left = metres < (h.low() + h.high()) / 2;
        ValueMarker marker = new ValueMarker(metres * Labels.MM, Theme.INK, Theme.dashed(1.1, 5, 3));
        marker.setAlpha(1);
        marker.setLabel(name);
        DistanceCharts.label(
                marker,
                left ? TextAnchor.TOP_LEFT : TextAnchor.TOP_RIGHT,
                left ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.TOP_LEFT);
        marker.setLabelOffset(new RectangleInsets(3 + 14.0 * line, 3, 3, 3));
        plot.addDomainMarker(marker);
    }

    /** Shares of the factors in the variance. */
    static JFreeChart shares(SeriesResult r) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        r.shares()
                .forEach(s -> data.addValue(
                        Math.max(0, 100 * s.share()), "share", s.factor().label()));
        BarRenderer bars = new BarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setSeriesPaint(0, Theme.series(1));
        bars.setMaximumBarWidth(0.08);
        CategoryAxis names = new CategoryAxis();
        Theme.style(names);
        NumberAxis range = Theme.axis("share of the variance of the on distance, %");
        range.setAutoRangeIncludesZero(true);
        CategoryPlot plot = new CategoryPlot(data, names, range, bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        Theme.style(plot);
        return Theme.chart(plot, false);
    }
}
