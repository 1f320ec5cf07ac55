package eddyreach.kinds.neighbour;

import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts over the spacing of two switches. */
final class NeighbourCharts {

    private static final double PERCENT = 100;

    /** Shifts beyond it are of no use to anybody and would hide the rest, %. */
    private static final double SHOWN = 25;

    private static final double[] LIMITS = {5, 10};

    /** Opacity of the error bars, of 255. */
    private static final int BAND = 60;

    private NeighbourCharts() {}

    /** Shift of the switch-on distance over the spacing, with the limits of 5 % and 10 % and from where on beats are harmless. */
    static JFreeChart shift(NeighbourResult result) {
        XYSeriesCollection data = new XYSeriesCollection();
        double most = LIMITS[1];
        for (NeighbourResult.Series s : result.targets()) {
            XYSeries tank = series(data, s.target().label() + ", its tank at rest");
            XYSeries metal = series(data, s.target().label() + ", coil open");
            for (int i = 0; i < result.spacing().length; i++) {
                double at = result.spacing()[i] * Labels.MM;
                tank.add(at, s.tank()[i] * PERCENT, false);
                metal.add(at, s.metal()[i] * PERCENT, false);
                double size = Math.abs(s.tank()[i]) * PERCENT;
                most = Double.isFinite(size) ? Math.max(most, size) : most;
            }
        }
        NumberAxis up = Theme.axis("shift of the switch-on distance, %");
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(NeighbourPage.across(result)), up);
        double half = 1.2 * Math.min(SHOWN, most);
        up.setRange(-half, half);
        for (int i = 0; i < result.targets().size(); i++) {
            NeighbourResult.Series s = result.targets().get(i);
            band(plot, result.spacing(), s.tank(), s.error(), half, Theme.series(2 * i));
            band(plot, result.spacing(), s.metal(), s.metalError(), half, Theme.series(2 * i + 1));
        }
        for (double limit : LIMITS) {
            for (int sign = -1; sign <= 1; sign += 2) {
                ValueMarker line = new ValueMarker(sign * limit, Theme.MUTED, Theme.dashed(0.9, 4, 3));
                line.setAlpha(1);
                label(
                        line,
                        (sign < 0 ? "−" : "+") + (int) limit + " %",
                        RectangleAnchor.TOP_RIGHT,
                        TextAnchor.BOTTOM_RIGHT);
                plot.addRangeMarker(line, Layer.BACKGROUND);
            }
        }
        spacings(plot, result);
        return Theme.chart(plot, true);
    }

    /** The error bars of a line as a band behind it, cut off where the chart ends. */
    private static void band(XYPlot plot, double[] spacing, double[] shift, double[] error, double half, Color colour) {
        Color light = new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), BAND);
        for (int i = 0; i + 1 < spacing.length; i++) {
            double[] x = {spacing[i], spacing[i + 1], spacing[i + 1], spacing[i]};
            int[] at = {i, i + 1, i + 1, i};
            double[] polygon = new double[2 * x.length];
            boolean whole = true;
            for (int k = 0; k < x.length; k++) {
                double y = (shift[at[k]] + (k < 2 ? 1 : -1) * error[at[k]]) * PERCENT;
                whole &= Double.isFinite(y);
                polygon[2 * k] = x[k] * Labels.MM;
                polygon[2 * k + 1] = Math.max(-half, Math.min(half, y));
            }
            if (whole) {
                plot.getRenderer().addAnnotation(new XYPolygonAnnotation(polygon, null, null, light), Layer.BACKGROUND);
            }
        }
    }

    /** Depth of the beats over the spacing, up to all of the amplitude, with what the thresholds allow. */
    static JFreeChart beats(NeighbourResult result) {
        XYSeriesCollection data = new XYSeriesCollection();
        add(result, data, "nominal frequencies, nearest within the tolerance", NeighbourResult.Coupling::depth);
        add(result, data, "alternative frequency, nearest within the tolerance", NeighbourResult.Coupling::depthApart);
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(NeighbourPage.across(result)), Theme.axis(""));
        plot.setRangeAxis(Theme.decades("depth of the beat, % of the amplitude at the on threshold"));
        ValueMarker allowed = new ValueMarker(result.beats().allowed() * PERCENT, Theme.MUTED, Theme.dashed(0.9, 4, 3));
        allowed.setAlpha(1);
        label(allowed, "half the distance of the thresholds", RectangleAnchor.TOP_RIGHT, TextAnchor.BOTTOM_RIGHT);
        plot.addRangeMarker(allowed, Layer.BACKGROUND);
        spacings(plot, result);
        return Theme.chart(plot, true);
    }

    private static void add(
            NeighbourResult result,
            XYSeriesCollection data,
            String name,
            ToDoubleFunction<NeighbourResult.Coupling> y) {
        XYSeries series = series(data, name);
        for (int i = 0; i < result.spacing().length; i++) {
            series.add(
                    result.spacing()[i] * Labels.MM,
                    Math.min(1, y.applyAsDouble(result.couplings().get(i))) * PERCENT,
                    false);
        }
    }

    private static XYSeries series(XYSeriesCollection data, String name) {
        XYSeries series = new XYSeries(data.getSeriesCount(), false);
        series.setDescription(name);
        data.addSeries(series);
        return series;
    }

    /** From where on beats are harmless, and the trade's usual spacing. */
    private static void spacings(XYPlot plot, NeighbourResult result) {
        double first = result.spacing()[0];
        double last = result.spacing()[result.spacing().length - 1];
        plot.getDomainAxis().setRange(first * Labels.MM, last * Labels.MM);
        if (result.usual() > first && result.usual() < last) {
            vertical(plot, result.usual(), "usual rule", RectangleAnchor.BOTTOM_LEFT, TextAnchor.BOTTOM_RIGHT);
        }
        if (result.alike().place() == NeighbourResult.Place.WITHIN) {
            vertical(
                    plot,
                    result.alike().spacing(),
                    "beats harmless from here on",
                    RectangleAnchor.TOP_RIGHT,
                    TextAnchor.TOP_LEFT);
        }
        if (result.apart().place() == NeighbourResult.Place.WITHIN) {
            vertical(
                    plot,
                    result.apart().spacing(),
                    "with alternative frequency",
                    RectangleAnchor.BOTTOM_RIGHT,
                    TextAnchor.BOTTOM_LEFT);
        }
    }

    private static void vertical(XYPlot plot, double spacing, String text, RectangleAnchor at, TextAnchor anchor) {
        ValueMarker marker = new ValueMarker(spacing * Labels.MM, Theme.MUTED, Theme.dashed(1.1, 5, 3));
        marker.setAlpha(1);
        label(marker, text, at, anchor);
        plot.addDomainMarker(marker, Layer.BACKGROUND);
    }

    private static void label(Marker marker, String text, RectangleAnchor at, TextAnchor anchor) {
        marker.setLabel(text);
        marker.setLabelFont(Theme.text(10));
        marker.setLabelPaint(Theme.INK);
        marker.setLabelBackgroundColor(new Color(255, 255, 255, 0));
        marker.setLabelAnchor(at);
        marker.setLabelTextAnchor(anchor);
    }
}
