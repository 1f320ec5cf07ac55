package eddyreach.switching;

import eddyreach.oscillator.UnworkableException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds the weight of loss against inductance with which given targets come to nearly one distance.
 *
 * <p>For each weight the switch is trimmed on its standard target; a target that is never recognised counts with the distance 0. The spread, largest less smallest on
 * distance over s_r, is scanned over weights that grow geometrically and minimised about the best one.
 *
 * @param free the tank in free air
 * @param effectiveDistance effective operating distance s_r, m
 * @param differentialTravel differential travel H as a fraction of s_r
 * @param maxDistance end of the range examined, m
 * @param intervals intervals sampled of each curve
 */
public record EqualDistance(
        TankState free, double effectiveDistance, double differentialTravel, double maxDistance, int intervals) {

    /** Weights tried: 1/(1 + q) with q from 1e-4 to 1e4, since G changes by some tens, L by some hundredths. */
    private static final int TRIED = 33;

    private static final double DECADES = 4;
    private static final int MAX_EVALUATIONS = 60;
    private static final double ACCURACY = 1e-4;

    /** Counts as the spread of a switch that cannot be trimmed: more than any other. */
    private static final double UNTRIMMED = 1e3;

    /**
     * What was found.
     *
     * @param principle the weighted sum
     * @param distances on distances of the targets in their order, m
     * @param spread largest less smallest on distance, as a fraction of s_r: what the weight cannot remove
     * @param byLossAlone the same spread of a switch that evaluates the loss alone
     */
    public record Found(Principle.WeightedSum principle, List<Double> distances, double spread, double byLossAlone) {
        public Found {
            distances = List.copyOf(distances);
        }
    }

    /**
     * Finds the weight.
     *
     * @param standard the tank over the distance of the standard target, m
     * @param targets the tank over the distance of each target that is to be seen alike, m
     * @throws UnworkableException when no weight lets every target be detected, or none can be trimmed
     */
    public Found find(DoubleFunction<TankState> standard, List<DoubleFunction<TankState>> targets) {
        if (targets.isEmpty()) {
            throw new IllegalArgumentException("no target to be detected alike");
        }
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < TRIED; i++) {
            double x = DECADES * (2.0 * i / (TRIED - 1) - 1);
            double spread = spread(x, standard, targets);
            if (spread < least) {
                least = spread;
                best = x;
            }
        }
        double step = 2 * DECADES / (TRIED - 1);
        double x = new BrentOptimizer(ACCURACY, ACCURACY)
                .optimize(
                        new MaxEval(MAX_EVALUATIONS),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(q -> spread(q, standard, targets)),
                        new SearchInterval(best - step, best + step, best))
                .getPoint();
        Principle.WeightedSum principle = principle(x);
        List<Double> distances = distances(principle, standard, targets);
        double nearest = Collections.min(distances);
        if (nearest == 0) {
            throw new UnworkableException("no weight lets every target be detected", "on distance", nearest, "m", 1, 0);
        }
        List<Double> byLoss = distances(new Principle.WeightedSum(free, 1), standard, targets);
        return new Found(principle, distances, spread(distances), spread(byLoss));
    }

    /**
     * On distances of targets by a principle that has been trimmed on the standard target, m; 0 for one that is never recognised.
     *
     * @param principle what the switch evaluates
     * @param standard the tank over the distance of the standard target, m
     * @param targets the tank over the distance of each target, m
     */
    public List<Double> distances(
            Principle principle, DoubleFunction<TankState> standard, List<DoubleFunction<TankState>> targets) {
        Trim trim = principle.trim(standard, effectiveDistance, differentialTravel);
        SwitchPointFinder finder = new SwitchPointFinder(trim, maxDistance, intervals);
        List<Double> distances = new ArrayList<>();
        for (DoubleFunction<TankState> target : targets) {
            distances.add(finder.find(g -> principle.signal(target.apply(g)), principle.signal(free))
                    .on()
                    .map(Crossing::distance)
                    .orElse(0.0));
        }
        return distances;
    }

    private Principle.WeightedSum principle(double decades) {
        return new Principle.WeightedSum(free, 1 / (1 + Math.pow(10, decades)));
    }

    private double spread(double decades, DoubleFunction<TankState> standard, List<DoubleFunction<TankState>> targets) {
        try {
            return spread(distances(principle(decades), standard, targets));
        } catch (UnworkableException e) {
            // steel may raise the inductance: then little weight of the loss leaves nothing to trim on
            return UNTRIMMED;
        }
    }

    private double spread(List<Double> distances) {
        return (Collections.max(distances) - Collections.min(distances)) / effectiveDistance;
    }
}
