package eddyreach.report.page;

import eddyreach.report.page.Page.Block;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Writes a page as Markdown with tables; pictures are referred to as files beside it. */
public final class MarkdownPage {

    private MarkdownPage() {}

    /**
     * The page.
     *
     * @param file the file of a picture, by its name without ending
     */
    public static String of(Page page, UnaryOperator<String> file) {
        StringBuilder out = new StringBuilder("# " + escape(page.title()) + "\n");
        page.blocks().forEach(b -> out.append('\n').append(block(b, file)));
        return out.toString();
    }

    private static String block(Block block, UnaryOperator<String> file) {
        if (block instanceof Block.Heading h) {
            return "#".repeat(h.level()) + " " + escape(h.text()) + "\n";
        }
        if (block instanceof Block.Paragraph p) {
            return start(escape(p.text())) + "\n";
        }
        if (block instanceof Block.Answer a) {
            return "**" + escape(a.text()) + "**\n";
        }
        if (block instanceof Block.Items i) {
            return i.items().stream().map(t -> "- " + start(escape(t)) + "\n").collect(Collectors.joining());
        }
        if (block instanceof Block.Table t) {
            return table(t);
        }
        if (block instanceof Block.Figure f) {
            return "![" + escape(f.title()) + "](" + file.apply(f.name()) + ")\n\n*" + escape(f.caption()) + "*\n";
        }
        return "> " + escape(((Block.Caution) block).text()) + "\n";
    }

    private static String table(Block.Table t) {
        StringBuilder out = new StringBuilder(line(t.heads(), false)).append('|');
        for (int i = 0; i < t.heads().size(); i++) {
            out.append(t.numbers().contains(i) ? "---:|" : "---|");
        }
        out.append('\n');
        t.rows().forEach(r -> out.append(line(r.cells(), r.marked())));
        return out.toString();
    }

    private static String line(List<String> cells, boolean marked) {
        String mark = marked ? "**" : "";
        return cells.stream()
                .map(c -> c.isBlank() ? "" : mark + escape(c) + mark)
                .collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    /** Signs that would make a list or a heading of a paragraph's first word. */
    private static String start(String text) {
        return text.replaceFirst("^(\\d+)([.)])", "$1\\\\$2").replaceFirst("^([-+=])", "\\\\$1");
    }

    /** Signs that would mark something up, and line breaks, which would end a table's row. */
    public static String escape(String text) {
        return text.replaceAll("[\\\\`*_{}\\[\\]<>#|~&]", "\\\\$0").replaceAll("\\R", " ");
    }
}
