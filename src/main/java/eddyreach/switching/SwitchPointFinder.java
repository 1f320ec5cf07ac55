package eddyreach.switching;

import eddyreach.numerics.Require;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.apache.commons.math3.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Finds where the output changes while a target comes from far to contact and leaves again.
 *
 * <p>The tank's conductance over distance is sampled at even intervals; a local extremum that could reach a threshold
 * between samples is located, so that every stretch between two nodes is monotone if the curve has no feature
 * narrower than two intervals. The output is then followed along the nodes with its hysteresis, and each change found
 * by Brent's method to 1e-12 of the range. The curve need not be monotone: good conductors can lower the conductance
 * far out by shielding lossy parts, and near the face.
 *
 * @param trim thresholds
 * @param maxDistance end of the range examined, from contact at distance 0, m
 * @param intervals number of even intervals sampled, at least 10
 */
public record SwitchPointFinder(Trim trim, double maxDistance, int intervals) {

    private static final double ACCURACY = 1e-12;
    private static final int MAX_EVALUATIONS = 200;
    private static final int SLOPE_POINTS = 5;
    private static final double SLOPE_STEP = 1e-3;

    public SwitchPointFinder {
        Require.positive("range of distances", maxDistance, "m");
        if (intervals < 10) {
            throw new IllegalArgumentException("intervals " + intervals + ": at least 10 are needed");
        }
    }

    /**
     * Follows the output over one approach and one departure.
     *
     * @param curve loss conductance of the tank, S, as a function of the target's distance, m, between 0 and the end of
     *     the range
     * @param freeConductance loss conductance without the target, S
     * @throws IllegalArgumentException when a conductance is not positive and finite
     */
    public SwitchPoints find(DoubleUnaryOperator curve, double freeConductance) {
        Require.positive("conductance without a target", freeConductance, "S");
        DoubleUnaryOperator checked = g -> checked(g, curve.applyAsDouble(g));
        List<Node> inward = nodes(checked);
        Collections.reverse(inward);
        double far = inward.get(0).conductance;
        boolean startsOn = far >= trim.on() || far >= trim.off() && freeConductance >= trim.on();
        List<Crossing> approach = walk(checked, inward, startsOn);
        List<Node> outward = new ArrayList<>(inward);
        Collections.reverse(outward);
        boolean onAtContact = approach.isEmpty() ? startsOn : last(approach).turnsOn();
        List<Crossing> departure = walk(checked, outward, onAtContact);
        boolean endsOn = departure.isEmpty() ? onAtContact : last(departure).turnsOn();
        if (freeConductance >= trim.on()) {
            return new SwitchPoints.NeverReleases(true, freeConductance, approach, departure);
        }
        if (!startsOn && approach.isEmpty()) {
            Node top = Collections.max(inward, (a, b) -> Double.compare(a.conductance, b.conductance));
            return new SwitchPoints.NeverSwitches(top.conductance, top.distance);
        }
        if (endsOn && freeConductance >= trim.off()) {
            return new SwitchPoints.NeverReleases(false, freeConductance, approach, departure);
        }
        return startsOn || endsOn
                ? new SwitchPoints.OutOfRange(maxDistance, approach, departure)
                : new SwitchPoints.Switches(approach, departure);
    }

    /** The words are put together for an error alone: they would take as long as the conductance. */
    private static double checked(double distance, double conductance) {
        return conductance > 0 && conductance < Double.POSITIVE_INFINITY
                ? conductance
                : Require.positive("conductance at distance " + distance + " m", conductance, "S");
    }

    private record Node(double distance, double conductance) {}

    private static Crossing last(List<Crossing> crossings) {
        return crossings.get(crossings.size() - 1);
    }

    /** Samples from contact outward, with the extrema that matter between them. */
    private List<Node> nodes(DoubleUnaryOperator curve) {
        List<Node> samples = new ArrayList<>(intervals + 1);
        // from far to near: what a curve needs in contact, most of all, comes little by little
        for (int i = intervals; i >= 0; i--) {
            double g = maxDistance * i / intervals;
            samples.add(new Node(g, curve.applyAsDouble(g)));
        }
        Collections.reverse(samples);
        List<Node> nodes = new ArrayList<>(samples);
        for (int i = 0; i <= intervals; i++) {
            int first = Math.max(0, Math.min(i - 1, intervals - 2));
            double here = samples.get(i).conductance;
            List<Node> three = samples.subList(first, first + 3);
            double drop =
                    here - three.stream().mapToDouble(Node::conductance).min().orElseThrow();
            double rise = three.stream().mapToDouble(Node::conductance).max().orElseThrow() - here;
            // a nearly parabolic extremum exceeds its best sample by at most a quarter of the fall across the three
            if (rise <= 0 && thresholdWithin(here, here + drop)) {
                nodes.add(extremum(curve, GoalType.MAXIMIZE, three));
            } else if (drop <= 0 && thresholdWithin(here - rise, here)) {
                nodes.add(extremum(curve, GoalType.MINIMIZE, three));
            }
        }
        nodes.sort((a, b) -> Double.compare(a.distance, b.distance));
        return nodes;
    }

    private boolean thresholdWithin(double low, double high) {
        return low <= trim.on() && trim.on() <= high || low <= trim.off() && trim.off() <= high;
    }

    private static Node extremum(DoubleUnaryOperator curve, GoalType goal, List<Node> three) {
        double left = three.get(0).distance;
        double right = three.get(2).distance;
        double at = new BrentOptimizer(1e-9, 1e-12 * (right - left))
                .optimize(
                        new MaxEval(MAX_EVALUATIONS),
                        goal,
                        new UnivariateObjectiveFunction(curve::applyAsDouble),
                        new SearchInterval(left, right))
                .getPoint();
        return new Node(at, curve.applyAsDouble(at));
    }

    private List<Crossing> walk(DoubleUnaryOperator curve, List<Node> path, boolean startsOn) {
        List<Crossing> found = new ArrayList<>();
        boolean on = startsOn;
        for (int i = 1; i < path.size(); i++) {
            Node from = path.get(i - 1);
            Node to = path.get(i);
            if (!on && to.conductance >= trim.on()) {
                on = true;
                found.add(crossing(curve, trim.on(), from, to, true));
            } else if (on && to.conductance < trim.off()) {
                on = false;
                found.add(crossing(curve, trim.off(), from, to, false));
            }
        }
        return found;
    }

    private Crossing crossing(DoubleUnaryOperator curve, double threshold, Node from, Node to, boolean turnsOn) {
        double distance = new BrentSolver(ACCURACY, ACCURACY * maxDistance)
                .solve(
                        MAX_EVALUATIONS,
                        g -> curve.applyAsDouble(g) / threshold - 1,
                        Math.min(from.distance, to.distance),
                        Math.max(from.distance, to.distance));
        double slope = new FiniteDifferencesDifferentiator(SLOPE_POINTS, SLOPE_STEP * maxDistance, 0, maxDistance)
                .differentiate(curve::applyAsDouble)
                .value(new DerivativeStructure(1, 1, 0, distance))
                .getPartialDerivative(1);
        return new Crossing(distance, turnsOn, slope);
    }
}
