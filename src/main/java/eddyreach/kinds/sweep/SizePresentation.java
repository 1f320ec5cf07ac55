package eddyreach.kinds.sweep;

import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Theme;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.ui.Layer;

/** Shows on and off distance over the size of targets. */
public record SizePresentation(SizeResult result) implements SweepPresentation.OfCurves {

    private static final int[] COLUMNS = {-16, 8, 5, 12, 12, 6, 9};
    private static final List<String> HEADS =
            List.of("material", "size", "ratio", "on, mm", "off, mm", "share", "typical");
    private static final String NOTE =
            "Ratio: size over that of the standard target. Share: on distance over that of the same material at"
                    + " the standard size. Typical: range for steel, " + SizeDerating.SOURCE + ".";

    @Override
    public List<SweepCurve> curves() {
        return result.materials().stream().map(SizeResult.Item::curve).toList();
    }

    @Override
    public double reach() {
        return result.input().reach();
    }

    @Override
    public PointTable table() {
        return new PointTable("size.csv", "material", "size_mm", Labels.MM);
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
        return SweepCharts.sheets(result.materials(), some -> new SizePresentation(result.of(some)).sheet());
    }

    private List<Picture> sheet() {
        String head = SweepCharts.heading(result) + " · "
                + (result.input().discs() ? "discs " : "squares ")
                + Labels.length(result.input().thickness()) + " thick";
        return List.of(
                new Picture(
                        "size-on",
                        "Switch-on distance over the size of the target",
                        head + " · " + SweepCharts.errors(curves()),
                        result.name(),
                        (g, area) -> distances().draw(g, area)),
                new Picture(
                        "size-share",
                        "On distance of smaller targets, against the standard size",
                        head + " · band: typical for steel, " + SizeDerating.SOURCE,
                        result.name(),
                        (g, area) -> shares().draw(g, area)));
    }

    private JFreeChart distances() {
        NumberAxis across = SweepCharts.range(
                Theme.axis(result.input().discs() ? Labels.DIAMETER : Labels.SIDE),
                0,
                result.input().sizes().last() * Labels.MM);
        SweepCharts chart = new SweepCharts(
                curves(), names(), across, Labels.MM, Theme.axis(Labels.ON_DISTANCE), (c, p) -> p.on() * Labels.MM);
        for (int m = 0; m < result.materials().size(); m++) {
            SizeResult.Item item = result.materials().get(m);
            int curve = m;
            item.curve()
                    .firstSeen()
                    .filter(p -> item.curve().lastUnseen().isPresent())
                    .ifPresent(p -> chart.mark(curve, SweepCharts.Mark.RING, p.value(), p.on() * Labels.MM));
            chart.mark(
                    m, SweepCharts.Mark.DOT, result.reference(), item.standard().on() * Labels.MM);
        }
        chart.explain(SweepCharts.Mark.DOT, "as large as the standard target");
        chart.explain(SweepCharts.Mark.RING, "smallest detected at contact");
        return drawn(chart, false);
    }

    private JFreeChart shares() {
        NumberAxis across = SweepCharts.range(
                Theme.axis(Labels.SIZE_RATIO), 0, result.input().sizes().last() / result.reference());
        SweepCharts chart = new SweepCharts(
                curves(),
                names(),
                across,
                1 / result.reference(),
                Theme.axis(Labels.SHARE_OF_STANDARD_SIZE),
                (c, p) -> p.on() / result.materials().get(c).standard().on());
        chart.plot()
                .getRenderer()
                .addAnnotation(new XYPolygonAnnotation(band(), null, null, Theme.BAND), Layer.BACKGROUND);
        chart.explain(new LegendItem(
                "typical for steel, common practice",
                null,
                null,
                null,
                new Rectangle2D.Double(-8, -5, 16, 10),
                Theme.BAND));
        chart.level(1, "standard size", false);
        return chart.chart();
    }

    /** Outline of the usual range, once there and back. */
    private static double[] band() {
        double[] ratios = SizeDerating.ratios();
        int n = ratios.length;
        double[] xy = new double[4 * n];
        for (int i = 0; i < n; i++) {
            FactorBand band = SizeDerating.usual(ratios[i]).orElseThrow();
            xy[2 * i] = ratios[i];
            xy[2 * i + 1] = band.low();
            xy[4 * n - 2 - 2 * i] = ratios[i];
            xy[4 * n - 1 - 2 * i] = band.high();
        }
        return xy;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with("shape", result.input().discs() ? "disc" : "square")
                .with("thickness_m", result.input().thickness())
                .with("reference_size_m", result.reference())
                .with("reach_m", result.input().reach())
                .with(
                        "curves",
                        result.materials().stream()
                                .map(i -> new JsonNode()
                                        .with("material", parts.material(i.material()))
                                        .with("standard_size", SweepParts.distance(i.standard()))
                                        .with("smallest_seen_m", i.smallest())
                                        .with(
                                                "reason",
                                                SweepWords.reason(
                                                        i,
                                                        result.reference(),
                                                        result.input().searched()))
                                        .with(
                                                "points",
                                                SweepParts.points(i.curve().points(), "size_m")))
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
    public List<String> notes() {
        return List.of(NOTE);
    }

    @Override
    public List<String> reasons() {
        return result.materials().stream()
                .map(i -> i.material().name() + ". "
                        + SweepWords.reason(
                                i, result.reference(), result.input().searched()))
                .toList();
    }

    @Override
    public List<Page.Row> rows(Function<Material, String> name) {
        List<Page.Row> rows = new ArrayList<>();
        for (SizeResult.Item item : result.materials()) {
            String first = name.apply(item.material());
            for (MarkedPoint t : item.marked()) {
                SweepPoint p = t.point();
                double ratio = p.value() / result.reference();
                rows.add(Page.Row.of(
                        first,
                        Labels.length(p.value()),
                        Labels.fixed(ratio, 2),
                        SweepParts.on(p.distance()),
                        SweepParts.off(p.distance()),
                        SweepParts.factor(p.on() / item.standard().on()),
                        SizeDerating.usual(ratio)
                                .filter(b -> b.low() < b.high())
                                .map(b -> Labels.fixed(b.low(), 2) + "-" + Labels.fixed(b.high(), 2))
                                .orElse("-")));
                first = "";
            }
        }
        return rows;
    }
}
