package eddyreach.engine.core;

import eddyreach.materials.Material;
import eddyreach.model.values.Body;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The limits of validity that more than one kind of study watches. */
public final class ValidityLimits {

    /**
     * Least change of the tank's loss by the standard target at s_r that a real comparator can tell from drift and noise: common practice,
     * of the order of what the loss of copper changes by over 3 K.
     */
    public static final double LEAST_CHANGE = 0.01;

    /** Least quality of the tank without a target: below, its voltage is no sine, as the describing function takes it to be. */
    public static final double LEAST_QUALITY = 5;

    private ValidityLimits() {}

    /** What makes a switch as such doubtful, whatever is put before it; empty for a sound one. */
    public static List<Warning> ofSwitch(SwitchModel model, TrimmedSwitch trimmed) {
        List<Warning> list = new ArrayList<>();
        Operating free = trimmed.undamped();
        if (!(free.amplitude() > 0)) {
            list.add(Warning.of(Warning.Kind.NOT_OSCILLATING, model.id())
                    .with(Warning.Measure.CONDUCTANCE, free.conductance())
                    .with(Warning.Measure.MOST, model.element().smallSignalConductance()));
        }
        if (free.quality() < LEAST_QUALITY) {
            list.add(Warning.of(Warning.Kind.QUALITY_LOW, model.id())
                    .with(Warning.Measure.QUALITY, free.quality())
                    .with(Warning.Measure.LOW, LEAST_QUALITY));
        }
        double change = trimmed.onConductance() / free.conductance() - 1;
        if (change < LEAST_CHANGE) {
            list.add(Warning.of(Warning.Kind.TRIM_WEAK, model.id())
                    .with(Warning.Measure.SHARE, change)
                    .with(Warning.Measure.LOW, LEAST_CHANGE)
                    .with(Warning.Measure.DISTANCE, model.effectiveDistance()));
        }
        return list;
    }

    /** The permeability of a conductor is a guess. */
    public static Optional<Warning> permeability(String subject, Material m) {
        if (!(m.muReal() > 1 && m.conductivity20() > 0)) {
            return Optional.empty();
        }
        Warning assumed = Warning.of(Warning.Kind.PERMEABILITY_ASSUMED, subject)
                .about(m.name())
                .with(Warning.Measure.PERMEABILITY, m.muReal());
        return Optional.of(m.range()
                .map(r -> assumed.with(Warning.Measure.LOW, r.low()).with(Warning.Measure.HIGH, r.high()))
                .orElse(assumed));
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
    public static List<Warning> sweep(Target.Outline outline, Collection<Material> materials, SolvedSwitch solved) {
        List<Warning> list = new ArrayList<>();
        materials.forEach(m -> permeability(m.id(), m).ifPresent(list::add));
        if (outline instanceof Target.Outline.Square) {
            list.add(squares());
        }
        double radius = outline.equivalentRadius();
        if (Double.isFinite(radius) && solved.fields().wide(radius)) {
            list.add(wide("outline", radius));
        }
        return list;
    }
}
