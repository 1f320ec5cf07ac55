package eddyreach.engine.assure;

import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Assured distances of targets before a switch in mounts: the worst combination of all tolerances, those of the mount's metal included, with
 * thresholds as they were set in free air. Its dimensions are as stated. For one thread.
 */
public final class MountedAssurer {

    private final SwitchCorners corners;
    private final Allowances allowances;
    private final Map<Mount, AssuranceFinder> finders = new HashMap<>();

    /**
     * @param setup switch and standard target
     * @param targets the targets that will be asked for
     */
    public MountedAssurer(Setup setup, List<Target> targets) {
        allowances = Allowances.of(setup.switchModel());
        corners = new SwitchCorners(setup, new TrialSwitches(setup, targets).plain(), allowances);
    }

    /**
     * The band of a target.
     *
     * @param mount where the switch stands; without a straight edge
     * @param target the target
     * @param distance its distances there at the fine resolution
     */
    public Assurance of(Mount mount, Target target, SwitchDistance distance) {
        AssuranceFinder finder = finders.computeIfAbsent(
                mount,
                m -> new AssuranceFinder(
                        corners, m.isEmpty() ? Place.freeAir(corners) : new MountedPlace(m), allowances));
        return finder.of(target, distance);
    }
}
