package eddyreach.report;

import eddyreach.materials.Material;
import eddyreach.study.ApproachResult;
import eddyreach.study.BackgroundResult;
import eddyreach.study.CoatingResult;
import eddyreach.study.ConductivityResult;
import eddyreach.study.MountResult;
import eddyreach.study.NeighbourResult;
import eddyreach.study.PassResult;
import eddyreach.study.RecessResult;
import eddyreach.study.SizeResult;
import eddyreach.study.StudyResult;
import eddyreach.study.ThicknessResult;
import eddyreach.study.ZoneResult;
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

    /** The presentation of a result. */
    static Presentation of(StudyResult result) {
        if (result instanceof ApproachResult approach) {
            return new ApproachPresentation(approach);
        }
        if (result instanceof MountResult mount) {
            return new MountPresentation(mount);
        }
        if (result instanceof RecessResult recess) {
            return new RecessPresentation(recess);
        }
        if (result instanceof BackgroundResult background) {
            return new BackgroundPresentation(background);
        }
        if (result instanceof NeighbourResult neighbour) {
            return new NeighbourPresentation(neighbour);
        }
        if (result instanceof ZoneResult zone) {
            return new ZonePresentation(zone);
        }
        if (result instanceof PassResult pass) {
            return new PassPresentation(pass);
        }
        if (result instanceof ThicknessResult thickness) {
            return new ThicknessPresentation(thickness);
        }
        if (result instanceof SizeResult size) {
            return new SizePresentation(size);
        }
        if (result instanceof ConductivityResult conductivity) {
            return new ConductivityPresentation(conductivity);
        }
        if (result instanceof CoatingResult coating) {
            return new CoatingPresentation(coating);
        }
        throw new IllegalArgumentException("no presentation of a result of the kind " + result.kind());
    }
}
