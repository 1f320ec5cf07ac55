package eddyreach.kinds.sweep;

import eddyreach.materials.Material;
import eddyreach.model.values.Layer;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Theme;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;

/** Shows what coatings do to the distance of their base. */
public record LayersPresentation(LayersResult result) implements SweepPresentation.OfCurves {

    private static final int NAME = 17;
    private static final int CELL = 8;

    /** A thickness at which coatings are commonly compared, m. */
    private static final double TYPICAL = 10e-6;

    @Override
    public List<SweepCurve> curves() {
        return result.coatings().stream().map(LayersResult.Item::curve).toList();
    }

    @Override
    public double reach() {
        return result.input().reach();
    }

    @Override
    public PointTable table() {
        return new PointTable("layers.csv", "coating", "thickness_um", Labels.MICROMETRE);
    }

    @Override
    public int[] columns() {
        int[] columns = heads().stream().mapToInt(h -> CELL).toArray();
        columns[0] = -NAME;
        return columns;
    }

    private String base() {
        return result.input().base().stream()
                .map(l -> l.material().name() + ", " + Labels.length(l.thickness()))
                .collect(Collectors.joining(" on "));
    }

    @Override
    public List<Picture> pictures() {
        return SweepCharts.sheets(result.coatings(), some -> new LayersPresentation(result.of(some)).sheet());
    }

    private List<Picture> sheet() {
        String head = SweepCharts.heading(result) + " · "
                + SweepParts.outline(result.input().outline()) + " · " + SweepCharts.errors(curves());
        return List.of(
                new Picture(
                        "layers-share",
                        "What a coating does to " + base(),
                        head,
                        result.name(),
                        (g, area) -> shares().draw(g, area)),
                new Picture(
                        "layers-on",
                        "Switch-on distance over the coating of " + base(),
                        head,
                        result.name(),
                        (g, area) -> distances().draw(g, area)));
    }

    private NumberAxis across() {
        return SweepCharts.range(
                Theme.axis(Labels.COATING),
                result.input().thicknesses().first() * Labels.MICROMETRE,
                result.input().thicknesses().last() * Labels.MICROMETRE);
    }

    private JFreeChart shares() {
        NumberAxis up = Theme.axis(result.againstBare() ? Labels.SHARE_OF_BARE : Labels.SHARE_OF_SR);
        SweepCharts chart = new SweepCharts(
                curves(), names(), across(), Labels.MICROMETRE, up, (c, p) -> p.on() / result.reference());
        chart.level(1, result.againstBare() ? "bare" : "sr", true);
        double end = result.input().thicknesses().last();
        for (int c = 0; c < result.coatings().size(); c++) {
            chart.mark(
                    c,
                    SweepCharts.Mark.DIAMOND,
                    end,
                    result.coatings().get(c).solid().on() / result.reference());
        }
        chart.explain(SweepCharts.Mark.DIAMOND, "solid coating metal");
        return chart.chart();
    }

    private JFreeChart distances() {
        SweepCharts chart = new SweepCharts(
                curves(),
                names(),
                across(),
                Labels.MICROMETRE,
                Theme.axis(Labels.ON_DISTANCE),
                (c, p) -> p.on() * Labels.MM);
        return drawn(chart, true);
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        List<Object> base = new ArrayList<>();
        for (Layer layer : result.input().base()) {
            base.add(new JsonNode()
                    .with("material", parts.material(layer.material()))
                    .with("thickness_m", layer.thickness()));
        }
        document.with("base", base)
                .with("outline", JsonParts.outline(result.input().outline()))
                .with("reach_m", result.input().reach())
                .with("bare", SweepParts.distance(result.bare()))
                .with("reference_m", result.reference())
                .with(
                        "curves",
                        result.coatings().stream()
                                .map(i -> new JsonNode()
                                        .with("coating", parts.material(i.material()))
                                        .with("solid", SweepParts.distance(i.solid()))
                                        .with(
                                                "reason",
                                                SweepWords.reason(
                                                        i,
                                                        result.reference(),
                                                        result.input().searched()))
                                        .with(
                                                "points",
                                                SweepParts.points(i.curve().points(), "thickness_m")))
                                .toList());
    }

    @Override
    public List<Material> materials() {
        return Stream.concat(result.input().base().stream().map(Layer::material), result.input().coatings().stream())
                .distinct()
                .toList();
    }

    @Override
    public String answer() {
        return SweepWords.answer(result, TYPICAL);
    }

    @Override
    public List<String> introduction() {
        String bare = result.againstBare()
                ? "on at " + SweepParts.on(result.bare()) + " mm, off at " + SweepParts.off(result.bare()) + " mm"
                : Terms.of(result.bare().outcome());
        return List.of("Base " + base() + ", bare: " + bare + ". The table gives the on distance over "
                + (result.againstBare() ? "that of the bare base" : "sr, since the bare base has none")
                + ", by thickness of the coating.");
    }

    @Override
    public List<String> notes() {
        return List.of("Numerical error of a share at most ± " + Labels.fixed(shareError(), 3) + ".");
    }

    @Override
    public List<String> reasons() {
        return result.coatings().stream()
                .map(i -> i.material().name() + ". "
                        + SweepWords.reason(
                                i, result.reference(), result.input().searched()))
                .toList();
    }

    @Override
    public List<String> heads() {
        List<String> heads = new ArrayList<>(List.of("coating"));
        result.coatings().stream()
                .limit(1)
                .flatMap(i -> i.marked().stream())
                .forEach(t -> heads.add(Labels.length(t.point().value())));
        heads.add("solid");
        return heads;
    }

    @Override
    public List<Page.Row> rows(Function<Material, String> name) {
        List<Page.Row> rows = new ArrayList<>();
        for (LayersResult.Item item : result.coatings()) {
            List<String> cells = new ArrayList<>(List.of(name.apply(item.material())));
            item.marked().forEach(t -> cells.add(share(t.point().on())));
            cells.add(share(item.solid().on()));
            rows.add(new Page.Row(cells, false));
        }
        return rows;
    }

    private String share(double on) {
        return SweepParts.factor(on / result.reference());
    }

    /** The largest sum of both errors of a share, over the share's denominator, rounded up. */
    private double shareError() {
        double worst = curves().stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(p -> p.distance().onError())
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double bare = result.againstBare() ? result.bare().onError() : 0;
        return Math.ceil((worst + bare) / result.reference() * 1000) / 1000;
    }
}
