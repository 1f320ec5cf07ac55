package eddyreach.report.page;

import eddyreach.coil.Winding;
import eddyreach.engine.assure.Allowances;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.Warning;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.materials.Specimen;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.values.Texture;
import eddyreach.oscillator.ActiveElement;
import eddyreach.report.words.Terms;
import eddyreach.report.words.WarningText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Pieces of the JSON document that several kinds of study share; collects the materials that are named. */
public final class JsonParts {

    private final Map<String, Object> materials = new LinkedHashMap<>();

    /** The materials named so far; filled further until the document is written. */
    public Map<String, Object> materials() {
        return materials;
    }

    public static Map<String, Object> operating(Operating o) {
        return new JsonNode()
                .with("resistance_ohm", o.resistance())
                .with("inductance_h", o.inductance())
                .with("frequency_hz", o.frequency())
                .with("conductance_s", o.conductance())
                .with("amplitude_v", o.amplitude())
                .with("quality", o.quality());
    }

    public Map<String, Object> switchModel(SwitchModel m) {
        Winding w = m.winding();
        return new JsonNode()
                .with("id", m.id())
                .with("name", m.name())
                .with("note", m.note())
                .with("mounting", Terms.of(m.mounting()))
                .with("rated_distance_m", m.ratedDistance())
                .with("effective_distance_m", m.effectiveDistance())
                .with("face_diameter_m", m.faceDiameter())
                .with("standard_target_side_m", m.standardSide())
                .with("frequency_hz", m.frequency())
                .with(
                        "winding",
                        new JsonNode()
                                .with("section", section(w.section()))
                                .with("turns", w.turns())
                                .with("copper_diameter_m", w.wire().copperDiameter())
                                .with("strands", w.wire().strands())
                                .with("conductor", material(w.wire().conductor())))
                .with("parts", parts(m.parts()))
                .with("oscillator", oscillator(m.element()))
                .with("differential_travel_share", m.differentialTravel())
                .with("output", Terms.of(m.output()));
    }

    /** The element's name and its parameters, each key ending with its SI unit. */
    private static Map<String, Object> oscillator(ActiveElement element) {
        JsonNode node = new JsonNode().with("element", element.name());
        for (ActiveElement.Parameter p : element.parameters()) {
            node.with(p.name().replace(' ', '_') + "_" + p.unit().toLowerCase(Locale.ROOT), p.value());
        }
        return node.with("small_signal_conductance_s", element.smallSignalConductance());
    }

    public List<Object> parts(List<Part> parts) {
        List<Object> list = new ArrayList<>();
        for (Part p : parts) {
            list.add(new JsonNode()
                    .with("name", p.name())
                    .with("role", Terms.of(p.role()))
                    .with("section", section(p.section()))
                    .with("material", material(p.material())));
        }
        return list;
    }

    private static Map<String, Object> section(Section s) {
        JsonNode node = new JsonNode()
                .with("r0_m", s.r0())
                .with("r1_m", s.r1())
                .with("z0_m", s.z0())
                .with("z1_m", s.z1());
        return s.flare() > 0 ? node.with("r0_at_z1_m", s.innerAt(s.z1())) : node;
    }

    /** Enters a material into the list and returns its key. */
    public String material(Material m) {
        JsonNode node = new JsonNode()
                .with("name", m.name())
                .with("conductivity_at_20c_s_per_m", m.conductivity20())
                .with("temperature_coefficient_per_k", m.temperatureCoefficient())
                .with("mu_real", m.muReal())
                .with(
                        "mu_real_range",
                        m.range()
                                .map(r -> new JsonNode().with("low", r.low()).with("high", r.high()))
                                .orElse(null))
                .with("mu_imag", m.muImag())
                .with("source", m.source());
        Specimen state = m.specimen();
        if (!state.equals(Specimen.PLAIN)) {
            if (state.held()) {
                node.with("held_at_c", state.celsius());
            }
            node.with("sheet_factor", state.sheetFactor())
                    .with("conductivity_in_effect_s_per_m", m.conductivity(Temperature.AMBIENT));
        }
        materials.putIfAbsent(m.id(), node);
        return m.id();
    }

