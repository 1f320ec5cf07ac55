package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assurance;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.data.category.DefaultCategoryDataset;

/** On distances and assured distances of targets before several switches, each bar with its name and its numbers beside it. */
final class ComparedChart {

    static final String NAME = "comparison";

    private static final Color ON = new Color(0x9fc3dc);
    private static final Color ASSURED = new Color(0x24557a);

    /** More bars on one sheet could not be read. */
    private static final int BARS = 20;

    private ComparedChart() {}

    /** As many sheets as it takes, each with whole targets. */
    static List<Picture> of(ComparedResult result, List<ComparedPresentation.Line> lines) {
        int switches = result.each().size();
        int most = Math.max(1, BARS / switches) * switches;
        List<Picture> pictures = new ArrayList<>();
        for (int from = 0; from < lines.size(); from += most) {
            List<ComparedPresentation.Line> shown = lines.subList(from, Math.min(lines.size(), from + most));
            pictures.add(new Picture(
                    NAME + (from == 0 ? "" : "-" + (pictures.size() + 1)),
                    "The switches compared",
                    (result.each().get(0).mounted().isPresent() ? "in the mount · " : "")
                            + "switch-on distance, and how far every unit is on ("
                            + AnswerTable.BAND + ")",
                    result.name(),
                    (g, area) -> chart(shown).draw(g, area)));
        }
        return pictures;
    }

    private static JFreeChart chart(List<ComparedPresentation.Line> lines) {
        DefaultCategoryDataset on = new DefaultCategoryDataset();
        DefaultCategoryDataset assured = new DefaultCategoryDataset();
        CategoryPlot plot = new CategoryPlot();
        double end = 0;
        int n = lines.size();
        for (int i = 0; i < n; i++) {
            ComparedPresentation.Line l = lines.get(i);
            BarCharts.Key key = new BarCharts.Key(i, l.target().target().label() + ", " + l.switchId());
            double distance = l.distance().on();
            boolean has = Double.isFinite(distance);
            on.addValue(has ? distance * Labels.MM : null, "on", key);
            assured.addValue(
                    l.band()
                            .filter(Assurance::anywhereOn)
                            .map(a -> a.assuredOn() * Labels.MM)
                            .orElse(null),
                    "assured",
                    key);
            end = Math.max(end, has ? distance * Labels.MM : 0);
            plot.addAnnotation(BarCharts.note(
                    has
                            ? Labels.millimetres(distance)
                                    + l.band()
                                            .map(a -> " / " + AssuranceText.assuredOn(a))
                                            .orElse("")
                            : Terms.of(l.distance().outcome()),
                    key,
                    has ? distance * Labels.MM : 0));
        }
        BarRenderer wide = new BarRenderer();
        BarCharts.plain(wide, 0.62 / n);
        wide.setSeriesPaint(0, ON);
        BarRenderer narrow = new BarRenderer();
        BarCharts.plain(narrow, 0.28 / n);
        narrow.setSeriesPaint(0, ASSURED);
        // what has the lowest number is drawn last
        BarCharts.arrange(plot, assured, narrow, "distance, mm", Math.max(1e-3, end) * 1.25);
        plot.setDataset(1, on);
        plot.setRenderer(1, wide);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(BarCharts.box("on", ON));
        legend.add(BarCharts.box("every unit is on up to", ASSURED));
        plot.setFixedLegendItems(legend);
        return Theme.chart(plot, true);
    }
}
