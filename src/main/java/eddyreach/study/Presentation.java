package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** How a result of one kind of study is shown: its pictures, tables, part of the JSON document and text. */
public interface Presentation {

    /** The pictures, in the order in which a reader wants them; nothing is drawn yet. */
    List<Picture> pictures();

    /** The tables: file name and comma-separated text. */
    Map<String, Supplier<String>> tables();

    /** Drawings for other programs, beside the pictures: file name and text. */
    default Map<String, Supplier<String>> drawings() {
        return Map.of();
    }

    /** Adds what this kind of study found to the JSON document. */
    void addTo(JsonNode document, JsonParts parts);

    /** Writes the answer: tables and reasons. */
    void write(TextPage page);

    /** The materials of its targets, for the list of what went in. */
    default List<Material> materials() {
        return List.of();
    }

    /** Whether a target's axis lies beside the switch's. */
    default boolean sideways() {
        return false;
    }

    /** Writes the answer on the page that is sent on; pictures, inputs, limits and cautions follow by themselves. */
    default void write(Page page) {
        TextPage text = new TextPage(false);
        write(text);
        page.lines(text.text());
    }
}
