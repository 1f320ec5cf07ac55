package eddyreach.kinds.approach;

import eddyreach.engine.assure.Advice;
import eddyreach.engine.assure.Allowances;
import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.assure.Change;
import eddyreach.engine.assure.Explanation;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.Page;
import eddyreach.report.words.AdviceText;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.ExplanationText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.ReasonText;
import eddyreach.report.words.Terms;
import eddyreach.units.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What a study of targets that come nearer has to say on its pages. */
final class ApproachPage {

    /** Most changes on the sheet; the record has all. */
    private static final int CHANGES = 3;

    private final ApproachResult result;
    private final Page page;
    private final List<TargetResult> asked;

    private ApproachPage(ApproachResult result, Page page) {
        this.result = result;
        this.page = page;
        List<TargetResult> others = result.targets().stream().skip(1).toList();
        asked = others.isEmpty() ? result.targets() : others;
    }

    /** The full record. */
    static void write(ApproachResult result, Page page) {
        new ApproachPage(result, page).record();
    }

    /** What fits on two sheets of paper. */
    static void brief(ApproachResult result, Page page) {
        new ApproachPage(result, page).brief();
    }

    private void record() {
        if (!result.note().isBlank()) {
            page.paragraph(result.note());
        }
        bands();
        if (result.kind() == ApproachKind.MATERIALS) {
            reasons();
        } else {
            asked.forEach(this::single);
        }
        method();
    }

    private void brief() {
        bands();
        reasons();
        for (TargetResult t : asked) {
            t.assessment()
                    .flatMap(Assessment::advice)
                    .filter(a -> !a.changes().isEmpty())
                    .ifPresent(a -> {
                        page.heading("To detect it from farther away"
                                + (asked.size() > 1 ? ": " + t.target().label() : ""));
                        changes(a.changes().stream().limit(CHANGES).toList());
                    });
        }
    }

    private void reasons() {
        page.heading("Why");
        page.items(asked.stream()
                .map(t -> Texts.capitalised(t.target().label()) + ", " + ReasonText.of(t.reason()))
                .toList());
        ReasonText.shared(asked.stream().map(TargetResult::reason).toList()).ifPresent(page::paragraph);
    }

