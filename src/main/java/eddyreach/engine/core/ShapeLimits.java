package eddyreach.engine.core;

import eddyreach.closedform.SmallBodies;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.Target;
import eddyreach.model.values.Texture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a target's shape is simplified to, as warnings; the numerical error bar knows nothing of it. */
public final class ShapeLimits {

    /** Longer over shorter side from which a disc is a doubtful stand-in: an even field's loss is 28 % less there. */
    private static final double LONG = 2;

    /** Opening of a mesh over the radius of the core from which single meshes show (from memory of the trade). */
    private static final double COARSE = 1.0 / 3;

    private static final double THICK_WIRE = 2;

    private ShapeLimits() {}

    public static List<Warning> of(Target target, SolvedSwitch solved) {
        List<Warning> list = new ArrayList<>();
        if (target.body() instanceof Body.Sheet sheet && !target.withoutEffect()) {
            if (sheet.outline() instanceof Target.Outline.Rectangle r
                    && !solved.fields().endless(target)) {
                list.add(rectangle(target.id(), r));
            }
            if (sheet.texture() instanceof Texture.Perforated p) {
                perforated(target, p, solved, list);
            }
            if (sheet.texture() instanceof Texture.Mesh m) {
                mesh(target, m, solved, list);
            }
        }
        slit(target, list);
        beside(target, solved.scale()).ifPresent(list::add);
        if (solved.fields().cut(target)) {
            list.add(Warning.of(Warning.Kind.WIDE_RINGS_CUT, target.id())
                    .with(Warning.Measure.RADIUS, target.radius())
                    .with(Warning.Measure.CORE_RADII, OffsetLimit.ENDLESS));
        }
        return list;
    }

    /** A target that lies too far beside the switch to be noticed. */
    static Optional<Warning> beside(Target target, double core) {
        if (!OffsetLimit.unseen(target, core)) {
            return Optional.empty();
        }
        return Optional.of(Warning.of(Warning.Kind.BESIDE_UNSEEN, target.id())
                .with(Warning.Measure.DISTANCE, target.offset() - target.radius())
                .with(Warning.Measure.CORE_RADII, OffsetLimit.UNSEEN));
    }

    private static Warning rectangle(String id, Target.Outline.Rectangle r) {
        boolean doubtful = r.aspect() > LONG;
        return Warning.of(doubtful ? Warning.Kind.RECTANGLE_LONG : Warning.Kind.RECTANGLE_AS_DISC, id)
                .with(Warning.Measure.ASPECT, r.aspect())
                .with(Warning.Measure.LESS, 1 - SmallBodies.rectangleLossRatio(r.aspect()));
    }

    private static double skin(Target target, SolvedSwitch solved) {
        return target.front().skinDepth(solved.free().omega(), Temperature.AMBIENT);
    }

    private static void perforated(Target target, Texture.Perforated p, SolvedSwitch solved, List<Warning> list) {
        list.add(Warning.of(Warning.Kind.OPEN_AREA_AS_SHEET, target.id())
                .with(Warning.Measure.SHARE, p.openArea())
                .with(Warning.Measure.CONDUCTIVITY_RATIO, p.conductivityRatio()));
        double solid = thickness(target) / skin(target, solved);
        if (solid > 1) {
            list.add(Warning.of(Warning.Kind.OPEN_AREA_THICK, target.id()).with(Warning.Measure.SKIN_DEPTHS, solid));
        }
    }

    /** Thickness of the conducting layers, m. */
    private static double thickness(Target target) {
        return target.layers().stream()
                .filter(l -> l.material().conductivity20() > 0)
                .mapToDouble(Layer::thickness)
                .sum();
    }

    private static void mesh(Target target, Texture.Mesh m, SolvedSwitch solved, List<Warning> list) {
        list.add(Warning.of(Warning.Kind.MESH_AS_SHEET, target.id())
                .with(Warning.Measure.CONDUCTIVITY_RATIO, m.conductivityRatio()));
        double opening = (m.pitch() - m.wire()) / solved.model().coreRadius();
        // the wire's own skin depth, not that of the sheet which stands for it
        double wire = m.wire() / (skin(target, solved) * Math.sqrt(m.conductivityRatio()));
        if (opening > COARSE) {
            list.add(Warning.of(Warning.Kind.MESH_COARSE, target.id()).with(Warning.Measure.CORE_RADII, opening));
        }
        if (wire > THICK_WIRE) {
            list.add(Warning.of(Warning.Kind.MESH_WIRE_THICK, target.id()).with(Warning.Measure.SKIN_DEPTHS, wire));
        }
    }

    private static void slit(Target target, List<Warning> list) {
        double most = 0;
        for (Part p : target.parts()) {
            Material m = p.material();
            Section s = p.section();
            if (p.slit() && m.conductivity20() > 0) {
                // currents turn within the section, whichever way it is longer
                double turn = Math.max(s.r1() - s.r0(), s.z1() - s.z0());
                most = Math.max(most, Math.min(1, turn / (Math.PI * (s.r1() + s.r0()))));
            }
        }
        if (most > 0) {
            list.add(Warning.of(Warning.Kind.SLIT_AS_NARROW, target.id()).with(Warning.Measure.SHARE, most));
        }
    }
}
