package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Shows the on distance over conductivity and permeability. */
public record ConductivityPresentation(ConductivityResult result) implements Presentation {

    private static final int[] COLUMNS = {-20, 8, 7, 9, 12, 12, 6};

    @Override
    public List<Picture> pictures() {
        String blank = result.rows().stream().flatMap(List::stream).allMatch(d -> Double.isFinite(d.on()))
                ? ""
                : " · blank: never on";
        return List.of(new Picture(
                "map",
                "Switch-on distance in mm over conductivity and permeability",
                SweepCharts.heading(result) + " · "
                        + SweepParts.outline(result.input().outline()) + ", "
                        + Labels.length(result.input().thickness()) + " thick" + blank,
                result.name(),
                new ConductivityMap(result)));
    }

    @Override
    public Map<String, Supplier<String>> tables() {
        return Map.of("map.csv", this::map, "materials.csv", this::dots);
    }

    private String map() {
        Csv csv = new Csv(header("conductivity_s_per_m", "relative_permeability"));
        double sr = result.model().effectiveDistance();
        for (int j = 0; j < result.rows().size(); j++) {
            List<SwitchDistance> row = result.rows().get(j);
            for (int i = 0; i < row.size(); i++) {
                csv.row(SweepParts.row(row.get(i), sr, result.conductivities()[i], result.permeabilities()[j]));
            }
        }
        return csv.text();
    }

    private String dots() {
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
        return csv.text();
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
                .with("reason", result.reason())
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
    public void write(TextPage page) {
        page.line(page.mark(
                TextPage.row(COLUMNS, "material", "MS/m", "mu_r", "skin", "on, mm", "off, mm", "factor"),
                TextPage.BOLD));
        for (ConductivityResult.Dot d : result.dots()) {
            page.line(TextPage.row(
                    COLUMNS,
                    SweepParts.cut(d.material().id(), -COLUMNS[0]),
                    Labels.significant(d.conductivity() * Labels.MEGASIEMENS, 3),
                    Labels.significant(d.material().muReal(), 3),
                    Double.isFinite(d.skinDepth()) ? Labels.length(d.skinDepth()) : "-",
                    SweepParts.on(d.distance()),
                    SweepParts.off(d.distance()),
                    SweepParts.factor(d.distance().on() / result.model().effectiveDistance())));
        }
        page.gap();
        page.paragraph(range());
        page.paragraph(result.reason());
    }

    private String range() {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double sigma = 0;
        double mu = 0;
        int none = 0;
        int all = 0;
        double worst = 0;
        for (int j = 0; j < result.rows().size(); j++) {
            List<SwitchDistance> row = result.rows().get(j);
            for (int i = 0; i < row.size(); i++) {
                SwitchDistance d = row.get(i);
                all++;
                if (Double.isFinite(d.on())) {
                    least = Math.min(least, d.on());
                    if (d.on() > most) {
                        most = d.on();
                        sigma = result.conductivities()[i];
                        mu = result.permeabilities()[j];
                    }
                    worst = Math.max(worst, d.onError());
                } else {
                    none++;
                }
            }
        }
        return "Map of " + result.conductivities().length + " conductivities and " + result.permeabilities().length
                + " permeabilities: "
                + (most > 0
                        ? "on distances from " + Labels.millimetres(least) + " to " + Labels.millimetres(most)
                                + " mm, the largest at " + Labels.significant(sigma * Labels.MEGASIEMENS, 2)
                                + " MS/m and "
                                + Labels.significant(mu, 2) + ", numerical error at most "
                                + Labels.fixed(Math.ceil(worst * Labels.MM * 100) / 100, 2) + " mm"
                        : "no on distance")
                + (none > 0 ? ", none at " + none + " of " + all + " points" : "") + ".";
    }
}
