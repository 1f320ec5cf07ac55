package eddyreach.kinds.approach;

import eddyreach.engine.assure.Allowances;
import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
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
        Assurance a = assessment.assurance();
        Allowances allowed = a.allowances();
        return new JsonNode()
                .with("surely_on_m", a.surelyOn())
                .with("surely_off_m", a.surelyOff())
                .with("recommended_m", a.recommended())
                .with(
                        "allowances",
                        new JsonNode()
                                .with("effective", allowed.effective())
                                .with("usable", allowed.usable())
                                .with("differential_travel_share", allowed.differentialTravel())
                                .with("coldest_c", allowed.coldest())
                                .with("hottest_c", allowed.hottest())
                                .with("conductivity", allowed.conductivity())
                                .with("least_permeability", allowed.leastPermeability())
                                .with("most_permeability", allowed.mostPermeability()))
                .with(
                        "contributions",
                        a.contributions().stream()
                                .map(c -> new JsonNode()
                                        .with("cause", Terms.of(c.cause()))
                                        .with("shortest_m", c.shortest())
                                        .with("longest_m", c.longest()))
                                .toList())
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
}
