package eddyreach.kinds.speed;

import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.switching.PulseTrain;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The row at rest, and the pulses that it gives. */
final class SpeedCharts {

    private static final double HEIGHT = 0.6;
    private static final double PERIODS = 2.4;
    private static final double BEFORE = -0.1;

    private SpeedCharts() {}

    /** Amplitude over two pitches. */
    static JFreeChart row(SpeedResult r) {
        XYSeries series = new XYSeries(0, false);
        double[] a = r.amplitude();
        int n = a.length - 1;
        for (int i = -n / 2; i <= 3 * n / 2; i++) {
            series.add(r.input().wheel().pitch() * i / n * Labels.MM, a[Math.floorMod(i, n)], false);
        }
        XYPlot plot = DistanceCharts.lines(
                new XYSeriesCollection(series),
                Theme.axis("way of the row, mm; a tooth before the face at 0"),
                Theme.axis(Labels.AMPLITUDE));
        DistanceCharts.thresholds(plot, r.trimmed());
        return Theme.chart(plot, false);
    }

    /** The output for some rows, one below the other, over time in periods of the teeth. */
    static JFreeChart pulses(List<PulseTrain> trains) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int t = 0; t < trains.size(); t++) {
            PulseTrain train = trains.get(t);
            double base = trains.size() - 1 - t;
            XYSeries series = new XYSeries(t, false);
            series.setDescription(Labels.significant(train.frequency(), 4) + " Hz: "
                    + train.fault()
                            .map(SpeedText::fault)
                            .orElse("clean, on for " + SpeedText.time(train.shortestOn()) + " and off for "
                                    + SpeedText.time(train.shortestOff())));
            boolean always =
                    train.fault().filter(f -> f == PulseTrain.Fault.NEVER_OFF).isPresent();
            double idle = base + (train.pulses().isEmpty() && always ? HEIGHT : 0);
            series.add(BEFORE, idle);
            double origin = train.pulses().isEmpty() ? 0 : train.pulses().get(0).start();
            for (PulseTrain.Pulse p : train.pulses()) {
                double from = (p.start() - origin) * train.frequency();
                double to = from + p.onTime() * train.frequency();
                if (from < PERIODS) {
                    series.add(from, base);
                    series.add(from, base + HEIGHT);
                    series.add(Math.min(PERIODS, to), base + HEIGHT);
                    if (to < PERIODS) {
                        series.add(to, base);
                    }
                }
            }
            if (series.getMaxX() < PERIODS) {
                series.add(PERIODS, idle);
            }
            data.addSeries(series);
            renderer.setSeriesPaint(t, Theme.series(t));
            renderer.setSeriesStroke(t, Theme.line(2));
        }
        renderer.setLegendItemLabelGenerator((d, s) -> data.getSeries(s).getDescription());
        NumberAxis range = Theme.axis("output");
        range.setTickLabelsVisible(false);
        range.setTickMarksVisible(false);
        range.setRange(-0.25, trains.size());
        NumberAxis time = Theme.axis("time, periods of the teeth");
        time.setRange(BEFORE, PERIODS);
        XYPlot plot = new XYPlot(data, time, range, renderer);
        Theme.style(plot);
        plot.setRangeGridlinesVisible(false);
        return Theme.chart(plot, true);
    }
}
