package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.LossBudget;
import eddyreach.geometry.Role;
import eddyreach.materials.FactorBand;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAnchor;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.IntervalBarRenderer;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.category.StatisticalBarRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.category.DefaultIntervalCategoryDataset;
import org.jfree.data.statistics.DefaultStatisticalCategoryDataset;

/** Bar charts: correction factors with the trade's bands, and where the loss goes. */
final class BarCharts {

    private static final Color SPAN = new Color(0xd98032);
    private static final Color BAR = new Color(0x5b98c0);
    private static final Map<Role, Color> ROLE_COLORS = Map.of(
            Role.WINDING, new Color(0x24405e),
            Role.CORE, new Color(0x7f9fbd),
            Role.HOUSING, new Color(0xbccbd8),
            Role.MOUNT, new Color(0xe6dcc2),
            Role.TARGET, new Color(0xb4472b));

    /** Below this part of the longest bar a segment is too short for its number. */
    private static final double LABELLED_SHARE = 0.06;

    /** Below this part of the longest bar a segment is thinner than its outline, and not in the legend either. */
    private static final double VISIBLE_SHARE = 0.002;

    /** With more bars than this there is room for one line of their names only. */
    private static final int TWO_LINE_BARS = 11;

    private BarCharts() {}

    /** Correction factors with their numerical error, in front of the band that is usual in the trade. */
    static JFreeChart factors(ApproachResult result) {
        List<TargetResult> targets = result.targets();
        int n = targets.size();
        DefaultStatisticalCategoryDataset bars = new DefaultStatisticalCategoryDataset();
        Key[] keys = new Key[n];
        Double[][] low = new Double[1][n];
        Double[][] high = new Double[1][n];
        Double[][] from = new Double[1][n];
        Double[][] to = new Double[1][n];
        CategoryPlot plot = new CategoryPlot();
        double end = 1;
        for (int t = 0; t < n; t++) {
            TargetResult target = targets.get(t);
            Key key = new Key(t, target.target().label());
            keys[t] = key;
            boolean has = Double.isFinite(target.factor());
            bars.add(has ? target.factor() : null, has ? target.factorError() : null, "factor", key);
            low[0][t] = target.band().map(FactorBand::low).orElse(null);
            high[0][t] = target.band().map(FactorBand::high).orElse(null);
            Optional<Factors.Range> range = Factors.of(target, result.model().effectiveDistance());
            from[0][t] = range.map(Factors.Range::low).orElse(null);
            to[0][t] = range.map(Factors.Range::high).orElse(null);
            double right = Math.max(
                    Math.max(
                            has ? target.factor() + target.factorError() : 0,
                            range.map(Factors.Range::high).orElse(0.0)),
                    target.band().map(FactorBand::high).orElse(0.0));
            end = Math.max(end, right);
            String text =
                    has ? shown(target.factor(), 2) : Terms.of(target.distance().outcome());
            plot.addAnnotation(note(has ? text : " " + text, key, has ? right : 0));
        }
        DefaultIntervalCategoryDataset bands =
                new DefaultIntervalCategoryDataset(new String[] {"band"}, keys, low, high);
        StatisticalBarRenderer bar = new StatisticalBarRenderer();
        plain(bar, 0.34 / n);
        bar.setSeriesPaint(0, BAR);
        bar.setErrorIndicatorPaint(Theme.INK);
        bar.setErrorIndicatorStroke(Theme.line(1.4));
        IntervalBarRenderer band = new IntervalBarRenderer();
        plain(band, 0.72 / n);
        band.setSeriesPaint(0, Theme.BAND);
        arrange(plot, bars, bar, Labels.FACTOR, end * 1.12);
        plot.setDataset(1, bands);
        plot.setRenderer(1, band);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(box("correction factor, with numerical error", BAR));
        if (Arrays.stream(from[0]).anyMatch(Objects::nonNull)) {
            // what has the lowest number is drawn last
            plot.setDataset(2, bands);
            plot.setRenderer(2, band);
            plot.setDataset(1, bars);
            plot.setRenderer(1, bar);
            IntervalBarRenderer span = new IntervalBarRenderer();
            plain(span, 0.1 / n);
            span.setSeriesPaint(0, SPAN);
            plot.setDataset(0, new DefaultIntervalCategoryDataset(new String[] {"range"}, keys, from, to));
            plot.setRenderer(0, span);
            legend.add(box("over its range of permeability", SPAN));
        }
        if (targets.stream().anyMatch(t -> t.band().isPresent())) {
            legend.add(box("usual in the trade", Theme.BAND));
        }
        plot.setFixedLegendItems(legend);
        return Theme.chart(plot, true);
    }

