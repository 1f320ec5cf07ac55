package eddyreach.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Fills gaps in a curve of switching distances by polynomials through computed neighbours, where the curve is smooth.
 *
 * <p>A distance is taken from the six nearest computed ones. The difference from the polynomial through the nearest four of them is
 * counted as its error: of a smooth curve it exceeds the error of the six by far. Its error bar is the larger one of the two computed
 * neighbours plus that. Between two targets that are never on nothing is on either. Any other gap stays open where the difference is too large, or where one of the six does not both switch on and off: there
 * it must be computed.
 */
final class SmoothCurve {

    private static final int WIDE = 6;
    private static final int NARROW = 4;

    private SmoothCurve() {}

    /**
     * The curve with those gaps filled that can be.
     *
     * @param curve distances at values of even index, null where there is a gap
     * @param accepted largest difference of the two polynomials, m
     */
    static SwitchDistance[] filled(SwitchDistance[] curve, double accepted) {
        SwitchDistance[] all = curve.clone();
        List<Integer> nodes = new ArrayList<>();
        for (int i = 0; i < curve.length; i++) {
            if (curve[i] != null) {
                nodes.add(i);
            }
        }
        for (int i = 0; i < curve.length; i++) {
            if (curve[i] == null && nodes.size() >= WIDE) {
                all[i] = between(curve, nodes, i, accepted);
            }
        }
        return all;
    }

    private static SwitchDistance between(SwitchDistance[] curve, List<Integer> nodes, int at, double accepted) {
        int right = 0;
        while (right < nodes.size() && nodes.get(right) < at) {
            right++;
        }
        if (right == 0 || right == nodes.size()) {
            return null;
        }
        SwitchDistance before = curve[nodes.get(right - 1)];
        SwitchDistance after = curve[nodes.get(right)];
        if (before.outcome() == SwitchDistance.Outcome.NEVER_ON && after.outcome() == before.outcome()) {
            return before;
        }
        List<Integer> wide = nearest(nodes, right, WIDE);
        List<Integer> narrow = nearest(nodes, right, NARROW);
        if (wide.stream().anyMatch(n -> curve[n].outcome() != SwitchDistance.Outcome.SWITCHES)) {
            return null;
        }
        double on = value(curve, wide, at, SwitchDistance::on);
        double off = value(curve, wide, at, SwitchDistance::off);
        double onShift = Math.abs(on - value(curve, narrow, at, SwitchDistance::on));
        double offShift = Math.abs(off - value(curve, narrow, at, SwitchDistance::off));
        if (!(Math.max(onShift, offShift) <= accepted)) {
            return null;
        }
        return new SwitchDistance(
                SwitchDistance.Outcome.SWITCHES,
                on,
                off,
                Math.max(before.onError(), after.onError()) + onShift,
                Math.max(before.offError(), after.offError()) + offShift);
    }

    /** Neighbours around a gap, as many on both sides as the ends of the curve allow. */
    private static List<Integer> nearest(List<Integer> nodes, int right, int count) {
        int first = Math.max(0, Math.min(right - count / 2, nodes.size() - count));
        return nodes.subList(first, first + count);
    }

    /** Lagrange's polynomial. */
    private static double value(
            SwitchDistance[] curve, List<Integer> nodes, int at, ToDoubleFunction<SwitchDistance> distance) {
        double sum = 0;
        for (int i : nodes) {
            double factor = 1;
            for (int j : nodes) {
                factor *= j == i ? 1 : (at - j) / (double) (i - j);
            }
            sum += factor * distance.applyAsDouble(curve[i]);
        }
        return sum;
    }
}
