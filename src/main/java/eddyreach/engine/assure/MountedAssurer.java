package eddyreach.engine.assure;

import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Assured distances of targets before a switch in mounts: the worst combination of all tolerances, those of the mount's metal included, with
 * thresholds as they were set in free air. The dimensions of mounts are as stated. For one thread.
 */
public final class MountedAssurer {

    private final Setup setup;
    private final List<Target> targets;
    private final Map<Mount, AssuranceFinder> finders = new HashMap<>();
    private SwitchCorners corners;
    private String failure = "";

    /**
     * @param setup switch and standard target
     * @param targets the targets that will be asked for
     */
    public MountedAssurer(Setup setup, List<Target> targets) {
        this.setup = setup;
        this.targets = List.copyOf(targets);
    }

    /**
     * The band of a target; empty when a corner cannot be computed, say because the tank has too much loss when hot.
     *
     * @param mount where the switch stands; without a straight edge
     * @param target the target
     * @param distance its distances there at the fine resolution
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException never: such a band is empty
     * @throws NoOscillationException never: such a band is empty
     */
    public Optional<Assurance> of(Mount mount, Target target, SwitchDistance distance) {
        try {
            return Optional.of(finder(mount).of(target, distance));
        } catch (NoTrimException | NoOscillationException e) {
            failure = e.getMessage();
            return Optional.empty();
        }
    }

    /** Says why a band is missing; empty when none is. */
    public Optional<Warning> missing(String subject) {
        return failure.isEmpty()
                ? Optional.empty()
                : Optional.of(Warning.of(Warning.Kind.NOT_ASSESSED, subject).about(failure));
    }

    private AssuranceFinder finder(Mount mount) {
        AssuranceFinder known = finders.get(mount);
        if (known == null) {
            Allowances allowances = Allowances.of(setup.switchModel());
            if (corners == null) {
                corners = new SwitchCorners(setup, new TrialSwitches(setup, targets).plain(), allowances);
            }
            Place place = mount.isEmpty() ? Place.freeAir(corners) : new MountedPlace(mount);
            known = new AssuranceFinder(corners, place, allowances, () -> {});
            finders.put(mount, known);
        }
        return known;
    }
}
