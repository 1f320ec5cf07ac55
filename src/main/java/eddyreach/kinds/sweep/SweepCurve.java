package eddyreach.kinds.sweep;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Where targets switch over a quantity that is varied.
 *
 * @param id short name, unique in a study
 * @param label readable name
 * @param points the targets by ascending value, at least 2
 */
public record SweepCurve(String id, String label, List<SweepPoint> points) {

    /** Distances that differ by less than this share count as level. */
    public static final double LEVEL = 0.01;

    public SweepCurve {
        points = List.copyOf(points);
    }

    /** The point with the largest switch-on distance; empty when none has one. */
    public Optional<SweepPoint> highest() {
        return points.stream().filter(p -> Double.isFinite(p.on())).max(Comparator.comparingDouble(SweepPoint::on));
    }

    public SweepPoint last() {
        return points.get(points.size() - 1);
    }

    /** True when each target has a switch-on distance or is certainly never on, so that nothing lies beyond the distances searched. */
    public boolean complete() {
        return points.stream().noneMatch(SweepPoint::beyond);
    }

    /**
     * The lowest point between a value and the last one, where it is lower than the last by more than a share.
     *
     * @param value where to begin
     * @param share the share
     */
    public Optional<SweepPoint> dipAfter(double value, double share) {
        return points.stream()
                .filter(p -> p.value() > value && p.on() < (1 - share) * last().on())
                .min(Comparator.comparingDouble(SweepPoint::on));
    }

    /** The first point from which on all are recognised; empty when the last is not. */
    public Optional<SweepPoint> firstSeen() {
        return from(SweepPoint::seen);
    }

    /** The last point that is not recognised, with all after it recognised; empty when there is none. */
    public Optional<SweepPoint> lastUnseen() {
        int first = firstSeen().map(points::indexOf).orElse(0);
        return first > 0 ? Optional.of(points.get(first - 1)) : Optional.empty();
    }

    /**
     * The first point from which on all switch-on distances stay within a share of that of the last one; empty when the last has none.
     *
     * @param share the share
     */
    public Optional<SweepPoint> levelFrom(double share) {
        double last = last().on();
        return from(p -> Math.abs(p.on() - last) <= share * last);
    }

    private Optional<SweepPoint> from(Predicate<SweepPoint> condition) {
        int first = points.size();
        while (first > 0 && condition.test(points.get(first - 1))) {
            first--;
        }
        return first < points.size() ? Optional.of(points.get(first)) : Optional.empty();
    }
}
