package eddyreach.field.targets;

import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;

/**
 * A target whose axis is parallel to the switch's and some way beside it; its reflections are those about its own axis.
 *
 * @param target the target
 * @param offset distance of the axes, m, above 0
 */
public record OffAxisTarget(TargetField target, double offset) implements TargetField {

    @Override
    public Reflection at(double omega) {
        return target.at(omega);
    }

    @Override
    public Reflection at(int order, double omega) {
        return target.at(order, omega);
    }
}
