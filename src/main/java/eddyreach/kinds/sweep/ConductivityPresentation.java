package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** Shows the on distance over conductivity and permeability. */
public record ConductivityPresentation(ConductivityResult result) implements SweepPresentation {

    private static final int[] COLUMNS = {-18, 7, 6, 10, 13, 13, 6};
    private static final List<String> HEADS =
            List.of("material", "MS/m", "mu_r", "skin depth", "on, mm", "off, mm", "factor");

    @Override
    public List<Picture> pictures() {
        String blank = result.rows().stream().flatMap(List::stream).allMatch(d -> Double.isFinite(d.on()))
                ? ""
                : " · blank: no on distance";
        return List.of(new Picture(
                "map",
                "Switch-on distance in mm over conductivity and permeability",
                SweepCharts.heading(result) + " · "
                        + SweepParts.outline(result.input().outline()) + ", "
                        + Labels.length(result.input().thickness()) + " thick" + blank
                        + (SweepWords.outside(result).isEmpty() ? "" : " ·" + SweepWords.outside(result)),
                result.name(),
                new ConductivityMap(result)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        return Map.of("map.csv", this::map, "materials.csv", this::dots);
    }

    private Csv map() {
        Csv csv = new Csv(header("conductivity_s_per_m", "relative_permeability"));
        double sr = result.model().effectiveDistance();
        for (int j = 0; j < result.rows().size(); j++) {
            List<SwitchDistance> row = result.rows().get(j);
            for (int i = 0; i < row.size(); i++) {
                csv.row(SweepParts.row(row.get(i), sr, result.conductivities()[i], result.permeabilities()[j]));
            }
        }
        return csv;
    }

    private Csv dots() {
        Csv csv = new Csv(header("material", "conductivity_s_per_m", "relative_permeability"));
        double sr = result.model().effectiveDistance();
        for (ConductivityResult.Dot d : result.dots()) {
            csv.row(SweepParts.row(
                    d.distance(),
                    sr,
                    d.material().id(),
                    d.conductivity(),
                    d.material().muReal()));
        }
        return csv;
    }

    private static String[] header(String... first) {
        List<String> header = new ArrayList<>(List.of(first));
        header.addAll(SweepParts.DISTANCE_COLUMNS);
        return header.toArray(String[]::new);
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with("outline", JsonParts.outline(result.input().outline()))
                .with("thickness_m", result.input().thickness())
                .with("reach_m", result.input().reach())
                .with("reason", SweepWords.reason(result))
                .with("wavenumber_per_m", result.wavenumber())
                .with("conductivities_s_per_m", JsonParts.numbers(result.conductivities()))
                .with("relative_permeabilities", JsonParts.numbers(result.permeabilities()))
                .with(
                        "rows",
                        result.rows().stream()
                                .map(r -> r.stream().map(SweepParts::distance).toList())
                                .toList())
                .with(
                        "marked",
                        result.dots().stream()
                                .map(d -> {
                                    JsonNode node = new JsonNode()
                                            .with("material", parts.material(d.material()))
                                            .with("conductivity_s_per_m", d.conductivity())
                                            .with("skin_depth_m", d.skinDepth());
                                    node.putAll(SweepParts.distance(d.distance()));
                                    return node;
                                })
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
    public int[] columns() {
        return COLUMNS.clone();
    }

    @Override
    public List<String> heads() {
        return HEADS;
    }

    @Override
    public List<String> notes() {
        return List.of(SweepWords.mappedRange(result));
    }

    @Override
    public List<String> reasons() {
        return List.of(SweepWords.reason(result));
    }

    @Override
    public List<Page.Row> rows(Function<Material, String> name) {
        return result.dots().stream()
                .map(d -> Page.Row.of(
                        name.apply(d.material()),
                        Labels.significant(d.conductivity() * Labels.MEGASIEMENS, 3),
                        Labels.significant(d.material().muReal(), 3),
                        Double.isFinite(d.skinDepth()) ? Labels.length(d.skinDepth(), 2) : "-",
                        SweepParts.on(d.distance()),
                        SweepParts.off(d.distance()),
                        SweepParts.factor(d.distance().on() / result.model().effectiveDistance())))
                .toList();
    }
}
