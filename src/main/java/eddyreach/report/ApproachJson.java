package eddyreach.report;

import eddyreach.model.Layer;
import eddyreach.model.Target;
import eddyreach.study.Curve;
import eddyreach.study.SwitchDistance;
import eddyreach.study.TargetResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Targets and what was found for them as JSON. */
final class ApproachJson {

    private ApproachJson() {}

    static Map<String, Object> target(TargetResult t, JsonParts parts) {
        List<Object> layers = new ArrayList<>();
        for (Layer layer : t.target().layers()) {
            layers.add(new JsonNode()
                    .with("material", parts.material(layer.material()))
                    .with("thickness_m", layer.thickness()));
        }
        SwitchDistance d = t.distance();
        Curve c = t.curve();
        return new JsonNode()
                .with("id", t.target().id())
                .with("name", t.target().label())
                .with("outline", outline(t.target().outline()))
                .with("layers", layers)
                .with("outcome", d.outcome().label())
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
                .with("reason", t.reason())
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

    static Map<String, Object> outline(Target.Outline outline) {
        if (outline instanceof Target.Outline.Disc disc) {
            return new JsonNode().with("shape", "disc").with("diameter_m", disc.diameter());
        }
        if (outline instanceof Target.Outline.Square square) {
            return new JsonNode().with("shape", "square").with("side_m", square.side());
        }
        return new JsonNode().with("shape", "endless");
    }
}
