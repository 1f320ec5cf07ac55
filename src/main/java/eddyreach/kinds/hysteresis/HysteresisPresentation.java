package eddyreach.kinds.hysteresis;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import eddyreach.study.Presentation;
import eddyreach.switching.StandardQuantities;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Shows loops. */
record HysteresisPresentation(HysteresisResult result) implements Presentation {

    @Override
    public String answer() {
        return HysteresisText.answer(result);
    }

    @Override
    public List<Picture> pictures() {
        if (result.loops().stream().noneMatch(Loop::switches)) {
            return List.of();
        }
        String places = result.input().machine().places() ? "; bands: where the target stands and shakes" : "";
        return List.of(new Picture(
                "loop",
                "Output while the target comes and goes",
                result.model().name() + places,
                result.name(),
                (g, area) -> LoopChart.of(result).draw(g, area)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        return Map.of("hysteresis.csv", this::table);
    }

    private Csv table() {
        Csv csv = new Csv(
                "target",
                "outcome",
                "on_mm",
                "on_error_mm",
                "off_mm",
                "off_error_mm",
                "travel_mm",
                "travel_of_sr",
                "repeat_mm");
        for (Loop l : result.loops()) {
            csv.row(
                    l.target().id(),
                    Terms.of(l.distance().outcome()),
                    l.distance().on() * Labels.MM,
                    l.distance().onError() * Labels.MM,
                    l.distance().off() * Labels.MM,
                    l.distance().offError() * Labels.MM,
                    l.travel() * Labels.MM,
                    l.travel() / result.model().effectiveDistance(),
                    range(l) * Labels.MM);
        }
        return csv;
    }

    private double range(Loop l) {
        return l.repeat().map(x -> x.range(result.input().machine().repeats())).orElse(Double.NaN);
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        List<Object> loops = new ArrayList<>();
        for (Loop l : result.loops()) {
            loops.add(new JsonNode()
                    .with("target", parts.target(l.target()))
                    .with("outcome", Terms.of(l.distance().outcome()))
                    .with("on_m", l.distance().on())
                    .with("on_error_m", l.distance().onError())
                    .with("off_m", l.distance().off())
                    .with("off_error_m", l.distance().offError())
                    .with("travel_m", l.travel())
                    .with(
                            "verdict",
                            l.verdict()
                                    .map(v -> HysteresisText.verdict(result, l))
                                    .orElse(""))
                    .with("least_travel_m", l.travels().map(t -> t.least()).orElse(Double.NaN))
                    .with("most_travel_m", l.travels().map(t -> t.most()).orElse(Double.NaN))
                    .with(
                            "repeat_deviation_m",
                            l.repeat().map(x -> x.deviation()).orElse(Double.NaN))
                    .with("repeat_range_m", range(l))
                    .with("changes_per_cycle", l.inTime().orElse(Double.NaN)));
        }
        Machine m = result.input().machine();
        document.with("differential_travel_share", result.input().travel())
                .with("near_m", m.near())
                .with("far_m", m.far())
                .with("vibration_m", m.vibration())
                .with("vibration_hz", m.frequency().orElse(Double.NaN))
                .with("amplitude_noise_v", m.noise())
                .with("repeats", m.repeats())
                .with("loops", loops);
    }

    @Override
    public List<Material> materials() {
        return result.loops().stream()
                .flatMap(l -> l.target().body().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        page.heading("On, off and differential travel");
        page.table(
                List.of("target", "on, mm", "off, mm", "travel, mm", "of sr", "of its on distance", "no chatter up to"),
                Set.of(1, 2, 3, 4, 5, 6),
                result.loops().stream().map(this::row).toList());
        page.paragraph(HysteresisText.limit(result));
        if (result.input().machine().places()) {
            machine(page);
        }
        repeat(page);
        page.items(HysteresisText.NOT_MODELLED);
    }

    private Page.Row row(Loop l) {
        if (!l.switches()) {
            return new Page.Row(
                    List.of(l.target().id(), Terms.of(l.distance().outcome()), "-", "-", "-", "-", "-"), true);
        }
        return Page.Row.of(
                l.target().id(),
                Labels.uncertainCell(l.distance().on(), l.distance().onError()),
                Labels.uncertainCell(l.distance().off(), l.distance().offError()),
                Labels.fixed(l.travel() * Labels.MM, 3),
                HysteresisText.share(result, l.travel()),
                Labels.percent(l.travel() / l.distance().on(), 3),
                "±" + Labels.length(l.travel() / 2, 2));
    }

    private void machine(Page page) {
        Machine m = result.input().machine();
        page.heading("On the machine");
        page.paragraph("The target goes between " + Labels.millimetres(m.near()) + " and " + Labels.millimetres(m.far())
                + " mm and shakes by ±" + Labels.length(m.vibration()) + ".");
        List<Page.Row> rows = new ArrayList<>();
        for (Loop l : result.loops()) {
            if (l.verdict().isPresent()) {
                rows.add(Page.Row.of(
                        l.target().id(),
                        HysteresisText.verdict(result, l),
                        l.travels()
                                .map(t -> HysteresisText.standard(result, l, t.least()) + " to "
                                        + HysteresisText.standard(result, l, t.most()))
                                .orElse("none"),
                        l.inTime().isPresent() ? Labels.significant(l.inTime().getAsDouble(), 2) : "-",
                        HysteresisText.changes(result, l)));
            }
        }
        page.table(
                List.of(
                        "target",
                        "verdict",
                        "travels of the standard target that serve, of sr",
                        "changes a cycle in time",
                        "changes a passage"),
                Set.of(2, 3, 4),
                rows);
        page.paragraph("Changes a cycle: in the middle of the loop, followed in time with a demodulator of "
                + Labels.frequency(result.input().corner())
                + "; 2 is chatter, 0 quiet. Changes a passage: of a slow vibration.");
    }

    private void repeat(Page page) {
        Machine m = result.input().machine();
        if (m.noise() == 0) {
            return;
        }
        page.heading("Repeat accuracy");
        page.items(result.loops().stream()
                .filter(l -> l.repeat().isPresent())
                .map(l -> l.target().id() + ": standard deviation of the on distance "
                        + Labels.computed(l.repeat().get().deviation()) + ", expected range of " + m.repeats()
                        + " repeats " + Labels.computed(range(l)) + " or "
                        + Labels.percent(range(l) / result.model().effectiveDistance(), 2)
                        + " of sr; the standard allows " + Labels.percent(StandardQuantities.MAX_REPEAT_ACCURACY, 2)
                        + ".")
                .toList());
    }
}
