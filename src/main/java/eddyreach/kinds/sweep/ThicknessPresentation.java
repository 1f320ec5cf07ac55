package eddyreach.kinds.sweep;

import eddyreach.materials.Material;
import eddyreach.report.draw.LengthAxis;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Theme;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;

/** Shows on and off distance over the thickness of metals. */
public record ThicknessPresentation(ThicknessResult result) implements SweepPresentation.OfCurves {

    private static final int[] COLUMNS = {-15, 9, 12, 12, 6, -18};
    private static final List<String> HEADS = List.of("metal", "thickness", "on, mm", "off, mm", "factor", "what");

    @Override
    public List<SweepCurve> curves() {
        return result.metals().stream().map(ThicknessResult.Metal::curve).toList();
    }

    @Override
    public double reach() {
        return result.input().reach();
    }

    @Override
    public PointTable table() {
        return new PointTable("thickness.csv", "material", "thickness_um", Labels.MICROMETRE);
    }

    @Override
    public int[] columns() {
        return COLUMNS.clone();
    }

    @Override
    public List<String> heads() {
        return HEADS;
    }

    @Override
    public List<Picture> pictures() {
        return SweepCharts.sheets(result.metals(), some -> new ThicknessPresentation(result.of(some)).sheet());
    }

    private List<Picture> sheet() {
        String head = SweepCharts.heading(result) + " · "
                + SweepParts.outline(result.input().outline()) + " · " + SweepCharts.errors(curves());
        return List.of(
                new Picture(
                        "thickness-on",
                        "Switch-on distance over thickness",
                        head,
                        result.name(),
                        (g, area) -> chart(Labels.ON_DISTANCE, SweepPoint::on).draw(g, area)),
                new Picture(
                        "thickness-off",
                        "Switch-off distance over thickness",
                        head,
                        result.name(),
                        (g, area) -> chart(
                                        Labels.OFF_DISTANCE, p -> p.distance().off())
                                .draw(g, area)));
    }

    private JFreeChart chart(String label, ToDoubleFunction<SweepPoint> distance) {
        double first = result.input().thicknesses().first();
        double last = result.input().thicknesses().last();
        double margin = Math.pow(last / first, SweepCharts.MARGIN);
        LengthAxis across = new LengthAxis(Labels.THICKNESS);
        across.setRange(first / margin, last * margin);
        SweepCharts chart = new SweepCharts(
                curves(), names(), across, 1, Theme.axis(label), (c, p) -> distance.applyAsDouble(p) * Labels.MM);
        mark(chart, MarkedPoint.Mark.SKIN_DEPTH, SweepCharts.Mark.DIAMOND, distance);
        mark(chart, MarkedPoint.Mark.SHEET_OPTIMUM, SweepCharts.Mark.TICK, distance);
        mark(chart, MarkedPoint.Mark.LARGEST, SweepCharts.Mark.DOT, distance);
        chart.explain(SweepCharts.Mark.DOT, "largest switch-on distance");
        chart.explain(SweepCharts.Mark.TICK, "t* = k µr δ², most loss of a thin sheet");
        chart.explain(SweepCharts.Mark.DIAMOND, "skin depth δ");
        return drawn(chart, false);
    }

    private void mark(
            SweepCharts chart, MarkedPoint.Mark what, SweepCharts.Mark mark, ToDoubleFunction<SweepPoint> distance) {
        for (int m = 0; m < result.metals().size(); m++) {
            for (MarkedPoint t : result.metals().get(m).marked()) {
                if (t.mark() == what) {
                    chart.mark(m, mark, t.point().value(), distance.applyAsDouble(t.point()) * Labels.MM);
                }
            }
        }
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with("outline", JsonParts.outline(result.input().outline()));
        document.with("reach_m", result.input().reach());
        document.with(
                "curves",
                result.metals().stream()
                        .map(m -> new JsonNode()
                                .with("material", parts.material(m.material()))
                                .with("skin_depth_m", m.skinDepth())
                                .with("sheet_optimum_m", m.optimum())
                                .with("wavenumber_per_m", m.wavenumber())
                                .with(
                                        "largest",
                                        m.highest()
                                                .map(p -> SweepParts.point(p, "thickness_m"))
                                                .orElse(null))
                                .with(
                                        "reason",
                                        SweepWords.reason(m, result.input().searched()))
                                .with("points", SweepParts.points(m.curve().points(), "thickness_m")))
                        .toList());
    }

    @Override
    public List<Material> materials() {
        return result.input().materials();
    }

    @Override
    public String answer() {
        return SweepWords.answer(result);
    }

    @Override
    public List<String> reasons() {
        return result.metals().stream()
                .map(m -> m.material().name() + ". "
                        + SweepWords.reason(m, result.input().searched()))
                .toList();
    }

    @Override
    public List<Page.Row> rows(Function<Material, String> name) {
        List<Page.Row> rows = new ArrayList<>();
        for (ThicknessResult.Metal m : result.metals()) {
            String first = name.apply(m.material());
            for (MarkedPoint t : m.marked()) {
                SweepPoint p = t.point();
                rows.add(Page.Row.of(
                        first,
                        Labels.length(p.value()),
                        SweepParts.on(p.distance()),
                        SweepParts.off(p.distance()),
                        SweepParts.factor(p.on() / result.model().effectiveDistance()),
                        SweepWords.mark(t.mark())));
                first = "";
            }
        }
        return rows;
    }
}
