package eddyreach.kinds.mount;

import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.Warning;
import eddyreach.geometry.Part;
import eddyreach.model.values.Mount;
import eddyreach.switching.Trim;
import java.util.List;

/**
 * What was found for one mount, or for free air.
 *
 * <p>A wall that ends at a straight edge is computed as two walls round about the axis, see {@link StraightEdge}.
 *
 * @param mount the mount
 * @param parts its parts as they were computed, walls without an end cut
 * @param undamped the tank without a target
 * @param reserve damping without a target
 * @param corners the same over temperature and trim, the first at 23 degrees Celsius and the trim of the study
 * @param verdict whether the output releases without a target
 * @param targets what the targets do, in the order of the study
 * @param budget losses without a target
 * @param unknowns unknowns of the switch's field problem
 * @param proposals nearest safe dimensions of its recess, when it has a wall and is not safe
 * @param effects how the switch-on distance of the first target follows its dimensions
 * @param warnings limits of validity that are touched
 */
public record MountCase(
        Mount mount,
        List<Part> parts,
        Operating undamped,
        Reserve reserve,
        List<Corner> corners,
        Verdict verdict,
        List<MountTarget> targets,
        LossBudget budget,
        int unknowns,
        List<SafeDimension> proposals,
        List<DimensionEffect> effects,
        List<Warning> warnings) {

    /** Share of the reserve that a careful design uses at most: common practice, 50 to 70 %. */
    public static final double CAREFUL = 0.5;

    /** The less careful end of that. */
    public static final double LIMIT = 0.7;

    public MountCase {
        parts = List.copyOf(parts);
        corners = List.copyOf(corners);
        targets = List.copyOf(targets);
        proposals = List.copyOf(proposals);
        effects = List.copyOf(effects);
        warnings = List.copyOf(warnings);
    }

    /**
     * The damping without a target against the on threshold.
     *
     * @param total loss conductance of the tank over that at the on threshold
     * @param used share of the distance between the loss in free air and the on threshold that the mount takes up: 0 in free air, 1 where
     *     the output goes on without a target, negative where the mount lowers the loss
     * @param error error bar of the share, numerical and, beside a straight edge, of the model
     * @param spread the latter alone, half of what the shares differ by that a straight edge lies between; 0 without an edge
     */
    public record Reserve(double total, double used, double error, double spread) {}

    /**
     * The damping without a target in one corner of temperature and tolerance (as electronics calls an extreme of both at once), for a switch whose electronics makes up for the drift of
     * its own loss in free air, and for one that does not.
     *
     * @param celsius temperature of everything, degrees Celsius
     * @param trim effective distance to which the switch is trimmed, in rated distances
     * @param used share of this trim's reserve that is taken up by the mount at this temperature, the switch's own drift made up for
     * @param verdict whether the output then releases
     * @param bare the share with the switch's own drift
     * @param bareVerdict whether the output releases with it
     */
    public record Corner(double celsius, double trim, double used, Verdict verdict, double bare, Verdict bareVerdict) {}

    /** What the output does without a target. */
    public enum Verdict {
        RELEASED("released"),
        HOLDS("latched: stays on once it was on"),
        LATCHED("latched: on without a target");

        private final String label;

        Verdict(String label) {
            this.label = label;
        }

        /** The words shown to the user. */
        public String label() {
            return label;
        }

        /** What follows from the loss conductance of the tank without a target, S. */
        static Verdict of(double conductance, Trim trim) {
            return conductance >= trim.on() ? LATCHED : conductance >= trim.off() ? HOLDS : RELEASED;
        }
    }

    /** The corner in which the least reserve is left. */
    public Corner worst() {
        return corners.stream()
                .max((a, b) -> Double.compare(a.used(), b.used()))
                .orElseThrow();
    }

    /** True when the output releases without a target at every temperature and trim, the switch's own drift made up for. */
    public boolean alwaysReleases() {
        return corners.stream().allMatch(c -> c.verdict() == Verdict.RELEASED);
    }

    /** The verdict on the mount. */
    public Judgement judgement() {
        return Judgement.of(this);
    }

    /**
     * True when it releases with care at 23 degrees Celsius and its trim, stays below the less careful limit in the worst corner, and moves
     * no target by more than a tenth of s_r. Beside a straight edge the worse of its bounds counts.
     */
    public boolean safe() {
        return alwaysReleases()
                && reserve.used() + reserve.spread() <= CAREFUL
                && worst().used() <= LIMIT
                && targets.stream().allMatch(MountTarget::within);
    }

    MountCase with(List<SafeDimension> found, List<DimensionEffect> followed) {
        return new MountCase(
                mount, parts, undamped, reserve, corners, verdict, targets, budget, unknowns, found, followed,
                warnings);
    }
}
