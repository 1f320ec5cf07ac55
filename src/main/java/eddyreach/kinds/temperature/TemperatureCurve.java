package eddyreach.kinds.temperature;

import eddyreach.model.values.Target;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One target over the temperature.
 *
 * @param target the target
 * @param trim its on distance at 23 degrees Celsius, m
 * @param steps the on distances with one cause after the other added; the last holds all that is switched on
 * @param off off distance with all of them, m; infinite when it does not release, 0 when it is never on
 * @param error numerical error bar of the on distance with all of them, m
 * @param coldLimit the temperature below which the on distance leaves the standard's band about that at 23 degrees, degrees Celsius; NaN when it does not
 * @param hotLimit the temperature above which it leaves it, degrees Celsius; NaN when it does not
 * @param best the compensation, a change of both thresholds per kelvin, that keeps the on distance nearest, 1/K
 * @param remaining the largest deviation then, as a share of that at 23 degrees; NaN when it is not on throughout
 */
record TemperatureCurve(
        Target target,
        double trim,
        List<Step> steps,
        double[] off,
        double[] error,
        double coldLimit,
        double hotLimit,
        double best,
        double remaining) {

    TemperatureCurve {
        steps = List.copyOf(steps);
    }

    /**
     * The on distances once a cause is added to those before.
     *
     * @param cause what was added
     * @param on on distance at each temperature, m; NaN when it is never on, infinite when it is on without a target
     */
    record Step(Cause cause, double[] on) {}

    /** On distance with all causes at a temperature, by its number, m. */
    double on(int i) {
        return steps.isEmpty() ? trim : steps.get(steps.size() - 1).on()[i];
    }

    /** Change of the on distance by everything, as a share of that at 23 degrees. */
    double change(int i) {
        return on(i) / trim - 1;
    }

    /** Change by one cause at a temperature, as a share. */
    double change(int step, int i) {
        double before = step == 0 ? trim : steps.get(step - 1).on()[i];
        return (steps.get(step).on()[i] - before) / trim;
    }

    /** Smallest on distance, m; NaN when it is nowhere on. */
    double nearest() {
        return IntStream.range(0, off.length).mapToDouble(this::on).min().orElseThrow();
    }

    /** Largest on distance, m; infinite when it is on without a target somewhere. */
    double farthest() {
        return IntStream.range(0, off.length).mapToDouble(this::on).max().orElseThrow();
    }
}
