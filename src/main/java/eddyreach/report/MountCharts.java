package eddyreach.report;

import eddyreach.study.Curve;
import eddyreach.study.MountCase;
import eddyreach.study.MountResult;
import eddyreach.study.MountTarget;
import eddyreach.study.SwitchDistance;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts of switches in mounts. */
final class MountCharts {

    private static final int MARKERS = 7;

    private MountCharts() {}

    /** Amplitude over distance of one target, in free air and in each mount, with the thresholds. */
    static JFreeChart amplitude(MountResult result, int target) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (MountCase c : result.cases()) {
            MountTarget t = c.targets().get(target);
            XYSeries series = new XYSeries(data.getSeriesCount(), false);
            series.setDescription(c.mount().id() + ": " + where(t));
            Curve curve = t.curve();
            for (int i = 0; i < curve.distance().length; i++) {
                series.add(curve.distance()[i] * Labels.MM, curve.amplitude()[i], false);
            }
            data.addSeries(series);
        }
        XYPlot plot = lines(data, Theme.axis(Labels.DISTANCE), Theme.axis(Labels.AMPLITUDE));
        CurveCharts.thresholds(plot, result.trimmed());
        return Theme.chart(plot, true);
    }

    /** Lines with a marker at a few of their points, named by the descriptions of the series. */
    static XYPlot lines(XYSeriesCollection data, NumberAxis domain, NumberAxis range) {
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

    private static String where(MountTarget t) {
        return t.distance().outcome() == SwitchDistance.Outcome.SWITCHES
                ? "on at " + Labels.millimetres(t.distance().on()) + " mm"
                : t.distance().outcome().label();
    }
}
