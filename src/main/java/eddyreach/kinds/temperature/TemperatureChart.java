package eddyreach.kinds.temperature;

import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.switching.StandardQuantities;
import java.awt.Color;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** On distance over the temperature. */
final class TemperatureChart {

    private static final String CELSIUS = "temperature, °C";

    private TemperatureChart() {}

    /** One target, with one cause after the other added. */
    static JFreeChart parts(List<Double> celsius, TemperatureCurve curve) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (TemperatureCurve.Step s : curve.steps()) {
            String name = s.cause().label();
            data.addSeries(series(data, s == curve.steps().get(0) ? name + " alone" : "+ " + name, celsius, s.on()));
        }
        return chart(data, curve);
    }

    /** All targets, with everything that follows the temperature. */
    static JFreeChart targets(TemperatureResult result) {
        XYSeriesCollection data = new XYSeriesCollection();
        List<Double> celsius = result.input().celsius();
        for (TemperatureCurve c : result.curves()) {
            double[] on = new double[celsius.size()];
            for (int i = 0; i < on.length; i++) {
                on[i] = c.on(i);
            }
            data.addSeries(series(data, c.target().label(), celsius, on));
        }
        return chart(data, result.curves().get(0));
    }

    private static XYSeries series(XYSeriesCollection data, String name, List<Double> celsius, double[] on) {
        XYSeries series = new XYSeries(data.getSeriesCount(), false);
        series.setDescription(name);
        for (int i = 0; i < on.length; i++) {
            series.add((double) celsius.get(i), Double.isFinite(on[i]) ? on[i] * Labels.MM : Double.NaN, false);
        }
        return series;
    }

    private static JFreeChart chart(XYSeriesCollection data, TemperatureCurve band) {
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(CELSIUS), Theme.axis(Labels.ON_DISTANCE));
        NumberAxis range = (NumberAxis) plot.getRangeAxis();
        range.setAutoRangeIncludesZero(false);
        double low = StandardQuantities.minUsable(band.trim()) * Labels.MM;
        double high = StandardQuantities.maxUsable(band.trim()) * Labels.MM;
        IntervalMarker limits = new IntervalMarker(low, high, Theme.BAND);
        limits.setAlpha(0.6f);
        limits.setLabel("±10 % of the distance at 23 °C");
        limits.setLabelFont(Theme.text(10));
        limits.setLabelPaint(Theme.MUTED);
        limits.setLabelBackgroundColor(new Color(255, 255, 255, 0));
        limits.setLabelAnchor(RectangleAnchor.BOTTOM_RIGHT);
        limits.setLabelTextAnchor(TextAnchor.BOTTOM_RIGHT);
        plot.addRangeMarker(limits, Layer.BACKGROUND);
        double room = (high - low) / 20;
        range.setRange(Math.min(low - room, range.getLowerBound()), Math.max(high + room, range.getUpperBound()));
        return Theme.chart(plot, true);
    }
}
