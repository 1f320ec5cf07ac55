package eddyreach.kinds.sweep;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SwitchDistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * A curve of switching distances over an index, of which few are computed: where polynomials through its neighbours agree, the rest is
 * taken from them.
 *
 * <p>Between two targets that switch, a distance is taken from the polynomial through the {@value AccuracyPolicy#CURVE_NEIGHBOURS} nearest that do. The largest
 * difference between it and those through fewer of them is counted as its error: two may agree by chance where the curve bends between
 * points far apart, which three do not. Its bar is the larger one of the two neighbours plus that. Between two that are never on nothing is
 * on as long as the greatest damping, which is as smooth, stays below the threshold. Anything else must be computed, and each time the
 * middle of a gap is asked for next.
 */
final class SmoothCurve {

    private final int count;
    private final double accepted;
    private final TreeMap<Integer, Node> nodes = new TreeMap<>();

    /**
     * A computed point.
     *
     * @param distance where the target switches
     * @param height its greatest damping over the range of distances, as a share of what switches on
     */
    record Node(SwitchDistance distance, double height) {

        private boolean is(SwitchDistance.Outcome outcome) {
            return distance.outcome() == outcome;
        }
    }

    /**
     * @param count number of points
     * @param accepted largest difference of the polynomials, m
     */
    SmoothCurve(int count, double accepted) {
        this.count = count;
        this.accepted = accepted;
    }

    /** Adds a computed point. */
    void put(int index, Node node) {
        nodes.put(index, node);
    }

    /** The points to be computed next; none when all others follow from those that are. */
    List<Integer> wanted() {
        List<Integer> list = new ArrayList<>();
        if (nodes.isEmpty()) {
            int stride = Integer.highestOneBit(Math.max(1, (count - 1) / (AccuracyPolicy.CURVE_NEIGHBOURS - 1)));
            for (int i = 0; i < count - 1; i += stride) {
                list.add(i);
            }
            list.add(count - 1);
            return list;
        }
        int before = nodes.firstKey();
        for (int after : nodes.keySet()) {
            for (int i = before + 1; i < after; i++) {
                if (at(i).isEmpty()) {
                    list.add((before + after) / 2);
                    break;
                }
            }
            before = after;
        }
        return list;
    }

    /** The point at an index, also between whole ones; empty where it must be computed. */
    Optional<SwitchDistance> at(double index) {
        int below = nodes.floorKey((int) Math.floor(index));
        Node before = nodes.get(below);
        if (below == index) {
            return Optional.of(before.distance());
        }
        int above = nodes.higherKey(below);
        Node after = nodes.get(above);
        if (before.is(SwitchDistance.Outcome.NEVER_ON) && after.is(SwitchDistance.Outcome.NEVER_ON)) {
            List<Integer> all = List.copyOf(nodes.keySet());
            return all.size() >= AccuracyPolicy.CURVE_NEIGHBOURS
                            && value(all, above, index, Node::height) + spread(all, above, index, Node::height) < 1
                    ? Optional.of(before.distance())
                    : Optional.empty();
        }
        List<Integer> on = run(below, above);
        return on.size() >= AccuracyPolicy.CURVE_NEIGHBOURS
                ? between(on, before.distance(), after.distance(), above, index)
                : Optional.empty();
    }

    /** A quantity from the widest polynomial. */
    private double value(List<Integer> through, int above, double index, ToDoubleFunction<Node> quantity) {
        return polynomial(nearest(through, above, AccuracyPolicy.CURVE_NEIGHBOURS), index, quantity);
    }

    /** The largest difference of the polynomials. */
    private double spread(List<Integer> through, int above, double index, ToDoubleFunction<Node> quantity) {
        double wide = value(through, above, index, quantity);
        double most = 0;
        for (int size : AccuracyPolicy.CURVE_FEWER) {
            most = Math.max(most, Math.abs(wide - polynomial(nearest(through, above, size), index, quantity)));
        }
        return most;
    }

    private Optional<SwitchDistance> between(
            List<Integer> on, SwitchDistance before, SwitchDistance after, int above, double index) {
        double onShift = spread(on, above, index, n -> n.distance().on());
        double offShift = spread(on, above, index, n -> n.distance().off());
        if (!(Math.max(onShift, offShift) <= accepted)) {
            return Optional.empty();
        }
        return Optional.of(new SwitchDistance(
                SwitchDistance.Outcome.SWITCHES,
                value(on, above, index, n -> n.distance().on()),
                value(on, above, index, n -> n.distance().off()),
                Math.max(before.onError(), after.onError()) + onShift,
                Math.max(before.offError(), after.offError()) + offShift));
    }

    /** The computed points around a gap that switch, without one in between that does not; none when an end of the gap does not. */
    private List<Integer> run(int below, int above) {
        List<Integer> list = new ArrayList<>();
        for (int i : nodes.headMap(below, true).descendingKeySet()) {
            if (!nodes.get(i).is(SwitchDistance.Outcome.SWITCHES)) {
                break;
            }
            list.add(0, i);
        }
        boolean reached = !list.isEmpty();
        for (int i : nodes.tailMap(above, true).keySet()) {
            if (!nodes.get(i).is(SwitchDistance.Outcome.SWITCHES)) {
                break;
            }
            list.add(i);
        }
        return reached && list.contains(above) ? list : List.of();
    }

    /** Neighbours around a gap, as many on both sides as the ends allow. */
    private static List<Integer> nearest(List<Integer> all, int above, int size) {
        int right = all.indexOf(above);
        int first = Math.max(0, Math.min(right - size / 2, all.size() - size));
        return all.subList(first, first + size);
    }

    /** Lagrange's polynomial. */
    private double polynomial(List<Integer> through, double at, ToDoubleFunction<Node> quantity) {
        double sum = 0;
        for (int i : through) {
            double factor = 1;
            for (int j : through) {
                factor *= j == i ? 1 : (at - j) / (i - j);
            }
            sum += factor * quantity.applyAsDouble(nodes.get(i));
        }
        return sum;
    }
}
