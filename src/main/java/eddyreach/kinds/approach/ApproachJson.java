package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.words.AdviceText;
import eddyreach.report.words.ExplanationText;
import eddyreach.report.words.ReasonText;
import eddyreach.report.words.Terms;
import java.util.Map;

/** Targets and what was found for them as JSON. */
final class ApproachJson {

    private ApproachJson() {}

    static Map<String, Object> target(TargetResult t, JsonParts parts) {
        SwitchDistance d = t.distance();
        Curve c = t.curve();
        return parts.target(t.target())
                .with("outcome", Terms.of(d.outcome()))
                .with("on_m", d.on())
                .with("on_error_m", d.onError())
                .with("off_m", d.off())
                .with("off_error_m", d.offError())
                .with("factor", t.factor())
                .with("factor_error", t.factorError())
                .with(
                        "on_over_permeability_m",
                        t.permeability()
                                .map(p -> new JsonNode()
                                        .with("shortest_m", p.shortest())
                                        .with("longest_m", p.longest()))
                                .orElse(null))
                .with(
                        "usual_band",
                        t.band()
                                .map(b -> new JsonNode()
                                        .with("low", b.low())
                                        .with("high", b.high())
                                        .with("source", b.source()))
                                .orElse(null))
                .with("losses", JsonParts.budget(t.budget()))
                .with("reason", ReasonText.of(t.reason()))
                .with(
                        "assessment",
                        t.assessment().map(a -> assessment(a, t.budget())).orElse(null))
                .with("warnings", JsonParts.warnings(t.warnings()))
                .with(
                        "curve",
                        new JsonNode()
                                .with("distance_m", JsonParts.numbers(c.distance()))
                                .with("loss_resistance_change_ohm", JsonParts.numbers(c.lossResistance()))
                                .with("inductance_change_h", JsonParts.numbers(c.inductanceChange()))
                                .with("resistance_ohm", JsonParts.numbers(c.resistance()))
                                .with("inductance_h", JsonParts.numbers(c.inductance()))
                                .with("frequency_hz", JsonParts.numbers(c.frequency()))
                                .with("conductance_s", JsonParts.numbers(c.conductance()))
                                .with("amplitude_v", JsonParts.numbers(c.amplitude())));
    }

    private static Map<String, Object> assessment(Assessment assessment, LossBudget budget) {
        return JsonParts.assurance(assessment.assurance())
                .with(
                        "explanation",
                        assessment
                                .explanation()
                                .map(e -> new JsonNode()
                                        .with(
                                                "regime",
                                                e.front()
                                                        .map(f -> f.regime().name())
                                                        .orElse(null))
                                        .with("sentences", ExplanationText.sentences(e, budget))
                                        .with(
                                                "factors",
                                                e.sensitivities().stream()
                                                        .map(s -> new JsonNode()
                                                                .with("change", ExplanationText.change(s))
                                                                .with(
                                                                        "quantity",
                                                                        s.quantity()
                                                                                .name())
                                                                .with("by", s.by())
                                                                .with("factor", s.factor()))
                                                        .toList()))
                                .orElse(null))
                .with(
                        "changes",
                        assessment
                                .advice()
                                .map(d -> d.changes().stream()
                                        .map(c -> new JsonNode()
                                                .with("kind", c.kind().name())
                                                .with("change", AdviceText.of(c))
                                                .with("on_m", c.on())
                                                .with("gain_m", c.gain()))
                                        .toList())
                                .orElse(null));
    }

    /** The targets in a mount. */
    static Map<String, Object> mounted(InMount in, JsonParts parts) {
        return new JsonNode()
                .with("id", in.mount().id())
                .with("name", in.mount().name())
                .with("surface_above_face_m", in.mount().surface())
                .with("parts", parts.parts(in.parts()))
                .with(
                        "targets",
                        in.targets().stream()
                                .map(f -> new JsonNode()
                                        .with("id", f.target().id())
                                        .with("stopped_at_m", f.floor())
                                        .with("outcome", Terms.of(f.distance().outcome()))
                                        .with("on_m", f.distance().on())
                                        .with("on_error_m", f.distance().onError())
                                        .with("off_m", f.distance().off())
                                        .with("off_error_m", f.distance().offError())
                                        .with(
                                                "assured",
                                                f.assurance()
                                                        .map(JsonParts::assurance)
                                                        .orElse(null)))
                                .toList())
                .with("warnings", JsonParts.warnings(in.warnings()));
    }
}
