package eddyreach.kinds.series;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Binds what is particular to studies of the kind {@code series}. */
final class SeriesReader {

    private static final double ZERO_CELSIUS = 273.15;
    private static final double SHARE = 0.997;
    private static final double LEAST_SHARE = 0.5;
    private static final double MOST_SHARE = 0.99999;
    private static final int LEAST_UNITS = 100;
    private static final int MOST_UNITS = 1_000_000;
    private static final int UNITS = 100_000;

    private SeriesReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        Node root = context.root();
        List<Target> targets = context.targets().bindOnAxis(root);
        if (targets.size() > 1) {
            root.problem("targets", "got " + targets.size() + " targets, needs one");
        }
        Optional<Target> target = targets.stream().findFirst();
        int units = root.integer("units", LEAST_UNITS, MOST_UNITS, UNITS);
        int seed = root.integer("seed", 0, Integer.MAX_VALUE / 10, 1);
        double share = root.quantity("share", Dimension.NONE, LEAST_SHARE, MOST_SHARE, SHARE);
        boolean even = root.optionalChoice("distribution", Map.of("normal", false, "even", true))
                .orElse(false);
        boolean trimmed = root.flag("trimmed", true);
        Map<Factor, Double> limits = new EnumMap<>(Factor.class);
        double[] range = {Double.NaN, Double.NaN};
        root.map("tolerances").ifPresent(n -> tolerances(n, limits, range, context, target, trimmed));
        double middle = (range[0] + range[1]) / 2 - ZERO_CELSIUS;
        return header -> new SeriesInput(
                header,
                target.orElse(header.standard()),
                new Tolerances(limits, middle, even, trimmed),
                units,
                seed,
                share);
    }

    private static void tolerances(
            Node node,
            Map<Factor, Double> limits,
            double[] range,
            StudyContext context,
            Optional<Target> target,
            boolean trimmed) {
        for (Factor f : Factor.values()) {
            if (f == Factor.TEMPERATURE) {
                node.optionalMap(f.label()).ifPresent(n -> {
                    range[0] = n.quantity("from", Dimension.TEMPERATURE, ZERO_CELSIUS - 60, ZERO_CELSIUS + 180);
                    range[1] = n.quantity("to", Dimension.TEMPERATURE, ZERO_CELSIUS - 60, ZERO_CELSIUS + 180);
                    if (range[0] >= range[1]) {
                        n.problem("to", "must be above from");
                    }
                    limits.put(f, (range[1] - range[0]) / 2);
                });
            } else {
                double limit = node.quantity(f.label(), f.dimension(), 0, f.most(), 0);
                if (limit > 0) {
                    limits.put(f, limit);
                }
            }
        }
        if (limits.isEmpty()) {
            node.problem("at least one tolerance must be above 0, or all units are the same");
        }
        if (!trimmed && limits.containsKey(Factor.TRIM)) {
            node.problem(
                    Factor.TRIM.label(), "belongs to trimmed: yes; units that are not trimmed have no error of trim");
        }
        if (limits.containsKey(Factor.THICKNESS)
                && target.filter(t -> t.sheet().isEmpty()).isPresent()) {
            node.problem(Factor.THICKNESS.label(), "is for sheets and layers; this target is neither");
        }
        context.switchModel().ifPresent(m -> {
            fits(node, limits, Factor.COIL, room(m, false));
            fits(node, limits, Factor.CAP, room(m, true));
            if (limits.containsKey(Factor.FERRITE) && m.parts().stream().noneMatch(p -> p.role() == Role.CORE)) {
                node.problem(Factor.FERRITE.label(), "this switch has no core");
            }
        });
    }

    private static void fits(Node node, Map<Factor, Double> limits, Factor factor, double room) {
        if (limits.getOrDefault(factor, 0.0) > room) {
            node.problem(
                    factor.label(),
                    Units.length(limits.get(factor)) + " would push parts into each other, needs at most "
                            + Units.length(Math.floor(room * 1e6) / 1e6));
        }
    }

    /** How far the coil, or coil and core together, may move along the axis either way, m. */
    static double room(SwitchModel m, boolean withCore) {
        List<Section> moved = new ArrayList<>(List.of(m.winding().section()));
        Stream<Part> others = m.parts().stream();
        if (withCore) {
            m.parts().stream().filter(p -> p.role() == Role.CORE).forEach(p -> moved.add(p.section()));
            others = others.filter(p -> p.role() != Role.CORE);
        }
        List<Section> fixed = others.map(Part::section).toList();
        double room = moved.stream().mapToDouble(s -> -s.z1()).min().orElseThrow();
        for (Section a : moved) {
            for (Section b : fixed) {
                if (a.r0() < b.r1() && b.r0() < a.r1()) {
                    room = Math.min(room, b.z1() <= a.z0() ? a.z0() - b.z1() : Math.max(0, b.z0() - a.z1()));
                }
            }
        }
        return room;
    }
}
