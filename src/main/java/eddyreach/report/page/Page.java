package eddyreach.report.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/** A page to read and to send, without any markup yet; {@link MarkdownPage} and {@link HtmlPage} write it. All texts are plain. */
public final class Page {

    private final String title;
    private final List<Block> blocks = new ArrayList<>();

    public Page(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    List<Block> blocks() {
        return Collections.unmodifiableList(blocks);
    }

    /** A piece of the page. */
    sealed interface Block {

        /**
         * A heading.
         *
         * @param level 2 for a section, 3 for a part of one
         */
        record Heading(int level, String text) implements Block {}

        record Paragraph(String text) implements Block {}

        /** The answer, set apart. */
        record Answer(String text) implements Block {}

        record Items(List<String> items) implements Block {}

        /**
         * A table.
         *
         * @param heads headings of the columns
         * @param numbers columns set to the right
         * @param rows as many cells each as there are headings
         */
        record Table(List<String> heads, Set<Integer> numbers, List<Row> rows) implements Block {}

        /**
         * A picture of the result.
         *
         * @param name file name without ending
         * @param title what it shows, for those who do not see it
         * @param caption what stands below it
         */
        record Figure(String name, String title, String caption) implements Block {}

        /** What to beware of, set apart. */
        record Caution(String text) implements Block {}
    }

    /**
     * A row of a table.
     *
     * @param marked true for a row that must be noticed
     */
    public record Row(List<String> cells, boolean marked) {

        public Row {
            cells = List.copyOf(cells);
        }

        public static Row of(String... cells) {
            return new Row(List.of(cells), false);
        }
    }

    public void heading(String text) {
        blocks.add(new Block.Heading(2, text));
    }

    public void subheading(String text) {
        blocks.add(new Block.Heading(3, text));
    }

    public void paragraph(String text) {
        blocks.add(new Block.Paragraph(text));
    }

    public void answer(String text) {
        blocks.add(new Block.Answer(text));
    }

    public void items(List<String> items) {
        if (!items.isEmpty()) {
            blocks.add(new Block.Items(List.copyOf(items)));
        }
    }

    public void table(List<String> heads, Set<Integer> numbers, List<Row> rows) {
        rows.forEach(r -> {
            if (r.cells().size() != heads.size()) {
                throw new IllegalArgumentException(r.cells().size() + " cells below " + heads.size() + " headings");
            }
        });
        blocks.add(new Block.Table(List.copyOf(heads), Set.copyOf(numbers), List.copyOf(rows)));
    }

    public void figure(String name, String title, String caption) {
        blocks.add(new Block.Figure(name, title, caption));
    }

    public void caution(String text) {
        blocks.add(new Block.Caution(text));
    }
}