    public static Map<String, Object> budget(LossBudget budget) {
        List<Object> shares = new ArrayList<>();
        for (LossBudget.Share s : budget.shares()) {
            shares.add(new JsonNode()
                    .with("group", Terms.of(s.role()))
                    .with("part", Terms.of(s))
                    .with("resistance_ohm", s.resistance()));
        }
        return new JsonNode()
                .with("distance_m", budget.distance())
                .with("total_ohm", budget.total())
                .with("shares", shares);
    }

    public static List<Object> warnings(List<Warning> warnings) {
        List<Object> list = new ArrayList<>();
        for (Warning w : warnings) {
            JsonNode node = new JsonNode().with("kind", w.kind().name()).with("subject", w.subject());
            for (Warning.Measure m : Warning.Measure.values()) {
                if (w.has(m)) {
                    node.with(m.key(), w.value(m));
                }
            }
            list.add(node.with("text", WarningText.of(w)));
        }
        return list;
    }

    public static List<Double> numbers(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /** A target without what was found for it. */
    public JsonNode target(Target target) {
        return new JsonNode()
                .with("id", target.id())
                .with("name", target.label())
                .with("offset_m", target.offset())
                .with("body", body(target.body()));
    }

    private Map<String, Object> body(Body body) {
        if (body instanceof Body.Ball ball) {
            return new JsonNode()
                    .with("kind", "ball")
                    .with("diameter_m", ball.diameter())
                    .with("material", material(ball.material()));
        }
        List<Object> members = new ArrayList<>();
        if (body instanceof Body.Rings rings) {
            for (Ring ring : rings.rings()) {
                members.add(new JsonNode()
                        .with("name", ring.name())
                        .with("material", material(ring.material()))
                        .with("slit", ring.slit())
                        .with("inner_radius_m", ring.section().r0())
                        .with("outer_radius_m", ring.section().r1())
                        .with("front_m", ring.section().z0())
                        .with("back_m", ring.section().z1()));
            }
            return new JsonNode().with("kind", "rings").with("rings", members);
        }
        Body.Sheet sheet = (Body.Sheet) body;
        for (Layer layer : sheet.layers()) {
            members.add(
                    new JsonNode().with("material", material(layer.material())).with("thickness_m", layer.thickness()));
        }
        JsonNode node = new JsonNode()
                .with("kind", "sheet")
                .with("outline", outline(sheet.outline()))
                .with("layers", members);
        if (sheet.texture() instanceof Texture.Perforated p) {
            node.with("open_area", p.openArea());
        } else if (sheet.texture() instanceof Texture.Mesh m) {
            node.with("mesh", new JsonNode().with("wire_m", m.wire()).with("pitch_m", m.pitch()));
        }
        return node;
    }

    public static Map<String, Object> outline(Target.Outline outline) {
        if (outline instanceof Target.Outline.Disc disc) {
            return new JsonNode().with("shape", "disc").with("diameter_m", disc.diameter());
        }
        if (outline instanceof Target.Outline.Square square) {
            return new JsonNode().with("shape", "square").with("side_m", square.side());
        }
        if (outline instanceof Target.Outline.Rectangle r) {
            return new JsonNode()
                    .with("shape", "rectangle")
                    .with("width_m", r.width())
                    .with("height_m", r.height());
        }
        return new JsonNode().with("shape", "endless");
    }

    /** Assured distances with what was allowed for. */
    public static JsonNode assurance(Assurance a) {
        Allowances allowed = a.allowances();
        return new JsonNode()
                .with("assured_on_m", a.assuredOn())
                .with("assured_off_m", a.assuredOff())
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
                                        .with("cause", Terms.of(c))
                                        .with("shortest_m", c.shortest())
                                        .with("longest_m", c.longest()))
                                .toList());
    }
}
