package eddyreach.engine.core;

/**
 * Where a target switches the output.
 *
 * @param outcome whether it switches at all
 * @param on switch-on distance on approach, m; NaN unless the target switches or never releases
 * @param off switch-off distance on leaving, m; NaN unless the target switches
 * @param onError numerical error bar of the switch-on distance, m
 * @param offError numerical error bar of the switch-off distance, m
 */
public record SwitchDistance(Outcome outcome, double on, double off, double onError, double offError) {

    /** The larger of the error bars that exist, m; NaN without any. */
    public double error() {
        return Double.isNaN(offError) ? onError : Math.max(onError, offError);
    }

    /** The middle of two bounds, both inside the bar; where one does not switch it tells what the other is worth. */
    public SwitchDistance between(SwitchDistance other) {
        if (outcome != Outcome.SWITCHES || other.outcome != Outcome.SWITCHES) {
            return outcome == Outcome.SWITCHES ? other : this;
        }
        return new SwitchDistance(
                outcome,
                (on + other.on) / 2,
                (off + other.off) / 2,
                Math.abs(on - other.on) / 2 + Math.max(onError, other.onError),
                Math.abs(off - other.off) / 2 + Math.max(offError, other.offError));
    }

    /** What a target does to the output. */
    public enum Outcome {
        /** Switches on and off. */
        SWITCHES,
        /** The damping never reaches the on threshold. */
        NEVER_ON,
        /** It switches somewhere beyond the range of distances that was asked for. */
        BEYOND_RANGE,
        /** Once on, the output does not release within the range. */
        NEVER_OFF
    }
}
