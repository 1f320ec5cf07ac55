package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.geometry.Part;
import eddyreach.model.values.Mount;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.words.Terms;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Mounts and what was found for them as parts of the JSON document. */
public final class MountJson {

    private MountJson() {}

    public static Map<String, Object> mount(Mount m, List<Part> parts, JsonParts json) {
        JsonNode node = new JsonNode()
                .with("id", m.id())
                .with("name", m.name())
                .with("note", m.note())
                .with("surface_above_face_m", m.surface())
                .with("parts", json.parts(parts));
        m.wall().filter(w -> m.edged()).ifPresent(w -> node.with("wall_edge_from_axis_m", w.edge()));
        m.background()
                .ifPresent(
                        b -> node.with("background", background(b.plate(), json).with("distance_m", b.distance())));
        return node;
    }

    /** A background; an endless one has no diameter. */
    public static JsonNode background(Mount.Background b, JsonParts json) {
        return new JsonNode()
                .with("material", json.material(b.material()))
                .with("thickness_m", b.thickness())
                .with("diameter_m", b.diameter());
    }

    public static Map<String, Object> found(MountCase c, JsonParts json) {
        return new JsonNode()
                .with("mount", mount(c.mount(), c.parts(), json))
                .with("undamped", JsonParts.operating(c.undamped()))
                .with("verdict", c.verdict().label())
                .with(
                        "damping_without_target",
                        new JsonNode()
                                .with("of_on_threshold", c.reserve().total())
                                .with("reserve_used", c.reserve().used())
                                .with("reserve_used_error", c.reserve().error())
                                .with(
                                        "reserve_used_half_apart_by_edge",
                                        c.reserve().spread()))
                .with("corners", c.corners().stream().map(MountJson::corner).toList())
                .with("targets", c.targets().stream().map(t -> target(t, json)).toList())
                .with("losses_without_target", JsonParts.budget(c.budget()))
                .with("unknowns", c.unknowns())
                .with("safe", c.safe())
                .with("judgement", judgement(c.judgement()))
                .with(
                        "nearest_safe",
                        c.proposals().stream().map(MountJson::proposal).toList())
                .with("effects", c.effects().stream().map(MountJson::effect).toList())
                .with("warnings", JsonParts.warnings(c.warnings()));
    }

    private static JsonNode judgement(Judgement j) {
        return new JsonNode()
                .with("grade", j.grade().label())
                .with(
                        "findings",
                        j.findings().stream()
                                .map(f -> new JsonNode()
                                        .with("cause", f.cause().name().toLowerCase(Locale.ROOT))
                                        .with("grade", f.grade().label())
                                        .with("target", f.target())
                                        .with("value", f.value()))
                                .toList());
    }

    private static JsonNode proposal(SafeDimension p) {
        JsonNode node = new JsonNode()
                .with("varied", p.kind() == SafeDimension.Kind.DIAMETER ? "diameter" : "depth")
                .with("given_diameter_m", p.diameter())
                .with("given_depth_m", p.depth())
                .with("searched_to_m", p.limit());
        p.found()
                .ifPresent(f -> node.with("safe_m", f.value())
                        .with("reserve_used", f.used())
                        .with("reserve_used_at_worst", f.worst())
                        .with("on_m", f.on())
                        .with("on_error_m", f.onError())
                        .with("shift_of_effective_distance", f.shift())
                        .with("deviation_of_direct_solve", f.direct().orElse(Double.NaN)));
        return node;
    }

    private static Map<String, Object> corner(MountCase.Corner c) {
        return new JsonNode()
                .with("temperature_c", c.celsius())
                .with("trim_in_rated_distances", c.trim())
                .with("reserve_used", c.used())
                .with("verdict", c.verdict().label())
                .with("reserve_used_with_own_drift", c.bare())
                .with("verdict_with_own_drift", c.bareVerdict().label());
    }

    private static Map<String, Object> target(MountTarget t, JsonParts json) {
        SwitchDistance d = t.distance();
        return new JsonNode()
                .with("target", json.target(t.target()))
                .with("stopped_at_m", t.floor())
                .with("outcome", Terms.of(d.outcome()))
                .with("on_m", d.on())
                .with("off_m", d.off())
                .with("on_error_m", d.onError())
                .with("off_error_m", d.offError())
                .with("shift_of_effective_distance", t.shift())
                .with("shift_error", t.shiftError())
                .with("shift_half_apart_by_edge", t.spread())
                .with("within_a_tenth", t.within())
                .with("assured", t.assurance().map(JsonParts::assurance).orElse(null))
                .with("distance_m", JsonParts.numbers(t.curve().distance()))
                .with("amplitude_v", JsonParts.numbers(t.curve().amplitude()))
                .with("conductance_s", JsonParts.numbers(t.curve().conductance()))
                .with("impedance_error_ohm", JsonParts.numbers(t.curve().impedanceError()));
    }

    private static Map<String, Object> effect(DimensionEffect e) {
        return new JsonNode()
                .with("dimension", e.label())
                .with("value_m", e.value())
                .with("change_of_on_distance_by_change_of_dimension", e.slope())
                .with("spread", e.spread());
    }

    public static Map<String, Object> rule(UsualRule r) {
        return new JsonNode()
                .with("mount", r.mount())
                .with("usual_rule", MountWords.text(r))
                .with("origin", "common practice")
                .with("kept", r.kept())
                .with("comparison", MountWords.comment(r));
    }
}
