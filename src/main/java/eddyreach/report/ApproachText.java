package eddyreach.report;

import eddyreach.materials.FactorBand;
import eddyreach.study.ApproachResult;
import eddyreach.study.SwitchDistance;
import eddyreach.study.TargetResult;
import java.util.List;

/** The table of targets and the reasons. */
final class ApproachText {

    private static final int[] COLUMNS = {-20, 12, 12, 6, 9, -16};

    private ApproachText() {}

    /** How a target compares, and the colour that says so. */
    private record Verdict(String text, String colour) {}

    static void write(ApproachResult result, TextPage page) {
        table(result, page);
        for (TargetResult target : result.targets()) {
            page.paragraph(target.target().label() + ", " + target.reason());
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
                    distance(d.on(), d.onError()),
                    distance(d.off(), d.offError()),
                    Double.isFinite(t.factor()) ? Labels.fixed(t.factor(), 2) : "-",
                    t.band().map(ApproachText::band).orElse("-"),
                    verdict.text());
            int start = line.length() - verdict.text().length();
            page.line(line.substring(0, start) + page.mark(verdict.text(), verdict.colour()));
            name.stream().skip(1).forEach(page::line);
        }
        page.gap();
    }

    private static String band(FactorBand band) {
        return Labels.fixed(band.low(), 2) + "-" + Labels.fixed(band.high(), 2);
    }

    /** Hundredths of a millimetre; the error is rounded up, so that it never promises too much. */
    static String distance(double metres, double error) {
        if (!Double.isFinite(metres)) {
            return "-";
        }
        String value = Labels.millimetres(metres);
        double hundredths = Math.ceil(error * Labels.MM * 100 - 1e-9);
        return Double.isFinite(error) ? value + " ± " + Labels.fixed(hundredths / 100, 2) : value;
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
