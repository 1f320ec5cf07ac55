package eddyreach.engine.assure;

import eddyreach.engine.core.Curve;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.materials.FactorBand;
import eddyreach.model.values.Target;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was found for one target.
 *
 * @param target the target
 * @param curve the tank over the distance
 * @param distance where it switches
 * @param factor switch-on distance relative to s_r, NaN when it never switches on
 * @param factorError numerical error bar of the factor
 * @param band the trade's usual band for this kind of material, if there is one
 * @param budget losses at the switch-on distance, or at the smallest distance if it never switches on
 * @param reason why
 * @param warnings limits of validity that are touched
 * @param assessment what can be relied on and what to do about it; empty while it is not made
 */
public record TargetResult(
        Target target,
        Curve curve,
        SwitchDistance distance,
        double factor,
        double factorError,
        Optional<FactorBand> band,
        LossBudget budget,
        Reason reason,
        List<Warning> warnings,
        Optional<Assessment> assessment) {

    public TargetResult {
        warnings = List.copyOf(warnings);
    }

    /** Not assessed yet. */
    public TargetResult(
            Target target,
            Curve curve,
            SwitchDistance distance,
            double factor,
            double factorError,
            Optional<FactorBand> band,
            LossBudget budget,
            Reason reason,
            List<Warning> warnings) {
        this(target, curve, distance, factor, factorError, band, budget, reason, warnings, Optional.empty());
    }

    /** What a permeability that is stated as a range makes of the on distance; empty where none is, or while it is not assessed. */
    public Optional<Assurance.Contribution> permeability() {
        return Variants.ranged(target)
                ? assessment.flatMap(a -> a.assurance().contributions().stream()
                        .filter(c -> c.cause() == Assurance.Cause.PERMEABILITY)
                        .findFirst())
                : Optional.empty();
    }

    /** The same without a limit of one kind. */
    public TargetResult without(Warning.Kind kind) {
        List<Warning> left = warnings.stream().filter(w -> w.kind() != kind).toList();
        return new TargetResult(target, curve, distance, factor, factorError, band, budget, reason, left, assessment);
    }

    /** The same with one more limit that is touched. */
    TargetResult with(Warning more) {
        List<Warning> all = Stream.concat(warnings.stream(), Stream.of(more)).toList();
        return new TargetResult(target, curve, distance, factor, factorError, band, budget, reason, all, assessment);
    }

    /** The same with an assessment. */
    TargetResult with(Assessment made) {
        return new TargetResult(
                target, curve, distance, factor, factorError, band, budget, reason, warnings, Optional.of(made));
    }
}
