package eddyreach.kinds.temperature;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Shows distances over the temperature. */
record TemperaturePresentation(TemperatureResult result) implements Presentation {

    @Override
    public String answer() {
        return TemperatureText.answer(result);
    }

    @Override
    public List<Picture> pictures() {
        List<Picture> list = new ArrayList<>();
        String subtitle = result.model().name() + ", trimmed at 23 °C";
        List<TemperatureCurve> drawn = result.curves().stream()
                .filter(c -> Double.isFinite(c.trim()) && !c.steps().isEmpty())
                .toList();
        for (TemperatureCurve c : drawn) {
            list.add(new Picture(
                    "parts-" + c.target().id(),
                    "On distance over temperature in parts: " + c.target().label(),
                    subtitle + "; each line adds one part to those before it",
                    result.name(),
                    (g, area) ->
                            TemperatureChart.parts(result.input().celsius(), c).draw(g, area)));
        }
        if (drawn.size() > 1) {
            list.add(new Picture(
                    "targets",
                    "On distance of all targets over temperature",
                    subtitle + "; band of the first target",
                    result.name(),
                    (g, area) -> TemperatureChart.targets(result).draw(g, area)));
        }
        return list;
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("temperature.csv", this::totals);
        tables.put("parts.csv", this::parts);
        return tables;
    }

    private Csv totals() {
        Csv csv = new Csv("target", "temperature_c", "on_mm", "error_mm", "off_mm", "change");
        for (TemperatureCurve c : result.curves()) {
            for (int i = 0; i < c.off().length; i++) {
                csv.row(
                        c.target().id(),
                        result.input().celsius().get(i),
                        c.on(i) * Labels.MM,
                        c.error()[i] * Labels.MM,
                        c.off()[i] * Labels.MM,
                        c.change(i));
            }
        }
        return csv;
    }

    private Csv parts() {
        Csv csv = new Csv("target", "temperature_c", "added", "on_mm");
        for (TemperatureCurve c : result.curves()) {
            for (TemperatureCurve.Step s : c.steps()) {
                for (int i = 0; i < s.on().length; i++) {
                    csv.row(
                            c.target().id(),
                            result.input().celsius().get(i),
                            s.cause().label(),
                            s.on()[i] * Labels.MM);
                }
            }
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        List<Object> targets = new ArrayList<>();
        for (TemperatureCurve c : result.curves()) {
            JsonNode added = new JsonNode();
            c.steps().forEach(s -> added.with(s.cause().label() + "_on_m", JsonParts.numbers(s.on())));
            targets.add(new JsonNode()
                    .with("target", parts.target(c.target()))
                    .with("on_at_23c_m", c.trim())
                    .with("parts_added_up", added)
                    .with("off_m", JsonParts.numbers(c.off()))
                    .with("error_m", JsonParts.numbers(c.error()))
                    .with("leaves_band_below_c", c.coldLimit())
                    .with("leaves_band_above_c", c.hotLimit())
                    .with("best_compensation_per_k", c.best())
                    .with("remaining_share", c.remaining()));
        }
        Drift drift = result.input().drift();
        document.with("temperature_c", result.input().celsius())
                .with(
                        "drift",
                        new JsonNode()
                                .with("permeability_per_k", drift.permeability())
                                .with("core_loss_per_k", drift.coreLoss())
                                .with("capacitor_per_k", drift.capacitor())
                                .with("compensation_per_k", drift.compensation()))
                .with("targets", targets);
    }

    @Override
    public List<Material> materials() {
        return result.curves().stream()
                .flatMap(c -> c.target().body().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        page.heading("On distance over temperature");
        List<Double> celsius = result.input().celsius();
        List<Page.Row> rows = new ArrayList<>();
        for (TemperatureCurve c : result.curves()) {
            for (int i = 0; i < celsius.size(); i++) {
                rows.add(Page.Row.of(
                        i == 0 ? c.target().id() : "",
                        Labels.fixed(celsius.get(i), 0),
                        distance(c.on(i), c.error()[i]),
                        Double.isFinite(c.off()[i]) && c.off()[i] > 0 ? Labels.millimetres(c.off()[i]) : "-",
                        TemperatureText.change(c.change(i))));
            }
        }
        page.table(List.of("target", "°C", "on, mm", "off, mm", "change, %"), Set.of(1, 2, 3, 4), rows);
        parts(page);
        for (TemperatureCurve c : result.curves()) {
            if (Double.isFinite(c.trim())) {
                page.paragraph(TemperatureText.compensation(result, c));
            }
        }
        page.items(TemperatureText.NOT_MODELLED);
    }

    /** What each cause does at both ends, one after the other added. */
    private void parts(Page page) {
        List<Double> celsius = result.input().celsius();
        int last = celsius.size() - 1;
        List<Page.Row> rows = new ArrayList<>();
        for (TemperatureCurve c : result.curves()) {
            for (int s = 0; s < c.steps().size(); s++) {
                rows.add(Page.Row.of(
                        s == 0 ? c.target().id() : "",
                        c.steps().get(s).cause().label(),
                        TemperatureText.change(c.change(s, 0)),
                        TemperatureText.change(c.change(s, last))));
            }
        }
        if (!rows.isEmpty()) {
            page.heading("In parts");
            page.table(
                    List.of(
                            "target",
                            "added",
                            "change at " + TemperatureText.celsius(celsius.get(0)) + ", %",
                            "change at " + TemperatureText.celsius(celsius.get(last)) + ", %"),
                    Set.of(2, 3),
                    rows);
        }
    }

    private static String distance(double on, double error) {
        if (Double.isInfinite(on)) {
            return "always on";
        }
        return Double.isNaN(on) ? "never on" : Labels.uncertainCell(on, error);
    }
}
