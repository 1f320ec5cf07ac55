package eddyreach.kinds.approach;

import eddyreach.engine.assure.Advice;
import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.FactorBand;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import java.util.List;
import java.util.stream.Collectors;

/** The table of targets and the reasons. */
final class ApproachText {

    private static final int[] COLUMNS = {-20, 12, 12, 6, 9, -16};
    private static final int[] BAND_COLUMNS = {-20, 12, 12, 16};

    /** Most changes that are told in the terminal; the page has all. */
    private static final int CHANGES = 3;

    private ApproachText() {}

    /** How a target compares, and the colour that says so. */
    private record Verdict(String text, String colour) {}

    static void write(ApproachResult result, TextPage page) {
        table(result, page);
        bands(result, page);
        for (TargetResult target : result.targets()) {
            page.paragraph(target.target().label() + ", " + target.reason());
        }
        for (TargetResult target : result.targets()) {
            target.assessment().flatMap(Assessment::advice).ifPresent(a -> advice(target, a, page));
        }
    }

    private static void table(ApproachResult result, TextPage page) {
        page.line(page.mark(row("target", "on, mm", "off, mm", "factor", "usual", "verdict"), TextPage.BOLD));
        for (TargetResult t : result.targets()) {
            SwitchDistance d = t.distance();
            Verdict verdict = verdict(t);
            List<String> name = TextPage.wrap(t.target().id(), -COLUMNS[0]);
            String line = row(
                    name.get(0),
                    Labels.uncertain(d.on(), d.onError()),
                    Labels.uncertain(d.off(), d.offError()),
                    Double.isFinite(t.factor()) ? Labels.fixed(t.factor(), 2) : "-",
                    t.band().map(ApproachText::band).orElse("-"),
                    verdict.text());
            int start = line.length() - verdict.text().length();
            page.line(line.substring(0, start) + page.mark(verdict.text(), verdict.colour()));
            name.stream().skip(1).forEach(page::line);
        }
        page.gap();
    }

    /** How far to rely on each target, if that was computed. */
    private static void bands(ApproachResult result, TextPage page) {
        if (result.targets().stream().allMatch(t -> t.assessment().isEmpty())) {
            return;
        }
        page.line(page.mark(
                TextPage.row(BAND_COLUMNS, "every such switch", "surely on", "surely off", "work at, mm"),
                TextPage.BOLD));
        for (TargetResult t : result.targets()) {
            t.assessment().map(Assessment::assurance).ifPresent(a -> {
                List<String> name = TextPage.wrap(t.target().id(), -COLUMNS[0]);
                String on = a.anywhereOn() ? "to " + AnswerTable.surelyOn(a) : "nowhere";
                List<String> band = AnswerTable.band(a);
                String off = a.surelyOff() > 0 && Double.isFinite(a.surelyOff()) ? "from " + band.get(1) : band.get(1);
                page.line(TextPage.row(BAND_COLUMNS, name.get(0), on, off, band.get(2)));
                name.stream().skip(1).forEach(page::line);
            });
        }
        if (result.targets().stream()
                .flatMap(t -> t.assessment().stream())
                .noneMatch(a -> a.assurance().allowances().material())) {
            page.paragraph("(Allows for the switch alone, not for material and temperature of the target.)");
        }
        page.gap();
    }

    /** The changes that gain most. */
    private static void advice(TargetResult target, Advice advice, TextPage page) {
        if (!advice.needed()) {
            return;
        }
        String changes = advice.changes().stream()
                .limit(CHANGES)
                .map(c -> c.text() + ": " + AnswerTable.distance(c.on()))
                .collect(Collectors.joining("; "));
        page.paragraph(target.target().label() + ", seen from farther with: "
                + (changes.isEmpty() ? "none of the usual changes" : changes) + ".");
    }

    private static String band(FactorBand band) {
        return Labels.fixed(band.low(), 2) + "-" + Labels.fixed(band.high(), 2);
    }

    /** Against the usual band the numerical error counts in favour. */
    private static Verdict verdict(TargetResult t) {
        String outcome = t.distance().outcome().label();
        if (t.distance().outcome() != SwitchDistance.Outcome.SWITCHES) {
            return new Verdict(outcome, TextPage.RED);
        }
        if (t.band().isEmpty()) {
            return new Verdict(outcome, "");
        }
        FactorBand band = t.band().get();
        if (t.factor() + t.factorError() < band.low()) {
            return new Verdict("below usual", TextPage.YELLOW);
        }
        if (t.factor() - t.factorError() > band.high()) {
            return new Verdict("above usual", TextPage.YELLOW);
        }
        return new Verdict("as usual", "");
    }

    private static String row(String... cells) {
        return TextPage.row(COLUMNS, cells);
    }
}
