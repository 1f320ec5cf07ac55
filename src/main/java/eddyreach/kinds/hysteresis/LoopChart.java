package eddyreach.kinds.hysteresis;

import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The loops of the output over the distance, one target below the other. */
final class LoopChart {

    private static final double HEIGHT = 0.6;

    /** The way back is drawn a little lower, so that both can be seen. */
    private static final double APART = 0.05;

    private LoopChart() {}

    static JFreeChart of(HysteresisResult r) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        List<Loop> loops = r.loops().stream().filter(Loop::switches).toList();
        double farthest =
                loops.stream().mapToDouble(l -> l.distance().off()).max().orElse(0);
        double end = 1.15
                * Math.max(
                        farthest,
                        r.input().machine().places() ? r.input().machine().far() : 0)
                * Labels.MM;
        for (int t = 0; t < loops.size(); t++) {
            double base = loops.size() - 1 - t;
            Loop l = loops.get(t);
            data.addSeries(
                    way(2 * t, l.target().label() + " approaching", l.distance().on(), base, end));
            data.addSeries(way(2 * t + 1, "leaving", l.distance().off(), base - APART, end));
            renderer.setSeriesPaint(2 * t, Theme.series(t));
            renderer.setSeriesStroke(2 * t, Theme.line(2));
            renderer.setSeriesPaint(2 * t + 1, Theme.series(t));
            renderer.setSeriesStroke(2 * t + 1, Theme.dashed(2, 7, 3));
        }
        renderer.setLegendItemLabelGenerator((d, s) -> data.getSeries(s).getDescription());
        NumberAxis range = Theme.axis("output");
        range.setTickLabelsVisible(false);
        range.setTickMarksVisible(false);
        range.setRange(-0.3, Math.max(1, loops.size()));
        NumberAxis distance = Theme.axis(Labels.DISTANCE);
        distance.setRange(0, Math.max(end, 1e-3));
        XYPlot plot = new XYPlot(data, distance, range, renderer);
        Theme.style(plot);
        plot.setRangeGridlinesVisible(false);
        Machine m = r.input().machine();
        if (m.places()) {
            place(plot, m.near(), m.vibration());
            place(plot, m.far(), m.vibration());
        }
        return Theme.chart(plot, true);
    }

    private static XYSeries way(int key, String name, double change, double base, double end) {
        XYSeries series = new XYSeries(key, false);
        series.setDescription(name + ", " + Labels.millimetres(change) + " mm");
        series.add(0, base + HEIGHT);
        series.add(change * Labels.MM, base + HEIGHT);
        series.add(change * Labels.MM, base);
        series.add(end, base);
        return series;
    }

    /** Where the target stands, and how far it shakes about that. */
    private static void place(XYPlot plot, double at, double vibration) {
        double half = Math.max(vibration, 0.02e-3);
        IntervalMarker marker = new IntervalMarker((at - half) * Labels.MM, (at + half) * Labels.MM, Theme.BAND);
        marker.setAlpha(1);
        plot.addDomainMarker(marker, Layer.BACKGROUND);
    }
}
