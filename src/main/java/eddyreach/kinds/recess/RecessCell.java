package eddyreach.kinds.recess;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountTarget;
import java.util.Optional;

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

    private static final int FIELDS = 13;

    /** True when the output releases with care and the switch-on distance moves by no more than a tenth of s_r. */
    public boolean safe() {
        return verdict == MountCase.Verdict.RELEASED
                && used <= MountCase.CAREFUL
                && Math.abs(shift) <= MountTarget.LARGEST_SHIFT;
    }

    /** All of it in one line, exactly; read by {@link #of}. */
    String line() {
        SwitchDistance d = distance;
        return String.join(
                " ",
                String.valueOf(panel),
                String.valueOf(diameter),
                String.valueOf(depth),
                String.valueOf(step),
                String.valueOf(used),
                verdict.name(),
                d.outcome().name(),
                String.valueOf(d.on()),
                String.valueOf(d.off()),
                String.valueOf(d.onError()),
                String.valueOf(d.offError()),
                String.valueOf(shift),
                String.valueOf(lever));
    }

    /** The cell of a line; empty when it is none. */
    static Optional<RecessCell> of(String line) {
        String[] f = line.split(" ", -1);
        if (f.length != FIELDS) {
            return Optional.empty();
        }
        try {
            return Optional.of(new RecessCell(
                    Integer.parseInt(f[0]),
                    Integer.parseInt(f[1]),
                    Integer.parseInt(f[2]),
                    Integer.parseInt(f[3]),
                    Double.parseDouble(f[4]),
                    MountCase.Verdict.valueOf(f[5]),
                    new SwitchDistance(
                            SwitchDistance.Outcome.valueOf(f[6]),
                            Double.parseDouble(f[7]),
                            Double.parseDouble(f[8]),
                            Double.parseDouble(f[9]),
                            Double.parseDouble(f[10])),
                    Double.parseDouble(f[11]),
                    Double.parseDouble(f[12])));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
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
