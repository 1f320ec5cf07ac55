package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import java.util.ArrayList;
import java.util.List;

/**
 * The one verdict on a mount, with everything that counts against it. What the trade's rules say is commented by it.
 *
 * @param grade the worst of what was found
 * @param findings what counts against the mount, the worst first; empty when nothing does
 */
public record Judgement(Grade grade, List<Finding> findings) {

    public Judgement {
        findings = List.copyOf(findings);
    }

    /**
     * Something that counts against a mount.
     *
     * @param cause what it is
     * @param grade how much it matters
     * @param target id of the target that it concerns; empty for none
     * @param value share of the reserve that is used, or shift in s_r; NaN where neither applies
     */
    public record Finding(Cause cause, Grade grade, String target, double value) {}

    /** What may count against a mount. */
    public enum Cause {
        /** On without a target. */
        LATCHED,
        /** Stays on without a target once it was on. */
        HOLDS,
        /** Does not release at some temperature and trim. */
        HOLDS_IN_A_CORNER,
        /** Much of the reserve is used in the worst corner. */
        RESERVE_AT_WORST,
        /** Much of the reserve is used at 23 degrees Celsius and the trim of the study. */
        RESERVE,
        /** A target's switch-on distance has moved. */
        SHIFT,
        /** The mount stops a target before it is detected. */
        STOPPED,
        /** A target is no longer detected. */
        LOST,
        /** The output does not release when a target goes away. */
        NOT_RELEASED,
        /** A target is not detected in free air either. */
        NEVER_DETECTED
    }

    static Judgement of(MountCase c) {
        List<Finding> all = new ArrayList<>();
        without(c, all);
        c.targets().forEach(t -> with(c, t, all));
        all.sort((a, b) -> b.grade().compareTo(a.grade()));
        return new Judgement(all.stream().map(Finding::grade).reduce(Grade.OK, Grade::worse), all);
    }

    private static void without(MountCase c, List<Finding> all) {
        double now = c.reserve().used() + c.reserve().spread();
        double worst = c.worst().used();
        if (c.verdict() != MountCase.Verdict.RELEASED) {
            boolean on = c.verdict() == MountCase.Verdict.LATCHED;
            all.add(new Finding(on ? Cause.LATCHED : Cause.HOLDS, Grade.NOT_OK, "", now));
        } else if (!c.alwaysReleases()) {
            all.add(new Finding(Cause.HOLDS_IN_A_CORNER, Grade.NOT_OK, "", worst));
        } else if (worst > MountCase.LIMIT) {
            all.add(new Finding(Cause.RESERVE_AT_WORST, Grade.NOT_OK, "", worst));
        } else if (now > MountCase.CAREFUL) {
            all.add(new Finding(Cause.RESERVE, Grade.NOT_OK, "", now));
        } else if (worst > MountCase.CAREFUL) {
            all.add(new Finding(Cause.RESERVE_AT_WORST, Grade.CARE, "", worst));
        }
    }

    private static void with(MountCase c, MountTarget t, List<Finding> all) {
        String id = t.target().id();
        if (t.distance().outcome() == SwitchDistance.Outcome.SWITCHES) {
            if (!t.within()) {
                all.add(new Finding(Cause.SHIFT, Grade.NOT_OK, id, t.shift()));
            } else if (Math.abs(t.shift()) + t.shiftError() > MountTarget.LARGEST_SHIFT) {
                all.add(new Finding(Cause.SHIFT, Grade.CARE, id, t.shift()));
            }
        } else if (t.neverDetected()) {
            all.add(new Finding(Cause.NEVER_DETECTED, Grade.CARE, id, Double.NaN));
        } else if (t.keptAway()) {
            all.add(new Finding(Cause.STOPPED, Grade.NOT_OK, id, Double.NaN));
        } else if (t.distance().outcome() == SwitchDistance.Outcome.NEVER_ON) {
            all.add(new Finding(Cause.LOST, Grade.NOT_OK, id, Double.NaN));
        } else if (c.verdict() == MountCase.Verdict.RELEASED) {
            all.add(new Finding(Cause.NOT_RELEASED, Grade.NOT_OK, id, Double.NaN));
        }
    }
}
