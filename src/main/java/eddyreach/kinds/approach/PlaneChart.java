package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Curve;
import eddyreach.report.draw.PointLabels;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Normalised impedance plane: reactance against loss resistance, both over the reactance without a target, one path per
 * target as it comes closer.
 */
final class PlaneChart {

    private PlaneChart() {}

    /** A named end of a path. */
    private record End(String name, Color color, double x, double y) {}

    static JFreeChart of(ApproachResult result) {
        double inductance = result.undamped().inductance();
        double reactance = 2 * Math.PI * result.undamped().frequency() * inductance;
        double rated = result.model().effectiveDistance();
        XYSeriesCollection paths = new XYSeriesCollection();
        XYSeriesCollection marks = new XYSeriesCollection();
        List<End> ends = new ArrayList<>();
        int n = result.targets().size();
        XYLineAndShapeRenderer dots = new XYLineAndShapeRenderer(false, true);
        dots.setUseFillPaint(true);
        dots.setUseOutlinePaint(true);
        for (int t = 0; t < n; t++) {
            TargetResult target = result.targets().get(t);
            Curve curve = target.curve();
            XYSeries path = new XYSeries(t, false);
            for (int i = curve.size() - 1; i >= 0; i--) {
                path.add(curve.lossResistance(i) / reactance, 1 + curve.inductanceChange(i) / inductance, false);
            }
            paths.addSeries(path);
            for (int m = 0; m < 3; m++) {
                double distance = m == 0 ? rated : m == 1 ? rated / 2 : curve.distance(0);
                double x = at(curve.distance(), curve.lossResistance(), distance) / reactance;
                double y = 1 + at(curve.distance(), curve.inductanceChange(), distance) / inductance;
                XYSeries mark = new XYSeries(t + "/" + m);
                if (Double.isFinite(x + y)) {
                    mark.add(x, y);
                }
                int s = marks.getSeriesCount();
                marks.addSeries(mark);
                dots.setSeriesShape(s, m == 2 ? new Rectangle2D.Double(-3.6, -3.6, 7.2, 7.2) : circle(m == 0 ? 4 : 3));
                dots.setSeriesFillPaint(s, m == 0 ? Color.WHITE : Theme.series(t));
                dots.setSeriesOutlinePaint(s, Theme.series(t));
                dots.setSeriesOutlineStroke(s, Theme.line(1.3));
                if (m == 2) {
                    ends.add(new End(target.target().label(), Theme.series(t), x, y));
                }
            }
        }
        XYLineAndShapeRenderer lines = new XYLineAndShapeRenderer(true, false);
        lines.setDrawSeriesLineAsPath(true);
        for (int t = 0; t < n; t++) {
            lines.setSeriesPaint(t, Theme.series(t));
            lines.setSeriesStroke(t, Theme.stroke(t));
        }
        NumberAxis across = Theme.axis(Labels.NORMALISED_RESISTANCE);
        NumberAxis up = Theme.axis(Labels.NORMALISED_REACTANCE);
        XYPlot plot = new XYPlot(paths, across, up, lines);
        Theme.style(plot);
        plot.setDataset(1, marks);
        plot.setRenderer(1, dots);
        across.setUpperMargin(0.34);
        up.setUpperMargin(0.06);
        up.setLowerMargin(0.1);
        plot.addAnnotation(new EndNames(ends, paths));
        return Theme.chart(plot, false);
    }

    private static Ellipse2D circle(double radius) {
        return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
    }

    /** Linear interpolation; NaN outside the range. */
    private static double at(double[] x, double[] y, double value) {
        for (int i = 0; i + 1 < x.length; i++) {
            if (value >= x[i] && value <= x[i + 1]) {
                return y[i] + (value - x[i]) / (x[i + 1] - x[i]) * (y[i + 1] - y[i]);
            }
        }
        return Double.NaN;
    }

    /** Names beside the paths' ends, off the paths and off each other. */
    private static final class EndNames extends AbstractXYAnnotation {

        private static final long serialVersionUID = 1L;
        private static final double MARK = 4.5;
        private final transient List<End> ends;
        private final transient XYSeriesCollection paths;

        EndNames(List<End> ends, XYSeriesCollection paths) {
            this.ends = ends.stream()
                    .filter(e -> Double.isFinite(e.x() + e.y()))
                    .sorted((a, b) -> Double.compare(b.x(), a.x()))
                    .toList();
            this.paths = paths;
        }

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis domainAxis,
                ValueAxis rangeAxis,
                int rendererIndex,
                PlotRenderingInfo info) {
            PointLabels labels = new PointLabels(area);
            for (int s = 0; s < paths.getSeriesCount(); s++) {
                Path2D path = new Path2D.Double();
                for (int i = 0; i < paths.getItemCount(s); i++) {
                    double x = domainAxis.valueToJava2D(paths.getXValue(s, i), area, plot.getDomainAxisEdge());
                    double y = rangeAxis.valueToJava2D(paths.getYValue(s, i), area, plot.getRangeAxisEdge());
                    if (i == 0) {
                        path.moveTo(x, y);
                    } else {
                        path.lineTo(x, y);
                    }
                }
                labels.avoid(path);
            }
            List<Point2D> points = new ArrayList<>();
            for (End end : ends) {
                double x = domainAxis.valueToJava2D(end.x(), area, plot.getDomainAxisEdge());
                double y = rangeAxis.valueToJava2D(end.y(), area, plot.getRangeAxisEdge());
                points.add(new Point2D.Double(x, y));
                labels.avoid(new Rectangle2D.Double(x - MARK, y - MARK, 2 * MARK, 2 * MARK));
            }
            for (int i = 0; i < ends.size(); i++) {
                End end = ends.get(i);
                Point2D p = points.get(i);
                labels.draw(g, end.name(), Theme.medium(10.5), end.color(), p.getX(), p.getY());
            }
        }
    }
}
