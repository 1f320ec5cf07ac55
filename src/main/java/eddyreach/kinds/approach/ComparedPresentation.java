package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.ReasonText;
import eddyreach.report.words.Terms;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Shows the same targets before several switches: one table and one chart first, then each switch by itself. */
record ComparedPresentation(ComparedResult result) implements Presentation {

    private static final int[] COLUMNS = {-18, -19, 13, 6, 9, 10};

    private static final String NOTE =
            "A target of the shape standard is as wide as the standard target of each switch.";

    /**
     * One target before one switch.
     *
     * @param of the result of the switch
     * @param target what was found
     * @param distance where it switches: in the mount if there is one
     * @param band how far it is assured there
     */
    record Line(ApproachResult of, TargetResult target, SwitchDistance distance, Optional<Assurance> band) {

        String switchId() {
            return of.model().id();
        }
    }

    /** Target by target, the switches in the order asked; without the standard targets unless one is asked for. */
    static List<Line> lines(ComparedResult result) {
        List<Line> lines = new ArrayList<>();
        List<ApproachResult> each = result.each();
        int most = each.stream().mapToInt(r -> r.targets().size()).max().orElse(0);
        for (int i = 0; i < most; i++) {
            for (ApproachResult r : each) {
                if (i < r.targets().size()) {
                    TargetResult t = r.targets().get(i);
                    Optional<InMount.Found> in = r.mounted().map(m -> m.of(t.target()));
                    lines.add(new Line(
                            r,
                            t,
                            in.map(InMount.Found::distance).orElse(t.distance()),
                            in.isPresent()
                                    ? in.get().assurance()
                                    : t.assessment().map(Assessment::assurance)));
                }
            }
        }
        return lines;
    }

    @Override
    public String answer() {
        return result.each().stream()
                .map(r -> r.model().id() + ": " + r.presentation().answer())
                .collect(Collectors.joining(" "));
    }

    @Override
    public List<Picture> pictures() {
        List<Picture> all = new ArrayList<>(ComparedChart.of(result, lines(result)));
        for (ApproachResult r : result.each()) {
            for (Picture p : r.presentation().pictures()) {
                all.add(new Picture(p.name() + "-" + r.model().id(), p.title(), p.subtitle(), p.source(), p.content()));
            }
        }
        return all;
    }

    @Override
    public List<String> briefPictures() {
        return List.of(ComparedChart.NAME);
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("comparison.csv", this::comparison);
        return tables;
    }

