package eddyreach.kinds.mount;

import eddyreach.engine.core.Curve;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts of switches in mounts. */
public final class MountCharts {

    private MountCharts() {}

    /** Amplitude over distance of one target, in free air and in each mount, with the thresholds. */
    static JFreeChart amplitude(MountResult result, int target) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (MountCase c : result.cases()) {
            MountTarget t = c.targets().get(target);
            XYSeries series = new XYSeries(data.getSeriesCount(), false);
            series.setDescription(c.mount().id() + ": " + where(t));
            Curve curve = t.curve();
            for (int i = 0; i < curve.size(); i++) {
                series.add(curve.distance(i) * Labels.MM, curve.amplitude(i), false);
            }
            data.addSeries(series);
        }
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(Labels.DISTANCE), Theme.axis(Labels.AMPLITUDE));
        DistanceCharts.thresholds(plot, result.trimmed());
        return Theme.chart(plot, true);
    }

    private static String where(MountTarget t) {
        return t.distance().outcome() == SwitchDistance.Outcome.SWITCHES
                ? "on at " + Labels.millimetres(t.distance().on()) + " mm"
                : t.distance().outcome().label();
    }
}
