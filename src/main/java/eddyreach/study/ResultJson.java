package eddyreach.study;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.report.page.Json;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.words.Cautions;
import java.util.List;
import java.util.stream.Stream;

/** The result with all resolved inputs as a JSON document; keys end with their SI unit. */
public final class ResultJson {

    private static final int VERSION = 1;

    private ResultJson() {}

    /**
     * The document.
     *
     * @param files names of all files of the result; they stand first, so that the next run finds them quickly
     */
    public static String of(StudyResult r, List<String> files) {
        JsonParts parts = new JsonParts();
        TrimmedSwitch t = r.trimmed();
        JsonNode document = new JsonNode()
                .with("files", files)
                .with("format", "eddyreach result")
                .with("version", VERSION)
                .with("caution", Cautions.TAG)
                .with(
                        "study",
                        new JsonNode()
                                .with("id", r.id())
                                .with("name", r.name())
                                .with("note", r.note())
                                .with("kind", r.kind().label()))
                .with("switch", parts.switchModel(r.model()))
                .with("materials", parts.materials())
                .with(
                        "tank",
                        new JsonNode()
                                .with("capacitance_f", t.capacitance())
                                .with("undamped", JsonParts.operating(t.undamped())))
                .with(
                        "trim",
                        new JsonNode()
                                .with("on_conductance_s", t.onConductance())
                                .with("off_conductance_s", t.offConductance())
                                .with("on_amplitude_v", t.onAmplitude())
                                .with("off_amplitude_v", t.offAmplitude()))
                .with("losses_without_target", JsonParts.budget(t.freeBudget()));
        r.presentation().addTo(document, parts);
        return Json.write(document.with(
                "warnings",
                JsonParts.warnings(Stream.concat(r.switchWarnings().stream(), r.warnings().stream())
                        .toList())));
    }
}
