package eddyreach.engine.core;

import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
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
public final class Approach {

    private final Setup setup;
    private final double firstDistance;
    private final double lastDistance;
    private final int points;
    private final ResolutionLadder.Step fine;
    private final ResolutionLadder.Step coarse;
    private final DistanceFinder finder;

    /**
     * @param setup switch, standard target and accuracy
     * @param firstDistance smallest distance of the curve, m
     * @param lastDistance largest distance of the curve, m
     * @param points number of distances
     * @param fine the step of the ladder that gives the result
     * @param coarse the step before it, which gives the error bar
     */
    public Approach(
            Setup setup,
            double firstDistance,
            double lastDistance,
            int points,
            ResolutionLadder.Step fine,
            ResolutionLadder.Step coarse) {
        this.setup = setup;
        this.firstDistance = firstDistance;
        this.lastDistance = lastDistance;
        this.points = points;
        this.fine = fine;
        this.coarse = coarse;
        finder = new DistanceFinder(setup, fine, coarse, lastDistance, points - 1);
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
    public record Outcome(
            ResolutionLadder.Step step, PlacedTarget field, Curve curve, SwitchDistance distance, double lostNearer) {}

    /**
     * What a target does, at both steps.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Outcome of(Target target) {
        return of(target, () -> {});
    }

    /** Number of steps that {@link #of(Target, Runnable)} tells. */
    public int steps() {
        return 2 + 2 * points;
    }

    /**
     * The same for somebody who watches.
     *
     * @param step is run after each field problem and each distance of the curve
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Outcome of(Target target, Runnable step) {
        PlacedTarget fineField = fine.field(target);
        step.run();
        PlacedTarget coarseField = coarse.field(target);
        step.run();
        TargetEffect effect = fine.solved().effect(fineField);
        Map<Double, TankState> known = new HashMap<>();
        SwitchPoints found = finder.points(g -> known.computeIfAbsent(g, d -> {
                    TankState state = fine.solved().state(effect, d);
                    if (known.size() < points) {
                        step.run();
                    }
                    return state;
                })
                .conductance());
        return new Outcome(
                fine,
                fineField,
                curve(known, effect, coarse.solved().effect(coarseField), step),
                finder.distance(found, target, fineField, coarseField),
                found.lostNearer().map(Crossing::distance).orElse(Double.NaN));
    }

    private Curve curve(Map<Double, TankState> known, TargetEffect effect, TargetEffect coarseEffect, Runnable step) {
        int n = points;
        Curve.Builder curve = new Curve.Builder(n);
        double freeInductance = fine.solved().free().inductance();
        for (int i = 0; i < n; i++) {
            double g = firstDistance + (lastDistance - firstDistance) * i / (n - 1);
            TankState s = known.computeIfAbsent(g, d -> fine.solved().state(effect, d));
            double difference =
                    s.change().subtract(coarseEffect.change(s.omega(), g)).abs();
            step.run();
            curve.add(
                    g,
                    s,
                    s.change().getReal(),
                    s.inductance() - freeInductance,
                    ErrorBar.ofDifference(difference) + effect.truncation(g),
                    setup.switchModel().element().amplitude(s.conductance()));
        }
        return curve.build();
    }
}
