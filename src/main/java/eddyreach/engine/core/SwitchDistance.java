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
