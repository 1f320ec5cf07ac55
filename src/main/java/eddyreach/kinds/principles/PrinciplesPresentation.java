package eddyreach.kinds.principles;

import eddyreach.kinds.principles.PrinciplesResult.Evaluated;
import eddyreach.kinds.principles.PrinciplesResult.Switch;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Shows principles side by side. */
record PrinciplesPresentation(PrinciplesResult result) implements Presentation {

    private static final List<String> NOT_MODELLED = List.of(
            "Not modelled: temperature, noise and drift, to which a small change of inductance is far more sensitive than a change of loss;"
                    + " ageing; the circuits that would evaluate it. The coil is that of a switch made for loss; one made for inductance has"
                    + " another frequency and no metal tube near.");

    @Override
    public String answer() {
        Switch loss = result.of(Evaluated.LOSS);
        Switch sum = result.of(Evaluated.WEIGHTED_SUM);
        return "By loss " + span(loss) + "; a weighted sum of " + Labels.percent(result.weight(), 3) + " loss and "
                + Labels.percent(1 - result.weight(), 3) + " inductance brings them to " + span(sum) + ".";
    }

    private String span(Switch s) {
        double least = result.least(s);
        double most = result.most(s);
        return Labels.millimetres(least) + " to " + Labels.millimetres(most) + " mm (±"
                + Labels.percent((most - least) / (most + least), 2) + ")";
    }

    @Override
    public List<Picture> pictures() {
        return List.of(new Picture(
                "principles",
                "On distance by principle",
                result.model().name() + ", "
                        + Labels.frequency(result.undamped().frequency()) + ", trimmed to "
                        + Labels.millimetres(result.model().effectiveDistance()) + " mm each",
                result.name(),
                (g, area) -> PrinciplesChart.of(result).draw(g, area)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        return Map.of("principles.csv", this::table);
    }

    private Csv table() {
        Csv csv = new Csv("target", "principle", "on_mm", "error_mm");
        for (Switch s : result.switches()) {
            for (int i = 0; i < s.on().size(); i++) {
                csv.row(
                        result.input().targets().get(i).id(),
                        s.evaluated().label(),
                        s.on().get(i) * Labels.MM,
                        s.error().get(i) * Labels.MM);
            }
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        List<Object> switches = new ArrayList<>();
        for (Switch s : result.switches()) {
            switches.add(new JsonNode()
                    .with("principle", s.evaluated().label())
                    .with("problem", s.problem().orElse(""))
                    .with("on_m", s.on())
                    .with("error_m", s.error()));
        }
        document.with(
                        "targets",
                        result.input().targets().stream().map(parts::target).toList())
                .with("alike", result.input().alike())
                .with("weight_of_loss", result.weight())
                .with("switches", switches);
    }

    @Override
    public List<Material> materials() {
        return result.input().targets().stream()
                .flatMap(t -> t.body().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        page.heading("On distance by principle, mm");
        List<String> heads = new ArrayList<>(List.of("target"));
        List<Switch> shown =
                result.switches().stream().filter(s -> s.problem().isEmpty()).toList();
        shown.forEach(s -> heads.add(s.evaluated().label()));
        List<Page.Row> rows = new ArrayList<>();
        for (int i = 0; i < result.input().targets().size(); i++) {
            List<String> cells =
                    new ArrayList<>(List.of(result.input().targets().get(i).id()));
            for (Switch s : shown) {
                cells.add(
                        s.on().get(i) == 0
                                ? "never on"
                                : Labels.uncertain(s.on().get(i), s.error().get(i)));
            }
            rows.add(new Page.Row(cells, false));
        }
        page.table(heads, IntStream.range(1, heads.size()).boxed().collect(Collectors.toSet()), rows);
        result.switches()
                .forEach(s -> s.problem()
                        .ifPresent(p -> page.paragraph(
                                "Not with this coil, " + s.evaluated().label() + ": " + p + ".")));
        page.paragraph(
                "The weighted sum is w G/G0 + (1 - w) L0/L, the loss and the fall of the inductance against those without a target; w is found so that "
                        + String.join(", ", result.input().alike()) + " are detected at nearly one distance.");
        page.items(List.of(
                "Loss: steel loses most, because its permeability crowds the current into a thin skin; a good conductor little, because its current"
                        + " meets little resistance.",
                "Inductance: how far the field is pushed out or drawn in. All good conductors alike, steel little or the other way.",
                "A foil much thinner than its skin depth is the opposite of a plate of the same metal: its current is limited by resistance, so it"
                        + " loses much and pushes out little. Loss detects it from farther than the plate, inductance from a little nearer, and"
                        + " a sum that makes all plates alike does not make it alike.",
                "Each switch is trimmed on the standard target, the non-ferrous-selective one on the same square of "
                        + result.input().reference().name() + "."));
        page.items(NOT_MODELLED);
    }
}
