package eddyreach.engine.core;

import eddyreach.materials.Material;
import eddyreach.model.values.Body;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The limits of validity that more than one kind of study watches. */
public final class ValidityLimits {

    private ValidityLimits() {}

    /** The permeability of a conductor is a guess. */
    public static Optional<Warning> permeability(String subject, Material m) {
        return m.muReal() > 1 && m.conductivity20() > 0
                ? Optional.of(Warning.of(Warning.Kind.PERMEABILITY_ASSUMED, subject)
                        .about(m.name())
                        .with(Warning.Measure.PERMEABILITY, m.muReal()))
                : Optional.empty();
    }

    /** An error bar above what was asked for, both in m. */
    public static Warning error(String subject, double error, double asked) {
        return Warning.of(Warning.Kind.ERROR_ABOVE_REQUEST, subject)
                .with(Warning.Measure.ERROR, error)
                .with(Warning.Measure.ASKED, asked);
    }

    /** Squares among targets on the axis are computed as discs. */
    public static Optional<Warning> squares(Collection<Target> targets) {
        return targets.stream()
                        .anyMatch(t -> t.offset() == 0
                                && t.body() instanceof Body.Sheet s
                                && s.outline() instanceof Target.Outline.Square)
                ? Optional.of(squares())
                : Optional.empty();
    }

    private static Warning squares() {
        return Warning.of(Warning.Kind.SQUARE_AS_DISC, "squares");
    }

    /** A wall ends at a straight edge, whose distance from the axis is given in m. */
    public static Warning edge(String subject, double distance) {
        return Warning.of(Warning.Kind.STRAIGHT_EDGE, subject).with(Warning.Measure.DISTANCE, distance);
    }

    /** A bounded target is so wide that it is computed as endless. */
    public static Warning wide(String subject, double radius) {
        return Warning.of(Warning.Kind.WIDE_AS_ENDLESS, subject).with(Warning.Measure.RADIUS, radius);
    }

    /** Distances of a sweep whose error is above what was asked; empty when all are below. */
    public static Optional<Warning> errors(String subject, Collection<SwitchDistance> distances, double accuracy) {
        double worst = distances.stream()
                .mapToDouble(SwitchDistance::error)
                .filter(e -> e > accuracy)
                .max()
                .orElse(0);
        long count = distances.stream().filter(d -> d.error() > accuracy).count();
        return count == 0
                ? Optional.empty()
                : Optional.of(error(subject, worst, accuracy)
                        .with(Warning.Measure.COUNT, count)
                        .with(Warning.Measure.TOTAL, distances.size()));
    }

    /** What concerns the outline and the materials of a whole sweep. */
    public static List<Warning> sweep(Target.Outline outline, Collection<Material> materials, SolvedSwitch bench) {
        List<Warning> list = new ArrayList<>();
        materials.forEach(m -> permeability(m.id(), m).ifPresent(list::add));
        if (outline instanceof Target.Outline.Square) {
            list.add(squares());
        }
        double radius = outline.equivalentRadius();
        if (Double.isFinite(radius) && bench.fields().wide(radius)) {
            list.add(wide("outline", radius));
        }
        return list;
    }
}
