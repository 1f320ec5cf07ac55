package eddyreach.report;

import eddyreach.coil.Winding;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.Body;
import eddyreach.model.Layer;
import eddyreach.model.Ring;
import eddyreach.model.SwitchModel;
import eddyreach.model.Target;
import eddyreach.model.Texture;
import eddyreach.oscillator.ActiveElement;
import eddyreach.study.Curve;
import eddyreach.study.FieldPicture;
import eddyreach.study.LossBudget;
import eddyreach.study.StudyResult;
import eddyreach.study.SwitchDistance;
import eddyreach.study.TargetResult;
import eddyreach.study.Warning;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The result with all resolved inputs as a JSON document; keys end with their SI unit. */
final class ResultJson {

    private static final int VERSION = 1;

    private final Map<String, Object> materials = new LinkedHashMap<>();

    private ResultJson() {}

    /**
     * The document.
     *
     * @param files names of all files of the result; they stand first, so that the next run finds them quickly
     */
    static String of(StudyResult result, List<String> files) {
        return Json.write(new ResultJson().document(result, files));
    }

    private Map<String, Object> document(StudyResult r, List<String> files) {
        Map<String, Object> switchModel = switchModel(r.model());
        List<Object> targets = new ArrayList<>();
        r.targets().forEach(t -> targets.add(target(t)));
        r.fields().stream().map(FieldPicture::parts).forEach(this::parts);
        return new Node()
                .with("files", files)
                .with("format", "eddyreach result")
                .with("version", VERSION)
                .with("caution", Labels.CAUTION)
                .with(
                        "study",
                        new Node()
                                .with("id", r.id())
                                .with("name", r.name())
                                .with("note", r.note())
                                .with("kind", r.kind().label()))
                .with("switch", switchModel)
                .with("materials", materials)
                .with(
                        "tank",
                        new Node().with("capacitance_f", r.capacitance()).with("undamped", operating(r.undamped())))
                .with(
                        "trim",
                        new Node()
                                .with("on_conductance_s", r.onConductance())
                                .with("off_conductance_s", r.offConductance())
                                .with("on_amplitude_v", r.onAmplitude())
                                .with("off_amplitude_v", r.offAmplitude()))
                .with("losses_without_target", budget(r.freeBudget()))
                .with("targets", targets)
                .with("warnings", warnings(r.warnings()));
    }

    private static Map<String, Object> operating(StudyResult.Operating o) {
        return new Node()
                .with("resistance_ohm", o.resistance())
                .with("inductance_h", o.inductance())
                .with("frequency_hz", o.frequency())
                .with("conductance_s", o.conductance())
                .with("amplitude_v", o.amplitude())
                .with("quality", o.quality());
    }

    private Map<String, Object> switchModel(SwitchModel m) {
        Winding w = m.winding();
        return new Node()
                .with("id", m.id())
                .with("name", m.name())
                .with("note", m.note())
                .with("mounting", m.mounting().label())
                .with("rated_distance_m", m.ratedDistance())
                .with("effective_distance_m", m.effectiveDistance())
                .with("face_diameter_m", m.faceDiameter())
                .with("standard_target_side_m", m.standardSide())
                .with("frequency_hz", m.frequency())
                .with(
                        "winding",
                        new Node()
                                .with("section", section(w.section()))
                                .with("turns", w.turns())
                                .with("copper_diameter_m", w.wire().copperDiameter())
                                .with("strands", w.wire().strands())
                                .with("conductor", material(w.wire().conductor())))
                .with("parts", parts(m.parts()))
                .with("oscillator", oscillator(m.element()))
                .with("differential_travel", m.differentialTravel())
                .with("output", m.output().label());
    }

    /** The element's name and, if it is a record as all shipped ones are, its parameters in SI. */
    private static Map<String, Object> oscillator(ActiveElement element) {
        Map<String, Object> map = new Node().with("element", element.name());
        if (element instanceof Record) {
            for (RecordComponent c : element.getClass().getRecordComponents()) {
                if (c.getType() == double.class) {
                    map.put(c.getName(), parameter(element, c));
                }
            }
        }
        map.put("small_signal_conductance_s", element.smallSignalConductance());
        return map;
    }

