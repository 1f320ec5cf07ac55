package eddyreach.study;

import eddyreach.field.TargetField;
import eddyreach.model.ApproachInput;
import eddyreach.model.Target;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * One target moved along the axis in front of a trimmed switch.
 *
 * <p>The error bar of an impedance is its difference from the next coarser step of the ladder, which differs in mesh, degree,
 * domain, wavenumbers and frequencies, times a safety factor. The error bar of a distance is what the coarser step, trimmed on
 * its own standard target, makes of the same distance, or a share of what the error of the impedance alone would make if that is more:
 * errors of target and standard target may cancel by chance. Factor and share were chosen on random cases (see {@code ErrorBarTest}).
 */
final class Approach {

    /** Stated error bar over the difference of two steps. */
    static final double SAFETY = 2.5;

    /**
     * No bar of a distance is smaller than this share of the face diameter (2 um at M18), except for the standard target, on which the
     * switch is trimmed: two steps may agree by chance.
     */
    static final double FLOOR = 1e-4;

    /** Share of the impedance's error that is assumed not to cancel. */
    static final double SHARE = 0.2;

    private final ApproachInput study;
    private final Ladder.Step fine;
    private final Ladder.Step coarse;

    Approach(ApproachInput study, Ladder.Step fine, Ladder.Step coarse) {
        this.study = study;
        this.fine = fine;
        this.coarse = coarse;
    }

    /**
     * What one target does.
     *
     * @param step the resolution that was taken
     * @param field the target's field problem at that resolution
     * @param curve the tank over the distance
     * @param distance where it switches
     */
    record Outcome(Ladder.Step step, TargetField field, Curve curve, SwitchDistance distance) {}

    Outcome of(Target target) {
        TargetField fineField = fine.bench().target(target);
        TargetField coarseField = coarse.bench().target(target);
        Map<Double, Bench.State> known = new HashMap<>();
        SwitchPointFinder finder = new SwitchPointFinder(fine.trim(), study.lastDistance(), study.points() - 1);
        SwitchPoints points = finder.find(
                g -> known.computeIfAbsent(g, d -> fine.bench().state(fineField, d))
                        .conductance(),
                fine.bench().free().conductance());
        return new Outcome(
                fine,
                fineField,
                curve(known, fineField, coarseField),
                distance(points, target, fineField, coarseField));
    }

    private Curve curve(Map<Double, Bench.State> known, TargetField field, TargetField coarseField) {
        int n = study.points();
        Curve c = new Curve(
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n]);
        double freeInductance = fine.bench().free().inductance();
        for (int i = 0; i < n; i++) {
            double g = study.firstDistance() + (study.lastDistance() - study.firstDistance()) * i / (n - 1);
            Bench.State s = known.computeIfAbsent(g, d -> fine.bench().state(field, d));
            c.distance()[i] = g;
            c.lossResistance()[i] = s.change().getReal();
            c.inductanceChange()[i] = s.inductance() - freeInductance;
            c.impedanceError()[i] = SAFETY
                    * s.change()
                            .subtract(coarse.bench().change(coarseField, s.omega(), g))
                            .abs();
            c.resistance()[i] = s.resistance();
            c.inductance()[i] = s.inductance();
            c.frequency()[i] = s.omega() / (2 * Math.PI);
            c.conductance()[i] = s.conductance();
            c.amplitude()[i] = study.switchModel().element().amplitude(s.conductance());
        }
        return c;
    }

    private SwitchDistance distance(SwitchPoints points, Target target, TargetField field, TargetField coarseField) {
        Optional<Crossing> on = points.on();
        Optional<Crossing> off = points.off();
        if (on.isEmpty()) {
            return new SwitchDistance(unfinished(points), Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        }
        // the switch is trimmed on the standard target: there the errors are one and the same
        double share = target.actsAs(study.standard()) ? 0 : SHARE;
        double onError =
                error(share, field, coarseField, on.get(), coarse.trim().on());
        if (off.isEmpty()) {
            return new SwitchDistance(unfinished(points), on.get().distance(), Double.NaN, onError, Double.NaN);
        }
        double offError =
                error(share, field, coarseField, off.get(), coarse.trim().off());
        return new SwitchDistance(
                SwitchDistance.Outcome.SWITCHES, on.get().distance(), off.get().distance(), onError, offError);
    }

    /** What is to be said when there is no on or no off distance within the range. */
    static SwitchDistance.Outcome unfinished(SwitchPoints points) {
        if (points instanceof SwitchPoints.NeverSwitches) {
            return SwitchDistance.Outcome.NEVER_ON;
        }
        return points instanceof SwitchPoints.OutOfRange
                ? SwitchDistance.Outcome.BEYOND_RANGE
                : SwitchDistance.Outcome.NEVER_OFF;
    }

    private double error(
            double share, TargetField field, TargetField coarseField, Crossing crossing, double threshold) {
        Bench.State here = fine.bench().state(field, crossing.distance());
        Bench.State there = coarse.bench().state(coarseField, crossing.distance());
        double shift = Math.abs(there.conductance() - threshold);
        double impedance = here.change().subtract(there.change()).abs();
        double alone = share * impedance * here.conductance() / here.resistance();
        double floor = share > 0 ? FLOOR * study.switchModel().faceDiameter() : 0;
        return Math.max(floor, crossing.distanceError(SAFETY * Math.max(shift, alone)));
    }
}
