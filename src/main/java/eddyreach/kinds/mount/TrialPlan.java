package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A trial of a mount with shims and a plastic dummy before metal is cut.
 *
 * @param mount the mount that is most in doubt
 * @param free where its first target switches in free air
 * @param shim the dimension along the axis that matters most
 * @param others the other mounts that can be tried the same way, the most doubtful first
 */
public record TrialPlan(MountCase mount, SwitchDistance free, Optional<DimensionEffect> shim, List<MountCase> others) {

    /** A shim that is at hand, m. */
    static final double SHIM = 0.5e-3;

    /** Deviation at which the estimate has not held, in s_r: the tolerance of single pieces and that of a mount. */
    static final double DOUBT = 0.1;

    public TrialPlan {
        others = List.copyOf(others);
    }

    /**
     * A plan; empty without a wall around a switch that releases.
     *
     * @param free where the first target switches in free air
     */
    public static Optional<TrialPlan> of(Stream<MountCase> cases, SwitchDistance free) {
        // what uses most of the reserve is most in doubt
        List<MountCase> walls = cases.filter(c -> c.mount().wall().isPresent())
                .filter(c -> c.verdict() == MountCase.Verdict.RELEASED)
                .sorted(Comparator.comparing((MountCase c) -> c.judgement().grade())
                        .thenComparingDouble(c -> c.worst().used())
                        .reversed())
                .toList();
        return walls.stream()
                .findFirst()
                .map(c -> new TrialPlan(
                        c,
                        free,
                        c.effects().stream()
                                .filter(DimensionEffect::shimmed)
                                .max(Comparator.comparingDouble(e -> Math.abs(e.slope()))),
                        walls.subList(1, walls.size())));
    }
}
