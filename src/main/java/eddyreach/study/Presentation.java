package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.page.PlainPage;
import eddyreach.report.page.TextPage;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** How a result of one kind of study is shown: its pictures, tables, part of the JSON document and text. */
public interface Presentation {

    /**
     * The answer in one sentence, with number and verdict, such as "Yes: on at 5.44 mm (factor 1.09); every unit is on up to 4.26 mm.": the
     * first line on the terminal and of the page.
     */
    String answer();

    /** The pictures, in the order in which a reader wants them; nothing is drawn yet. */
    List<Picture> pictures();

    /** The tables: file name and what is in it. */
    Map<String, Supplier<Csv>> tables();

    /** Drawings for other programs, beside the pictures: file name and text. */
    default Map<String, Supplier<String>> drawings() {
        return Map.of();
    }

    /** Adds what this kind of study found to the JSON document. */
    void addTo(JsonNode document, JsonParts parts);

    /** Writes what follows the answer on the terminal: the table, the reasons, the rest; what stands in the full record unless a kind is briefer. */
    default void write(TextPage page) {
        PlainPage.write(this::write, page);
    }

    /** The materials of its targets, for the list of what went in. */
    default List<Material> materials() {
        return List.of();
    }

    /** What else went in and moves the answer, a sentence each. */
    default List<String> inputs() {
        return List.of();
    }

    /** Whether a target's axis lies beside the switch's. */
    default boolean sideways() {
        return false;
    }

    /** Writes what follows the answer in the full record; pictures, inputs, limits and cautions follow by themselves. */
    void write(Page page);

    /** The same in brief, for the sheet that is sent on. */
    default void brief(Page page) {
        write(page);
    }

    /** Names of the one or two pictures on the sheet that is sent on; those that there are count. */
    default List<String> briefPictures() {
        return pictures().stream().limit(2).map(Picture::name).toList();
    }
}
