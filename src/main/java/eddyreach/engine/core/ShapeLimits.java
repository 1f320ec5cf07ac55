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
import java.util.Locale;
import java.util.Optional;

/** What a target's shape is simplified to, as warnings; the numerical error bar knows nothing of it. */
public final class ShapeLimits {

    /** Longer over shorter side from which a disc is a doubtful stand-in: an even field's loss is 28 % less there. */
    private static final double LONG = 2;

    /** Opening of a mesh over the radius of the core from which single meshes show (from memory of the trade). */
    private static final double COARSE = 1.0 / 3;

    private static final double THICK_WIRE = 2;

    private ShapeLimits() {}

    public static List<Warning> of(Target target, SolvedSwitch bench) {
        List<Warning> list = new ArrayList<>();
        if (target.body() instanceof Body.Sheet sheet && !target.withoutEffect()) {
            if (sheet.outline() instanceof Target.Outline.Rectangle r
                    && !bench.fields().endless(target)) {
                list.add(rectangle(target.id(), r));
            }
            if (sheet.texture() instanceof Texture.Perforated p) {
                perforated(target, p, bench, list);
            }
            if (sheet.texture() instanceof Texture.Mesh m) {
                mesh(target, m, bench, list);
            }
        }
        slit(target, list);
        beside(target, bench.scale()).ifPresent(list::add);
        if (bench.fields().cut(target)) {
            list.add(new Warning(
                    Warning.Kind.WIDE_RINGS_CUT,
                    target.id(),
                    target.radius(),
                    String.format(
                            Locale.ROOT,
                            "so wide against the core that it is computed without what lies more than %.0f core radii"
                                    + " from the axis",
                            OffsetLimit.ENDLESS)));
        }
        return list;
    }

    /** A target that lies too far beside the switch to be noticed. */
    static Optional<Warning> beside(Target target, double core) {
        if (!OffsetLimit.unseen(target, core)) {
            return Optional.empty();
        }
        return Optional.of(new Warning(
                Warning.Kind.BESIDE_UNSEEN,
                target.id(),
                target.offset(),
                String.format(
                        Locale.ROOT,
                        "its nearest edge lies %.0f mm beside the axis, more than %.0f radii of the core, where the field"
                                + " is too weak to matter: taken as not there",
                        (target.offset() - target.radius()) * 1e3,
                        OffsetLimit.UNSEEN)));
    }

    private static Warning rectangle(String id, Target.Outline.Rectangle r) {
        double less = 100 * (1 - SmallBodies.rectangleLossRatio(r.aspect()));
        boolean doubtful = r.aspect() > LONG;
        return new Warning(
                doubtful ? Warning.Kind.RECTANGLE_LONG : Warning.Kind.RECTANGLE_AS_DISC,
                id,
                r.aspect(),
                String.format(
                        Locale.ROOT,
                        "computed as the disc of equal area%s; in an even field a thin sheet of sides %.2g to 1 loses"
                                + " %.0f %% less than that disc, under a coil smaller than itself hardly less; the"
                                + " error bar does not contain this",
                        doubtful ? ", doubtful for so long a rectangle" : "",
                        r.aspect(),
                        less));
    }

    private static double skin(Target target, SolvedSwitch bench) {
        return target.front().skinDepth(bench.free().omega(), Temperature.AMBIENT);
    }

    private static void perforated(Target target, Texture.Perforated p, SolvedSwitch bench, List<Warning> list) {
        list.add(new Warning(
                Warning.Kind.OPEN_AREA_AS_SHEET,
                target.id(),
                p.openArea(),
                String.format(
                        Locale.ROOT,
                        "computed as a solid sheet of %.2f times the conductivity, (1 - f)/(1 + f) by Maxwell's rule for"
                                + " regular round holes up to about half the area and small against the coil; the error"
                                + " bar does not contain this",
                        p.conductivityRatio())));
        double solid = thickness(target) / skin(target, bench);
        if (solid > 1) {
            list.add(new Warning(
                    Warning.Kind.OPEN_AREA_THICK,
                    target.id(),
                    solid,
                    String.format(
                            Locale.ROOT,
                            "%.1f skin depths thick: currents then also run down the walls of the holes, which the rule"
                                    + " leaves out",
                            solid)));
        }
    }

    /** Thickness of the conducting layers, m. */
    private static double thickness(Target target) {
        return target.layers().stream()
                .filter(l -> l.material().conductivity20() > 0)
                .mapToDouble(Layer::thickness)
                .sum();
    }

    private static void mesh(Target target, Texture.Mesh m, SolvedSwitch bench, List<Warning> list) {
        list.add(new Warning(
                Warning.Kind.MESH_AS_SHEET,
                target.id(),
                m.conductivityRatio(),
                "computed as a sheet with the section of a wire over the pitch (common practice) for wires bonded at every"
                        + " crossing; crossings that only touch open the loops and are not covered; the error bar does not"
                        + " contain this"));
        double opening = (m.pitch() - m.wire()) / bench.model().coreRadius();
        // the wire's own skin depth, not that of the sheet which stands for it
        double wire = m.wire() / (skin(target, bench) * Math.sqrt(m.conductivityRatio()));
        if (opening > COARSE) {
            list.add(new Warning(
                    Warning.Kind.MESH_COARSE,
                    target.id(),
                    opening,
                    String.format(
                            Locale.ROOT, "its openings are %.2f of the core's radius: single meshes show", opening)));
        }
        if (wire > THICK_WIRE) {
            list.add(new Warning(
                    Warning.Kind.MESH_COARSE,
                    target.id(),
                    wire,
                    String.format(
                            Locale.ROOT,
                            "its wires are %.1f skin depths thick: their current runs in the skin only, which the rule"
                                    + " leaves out",
                            wire)));
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
            list.add(new Warning(
                    Warning.Kind.SLIT_AS_NARROW,
                    target.id(),
                    most,
                    String.format(
                            Locale.ROOT,
                            "its slit is taken as narrow and all round as far from it: how the currents turn there, over"
                                    + " up to %.0f %% of the way round, is left out; the error bar does not contain this",
                            100 * most)));
        }
    }
}
