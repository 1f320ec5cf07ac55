package eddyreach.report.draw;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.util.stream.IntStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeriesCollection;

/** What charts over a distance have in common: lines with markers, and the thresholds of the output. */
public final class DistanceCharts {

    private static final int MARKERS = 7;

    private DistanceCharts() {}

    /** Lines with a marker at a few of their points, named by the descriptions of the series. */
    public static XYPlot lines(XYSeriesCollection data, NumberAxis domain, NumberAxis range) {
        boolean[][] marked = new boolean[data.getSeriesCount()][];
        for (int s = 0; s < marked.length; s++) {
            int n = data.getSeries(s).getItemCount();
            int step = Math.max(1, n / MARKERS);
            int first = s * step / marked.length;
            boolean[] at = new boolean[n];
            IntStream.range(0, n).forEach(i -> at[i] = i == 0 || i >= first && (i - first) % step == 0);
            marked[s] = at;
        }
        XYLineAndShapeRenderer renderer = Theme.lines(marked);
        renderer.setLegendItemLabelGenerator((d, s) -> data.getSeries(s).getDescription());
        range.setAutoRangeIncludesZero(true);
        domain.setLowerMargin(0.012);
        domain.setUpperMargin(0.01);
        XYPlot plot = new XYPlot(data, domain, range, renderer);
        Theme.style(plot);
        return plot;
    }

    /** Marks the amplitudes at which the output switches. */
    public static void thresholds(XYPlot plot, TrimmedSwitch trimmed) {
        threshold(plot, trimmed.onAmplitude(), "on below ", TextAnchor.TOP_RIGHT, RectangleAnchor.BOTTOM_RIGHT);
        threshold(plot, trimmed.offAmplitude(), "off above ", TextAnchor.BOTTOM_RIGHT, RectangleAnchor.TOP_RIGHT);
    }

    private static void threshold(XYPlot plot, double value, String text, TextAnchor anchor, RectangleAnchor at) {
        ValueMarker marker = new ValueMarker(value, Theme.MUTED, Theme.dashed(1.1, 5, 3));
        marker.setAlpha(1);
        marker.setLabel(text + Labels.significant(value, 4) + " V");
        label(marker, anchor, at);
        plot.addRangeMarker(marker, Layer.BACKGROUND);
    }

    /** Styles the label of a marker and puts it at a corner. */
    public static void label(ValueMarker marker, TextAnchor anchor, RectangleAnchor at) {
        marker.setLabelFont(Theme.text(10));
        marker.setLabelPaint(Theme.INK);
        marker.setLabelBackgroundColor(new Color(255, 255, 255, 0));
        marker.setLabelAnchor(at);
        marker.setLabelTextAnchor(anchor);
    }
}
