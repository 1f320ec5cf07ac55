package eddyreach.kinds.series;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import eddyreach.switching.Spread;
import eddyreach.switching.StandardQuantities;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Shows a series. */
record SeriesPresentation(SeriesResult result) implements Presentation {

    private static final double[] QUANTILES = {0.0015, 0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 0.9985};

    @Override
    public String answer() {
        return SeriesText.answer(result);
    }

    @Override
    public List<Picture> pictures() {
        SeriesInput in = result.input();
        String subtitle =
                result.model().name() + ", " + in.target().label() + ", " + in.units() + " units, seed " + in.seed();
        return List.of(
                new Picture(
                        "histogram",
                        "On and off distances of a series",
                        subtitle + "; band: ±10 % of the nominal on distance",
                        result.name(),
                        (g, area) -> SeriesCharts.histogram(result).draw(g, area)),
                new Picture(
                        "variance",
                        "Which tolerance matters most",
                        subtitle,
                        result.name(),
                        (g, area) -> SeriesCharts.shares(result).draw(g, area)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("histogram.csv", this::histogram);
        tables.put("quantiles.csv", this::quantiles);
        tables.put("variance.csv", this::variance);
        return tables;
    }

    private Csv histogram() {
        Histogram h = Histogram.of(result.on(), result.off());
        Csv csv = new Csv("from_mm", "to_mm", "on_units", "off_units");
        for (int i = 0; i < h.on().length; i++) {
            csv.row(h.edge(i) * Labels.MM, h.edge(i + 1) * Labels.MM, (double) h.on()[i], (double) h.off()[i]);
        }
        return csv;
    }

    private Csv quantiles() {
        Csv csv = new Csv("share", "on_mm", "on_low_mm", "on_high_mm", "off_mm");
        for (double q : QUANTILES) {
            Spread.Quantile on = result.on().quantile(q);
            csv.row(
                    q,
                    on.value() * Labels.MM,
                    on.low() * Labels.MM,
                    on.high() * Labels.MM,
                    result.off().quantile(q).value() * Labels.MM);
        }
        return csv;
    }

    private Csv variance() {
        Csv csv = new Csv("tolerance", "share_of_variance");
        result.shares().forEach(s -> csv.row(s.factor().label(), s.share()));
        return csv;
    }

    /** Share of the units whose on distance lies within the standard's limits about the nominal one. */
    private double inside(double low, double high) {
        double on = result.nominal().on();
        return result.on().within(low * on, high * on);
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        SeriesInput in = result.input();
        JsonNode tolerances = new JsonNode();
        JsonNode shares = new JsonNode();
        in.tolerances().limits().forEach((f, limit) -> tolerances.with(key(f), limit));
        result.shares().forEach(s -> shares.with(key(s.factor()), s.share()));
        List<Object> quantiles = new ArrayList<>();
        for (double q : QUANTILES) {
            quantiles.add(new JsonNode()
                    .with("share", q)
                    .with("on_m", result.on().quantile(q).value())
                    .with("off_m", result.off().quantile(q).value()));
        }
        document.with("target", parts.target(in.target()))
                .with("units", in.units())
                .with("seed", (int) in.seed())
                .with("distribution", in.tolerances().even() ? "even" : "normal")
                .with("trimmed", in.tolerances().trimmed())
                .with("tolerance_limits_si", tolerances)
                .with("nominal_on_m", result.nominal().on())
                .with("nominal_on_error_m", result.nominal().onError())
                .with("nominal_off_m", result.nominal().off())
                .with("share_of_units", in.share())
                .with("assured_on_m", result.assuredOn().value())
                .with("assured_on_low_m", result.assuredOn().low())
                .with("assured_on_high_m", result.assuredOn().high())
                .with("assured_off_m", result.assuredOff().value())
                .with("worst_case_on_m", result.worst().assuredOn())
                .with("worst_case_off_m", result.worst().assuredOff())
                .with("share_effective_inside", result.effectiveInside())
                .with("share_within_10_percent", inside(0.9, 1.1))
                .with("share_within_0_81_to_1_21", inside(0.81, 1.21))
                .with("quantiles", quantiles)
                .with("variance_shares", shares)
                .with("check_units", result.check().units())
                .with("check_rms_m", result.check().mean())
                .with("check_worst_m", result.check().worst());
    }

    private static String key(Factor f) {
        return f.label().replace(' ', '_');
    }

    @Override
    public List<Material> materials() {
        return result.input().target().body().materials().stream().distinct().toList();
    }

    @Override
    public boolean sideways() {
        return result.input().tolerances().limit(Factor.OFFSET) > 0;
    }

    @Override
    public void write(Page page) {
        SeriesInput in = result.input();
        page.heading("Distances of the series");
        page.table(
                List.of("", "on, mm", "off, mm"),
                Set.of(1, 2),
                List.of(
                        Page.Row.of(
                                "nominal unit",
                                Labels.uncertainCell(
                                        result.nominal().on(), result.nominal().onError()),
                                Labels.uncertainCell(
                                        result.nominal().off(), result.nominal().offError())),
                        Page.Row.of("median", cell(result.on(), 0.5), cell(result.off(), 0.5)),
                        Page.Row.of(
                                SeriesText.share(in.share()) + " of the units",
                                "up to "
                                        + SeriesText.distance(result.assuredOn().value())
                                                .replace(" mm", ""),
                                "beyond "
                                        + SeriesText.distance(
                                                        result.assuredOff().value())
                                                .replace(" mm", "")),
                        Page.Row.of(
                                "95 % interval of that, by the number of units",
                                SeriesText.interval(result.assuredOn()), SeriesText.interval(result.assuredOff())),
                        Page.Row.of(
                                "worst case of this program's own tolerances together",
                                "up to "
                                        + SeriesText.distance(result.worst().assuredOn())
                                                .replace(" mm", ""),
                                "beyond "
                                        + SeriesText.distance(result.worst().assuredOff())
                                                .replace(" mm", ""))));
        page.heading("Inside the standard's limits");
        page.items(List.of(
                "Effective distance on the standard target at 23 °C within 0.9 to 1.1 sn: "
                        + Labels.percent(result.effectiveInside(), 4) + " of the units.",
                "On distance of this target within ±10 % of the nominal one: " + Labels.percent(inside(0.9, 1.1), 4)
                        + "; within 0.81 to 1.21 of it, spread and operation together: "
                        + Labels.percent(inside(0.81, 1.21), 4) + ".",
                "For comparison, assured on and off by the standard alone are "
                        + Labels.millimetres(standard().assured()) + " and "
                        + Labels.millimetres(standard().sureRelease()) + " mm for the standard target."));
        page.heading("What matters");
        page.table(
                List.of("tolerance", "limit", "share of the variance"),
                Set.of(1, 2),
                result.shares().stream()
                        .map(s -> Page.Row.of(
                                s.factor().label(),
                                SeriesText.limit(in.tolerances(), s.factor()),
                                SeriesText.percent(s.share())))
                        .toList());
        page.paragraph(
                "First-order shares: what the variance of the on distance would lose if that tolerance were 0. What is missing to 100 %"
                        + " comes from tolerances that act together. Deviations are "
                        + (in.tolerances().even()
                                ? "spread evenly between their limits."
                                : "normal, a third of the limit being the standard deviation, and cut off at the limits.")
                        + (in.tolerances().trimmed()
                                ? " Each unit is trimmed on the standard target, which takes most of what its own parts differ by."
                                : " No unit is trimmed: all have the nominal thresholds."));
        page.paragraph("Units come from a fitted model of the computed field. "
                + result.check().units()
                + " of them, computed directly with their own trim, differ by "
                + Labels.significant(result.check().mean() * Labels.MICROMETRE, 2) + " µm rms and "
                + Labels.significant(result.check().worst() * Labels.MICROMETRE, 2)
                + " µm at most. The same seed gives the same numbers on any number of threads.");
        page.items(SeriesText.NOT_MODELLED);
    }

    private StandardQuantities standard() {
        return new StandardQuantities(
                result.model().ratedDistance(), result.model().faceDiameter());
    }

    private static String cell(Spread s, double share) {
        return SeriesText.distance(s.quantile(share).value()).replace(" mm", "");
    }
}