    private static Object parameter(ActiveElement element, RecordComponent component) {
        try {
            return component.getAccessor().invoke(element);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + component.getName() + " of " + element.name(), e);
        }
    }

    private List<Object> parts(List<Part> parts) {
        List<Object> list = new ArrayList<>();
        for (Part p : parts) {
            list.add(new Node()
                    .with("name", p.name())
                    .with("role", p.role().label())
                    .with("section", section(p.section()))
                    .with("material", material(p.material())));
        }
        return list;
    }

    private static Map<String, Object> section(Section s) {
        return new Node()
                .with("r0_m", s.r0())
                .with("r1_m", s.r1())
                .with("z0_m", s.z0())
                .with("z1_m", s.z1());
    }

    /** Enters a material into the list and returns its key. */
    private String material(Material m) {
        materials.putIfAbsent(
                m.id(),
                new Node()
                        .with("name", m.name())
                        .with("conductivity_at_20c_s_per_m", m.conductivity20())
                        .with("temperature_coefficient_per_k", m.temperatureCoefficient())
                        .with("mu_real", m.muReal())
                        .with("mu_imag", m.muImag())
                        .with("source", m.source()));
        return m.id();
    }

    private Map<String, Object> target(TargetResult t) {
        SwitchDistance d = t.distance();
        Curve c = t.curve();
        return new Node()
                .with("id", t.target().id())
                .with("name", t.target().label())
                .with("body", body(t.target().body()))
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
                                .map(b -> new Node()
                                        .with("low", b.low())
                                        .with("high", b.high())
                                        .with("source", b.source()))
                                .orElse(null))
                .with("losses", budget(t.budget()))
                .with("reason", t.reason())
                .with("warnings", warnings(t.warnings()))
                .with(
                        "curve",
                        new Node()
                                .with("distance_m", numbers(c.distance()))
                                .with("loss_resistance_change_ohm", numbers(c.lossResistance()))
                                .with("inductance_change_h", numbers(c.inductanceChange()))
                                .with("resistance_ohm", numbers(c.resistance()))
                                .with("inductance_h", numbers(c.inductance()))
                                .with("frequency_hz", numbers(c.frequency()))
                                .with("conductance_s", numbers(c.conductance()))
                                .with("amplitude_v", numbers(c.amplitude())));
    }

    private Map<String, Object> body(Body body) {
        if (body instanceof Body.Ball ball) {
            return new Node()
                    .with("kind", "ball")
                    .with("diameter_m", ball.diameter())
                    .with("material", material(ball.material()));
        }
        List<Object> members = new ArrayList<>();
        if (body instanceof Body.Rings rings) {
            for (Ring ring : rings.rings()) {
                members.add(new Node()
                        .with("name", ring.name())
                        .with("material", material(ring.material()))
                        .with("slit", ring.slit())
                        .with("inner_radius_m", ring.section().r0())
                        .with("outer_radius_m", ring.section().r1())
                        .with("front_m", ring.section().z0())
                        .with("back_m", ring.section().z1()));
            }
            return new Node().with("kind", "rings").with("rings", members);
        }
        Body.Sheet sheet = (Body.Sheet) body;
        for (Layer layer : sheet.layers()) {
            members.add(new Node().with("material", material(layer.material())).with("thickness_m", layer.thickness()));
        }
        Node node = new Node()
                .with("kind", "sheet")
                .with("outline", outline(sheet.outline()))
                .with("layers", members);
        if (sheet.texture() instanceof Texture.Perforated p) {
            node.with("open_area", p.openArea());
        } else if (sheet.texture() instanceof Texture.Mesh m) {
            node.with("mesh", new Node().with("wire_m", m.wire()).with("pitch_m", m.pitch()));
        }
        return node;
    }

    private static Map<String, Object> outline(Target.Outline outline) {
        if (outline instanceof Target.Outline.Disc disc) {
            return new Node().with("shape", "disc").with("diameter_m", disc.diameter());
        }
        if (outline instanceof Target.Outline.Square square) {
            return new Node().with("shape", "square").with("side_m", square.side());
        }
        if (outline instanceof Target.Outline.Rectangle r) {
            return new Node()
                    .with("shape", "rectangle")
                    .with("width_m", r.width())
                    .with("height_m", r.height());
        }
        return new Node().with("shape", "endless");
    }

    private static Map<String, Object> budget(LossBudget budget) {
        List<Object> shares = new ArrayList<>();
        for (LossBudget.Share s : budget.shares()) {
            shares.add(
                    new Node().with("group", s.group()).with("part", s.part()).with("resistance_ohm", s.resistance()));
        }
        return new Node()
                .with("distance_m", budget.distance())
                .with("total_ohm", budget.total())
                .with("shares", shares);
    }

    private static List<Object> warnings(List<Warning> warnings) {
        List<Object> list = new ArrayList<>();
        for (Warning w : warnings) {
            list.add(new Node()
                    .with("kind", w.kind().name())
                    .with("subject", w.subject())
                    .with("value", w.value())
                    .with("text", w.text()));
        }
        return list;
    }

    private static List<Double> numbers(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /** A JSON object that is filled in order. */
    private static final class Node extends LinkedHashMap<String, Object> {

        private static final long serialVersionUID = 1L;

        Node with(String key, Object value) {
            put(key, value);
            return this;
        }
    }
}
