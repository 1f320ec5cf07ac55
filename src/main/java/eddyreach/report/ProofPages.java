package eddyreach.report;

import eddyreach.study.proof.CheckResult;
import eddyreach.study.proof.Expected;
import eddyreach.study.proof.ProofResult;
import eddyreach.units.Numbers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** The table of check values as a page: HTML that needs no other file, and Markdown. */
public final class ProofPages {

    private static final String HTML = "proof.html";
    private static final String MARKDOWN = "proof.md";
    private static final String TITLE = "Check values";
    private static final List<String> HEADINGS = List.of(
            "quantity",
            "source",
            "published",
            "computed",
            "deviation",
            "allowed",
            "reason for the allowance",
            "verdict");
    private static final String HALF_DIGIT = "half a unit of the last printed digit";

    /** Columns of numbers, aligned to the right. */
    private static final List<Integer> NUMBERS = List.of(2, 3, 4, 5);

    private ProofPages() {}

    /**
     * Writes both pages; an earlier pair is replaced only when both are there.
     *
     * @param folder made if it does not exist; other files in it are left alone
     * @return the files
     * @throws IOException when a file cannot be written; the earlier pages are then still there
     */
    public static List<Path> write(ProofResult result, Path folder) throws IOException {
        List<String> names = List.of(HTML, MARKDOWN);
        try (FolderWriter writer = FolderWriter.open(folder)) {
            writer.add(HTML, html(result).getBytes(StandardCharsets.UTF_8));
            writer.add(MARKDOWN, markdown(result).getBytes(StandardCharsets.UTF_8));
            writer.commit(names, List.of());
        }
        return names.stream().map(folder::resolve).toList();
    }

    /** The page in HTML. */
    static String html(ProofResult result) {
        StringBuilder page = new StringBuilder("""
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>%s</title>
                <style>
                body { font-family: sans-serif; margin: 2em; line-height: 1.4; }
                table { border-collapse: collapse; }
                th, td { padding: 0.2em 0.6em; text-align: left; vertical-align: top; border-bottom: 1px solid #ccc; }
                .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
                .fail { font-weight: bold; background: #fdd; }
                </style>
                </head>
                <body>
                <h1>%s</h1>
                <p>%s</p>
                """.formatted(TITLE, TITLE, escapeHtml(ProofReport.sentence(result))));
        groups(result).forEach((group, rows) -> {
            page.append("<h2>").append(escapeHtml(group)).append("</h2>\n<table>\n<tr>");
            for (int i = 0; i < HEADINGS.size(); i++) {
                page.append("<th")
                        .append(style(i))
                        .append('>')
                        .append(HEADINGS.get(i))
                        .append("</th>");
            }
            page.append("</tr>\n");
            for (CheckResult r : rows) {
                page.append(r.passed() ? "<tr>" : "<tr class=\"fail\">");
                List<String> cells = cells(r);
                for (int i = 0; i < cells.size(); i++) {
                    page.append("<td")
                            .append(style(i))
                            .append('>')
                            .append(escapeHtml(cells.get(i)))
                            .append("</td>");
                }
                page.append("</tr>\n");
            }
            page.append("</table>\n");
        });
        page.append("<h2>Where the values come from</h2>\n<dl>\n");
        result.results().stream()
                .map(r -> r.check().source().provenance())
                .distinct()
                .sorted()
                .forEach(p -> page.append("<dt>")
                        .append(escapeHtml(p.label()))
                        .append("</dt><dd>")
                        .append(escapeHtml(p.meaning()))
                        .append("</dd>\n"));
        return page.append("</dl>\n</body>\n</html>\n").toString();
    }

    private static String style(int column) {
        return NUMBERS.contains(column) ? " class=\"number\"" : "";
    }

    /** The page in Markdown. */
    static String markdown(ProofResult result) {
        StringBuilder page = new StringBuilder("# " + TITLE + "\n\n" + ProofReport.sentence(result) + "\n");
        groups(result).forEach((group, rows) -> {
            page.append("\n## ").append(escapeMarkdown(group)).append("\n\n");
            page.append(line(HEADINGS, UnaryOperator.identity()));
            page.append('|');
            for (int i = 0; i < HEADINGS.size(); i++) {
                page.append(NUMBERS.contains(i) ? "---:|" : "---|");
            }
            page.append('\n');
            rows.forEach(r -> page.append(line(cells(r), ProofPages::escapeMarkdown)));
        });
        page.append("\n## Where the values come from\n\n");
        result.results().stream()
                .map(r -> r.check().source().provenance())
                .distinct()
                .sorted()
                .forEach(p -> page.append("- ")
                        .append(escapeMarkdown(p.label()))
                        .append(": ")
                        .append(escapeMarkdown(p.meaning()))
                        .append('\n'));
        return page.toString();
    }

    private static String line(List<String> cells, UnaryOperator<String> escape) {
        return cells.stream().map(escape).collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private static Map<String, List<CheckResult>> groups(ProofResult result) {
        return result.results().stream()
                .collect(Collectors.groupingBy(r -> r.check().group(), LinkedHashMap::new, Collectors.toList()));
    }

    private static List<String> cells(CheckResult r) {
        Expected expected = r.check().expected();
        boolean range = expected instanceof Expected.Range;
        String reason = r.check().reason();
        return List.of(
                r.check().quantity(),
                r.check().source().name() + " ["
                        + r.check().source().provenance().label() + "]",
                expected.text(),
                expected.show(r.computed()),
                ProofReport.deviation(r),
                range ? "-" : Numbers.significant(expected.allowed(), 2),
                reason.isEmpty() ? HALF_DIGIT : reason,
                ProofReport.verdict(r));
    }

    static String escapeHtml(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** Signs that would mark something up, and line breaks, which would end a table's row. */
    static String escapeMarkdown(String text) {
        return text.replaceAll("[\\\\`*_{}\\[\\]<>#|~&]", "\\\\$0").replaceAll("\\R", " ");
    }
}
