package eddyreach.kinds.offaxis;

import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Amplitude and output while targets slide past. */
final class PassChart {

    private static final int MARKERS_PER_LINE = 9;
    private static final double OUTPUT_HEIGHT = 0.7;

    private PassChart() {}

    static JFreeChart of(PassResult result) {
        NumberAxis offset = Theme.axis(Labels.OFFSET);
        offset.setAutoRangeStickyZero(false);
        offset.setLowerMargin(0.01);
        offset.setUpperMargin(0.01);
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(offset);
        Theme.ground(both);
        both.setGap(10);
        XYPlot amplitude = amplitude(result);
        DistanceCharts.thresholds(amplitude, result.trimmed());
        both.add(amplitude, 5);
        both.add(output(result), Math.max(1, result.targets().size()));
        both.setFixedLegendItems(amplitude.getLegendItems());
        return Theme.chart(both, true);
    }

    private static XYPlot amplitude(PassResult result) {
        XYSeriesCollection data = new XYSeriesCollection();
        boolean[][] marked = new boolean[result.targets().size()][];
        for (int t = 0; t < marked.length; t++) {
            PassTarget target = result.targets().get(t);
            XYSeries series = new XYSeries(t, false);
            series.setDescription(target.target().label() + ": " + PassPresentation.summary(target));
            int n = target.offset().length;
            int step = Math.max(1, n / MARKERS_PER_LINE);
            marked[t] = new boolean[n];
            for (int i = 0; i < n; i++) {
                series.add(target.offset()[i] * Labels.MM, target.amplitude()[i], false);
                marked[t][i] = i % step == 0;
            }
            data.addSeries(series);
        }
        XYLineAndShapeRenderer renderer = Theme.lines(marked);
        renderer.setLegendItemLabelGenerator((d, s) -> data.getSeries(s).getDescription());
        NumberAxis range = Theme.axis(Labels.AMPLITUDE);
        range.setAutoRangeIncludesZero(true);
        XYPlot plot = new XYPlot(data, null, range, renderer);
        Theme.style(plot);
        return plot;
    }

    /** One strip per target, raised while the output recognises it, coming from the left. */
    private static XYPlot output(PassResult result) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        int count = result.targets().size();
        for (int t = 0; t < count; t++) {
            PassTarget target = result.targets().get(t);
            double base = count - 1 - t;
            XYSeries series = new XYSeries(t, false);
            double level = base + (target.on()[0] ? OUTPUT_HEIGHT : 0);
            series.add(target.offset()[0] * Labels.MM, level);
            for (PassTarget.Change c : target.changes()) {
                series.add(c.offset() * Labels.MM, level);
                level = base + (c.turnsOn() ? OUTPUT_HEIGHT : 0);
                series.add(c.offset() * Labels.MM, level);
            }
            series.add(target.offset()[target.offset().length - 1] * Labels.MM, level);
            data.addSeries(series);
            renderer.setSeriesPaint(t, Theme.series(t));
            renderer.setSeriesStroke(t, Theme.line(2));
        }
        NumberAxis range = Theme.axis("output");
        range.setTickLabelsVisible(false);
        range.setTickMarksVisible(false);
        range.setRange(-0.25, count);
        XYPlot plot = new XYPlot(data, null, range, renderer);
        Theme.style(plot);
        plot.setRangeGridlinesVisible(false);
        return plot;
    }
}