    /** Series loss resistances by group: without a target, and with each target where it switches. */
    static JFreeChart losses(ApproachResult result) {
        Map<Key, LossBudget> budgets = new LinkedHashMap<>();
        budgets.put(new Key(0, "without target"), result.trimmed().freeBudget());
        for (TargetResult target : result.targets()) {
            LossBudget budget = target.budget();
            String name = target.target().label() + " at " + Labels.millimetres(budget.distance()) + " mm";
            budgets.put(new Key(budgets.size(), name), budget);
        }
        double end =
                budgets.values().stream().mapToDouble(LossBudget::total).max().orElse(1);
        List<Role> roles = Stream.of(Role.values())
                .filter(g -> budgets.values().stream().anyMatch(b -> Math.abs(b.of(g)) > VISIBLE_SHARE * end))
                .toList();
        int decimals = Math.max(0, Math.min(6, 2 - (int) Math.floor(Math.log10(end))));
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        CategoryPlot plot = new CategoryPlot();
        budgets.forEach((key, budget) -> {
            double positive = 0;
            for (Role role : roles) {
                data.addValue(budget.of(role), Terms.of(role), key);
                positive += Math.max(0, budget.of(role));
            }
            plot.addAnnotation(note(shown(budget.total(), decimals) + " Ω", key, positive));
        });
        StackedBarRenderer bar = new StackedBarRenderer();
        plain(bar, 0.62 / budgets.size());
        bar.setDefaultItemLabelGenerator(new StandardCategoryItemLabelGenerator() {
            private static final long serialVersionUID = 1L;

            @Override
            public String generateLabel(CategoryDataset d, int row, int column) {
                double v = d.getValue(row, column).doubleValue();
                return v < LABELLED_SHARE * end ? null : Labels.fixed(v, decimals);
            }
        });
        bar.setDefaultItemLabelsVisible(true);
        bar.setDefaultItemLabelFont(Theme.text(9.5));
        bar.setDefaultPositiveItemLabelPosition(new ItemLabelPosition(ItemLabelAnchor.CENTER, TextAnchor.CENTER));
        bar.setDrawBarOutline(true);
        LegendItemCollection legend = new LegendItemCollection();
        for (int g = 0; g < roles.size(); g++) {
            Color color = ROLE_COLORS.get(roles.get(g));
            boolean dark = color.getRed() + color.getGreen() + color.getBlue() < 380;
            bar.setSeriesPaint(g, color);
            bar.setSeriesOutlinePaint(g, Color.WHITE);
            bar.setSeriesOutlineStroke(g, Theme.line(0.8));
            bar.setSeriesItemLabelPaint(g, dark ? Color.WHITE : Theme.INK);
            legend.add(box(Terms.of(roles.get(g)), color));
        }
        arrange(plot, data, bar, Labels.LOSS_RESISTANCE, end * 1.16);
        plot.setFixedLegendItems(legend);
        return Theme.chart(plot, true);
    }

    static void arrange(CategoryPlot plot, CategoryDataset data, BarRenderer bar, String label, double end) {
        CategoryAxis names = new CategoryAxis();
        boolean crowded = data.getColumnCount() > TWO_LINE_BARS;
        names.setMaximumCategoryLabelWidthRatio(crowded ? 0.42f : 0.32f);
        names.setMaximumCategoryLabelLines(crowded ? 1 : 2);
        names.setLowerMargin(0.01);
        names.setUpperMargin(0.01);
        names.setCategoryMargin(0);
        Theme.style(names);
        names.setTickLabelFont(Theme.text(crowded ? 9.5 : 10.5));
        names.setTickMarksVisible(false);
        NumberAxis values = Theme.axis(label);
        values.setRange(0, end);
        plot.setDomainAxis(names);
        plot.setRangeAxis(values);
        plot.setDataset(data);
        plot.setRenderer(bar);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        Theme.style(plot);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    }

    static void plain(BarRenderer bar, double width) {
        bar.setBarPainter(new StandardBarPainter());
        bar.setShadowVisible(false);
        bar.setMaximumBarWidth(width);
        bar.setItemMargin(0);
    }

    static CategoryTextAnnotation note(String text, Key key, double value) {
        CategoryTextAnnotation note = new CategoryTextAnnotation("  " + text, key, value);
        note.setFont(Theme.medium(10.5));
        note.setPaint(Theme.INK);
        note.setCategoryAnchor(CategoryAnchor.MIDDLE);
        note.setTextAnchor(TextAnchor.CENTER_LEFT);
        return note;
    }

    /** A rounded number, but never 0 for what is there. */
    private static String shown(double value, int decimals) {
        boolean lost = value != 0 && Math.abs(value) < 0.5 * Math.pow(10, -decimals);
        return lost ? Labels.significant(value, 1) : Labels.fixed(value, decimals);
    }

    static LegendItem box(String text, Paint paint) {
        return new LegendItem(text, null, null, null, new Rectangle2D.Double(-6, -5, 12, 10), paint);
    }

    /** A bar's name; the index keeps two targets of the same name apart. */
    record Key(int index, String name) implements Comparable<Key> {

        @Override
        public int compareTo(Key other) {
            return Integer.compare(index, other.index);
        }

        @Override
        public String toString() {
            return name;
        }
    }
}
