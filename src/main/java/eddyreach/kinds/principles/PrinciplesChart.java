package eddyreach.kinds.principles;

import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** On distance of each target by each principle. */
final class PrinciplesChart {

    private PrinciplesChart() {}

    static JFreeChart of(PrinciplesResult r) {
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        LineAndShapeRenderer renderer = new LineAndShapeRenderer(false, true);
        int row = 0;
        for (PrinciplesResult.Switch s : r.switches()) {
            if (s.problem().isPresent()) {
                continue;
            }
            for (int i = 0; i < s.on().size(); i++) {
                data.addValue(
                        s.on().get(i) * Labels.MM,
                        s.evaluated().label(),
                        r.input().targets().get(i).label());
            }
            renderer.setSeriesPaint(row, Theme.series(row));
            renderer.setSeriesShape(row, Theme.marker(row));
            row++;
        }
        CategoryAxis names = new CategoryAxis();
        Theme.style(names);
        NumberAxis range = Theme.axis(Labels.ON_DISTANCE + "; 0: never on");
        range.setAutoRangeIncludesZero(true);
        range.setAutoRangeStickyZero(false);
        CategoryPlot plot = new CategoryPlot(data, names, range, renderer);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        Theme.style(plot);
        plot.setDomainGridlinesVisible(true);
        plot.setDomainGridlinePaint(Theme.GRID);
        return Theme.chart(plot, true);
    }
}
