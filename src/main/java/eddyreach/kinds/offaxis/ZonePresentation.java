package eddyreach.kinds.offaxis;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import eddyreach.study.Presentation;
import eddyreach.units.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Shows detection zones. */
public record ZonePresentation(ZoneResult result) implements Presentation {

    private static final int[] COLUMNS = {-20, 12, 15, 15};

    /** Offsets of the text's table, as parts of the range. */
    private static final int STEPS = 5;

    @Override
    public List<Picture> pictures() {
        return List.of(new Picture(
                "zone",
                "Detection zone",
                result.model().name() + " · "
                        + Labels.frequency(result.undamped().frequency())
                        + " · offset of the target's axis, distance of its near face",
                result.name(),
                new ZoneDrawing(result)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        return Map.of("zone.csv", this::table);
    }

    /** Where each target switches at each offset. */
    private Csv table() {
        Csv csv = new Csv("target", "offset_mm", "on_mm", "on_error_mm", "off_mm", "off_error_mm", "outcome");
        for (ZoneTarget t : result.targets()) {
            for (int i = 0; i < t.offset().length; i++) {
                SwitchDistance d = t.distances().get(i);
                csv.row(
                        t.target().id(),
                        t.offset()[i] * Labels.MM,
                        d.on() * Labels.MM,
                        d.onError() * Labels.MM,
                        d.off() * Labels.MM,
                        d.offError() * Labels.MM,
                        Terms.of(d.outcome()));
            }
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        List<Object> targets = new ArrayList<>();
        for (ZoneTarget t : result.targets()) {
            targets.add(new JsonNode()
                    .with("target", parts.target(t.target()))
                    .with("offset_m", JsonParts.numbers(t.offset()))
                    .with("on_m", t.distances().stream().map(SwitchDistance::on).toList())
                    .with(
                            "on_error_m",
                            t.distances().stream().map(SwitchDistance::onError).toList())
                    .with(
                            "off_m",
                            t.distances().stream().map(SwitchDistance::off).toList())
                    .with(
                            "off_error_m",
                            t.distances().stream().map(SwitchDistance::offError).toList())
                    .with(
                            "outcome",
                            t.distances().stream()
                                    .map(d -> Terms.of(d.outcome()))
                                    .toList())
                    .with("on_edge_at_contact_m", t.onEdge().offset())
                    .with("on_edge_at_contact_error_m", t.onEdge().error())
                    .with("off_edge_at_contact_m", t.offEdge().offset())
                    .with("off_edge_at_contact_error_m", t.offEdge().error())
                    .with("warnings", JsonParts.warnings(t.warnings())));
        }
        document.with("targets", targets);
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
        return Texts.capitalised(result.targets().stream()
                .map(t -> t.target().label() + " " + shortly(t))
                .collect(Collectors.joining("; ", "", ".")));
    }

    private static String shortly(ZoneTarget t) {
        SwitchDistance axis = t.distances().get(0);
        if (t.distances().stream().allMatch(d -> d.outcome() == SwitchDistance.Outcome.NEVER_ON)) {
            return "is never on at any offset";
        }
        String start = Double.isFinite(axis.on())
                ? "is on at " + Labels.millimetres(axis.on()) + " mm on the axis"
                : "on the axis: " + Terms.of(axis.outcome());
        return start
                + (t.onEdge().found()
                        ? " and within " + Labels.millimetres(t.onEdge().offset()) + " mm of it in contact"
                        : "");
    }

    @Override
    public void write(TextPage page) {
        page.line(page.mark(TextPage.row(COLUMNS, "target", "offset, mm", "on, mm", "off, mm"), TextPage.BOLD));
        for (ZoneTarget t : result.targets()) {
            List<String> name = TextPage.wrap(t.target().id(), -COLUMNS[0]);
            int n = t.offset().length - 1;
            for (int k = 0; k <= STEPS; k++) {
                int i = n * k / STEPS;
                SwitchDistance d = t.distances().get(i);
                page.line(TextPage.row(
                        COLUMNS,
                        k < name.size() ? name.get(k) : "",
                        Labels.millimetres(t.offset()[i]),
                        Double.isFinite(d.on()) ? Labels.uncertainCell(d.on(), d.onError()) : Terms.of(d.outcome()),
                        Labels.uncertainCell(d.off(), d.offError())));
            }
        }
        page.gap();
        for (ZoneTarget t : result.targets()) {
            page.paragraph(Texts.capitalised(t.target().label()) + ": " + sentence(t));
        }
    }

    @Override
    public boolean sideways() {
        return true;
    }

    @Override
    public void write(Page page) {
        page.items(result.targets().stream()
                .map(t -> Texts.capitalised(t.target().label()) + ": " + sentence(t))
                .toList());
        page.heading("Distances beside the axis");
        List<Page.Row> rows = new ArrayList<>();
        for (ZoneTarget t : result.targets()) {
            int n = t.offset().length - 1;
            for (int k = 0; k <= STEPS; k++) {
                int i = n * k / STEPS;
                SwitchDistance d = t.distances().get(i);
                rows.add(Page.Row.of(
                        k == 0 ? t.target().label() : "",
                        Labels.millimetres(t.offset()[i]),
                        Double.isFinite(d.on()) ? Labels.uncertainCell(d.on(), d.onError()) : Terms.of(d.outcome()),
                        Labels.uncertainCell(d.off(), d.offError())));
            }
        }
        page.table(List.of("target", "offset, mm", "on, mm", "off, mm"), Set.of(1, 2, 3), rows);
        page.heading("How to read it");
        page.items(
                List.of(
                        "The offset is that of the target's axis from the switch's, the distance that from the active face to the target's"
                                + " near face. The picture shows both sides; round targets act the same in every direction.",
                        "The output turns on when the target's near face, on its axis, comes inside the solid line, and off when it goes outside"
                                + " the dashed one; in between the output stays as it was.",
                        "These are nominal distances at 23 °C. Single pieces, temperature and supply move the zone: on the axis the standard"
                                + " target is assured only up to 0.81 sn. For assured distances ask about the part at the offset in question.",
                        "A part that comes from the side must get clear of the zone of the dashed line before the output goes off."));
    }

    private static String sentence(ZoneTarget t) {
        SwitchDistance axis = t.distances().get(0);
        if (t.distances().stream().allMatch(d -> d.outcome() == SwitchDistance.Outcome.NEVER_ON)) {
            return "never on at any offset.";
        }
        String start = Double.isFinite(axis.on())
                ? "on at " + Labels.millimetres(axis.on()) + " mm on the axis; "
                : "on the axis " + Terms.of(axis.outcome()) + "; ";
        if (!t.onEdge().found()) {
            return start + "in contact it is detected at every offset examined.";
        }
        String lost = t.offEdge().found()
                ? " of the switch's axis; once detected, it is held out to " + uncertain(t.offEdge()) + "."
                : " of the switch's axis.";
        return start + "sliding in contact with the plane of the face it is detected while its axis is within "
                + uncertain(t.onEdge()) + lost;
    }

    private static String uncertain(ZoneEdge edge) {
        return Labels.uncertain(edge.offset(), edge.error()) + " mm";
    }
}