    private Csv comparison() {
        Csv csv = new Csv(
                "target",
                "switch",
                "outcome",
                "on_mm",
                "off_mm",
                "error_mm",
                "factor",
                "assured_on_mm",
                "assured_off_mm");
        for (Line l : lines(result)) {
            csv.row(
                    l.target().target().id(),
                    l.switchId(),
                    Terms.of(l.distance().outcome()),
                    l.distance().on() * Labels.MM,
                    l.distance().off() * Labels.MM,
                    l.distance().onError() * Labels.MM,
                    l.target().factor(),
                    l.band().map(a -> a.assuredOn() * Labels.MM).orElse(Double.NaN),
                    l.band().map(a -> a.assuredOff() * Labels.MM).orElse(Double.NaN));
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with(
                "switches",
                result.each().stream()
                        .map(r -> {
                            JsonNode node = new JsonNode().with("switch", parts.switchModel(r.model()));
                            r.presentation().addTo(node, parts);
                            return node;
                        })
                        .toList());
    }

    @Override
    public List<Material> materials() {
        return result.each().stream()
                .flatMap(r -> r.presentation().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public List<String> inputs() {
        return result.each().stream()
                .flatMap(r -> r.presentation().inputs().stream())
                .distinct()
                .toList();
    }

    @Override
    public boolean sideways() {
        return result.each().stream().anyMatch(r -> r.presentation().sideways());
    }

    @Override
    public void write(TextPage page) {
        page.line(page.mark(
                TextPage.row(COLUMNS, "target", "switch", "on, mm", "factor", "on up to", "off beyond"),
                TextPage.BOLD));
        String before = "";
        for (Line l : lines(result)) {
            String id = l.target().target().id();
            List<String> name = TextPage.wrap(id.equals(before) ? "" : id, -COLUMNS[0]);
            List<String> of = TextPage.wrap(l.switchId(), -COLUMNS[1]);
            page.line(TextPage.row(
                    COLUMNS,
                    name.isEmpty() ? "" : name.get(0),
                    of.get(0),
                    on(l),
                    factor(l),
                    l.band().map(AssuranceText::assuredOn).orElse("-"),
                    l.band().map(ComparedPresentation::off).orElse("-")));
            for (int i = 1; i < Math.max(name.size(), of.size()); i++) {
                page.line(TextPage.row(
                                COLUMNS,
                                i < name.size() ? name.get(i) : "",
                                i < of.size() ? of.get(i) : "",
                                "",
                                "",
                                "",
                                "")
                        .stripTrailing());
            }
            before = id;
        }
        page.paragraph(
                "(Distances in mm; on up to and off beyond: " + title() + ".) " + NOTE + " " + AnswerTable.BAND_NOTE);
        page.gap();
        for (ApproachResult r : result.each()) {
            for (TargetResult t : r.targets().stream().skip(1).toList()) {
                page.paragraph(r.model().id() + ": " + t.target().label() + ", " + ReasonText.of(t.reason()));
            }
        }
    }

    private static String off(Assurance a) {
        return Double.isInfinite(a.assuredOff()) ? "no end" : AssuranceText.assuredOff(a);
    }

    private String title() {
        return AnswerTable.BAND;
    }

    private static String on(Line l) {
        return Double.isFinite(l.distance().on())
                ? Labels.uncertainCell(l.distance().on(), l.distance().onError())
                : Terms.of(l.distance().outcome());
    }

    private static String factor(Line l) {
        return Double.isFinite(l.target().factor()) ? Labels.fixed(l.target().factor(), 2) : "-";
    }

    @Override
    public void write(Page page) {
        table(page);
        for (ApproachResult r : result.each()) {
            page.heading("Switch " + r.model().id());
            ApproachPage.write(r, page);
        }
    }

    @Override
    public void brief(Page page) {
        table(page);
        page.heading("Why");
        page.items(result.each().stream()
                .flatMap(r -> r.targets().stream()
                        .skip(1)
                        .map(t -> r.model().id() + ": " + t.target().label() + ", " + ReasonText.of(t.reason())))
                .toList());
    }

    private void table(Page page) {
        page.heading("The switches compared");
        List<Page.Row> rows = new ArrayList<>();
        String before = "";
        for (Line l : lines(result)) {
            String label = l.target().target().label();
            List<String> cells = new ArrayList<>(List.of(
                    label.equals(before) ? "" : label,
                    l.switchId(),
                    on(l),
                    Labels.uncertainCell(l.distance().off(), l.distance().offError()),
                    factor(l)));
            cells.addAll(l.band().map(AssuranceText::cells).orElse(List.of("-", "-", "-", "-")));
            before = label;
            rows.add(new Page.Row(
                    cells,
                    l.band()
                            .map(a -> !a.anywhereOn())
                            .orElse(l.distance().outcome() != SwitchDistance.Outcome.SWITCHES)));
        }
        page.table(
                List.of(
                        "target",
                        "switch",
                        "on, mm",
                        "off, mm",
                        "factor",
                        title() + ": on up to, mm",
                        "off beyond, mm",
                        "work up to, mm",
                        "with reserve, mm"),
                Set.of(2, 3, 4, 5, 6, 7, 8),
                rows);
        page.paragraph(NOTE + " " + AnswerTable.BAND_NOTE);
    }
}
