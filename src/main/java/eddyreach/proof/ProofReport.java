package eddyreach.proof;

import eddyreach.report.page.TextPage;
import eddyreach.study.TextReport;
import eddyreach.units.Numbers;
import java.util.List;

/** The table of check values for the terminal, in 80 columns. */
public final class ProofReport {

    private static final int[] COLUMNS = {-29, 17, 17, 9, -4};
    private static final String INDENT = "  ";

    private final StringBuilder out = new StringBuilder();

    private ProofReport() {}

    /** The report, ending with a line break: a heading for each group, the source above its values. */
    public static String of(ProofResult result) {
        ProofReport report = new ProofReport();
        String group = "";
        Source source = null;
        for (CheckResult r : result.results()) {
            Check check = r.check();
            if (!check.group().equals(group)) {
                report.out.append(group.isEmpty() ? "" : "\n");
                report.out.append(check.group()).append('\n');
                report.row("quantity", "published", "computed", "deviation", "");
                group = check.group();
                source = null;
            }
            if (!check.source().equals(source)) {
                source = check.source();
                report.indented(source.name() + " [" + source.provenance().label() + "]");
            }
            report.values(r);
        }
        report.out.append('\n');
        report.legend(result);
        report.summary(result);
        return report.out.toString();
    }

    /** Deviation in the unit of the check, to two digits; a dash inside a range. */
    static String deviation(CheckResult r) {
        return r.passed() && r.check().expected() instanceof Expected.Range
                ? "-"
                : Numbers.significant(r.deviation(), 2);
    }

    static String verdict(CheckResult r) {
        return r.passed() ? "ok" : "FAIL";
    }

    /** How many passed, in one sentence. */
    static String sentence(ProofResult result) {
        int failed = result.failures().size();
        return result.results().size() + " check values, " + (failed == 0 ? "all met." : failed + " NOT met.");
    }

    private void values(CheckResult r) {
        List<String> quantity = TextPage.wrap(r.check().quantity(), -COLUMNS[0]);
        Expected expected = r.check().expected();
        row(quantity.get(0), expected.text(), expected.show(r.computed()), deviation(r), verdict(r));
        quantity.stream().skip(1).forEach(line -> out.append(line).append('\n'));
    }

    private void legend(ProofResult result) {
        result.results().stream()
                .map(r -> r.check().source().provenance())
                .distinct()
                .sorted()
                .forEach(p -> indented("[" + p.label() + "] " + p.meaning()));
        indented(
                "Deviations are in the unit of the quantity; half a unit of the last printed digit is allowed where the"
                        + " page gives no other reason.");
        out.append('\n');
    }

    private void summary(ProofResult result) {
        out.append(sentence(result)).append('\n');
        for (CheckResult r : result.failures()) {
            Expected expected = r.check().expected();
            indented(r.check() + ": expected " + expected.text() + ", computed " + expected.show(r.computed()));
        }
    }

    private void indented(String text) {
        TextPage.wrap(text, TextReport.WIDTH - INDENT.length())
                .forEach(line -> out.append(INDENT).append(line).append('\n'));
    }

    private void row(String... cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            String pad = " ".repeat(Math.max(0, Math.abs(COLUMNS[i]) - cells[i].length()));
            line.append(i > 0 ? " " : "").append(COLUMNS[i] > 0 ? pad + cells[i] : cells[i] + pad);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
