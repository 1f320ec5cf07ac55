package eddyreach.kinds.approach;

import eddyreach.engine.assure.Advice;
import eddyreach.engine.assure.Allowances;
import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.assure.Explanation;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What a study of targets that come nearer has to say on its page. */
final class ApproachPage {

    private final ApproachResult result;
    private final Page page;
    private final List<TargetResult> odd;

    private ApproachPage(ApproachResult result, Page page) {
        this.result = result;
        this.page = page;
        List<TargetResult> others = result.targets().stream().skip(1).toList();
        odd = others.isEmpty() ? result.targets() : others;
    }

    static void write(ApproachResult result, Page page) {
        new ApproachPage(result, page).write();
    }

    private void write() {
        page.paragraph(question());
        page.answer(AnswerTable.sentence(result, odd));
        bands();
        if (result.kind() == ApproachKind.MATERIALS) {
            page.heading("Why");
            page.items(odd.stream()
                    .map(t -> t.target().label() + ", " + t.reason())
                    .toList());
        } else {
            odd.forEach(this::single);
        }
        method();
    }

    private String question() {
        String names = odd.size() == 1 ? odd.get(0).target().label() : odd.size() + " targets";
        String note = result.note().isBlank() ? "" : " " + result.note();
        return "Question: will this switch see " + names + ", from how far, and why? The switch: "
                + result.model().name() + "." + note;
    }

    private void bands() {
        page.heading("Distances");
        List<Page.Row> rows = new ArrayList<>();
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            List<String> cells = new ArrayList<>(List.of(
                    t.target().label(),
                    Labels.uncertain(d.on(), d.onError()),
                    Labels.uncertain(d.off(), d.offError()),
                    Double.isFinite(t.factor())
                            ? Labels.fixed(t.factor(), 2)
                            : d.outcome().label()));
            cells.addAll(
                    t.assessment().map(a -> AnswerTable.band(a.assurance())).orElse(List.of("-", "-", "-")));
            rows.add(new Page.Row(
                    cells, t.assessment().map(a -> !a.assurance().anywhereOn()).orElse(false)));
        }
        page.table(
                List.of(
                        "target",
                        "on, mm",
                        "off, mm",
                        "factor",
                        "surely on up to, mm",
                        "surely off beyond, mm",
                        "work at, mm"),
                Set.of(1, 2, 3, 4, 5, 6),
                rows);
        page.paragraph(
                "On and off are the nominal distances with their numerical error, the factor is the on distance against that of the"
                        + " standard target. Between surely on and surely off the output may be either. To work at half to four fifths of the"
                        + " surely-on distance is common practice: it leaves room for mounting, wear and dirt.");
    }

    private void method() {
        result.targets().get(0).assessment().map(Assessment::assurance).ifPresent(a -> {
            page.heading("How the band is made");
            page.paragraph(combined(a));
            if (a.allowances().temperature()) {
                page.paragraph(drift(a));
            }
        });
    }

    private static String combined(Assurance assurance) {
        Allowances a = assurance.allowances();
        String rest = a.temperature()
                ? ", winding, housing and target at " + Labels.significant(a.coldest(), 3) + " to "
                        + Labels.significant(a.hottest(), 3) + " °C, the conductivity of the target "
                        + percent(a.conductivity()) + " either way and, where its permeability is assumed, "
                        + Labels.significant(a.leastPermeability(), 3) + " to "
                        + Labels.significant(a.mostPermeability(), 3)
                        + " (a factor of two outside these; conductivity and permeability are common practice, no standard)"
                : ". The target is taken to be what it is said to be, at 23 °C; a question about it alone allows for its material and"
                        + " temperature too";
        return "Not by multiplying factors, but by computing the distances again with everything at its worst at once."
                + " Allowed for are single pieces that differ by " + percent(a.effective())
                + " in effective distance, " + percent(a.usable())
                + " more over temperature and supply (the limits of IEC 60947-5-2, from memory), a differential travel of up to "
                + percent(a.differentialTravel()) + " (the standard allows 20 %)" + rest
                + ". The numerical error is added. Not modelled are the drift of ferrite, capacitor and electronics and the influence of the"
                + " supply: for these the standard's limits stand. For the standard target the band is the standard's: surely on up to"
                + " 0.81 sn, and the ± 10 % twice and the differential travel beyond it.";
    }

    private String drift(Assurance a) {
        return "Without any compensation this oscillator would see the standard target at "
                + AnswerTable.distance(a.standardColdest()) + " when coldest and at "
                + (Double.isInfinite(a.standardHottest())
                        ? "any distance when hottest (it would not release)"
                        : AnswerTable.distance(a.standardHottest()) + " when hottest")
                + ". Where that leaves 0.9 to 1.1 sr, the switch is taken to be compensated just so far that it keeps the limits.";
    }

    private static String percent(double share) {
        return Labels.significant(100 * share, 2) + " %";
    }

    private void single(TargetResult t) {
        page.heading(t.target().label());
        t.assessment().flatMap(Assessment::advice).ifPresent(this::advice);
        page.subheading("Why");
        page.paragraph(t.target().label() + ", " + t.reason());
        t.assessment().flatMap(Assessment::explanation).ifPresent(this::explanation);
        t.assessment().map(Assessment::assurance).ifPresent(a -> contributions(a));
    }

    private void advice(Advice advice) {
        page.subheading("What to change");
        if (!advice.needed()) {
            page.paragraph("Nothing need be changed: the target is seen about as surely as the standard target.");
            return;
        }
        if (advice.changes().isEmpty()) {
            page.paragraph(
                    "None of the usual changes helps: not a steel flag, another size or thickness, nor the switches at hand.");
        } else {
            List<Page.Row> rows = advice.changes().stream()
                    .map(c -> Page.Row.of(c.text(), Labels.millimetres(c.on()), "+" + Labels.millimetres(c.gain())))
                    .toList();
            page.table(List.of("change", "on, mm, about", "gain, mm"), Set.of(1, 2), rows);
            page.paragraph(
                    "Each line is computed as a whole at a coarse resolution, the largest gain first; what gains little is left out.");
        }
        if (advice.otherPrinciple()) {
            page.paragraph(AnswerTable.ALL_METALS_ALIKE);
        }
    }

    private void explanation(Explanation explanation) {
        page.paragraph(explanation.sentences().stream().collect(Collectors.joining(" ")));
        page.table(
                List.of("if", "factor"),
                Set.of(1),
                explanation.sensitivities().stream()
                        .map(s -> Page.Row.of(
                                s.change(), Double.isFinite(s.factor()) ? Labels.fixed(s.factor(), 2) : "never on"))
                        .toList());
    }

    private void contributions(Assurance assurance) {
        page.subheading("What makes the band");
        List<Page.Row> rows = new ArrayList<>();
        for (Contribution c : assurance.contributions()) {
            rows.add(Page.Row.of(c.cause().label(), AnswerTable.number(c.shortest()), AnswerTable.number(c.longest())));
        }
        page.table(List.of("this alone", "shortest on distance, mm", "longest, mm"), Set.of(1, 2), rows);
        page.paragraph("All at once: " + AnswerTable.onWords(assurance)
                + "; on the way out, with the differential travel, " + AnswerTable.offWords(assurance) + ".");
    }
}
