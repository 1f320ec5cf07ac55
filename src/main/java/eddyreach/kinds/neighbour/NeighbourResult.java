package eddyreach.kinds.neighbour;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.model.values.Target;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * The result of a study of the kind {@code neighbour}.
 *
 * @param input what was asked
 * @param trimmed the first switch without target and neighbour, where it is trimmed
 * @param spacing spacings, m, ascending
 * @param couplings what the oscillators do to each other at each spacing, without a target
 * @param beats what makes them disturb each other
 * @param alike smallest spacing from which on beats of switches of the nominal frequencies leave the output alone
 * @param apart the same for a neighbour with the alternative frequency
 * @param latched largest spacing at which the neighbour alone, its coil open, holds the output on, m; 0 for none
 * @param latchedAtRest the same with its tank at rest, tuned within the tolerance to where it takes most loss
 * @param targets what the neighbour does to the distances
 * @param usual the trade's usual least spacing, m
 * @param warnings limits that concern the study
 */
public record NeighbourResult(
        NeighbourInput input,
        TrimmedSwitch trimmed,
        double[] spacing,
        List<Coupling> couplings,
        Oscillators beats,
        Limit alike,
        Limit apart,
        double latched,
        double latchedAtRest,
        List<Series> targets,
        double usual,
        List<Warning> warnings)
        implements StudyResult {

    public NeighbourResult {
        couplings = List.copyOf(couplings);
        targets = List.copyOf(targets);
        warnings = List.copyOf(warnings);
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    /**
     * The two oscillators.
     *
     * @param otherFrequency nominal frequency of the other switch, Hz
     * @param otherInductance its inductance, H
     * @param otherAmplitude its amplitude without a target, V
     * @param quality quality of the first one's tank at its on threshold
     * @param relaxation corner frequency with which the first one's amplitude returns to its steady state there, Hz
     * @param allowed half the distance between its thresholds over its amplitude there
     * @param least least difference of the frequencies within the tolerances, of nominal switches, Hz
     * @param leastApart the same for a neighbour with the alternative frequency, Hz
     */
    public record Oscillators(
            double otherFrequency,
            double otherInductance,
            double otherAmplitude,
            double quality,
            double relaxation,
            double allowed,
            double least,
            double leastApart) {}

    /**
     * Coupling at one spacing.
     *
     * @param mutual magnitude of the mutual inductance, H
     * @param error its error bar, H
     * @param factor coupling factor M / sqrt(L1 L2)
     * @param injected induced voltage over own amplitude at the on threshold
     * @param locking half range of locking, Hz
     * @param beat beat at the least difference of the nominal frequencies within the tolerances, Hz; 0 when locked
     * @param depth largest relative deviation of the demodulated amplitude there
     * @param depthApart the same with the alternative frequency
     * @param difference difference of the nominal frequencies, tolerances included, from which on the depth is harmless, Hz
     */
    public record Coupling(
            double mutual,
            double error,
            double factor,
            double injected,
            double locking,
            double beat,
            double depth,
            double depthApart,
            double difference) {}

    /** Where a limit lies in the range of spacings. */
    public enum Place {
        /** At the value. */
        WITHIN,
        /** At or below the smallest spacing examined. */
        BELOW,
        /** Above the largest spacing examined. */
        ABOVE,
        /** Nowhere: the target has no switch-on distance even without a neighbour. */
        NEVER
    }

    /**
     * A spacing from which on something holds, up to the largest examined.
     *
     * @param place where it lies
     * @param spacing the spacing, m; an end of the range if it lies beyond
     * @param error its error bar, m
     */
    public record Limit(Place place, double spacing, double error) {}

    /**
     * One target before the first switch.
     *
     * @param target the target
     * @param on switch-on distance without a neighbour, m
     * @param metal shift of the switch-on distance by the neighbour with its coil open, as a share; NaN where the output does not switch
     * @param metalError error bar of that
     * @param tank the larger one of that and of the shift by the neighbour with its tank at rest, its oscillator not running, tuned within
     *     the tolerance to where it takes most loss
     * @param error error bar of the latter
     * @param metalTwentieth smallest spacing from which on the shift with the coil open is below 5 %
     * @param metalTenth smallest spacing from which on it is below 10 %
     * @param twentieth smallest spacing from which on the larger shift is below 5 %
     * @param tenth smallest spacing from which on it is below 10 %
     */
    public record Series(
            Target target,
            double on,
            double[] metal,
            double[] metalError,
            double[] tank,
            double[] error,
            Limit metalTwentieth,
            Limit metalTenth,
            Limit twentieth,
            Limit tenth) {}

    @Override
    public Presentation presentation() {
        return new NeighbourPresentation(this);
    }
}
