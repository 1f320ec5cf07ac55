package eddyreach.study;

import eddyreach.field.TargetField;
import eddyreach.model.StudyInput;
import eddyreach.model.Target;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import eddyreach.switching.Trim;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * One target moved along the axis in front of a trimmed switch.
 *
 * <p>The error bar of a distance is what a second computation, coarser in mesh, degree, domain and wavenumbers and trimmed on its own
 * standard target, makes of the same distance.
 */
final class Approach {

    private final Bench fine;
    private final Bench coarse;
    private final Trim fineTrim;
    private final Trim coarseTrim;
    private final StudyInput study;

    Approach(StudyInput study, Bench fine, Trim fineTrim, Bench coarse, Trim coarseTrim) {
        this.study = study;
        this.fine = fine;
        this.fineTrim = fineTrim;
        this.coarse = coarse;
        this.coarseTrim = coarseTrim;
    }

    /**
     * What one target does.
     *
     * @param field the target's field problem at the fine resolution
     * @param curve the tank over the distance
     * @param distance where it switches
     */
    record Outcome(TargetField field, Curve curve, SwitchDistance distance) {}

    Outcome of(Target target) {
        TargetField fineField = fine.target(target);
        Map<Double, Bench.State> known = new HashMap<>();
        SwitchPointFinder finder = new SwitchPointFinder(fineTrim, study.lastDistance(), study.points() - 1);
        SwitchPoints points = finder.find(
                g -> known.computeIfAbsent(g, d -> fine.state(fineField, d)).conductance(),
                fine.free().conductance());
        return new Outcome(fineField, curve(known, fineField), distance(points, target));
    }

    private Curve curve(Map<Double, Bench.State> known, TargetField field) {
        int n = study.points();
        Curve c = new Curve(
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n],
                new double[n]);
        double freeInductance = fine.free().inductance();
        for (int i = 0; i < n; i++) {
            double g = study.firstDistance() + (study.lastDistance() - study.firstDistance()) * i / (n - 1);
            Bench.State s = known.computeIfAbsent(g, d -> fine.state(field, d));
            c.distance()[i] = g;
            c.lossResistance()[i] = s.change().getReal();
            c.inductanceChange()[i] = s.inductance() - freeInductance;
            c.resistance()[i] = s.resistance();
            c.inductance()[i] = s.inductance();
            c.frequency()[i] = s.omega() / (2 * Math.PI);
            c.conductance()[i] = s.conductance();
            c.amplitude()[i] = study.switchModel().element().amplitude(s.conductance());
        }
        return c;
    }

    private SwitchDistance distance(SwitchPoints points, Target target) {
        Optional<Crossing> on = points.on();
        Optional<Crossing> off = points.off();
        if (on.isEmpty()) {
            return new SwitchDistance(
                    points instanceof SwitchPoints.NeverSwitches
                            ? SwitchDistance.Outcome.NEVER_ON
                            : SwitchDistance.Outcome.NEVER_OFF,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN);
        }
        TargetField field = coarse.target(target);
        double onError = error(field, on.get(), coarseTrim.on());
        if (off.isEmpty()) {
            return new SwitchDistance(
                    SwitchDistance.Outcome.NEVER_OFF, on.get().distance(), Double.NaN, onError, Double.NaN);
        }
        double offError = error(field, off.get(), coarseTrim.off());
        return new SwitchDistance(
                SwitchDistance.Outcome.SWITCHES, on.get().distance(), off.get().distance(), onError, offError);
    }

    private double error(TargetField field, Crossing crossing, double threshold) {
        return crossing.distanceError(
                Math.abs(coarse.state(field, crossing.distance()).conductance() - threshold));
    }
}
