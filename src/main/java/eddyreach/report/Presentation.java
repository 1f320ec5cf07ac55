package eddyreach.report;

import eddyreach.study.ApproachResult;
import eddyreach.study.CoatingResult;
import eddyreach.study.ConductivityResult;
import eddyreach.study.SizeResult;
import eddyreach.study.StudyResult;
import eddyreach.study.ThicknessResult;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** How a result of one kind of study is shown: its pictures, tables, part of the JSON document and text. */
public interface Presentation {

    /** The pictures, in the order in which a reader wants them; nothing is drawn yet. */
    List<Picture> pictures();

    /** The tables: file name and comma-separated text. */
    Map<String, Supplier<String>> tables();

    /** Adds what this kind of study found to the JSON document. */
    void addTo(JsonNode document, JsonParts parts);

    /** Writes the answer: tables and reasons. */
    void write(TextPage page);

    /** The presentation of a result. */
    static Presentation of(StudyResult result) {
        if (result instanceof ApproachResult approach) {
            return new ApproachPresentation(approach);
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
