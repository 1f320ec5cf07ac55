package eddyreach.engine.core;

import eddyreach.materials.Material;
import eddyreach.model.values.Body;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The limits of validity that more than one kind of study watches. */
public final class ValidityLimits {

    private ValidityLimits() {}

    /** The permeability of a conductor is a guess. */
    public static Optional<Warning> permeability(String subject, Material m) {
        return m.muReal() > 1 && m.conductivity20() > 0
                ? Optional.of(new Warning(
                        Warning.Kind.PERMEABILITY_ASSUMED,
                        subject,
                        m.muReal(),
                        String.format(
                                Locale.ROOT,
                                "permeability of %s assumed as %.0f: it differs from piece to piece and falls with"
                                        + " frequency",
                                m.name(),
                                m.muReal())))
                : Optional.empty();
    }

    /** An error bar above what was asked for, both in m. */
    public static Warning error(String subject, double error, double asked) {
        return new Warning(
                Warning.Kind.ERROR_ABOVE_REQUEST,
                subject,
                error,
                String.format(
                        Locale.ROOT,
                        "numerical error %.3f mm at the finest mesh, asked for %.3f mm",
                        error * 1e3,
                        asked * 1e3));
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
        return new Warning(
                Warning.Kind.SQUARE_AS_DISC,
                "squares",
                0.01,
                "computed as discs of equal area, on the axis within about 1 % of the loss");
    }

    /** A wall ends at a straight edge, whose distance from the axis is given in m. */
    public static Warning edge(String subject, double distance) {
        return new Warning(
                Warning.Kind.STRAIGHT_EDGE,
                subject,
                distance,
                String.format(
                        Locale.ROOT,
                        "the straight edge %.4g mm from the axis is an estimate: the middle between a wall without that edge and one that"
                                + " ends all round there; the bars hold both, verdicts take the worse",
                        distance * 1e3));
    }

    /** A bounded target is so wide that it is computed as endless. */
    public static Warning wide(String subject, double radius) {
        return new Warning(
                Warning.Kind.WIDE_AS_ENDLESS,
                subject,
                radius,
                "so wide against the core that it is computed as an endless plate");
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
                : Optional.of(new Warning(
                        Warning.Kind.ERROR_ABOVE_REQUEST,
                        subject,
                        worst,
                        String.format(
                                Locale.ROOT,
                                "numerical error of %d of %d distances above the %.3f mm asked for, up to %.3f mm",
                                count,
                                distances.size(),
                                accuracy * 1e3,
                                worst * 1e3)));
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