    private void bands() {
        result.mounted().ifPresent(m -> new MountWords(result, m).write(page));
        page.heading(result.mounted().isPresent() ? "Distances in free air" : "Distances");
        List<Page.Row> rows = new ArrayList<>();
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            List<String> cells = new ArrayList<>(List.of(
                    t.target().label(),
                    Labels.uncertainCell(d.on(), d.onError()),
                    Labels.uncertainCell(d.off(), d.offError()),
                    Double.isFinite(t.factor())
                            ? Labels.fixed(t.factor(), 2)
                                    + Factors.of(t, result.model().effectiveDistance())
                                            .map(r -> " (" + r + ")")
                                            .orElse("")
                            : Terms.of(d.outcome())));
            cells.addAll(
                    t.assessment().map(a -> AssuranceText.cells(a.assurance())).orElse(List.of("-", "-", "-", "-")));
            rows.add(new Page.Row(
                    cells, t.assessment().map(a -> !a.assurance().anywhereOn()).orElse(false)));
        }
        String all = AnswerTable.BAND;
        page.table(
                List.of(
                        "target",
                        "on, mm",
                        "off, mm",
                        "factor",
                        all + ": on up to, mm",
                        "off beyond, mm",
                        "work up to, mm",
                        "with reserve, mm"),
                Set.of(1, 2, 3, 4, 5, 6, 7),
                rows);
        page.items(result.targets().stream()
                .flatMap(t -> Factors.words(t, result.model().effectiveDistance()).stream())
                .toList());
        page.paragraph(
                "On and off are nominal distances with their numerical error; the factor is the on distance over that of the"
                        + " standard target. " + AnswerTable.BAND_NOTE);
    }

    private void method() {
        result.targets().get(0).assessment().map(Assessment::assurance).ifPresent(a -> {
            page.heading("How the assured distances are computed");
            page.paragraph(combined(a));
            page.paragraph(drift(a));
        });
    }

    private static String combined(Assurance assurance) {
        Allowances a = assurance.allowances();
        return "The worst combination of all tolerances, recomputed rather than multiplied: ± " + percent(a.effective())
                + " in effective distance from unit to unit; ± " + percent(a.usable())
                + " over temperature and supply (limits of IEC 60947-5-2, from memory); a differential travel of up to "
                + percent(a.differentialTravel()) + " (the standard allows 20 %); winding, barrel and target from "
                + Labels.significant(a.coldest(), 3) + " to " + Labels.significant(a.hottest(), 3)
                + " °C; the target's conductivity ± " + percent(a.conductivity())
                + "; and, where its permeability is assumed, " + Labels.significant(a.leastPermeability(), 3) + " to "
                + Labels.significant(a.mostPermeability(), 3)
                + " (a factor of two where it lies outside; the range that a material states); the thickness of flat parts as the inputs say."
                + " Conductivity and permeability spreads are common practice, not from a"
                + " standard. The numerical error is added. Drift of ferrite, capacitor and electronics and the influence of the supply are not"
                + " modelled; the standard's limits cover them. For the standard target the result is the standard's own: on up to"
                + " 0.81 sn, off beyond 1.21 sn plus the differential travel.";
    }

    private String drift(Assurance a) {
        return "Without temperature compensation this oscillator would detect the standard target at "
                + AnswerTable.distance(a.standardColdest()) + " when coldest and at "
                + (Double.isInfinite(a.standardHottest())
                        ? "any distance when hottest (it would not release)"
                        : AnswerTable.distance(a.standardHottest()) + " when hottest")
                + ". Where that is outside 0.9 to 1.1 sr, we assume just enough compensation to stay within these limits.";
    }

    private static String percent(double share) {
        return Labels.significant(100 * share, 2) + " %";
    }

    private void single(TargetResult t) {
        page.heading(Texts.capitalised(t.target().label()));
        t.assessment().flatMap(Assessment::advice).ifPresent(this::advice);
        page.subheading("Why");
        page.paragraph(Texts.capitalised(t.target().label()) + ", " + ReasonText.of(t.reason()));
        t.assessment().flatMap(Assessment::explanation).ifPresent(e -> explanation(e, t.budget()));
        t.assessment().map(Assessment::assurance).ifPresent(a -> contributions(a));
    }

    private void advice(Advice advice) {
        page.subheading("What to change");
        if (!advice.needed()) {
            page.paragraph(AdviceText.NONE_NEEDED);
            return;
        }
        if (advice.changes().isEmpty()) {
            page.paragraph(AdviceText.NONE_HELPS);
        } else {
            changes(advice.changes());
            page.paragraph(
                    "Each line is computed with everything together at a coarse resolution, the largest gain first; small gains are left"
                            + " out.");
        }
        if (advice.otherPrinciple()) {
            page.paragraph(AdviceText.ALL_METALS_ALIKE);
        }
    }

    private void changes(List<Change> changes) {
        page.table(
                List.of("change", "on at about, mm", "gain, mm"),
                Set.of(1, 2),
                changes.stream()
                        .map(c -> Page.Row.of(
                                AdviceText.of(c), Labels.millimetres(c.on()), "+" + Labels.millimetres(c.gain())))
                        .toList());
    }

    private void explanation(Explanation explanation, LossBudget budget) {
        page.paragraph(String.join(" ", ExplanationText.sentences(explanation, budget)));
        page.table(
                List.of("if", "factor"),
                Set.of(1),
                explanation.sensitivities().stream()
                        .map(s -> Page.Row.of(
                                ExplanationText.change(s),
                                Double.isFinite(s.factor()) ? Labels.fixed(s.factor(), 2) : "never on"))
                        .toList());
    }

    private void contributions(Assurance assurance) {
        page.subheading("What the assured distances allow for");
        List<Page.Row> rows = new ArrayList<>();
        for (Contribution c : AssuranceText.ranked(assurance)) {
            rows.add(Page.Row.of(Terms.of(c), AssuranceText.number(c.shortest()), AssuranceText.number(c.longest())));
        }
        page.table(List.of("this alone", "shortest on distance, mm", "longest, mm"), Set.of(1, 2), rows);
        page.paragraph("All together: " + AssuranceText.onWords(assurance) + "; with the differential travel, "
                + AssuranceText.offWords(assurance) + ".");
    }
}
