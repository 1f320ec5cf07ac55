package eddyreach.study;

import eddyreach.geometry.Part;
import eddyreach.model.Mount;
import java.util.List;

/**
 * What was found for one mount, or for free air.
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
        List<Warning> warnings) {

    public MountCase {
        parts = List.copyOf(parts);
        corners = List.copyOf(corners);
        targets = List.copyOf(targets);
        warnings = List.copyOf(warnings);
    }

    /**
     * The damping without a target against the on threshold.
     *
     * @param total loss conductance of the tank over that at the on threshold
     * @param used share of the distance between the loss in free air and the on threshold that the mount takes up: 0 in free air, 1 where
     *     the output goes on without a target, negative where the mount lowers the loss
     * @param error numerical error bar of the share
     */
    public record Reserve(double total, double used, double error) {}

    /**
     * The damping without a target in one corner of temperature and tolerance, for a switch whose electronics makes up for the drift of
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
}
