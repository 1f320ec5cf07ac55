package eddyreach.study;

import eddyreach.field.TargetField;
import eddyreach.model.ApproachInput;
import eddyreach.model.Target;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPoints;
import java.util.HashMap;
import java.util.Map;

/**
 * One target moved along the axis in front of a trimmed switch.
 *
 * <p>The error bar of an impedance is its difference from the next coarser step of the ladder, which differs in mesh, degree,
 * domain, wavenumbers and frequencies, times a safety factor. Distances and their bars are found by {@link DistanceFinder}.
 */
final class Approach {

    private final ApproachInput study;
    private final Ladder.Step fine;
    private final Ladder.Step coarse;
    private final DistanceFinder finder;

    Approach(ApproachInput study, Ladder.Step fine, Ladder.Step coarse) {
        this.study = study;
        this.fine = fine;
        this.coarse = coarse;
        finder = new DistanceFinder(study, fine, coarse, study.lastDistance(), study.points() - 1);
    }

    /**
     * What one target does.
     *
     * @param step the resolution that was taken
     * @param field the target's field problem at that resolution
     * @param curve the tank over the distance
     * @param distance where it switches
     * @param lostNearer where it is lost again although it comes nearer, m; NaN when it is recognised all the way to contact
     */
    record Outcome(Ladder.Step step, TargetField field, Curve curve, SwitchDistance distance, double lostNearer) {}

    Outcome of(Target target) {
        TargetField fineField = fine.bench().target(target);
        TargetField coarseField = coarse.bench().target(target);
        Bench.Effect effect = fine.bench().effect(fineField);
        Map<Double, Bench.State> known = new HashMap<>();
        SwitchPoints points = finder.points(g ->
                known.computeIfAbsent(g, d -> fine.bench().state(effect, d)).conductance());
        return new Outcome(
                fine,
                fineField,
                curve(known, effect, coarse.bench().effect(coarseField)),
                finder.distance(points, target, fineField, coarseField),
                points.lostNearer().map(Crossing::distance).orElse(Double.NaN));
    }

    private Curve curve(Map<Double, Bench.State> known, Bench.Effect effect, Bench.Effect coarseEffect) {
        int n = study.points();
        Curve c = Curve.of(n);
        double freeInductance = fine.bench().free().inductance();
        for (int i = 0; i < n; i++) {
            double g = study.firstDistance() + (study.lastDistance() - study.firstDistance()) * i / (n - 1);
            Bench.State s = known.computeIfAbsent(g, d -> fine.bench().state(effect, d));
            c.distance()[i] = g;
            c.lossResistance()[i] = s.change().getReal();
            c.inductanceChange()[i] = s.inductance() - freeInductance;
            double difference =
                    s.change().subtract(coarseEffect.change(s.omega(), g)).abs();
            c.impedanceError()[i] = DistanceFinder.SAFETY * difference + effect.truncation(g);
            c.resistance()[i] = s.resistance();
            c.inductance()[i] = s.inductance();
            c.frequency()[i] = s.omega() / (2 * Math.PI);
            c.conductance()[i] = s.conductance();
            c.amplitude()[i] = study.switchModel().element().amplitude(s.conductance());
        }
        return c;
    }
}
