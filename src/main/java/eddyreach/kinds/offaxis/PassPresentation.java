package eddyreach.kinds.offaxis;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Shows targets that slide past the face. */
public record PassPresentation(PassResult result) implements Presentation {

    private static final int[] COLUMNS = {-20, 16, 16, 16};

    @Override
    public List<Picture> pictures() {
        return List.of(new Picture(
                "pass",
                "Passing at " + Labels.millimetres(result.distance()) + " mm",
                result.model().name() + " · "
                        + Labels.frequency(result.undamped().frequency())
                        + " · from left to right; the output has its hysteresis",
                result.name(),
                (g, area) -> PassChart.of(result).draw(g, area)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        return Map.of("pass.csv", this::table);
    }

    /** Amplitude and output over the offset, coming from negative offsets. */
    private Csv table() {
        Csv csv = new Csv("target", "offset_mm", "amplitude_v", "on");
        for (PassTarget t : result.targets()) {
            for (int i = 0; i < t.offset().length; i++) {
                csv.row(t.target().id(), t.offset()[i] * Labels.MM, t.amplitude()[i], t.on()[i] ? 1.0 : 0.0);
            }
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        List<Object> targets = new ArrayList<>();
        for (PassTarget t : result.targets()) {
            List<Object> changes = new ArrayList<>();
            for (PassTarget.Change c : t.changes()) {
                changes.add(new JsonNode()
                        .with("offset_m", c.offset())
                        .with("error_m", c.error())
                        .with("turns_on", c.turnsOn()));
            }
            targets.add(new JsonNode()
                    .with("target", parts.target(t.target()))
                    .with("changes", changes)
                    .with("offset_m", JsonParts.numbers(t.offset()))
                    .with("amplitude_v", JsonParts.numbers(t.amplitude()))
                    .with("warnings", JsonParts.warnings(t.warnings())));
        }
        document.with("distance_m", result.distance()).with("targets", targets);
    }

    @Override
    public List<Material> materials() {
        return result.targets().stream()
                .flatMap(t -> t.target().body().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public String answer() {
        return "Passing at " + Labels.millimetres(result.distance()) + " mm: "
                + result.targets().stream()
                        .map(t -> t.target().label() + " " + summary(t))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    @Override
    public void write(TextPage page) {
        page.paragraph("From left (-) to right (+); offsets are those of the target's axis.");
        page.gap();
        page.line(page.mark(TextPage.row(COLUMNS, "target", "on at, mm", "off at, mm", "on over, mm"), TextPage.BOLD));
        for (PassTarget t : result.targets()) {
            List<String> name = TextPage.wrap(t.target().id(), -COLUMNS[0]);
            page.line(TextPage.row(COLUMNS, name.get(0), change(t, true), change(t, false), over(t)));
            name.stream().skip(1).forEach(page::line);
        }
    }

    @Override
    public boolean sideways() {
        return true;
    }

    @Override
    public void write(Page page) {
        page.heading("Where the output changes");
        page.table(
                List.of("target", "on at, mm", "off at, mm", "on over, mm"),
                Set.of(1, 2, 3),
                result.targets().stream()
                        .map(t -> Page.Row.of(t.target().label(), change(t, true), change(t, false), over(t)))
                        .toList());
        page.heading("How to read it");
        page.items(List.of(
                "Offsets are those of the target's axis: negative before it reaches the axis of the switch, positive after it, moving from"
                        + " left to right. The opposite direction mirrors everything.",
                "The output turns on nearer to the axis than it turns off: this is the differential travel, seen from the side.",
                "\"On over\" is the distance travelled while the output is on; divided by the speed of the part it is the time a controller"
                        + " has to read it. The delay of the switch itself is not computed.",
                "These are nominal values at 23 °C. A target whose amplitude comes close to the line may behave differently with another"
                        + " switch or at another temperature."));
    }

    /** What the output does, in a few words. */
    static String summary(PassTarget t) {
        if (t.changes().isEmpty()) {
            return t.on()[0] ? "on all the way" : "never on";
        }
        return t.changes().size() == 2
                ? "on over " + Labels.millimetres(t.onLength()) + " mm"
                : "the output changes " + t.changes().size() + " times";
    }

    private static String change(PassTarget t, boolean turnsOn) {
        return t.changes().stream()
                .filter(c -> c.turnsOn() == turnsOn)
                .findFirst()
                .map(c -> Labels.uncertain(c.offset(), c.error()))
                .orElse("-");
    }

    private static String over(PassTarget t) {
        return t.changes().size() == 2 ? Labels.millimetres(t.onLength()) : "-";
    }
}
