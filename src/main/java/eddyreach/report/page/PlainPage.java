package eddyreach.report.page;

import eddyreach.report.page.Page.Block;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The same page for the terminal: tables in columns, everything else wrapped; pictures are left out. */
public final class PlainPage {

    /** A column of words is not made narrower. */
    private static final int NARROWEST = 12;

    private PlainPage() {}

    /** Writes what would stand on the page. */
    public static void write(Consumer<Page> content, TextPage out) {
        Page page = new Page("");
        content.accept(page);
        boolean first = true;
        for (Block b : page.blocks()) {
            if (b instanceof Block.Figure) {
                continue;
            }
            if (!first) {
                out.gap();
            }
            first = false;
            write(b, out);
        }
    }

    private static void write(Block block, TextPage out) {
        if (block instanceof Block.Heading h) {
            out.heading(h.text());
        } else if (block instanceof Block.Paragraph p) {
            out.paragraph(p.text());
        } else if (block instanceof Block.Answer a) {
            out.heading(a.text());
        } else if (block instanceof Block.Items i) {
            i.items().forEach(t -> hanging(t, out));
        } else if (block instanceof Block.Table t) {
            table(t, out);
        } else if (block instanceof Block.Caution c) {
            out.paragraph(c.text());
        }
    }

    private static void hanging(String text, TextPage out) {
        List<String> lines = TextPage.wrap(text, TextPage.WIDTH - 2);
        IntStream.range(0, lines.size()).forEach(i -> out.line((i == 0 ? "- " : "  ") + lines.get(i)));
    }

    private static void table(Block.Table t, TextPage out) {
        int n = t.heads().size();
        int[] width = new int[n];
        int[] least = new int[n];
        for (int i = 0; i < n; i++) {
            int column = i;
            int cells = t.rows().stream()
                    .mapToInt(r -> r.cells().get(column).length())
                    .max()
                    .orElse(0);
            String head = t.heads().get(i);
            width[i] = Math.max(cells, head.length());
            // words may be wrapped, numbers may not
            int words = t.numbers().contains(i) ? cells : Math.min(cells, NARROWEST);
            least[i] = Math.max(
                    words,
                    Stream.of(head.split(" ")).mapToInt(String::length).max().orElse(0));
        }
        for (int over = IntStream.of(width).sum() + n - 1 - TextPage.WIDTH; over > 0; over--) {
            int loosest = IntStream.range(0, n)
                    .reduce((a, b) -> width[b] - least[b] > width[a] - least[a] ? b : a)
                    .orElseThrow();
            width[loosest]--;
        }
        int[] columns = IntStream.range(0, n)
                .map(i -> t.numbers().contains(i) ? width[i] : -width[i])
                .toArray();
        row(t.heads(), columns, TextPage.BOLD, out);
        t.rows().forEach(r -> row(r.cells(), columns, r.marked() ? TextPage.RED : "", out));
    }

    private static void row(List<String> cells, int[] columns, String mark, TextPage out) {
        List<List<String>> wrapped = new ArrayList<>();
        for (int i = 0; i < columns.length; i++) {
            wrapped.add(TextPage.wrap(cells.get(i), Math.abs(columns[i])));
        }
        int lines = Collections.max(wrapped.stream().map(List::size).toList());
        for (int k = 0; k < lines; k++) {
            int line = k;
            String[] parts = wrapped.stream()
                    .map(w -> line < w.size() ? w.get(line) : "")
                    .toArray(String[]::new);
            out.line(out.mark(TextPage.row(columns, parts).stripTrailing(), mark));
        }
    }
}
