package eddyreach.engine.assure;

import eddyreach.engine.assure.SwitchCorners.Condition;
import eddyreach.field.join.PlacedTarget;
import eddyreach.materials.Material;
import eddyreach.model.values.Target;
import java.util.List;
import java.util.function.UnaryOperator;

/** Where a switch stands when targets come before it: in free air, or in a mount of which the metal may vary too. */
interface Place {

    /** What else may vary: the metal of a mount, each of its materials by the same rule. */
    UnaryOperator<Material> AS_STATED = m -> m;

    /**
     * A target before the switch at several temperatures of the switch; its own is what it carries.
     *
     * @param metal what the metal of the mount is instead
     */
    List<ConductanceCurve> before(Target target, List<Condition> conditions, UnaryOperator<Material> metal);

    /** Materials of the mount that the field notices; none in free air. */
    List<Material> metals();

    /** Least distance that a target can have, m. */
    double floor(Target target);

    /**
     * Free air.
     *
     * @param corners the switch
     */
    static Place freeAir(SwitchCorners corners) {
        return new Place() {

            /** The waves are those of the nominal switch at any temperature, so that the target is solved once. */
            @Override
            public List<ConductanceCurve> before(
                    Target target, List<Condition> conditions, UnaryOperator<Material> metal) {
                PlacedTarget field = corners.nominal().solved().target(target);
                return conditions.stream()
                        .map(c -> new ConductanceCurve(c.solved(), field))
                        .toList();
            }

            @Override
            public List<Material> metals() {
                return List.of();
            }

            @Override
            public double floor(Target target) {
                return 0;
            }
        };
    }
}
