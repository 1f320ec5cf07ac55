package eddyreach.kinds.approach;

import eddyreach.engine.assure.Advice;
import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.FactorBand;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.AdviceText;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.ReasonText;
import eddyreach.report.words.Terms;
import eddyreach.units.Texts;
import java.util.List;
import java.util.stream.Collectors;

/** The table of targets and the reasons. */
final class ApproachText {

    private static final int[] COLUMNS = {-20, 12, 12, 6, 9, -16};
    private static final int[] BAND_COLUMNS = {-23, 10, 14, 14, 13};

    /** Most changes that are told in the terminal; the page has all. */
    private static final int CHANGES = 3;

    private ApproachText() {}

    /** How a target compares, and the colour that says so. */
    private record Verdict(String text, String colour) {}

    static void write(ApproachResult result, TextPage page) {
        result.mounted().ifPresent(m -> new MountWords(result, m).write(page));
        table(result, page);
        bands(result, page);
        for (TargetResult target : result.targets()) {
            page.paragraph(Texts.capitalised(target.target().label()) + ", " + ReasonText.of(target.reason()));
        }
        ReasonText.shared(result.targets().stream().map(TargetResult::reason).toList())
                .ifPresent(page::paragraph);
        for (TargetResult target : result.targets()) {
            target.assessment().flatMap(Assessment::advice).ifPresent(a -> advice(target, a, page));
        }
    }

    private static void table(ApproachResult result, TextPage page) {
        page.line(page.mark(row("target", "on, mm", "off, mm", "factor", "typical", "verdict"), TextPage.BOLD));
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            Verdict verdict = Factors.overlaps(t, result.model().effectiveDistance())
                    ? new Verdict(within(t) ? "typical" : "overlaps typical", "")
                    : verdict(t);
            List<String> name = TextPage.wrap(t.target().id(), -COLUMNS[0]);
            String line = row(
                    name.get(0),
                    Labels.uncertainCell(d.on(), d.onError()),
                    Labels.uncertainCell(d.off(), d.offError()),
                    Double.isFinite(t.factor()) ? Labels.fixed(t.factor(), 2) : "-",
                    t.band().map(ApproachText::band).orElse("-"),
                    verdict.text());
            int start = line.length() - verdict.text().length();
            page.line(line.substring(0, start) + page.mark(verdict.text(), verdict.colour()));
            name.stream().skip(1).forEach(page::line);
        }
        result.targets()
                .forEach(t ->
                        Factors.words(t, result.model().effectiveDistance()).ifPresent(page::paragraph));
        page.gap();
    }

    /** How far to rely on each target, if that was computed. */
    private static void bands(ApproachResult result, TextPage page) {
        if (result.targets().stream().allMatch(t -> t.assessment().isEmpty())) {
            return;
        }
        page.line(page.mark(
                TextPage.row(BAND_COLUMNS, AnswerTable.BAND, "on up to", "off beyond", "work up to", "with reserve"),
                TextPage.BOLD));
        for (TargetResult t : result.targets()) {
            t.assessment().map(Assessment::assurance).ifPresent(a -> {
                List<String> name = TextPage.wrap(t.target().id(), -BAND_COLUMNS[0]);
                List<String> band = AssuranceText.cells(a);
                page.line(TextPage.row(
                        BAND_COLUMNS,
                        name.get(0),
                        a.anywhereOn() ? band.get(0) : "nowhere",
                        band.get(1),
                        band.get(2),
                        band.get(3)));
                name.stream().skip(1).forEach(page::line);
            });
        }
        page.paragraph("(Distances in mm.) " + AnswerTable.BAND_NOTE);
        page.gap();
    }

    /** The changes that gain most. */
    private static void advice(TargetResult target, Advice advice, TextPage page) {
        if (!advice.needed()) {
            return;
        }
        String changes = advice.changes().stream()
                .limit(CHANGES)
                .map(c -> AdviceText.of(c) + ", on at " + AnswerTable.distance(c.on()))
                .collect(Collectors.joining("; "));
        page.paragraph(Texts.capitalised(target.target().label()) + ", to detect it from farther away: "
                + (changes.isEmpty() ? AdviceText.NONE_HELPS : changes + "."));
    }

    private static String band(FactorBand band) {
        return Labels.fixed(band.low(), 2) + "-" + Labels.fixed(band.high(), 2);
    }

    private static boolean within(TargetResult t) {
        return verdict(t).text().equals("typical");
    }

    /** Against the typical range the numerical error counts in favour. */
    private static Verdict verdict(TargetResult t) {
        String outcome = Terms.of(t.distance().outcome());
        if (t.distance().outcome() != SwitchDistance.Outcome.SWITCHES) {
            return new Verdict(outcome, TextPage.RED);
        }
        if (t.band().isEmpty()) {
            return new Verdict(outcome, "");
        }
        FactorBand band = t.band().get();
        if (t.factor() + t.factorError() < band.low()) {
            return new Verdict("below typical", TextPage.YELLOW);
        }
        if (t.factor() - t.factorError() > band.high()) {
            return new Verdict("above typical", TextPage.YELLOW);
        }
        return new Verdict("typical", "");
    }

    private static String row(String... cells) {
        return TextPage.row(COLUMNS, cells);
    }
}
