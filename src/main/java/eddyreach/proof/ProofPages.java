package eddyreach.proof;

import eddyreach.report.page.FolderWriter;
import eddyreach.report.page.HtmlPage;
import eddyreach.report.page.MarkdownPage;
import eddyreach.report.page.Page;
import eddyreach.units.Numbers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    private static final Set<Integer> NUMBERS = Set.of(2, 3, 4, 5);

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
        try (FolderWriter writer = FolderWriter.open(folder, "proof")) {
            writer.add(HTML, html(result).getBytes(StandardCharsets.UTF_8));
            writer.add(MARKDOWN, markdown(result).getBytes(StandardCharsets.UTF_8));
            writer.commit(names);
        }
        return names.stream().map(folder::resolve).toList();
    }

    /** The page in HTML. */
    static String html(ProofResult result) {
        return HtmlPage.of(page(result), name -> new byte[0]);
    }

    /** The page in Markdown. */
    static String markdown(ProofResult result) {
        return MarkdownPage.of(page(result), UnaryOperator.identity());
    }

    private static Page page(ProofResult result) {
        Page page = new Page(TITLE);
        page.paragraph(ProofReport.sentence(result));
        groups(result).forEach((group, rows) -> {
            page.heading(group);
            page.table(
                    HEADINGS,
                    NUMBERS,
                    rows.stream().map(r -> new Page.Row(cells(r), !r.passed())).toList());
        });
        page.heading("Where the values come from");
        page.items(result.results().stream()
                .map(r -> r.check().source().provenance())
                .distinct()
                .sorted()
                .map(p -> p.label() + ": " + p.meaning())
                .toList());
        return page;
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
}
