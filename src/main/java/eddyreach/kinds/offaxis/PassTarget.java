package eddyreach.kinds.offaxis;

import eddyreach.engine.core.Warning;
import eddyreach.model.values.Target;
import java.util.List;

/**
 * One target sliding past the face at a fixed distance, from the left (negative offsets) to the right.
 *
 * @param target the target
 * @param offset offsets from one side to the other, m
 * @param amplitude amplitude of the oscillation at each offset, V peak
 * @param on whether the output recognises the target at each offset, coming from the left
 * @param changes where the output changes on the way
 * @param warnings limits of validity that are touched
 */
public record PassTarget(
        Target target,
        double[] offset,
        double[] amplitude,
        boolean[] on,
        List<Change> changes,
        List<Warning> warnings) {

    /**
     * A change of the output.
     *
     * @param offset where, m
     * @param error numerical error bar, m
     * @param turnsOn whether the target is recognised here or lost
     */
    public record Change(double offset, double error, boolean turnsOn) {}

    public PassTarget {
        changes = List.copyOf(changes);
        warnings = List.copyOf(warnings);
    }

    /** The largest error bar of its changes, m; NaN if the output never changes. */
    public double error() {
        return changes.stream().mapToDouble(Change::error).max().orElse(Double.NaN);
    }

    PassTarget with(List<Warning> limits) {
        return new PassTarget(target, offset, amplitude, on, changes, limits);
    }

    /** Bars that also hold a shift of the offset, m: a target whose outline is not round is computed as a disc. */
    PassTarget withOutline(double shift) {
        List<Change> wider = changes.stream()
                .map(c -> new Change(c.offset(), c.error() + shift, c.turnsOn()))
                .toList();
        return new PassTarget(target, offset, amplitude, on, wider, warnings);
    }

    /** Way over which the output recognises the target, m. */
    public double onLength() {
        double sum = 0;
        for (Change c : changes) {
            sum += c.turnsOn() ? -c.offset() : c.offset();
        }
        return sum;
    }
}
