package eddyreach.study;

/**
 * One cell of a map over recesses.
 *
 * @param panel number of the wall's material
 * @param diameter number of the diameter
 * @param depth number of the depth
 * @param step step of the ladder at which it was computed, 0 for the coarse one
 * @param used share of the reserve that the mount takes up without a target
 * @param verdict what the output does without a target
 * @param distance where the target switches
 * @param shift switch-on distance against that in free air, relative to s_r; NaN unless it switches
 * @param lever change of the switch-on distance, m, by a change of the conductance by its own value; NaN unless it switches
 */
public record RecessCell(
        int panel,
        int diameter,
        int depth,
        int step,
        double used,
        MountCase.Verdict verdict,
        SwitchDistance distance,
        double shift,
        double lever) {

    /** True when the output releases with care and the switch-on distance moves by no more than a tenth of s_r. */
    public boolean safe() {
        return verdict == MountCase.Verdict.RELEASED
                && used <= MountCase.CAREFUL
                && Math.abs(shift) <= MountTarget.LARGEST_SHIFT;
    }

    RecessCell withError(double error) {
        SwitchDistance d = distance;
        return new RecessCell(
                panel,
                diameter,
                depth,
                step,
                used,
                verdict,
                new SwitchDistance(d.outcome(), d.on(), d.off(), error, error),
                shift,
                lever);
    }
}
