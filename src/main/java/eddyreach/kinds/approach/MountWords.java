package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is said of targets before a switch in a mount, with free air beside it. */
final class MountWords {

    private static final int[] COLUMNS = {-20, 12, 12, 9, 9, 12};

    private static final String NOTE =
            "Thresholds are those set in free air, the dimensions of the mount as stated. All units: the worst"
                    + " combination of all tolerances, those of the mount's metal included.";

    private final ApproachResult result;
    private final InMount in;

    MountWords(ApproachResult result, InMount in) {
        this.result = result;
        this.in = in;
    }

    /** The answer in one sentence. */
    String answer() {
        List<TargetResult> others = result.targets().stream().skip(1).toList();
        List<TargetResult> asked = others.isEmpty() ? result.targets() : others;
        return asked.size() == 1 ? single(asked.get(0)) : several(asked);
    }

    private String single(TargetResult free) {
        InMount.Found f = in.of(free.target());
        SwitchDistance d = f.distance();
        if (f.latched()) {
            return "Not OK: in this mount the output is on without a target.";
        }
        if (Double.isNaN(d.on())) {
            return "No: never on in this mount"
                    + (f.floor() > 0 ? ", which stops it at " + AnswerTable.distance(f.floor()) : "")
                    + " (free air " + free(free) + ").";
        }
        String on = "on at " + AnswerTable.distance(d.on()) + " in this mount (free air " + free(free) + ")";
        if (d.outcome() != SwitchDistance.Outcome.SWITCHES) {
            return "Not OK: " + on + ", but it " + Terms.of(d.outcome()) + ".";
        }
        return f.assurance()
                .map(a -> (a.anywhereOn() ? "Yes: " : "Not reliably: ") + on + "; "
                        + (a.anywhereOn() ? AssuranceText.onWords(a) : "some units may miss it however near it comes")
                        + ".")
                .orElse("Yes: " + on + ".");
    }

    private static String free(TargetResult t) {
        return Double.isFinite(t.distance().on())
                ? Labels.millimetres(t.distance().on())
                : Terms.of(t.distance().outcome());
    }

    private String several(List<TargetResult> asked) {
        if (asked.stream().map(t -> in.of(t.target())).anyMatch(InMount.Found::latched)) {
            return "Not OK: in this mount the output is on without a target.";
        }
        List<TargetResult> detected = asked.stream().filter(this::detected).toList();
        String each = detected.stream()
                .map(t -> t.target().id() + " on at "
                        + AnswerTable.distance(in.of(t.target()).distance().on()) + " (free air " + free(t) + ")"
                        + in.of(t.target())
                                .assurance()
                                .map(a -> a.anywhereOn()
                                        ? ", every unit up to " + AssuranceText.assuredOn(a)
                                        : ", not every unit")
                                .orElse(""))
                .collect(Collectors.joining("; "));
        String never = asked.stream()
                .filter(t -> !detected(t))
                .map(t -> t.target().id() + " "
                        + Terms.of(in.of(t.target()).distance().outcome()))
                .collect(Collectors.joining("; "));
        String head = never.isEmpty() ? "Yes, in this mount: " : "Not all in this mount: ";
        return head + Stream.of(each, never).filter(s -> !s.isEmpty()).collect(Collectors.joining("; ")) + ".";
    }

    private boolean detected(TargetResult t) {
        return in.of(t.target()).distance().outcome() == SwitchDistance.Outcome.SWITCHES;
    }

    /** The table on the terminal. */
    void write(TextPage page) {
        page.line(page.mark(
                TextPage.row(COLUMNS, "in the mount", "on, mm", "off, mm", "free air", "on up to", "off beyond"),
                TextPage.BOLD));
        for (TargetResult free : result.targets()) {
            InMount.Found f = in.of(free.target());
            List<String> name = TextPage.wrap(f.target().id(), -COLUMNS[0]);
            boolean switches = f.distance().outcome() == SwitchDistance.Outcome.SWITCHES;
            page.line(TextPage.row(
                    COLUMNS,
                    name.get(0),
                    Double.isNaN(f.distance().on())
                            ? Terms.of(f.distance().outcome())
                            : Labels.uncertainCell(
                                    f.distance().on(), f.distance().onError()),
                    Labels.uncertainCell(f.distance().off(), f.distance().offError()),
                    Double.isFinite(free.distance().on())
                            ? Labels.millimetres(free.distance().on())
                            : "-",
                    f.assurance()
                            .filter(a -> switches)
                            .map(a -> a.anywhereOn() ? AssuranceText.assuredOn(a) : "nowhere")
                            .orElse("-"),
                    f.assurance()
                            .filter(a -> switches)
                            .map(AssuranceText::assuredOff)
                            .orElse("-")));
            name.stream().skip(1).forEach(page::line);
        }
        page.paragraph("(Mount: " + in.mount().name() + ". On up to and off beyond: all units.) " + NOTE);
        moved().forEach(page::paragraph);
        page.gap();
        page.line("In free air:");
        page.gap();
    }

    /** The section of the page. */
    void write(Page page) {
        page.heading("In the mount: " + in.mount().name());
        List<Page.Row> rows = new ArrayList<>();
        for (TargetResult free : result.targets()) {
            InMount.Found f = in.of(free.target());
            SwitchDistance d = f.distance();
            List<String> cells = new ArrayList<>(List.of(
                    f.target().label(),
                    Double.isNaN(d.on()) ? Terms.of(d.outcome()) : Labels.uncertainCell(d.on(), d.onError()),
                    Labels.uncertainCell(d.off(), d.offError()),
                    Double.isFinite(free.distance().on())
                            ? Labels.uncertainCell(
                                    free.distance().on(), free.distance().onError())
                            : Terms.of(free.distance().outcome())));
            cells.addAll(f.assurance().map(AssuranceText::cells).orElse(List.of("-", "-", "-", "-")));
            rows.add(new Page.Row(cells, d.outcome() != SwitchDistance.Outcome.SWITCHES));
        }
        page.table(
                List.of(
                        "target",
                        "on, mm",
                        "off, mm",
                        "on in free air, mm",
                        "all units: on up to, mm",
                        "off beyond, mm",
                        "work up to, mm",
                        "with reserve, mm"),
                Set.of(1, 2, 3, 4, 5, 6, 7),
                rows);
        page.paragraph(NOTE);
        List<String> moved = moved();
        if (!moved.isEmpty()) {
            page.items(moved);
        }
    }

    /** What moves the distances in the mount, and where it stops a target. */
    private List<String> moved() {
        List<String> all = new ArrayList<>();
        for (InMount.Found f : in.targets()) {
            Optional<String> most = f.assurance().map(AssuranceText::most);
            if (f.floor() > 0) {
                all.add("The mount stops " + f.target().id() + " at " + AnswerTable.distance(f.floor()) + ".");
            }
            most.ifPresent(m -> all.add(f.target().id() + " in the mount, what moves it most: " + m + "."));
        }
        return all;
    }
}
