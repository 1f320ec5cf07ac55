package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.geometry.Part;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import java.util.List;
import java.util.Optional;

/**
 * What the targets of a study do before the switch in a mount.
 *
 * @param mount where it stands
 * @param parts the mount's parts as they were computed, walls without an end cut
 * @param targets one result per target, in the order of the study
 * @param warnings limits of validity that are touched
 */
public record InMount(Mount mount, List<Part> parts, List<Found> targets, List<Warning> warnings) {

    public InMount {
        parts = List.copyOf(parts);
        targets = List.copyOf(targets);
        warnings = List.copyOf(warnings);
    }

    /**
     * What one target does.
     *
     * @param target the target
     * @param floor least distance that the mount lets it have, m
     * @param curve the tank over the distance; beside a straight edge that of the worse of its bounds
     * @param distance where it switches
     * @param assurance how far it is assured; empty where nothing is switched or it could not be computed
     */
    public record Found(
            Target target, double floor, Curve curve, SwitchDistance distance, Optional<Assurance> assurance) {

        /** True when the output is on whatever the target does. */
        boolean latched() {
            return distance.outcome() == SwitchDistance.Outcome.NEVER_OFF && Double.isNaN(distance.on());
        }
    }

    /** What was found for a target. */
    Found of(Target target) {
        return targets.stream()
                .filter(f -> f.target().id().equals(target.id()))
                .findFirst()
                .orElseThrow();
    }
}
