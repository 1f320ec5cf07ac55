package eddyreach.switching;

import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.Detector;
import eddyreach.oscillator.UnworkableException;
import java.util.ArrayList;
import java.util.List;

/**
 * Comparator with hysteresis on the demodulated amplitude, and an output that follows it after a delay: a change of the comparator that does not last as long as the
 * delay never reaches the output.
 *
 * @param onAmplitude demodulated amplitude below which the target counts as recognised, V
 * @param offAmplitude demodulated amplitude above which it counts as gone, V, more than the other
 * @param delay delay of the output, s, not negative
 */
public record OutputStage(double onAmplitude, double offAmplitude, double delay) {

    public OutputStage {
        UnworkableException.require("off amplitude", offAmplitude, "V", Double.MIN_NORMAL, Double.MAX_VALUE);
        UnworkableException.require("on amplitude", onAmplitude, "V", Double.MIN_NORMAL, offAmplitude);
        UnworkableException.require("delay of the output", delay, "s", 0, Double.MAX_VALUE);
    }

    /**
     * A change of the output.
     *
     * @param time when, s
     * @param on whether the target counts as recognised from here on
     */
    public record Change(double time, boolean on) {}

    /**
     * The comparator's amplitudes for a trim.
     *
     * @throws UnworkableException when the oscillation has collapsed at a threshold, where it has no amplitude to compare
     */
    public static OutputStage of(Trim trim, ActiveElement element, double delay) {
        for (double conductance : new double[] {trim.off(), trim.on()}) {
            if (element.amplitude(conductance) == 0) {
                throw new UnworkableException(
                        "a comparator needs an amplitude at its thresholds, and the oscillation has collapsed",
                        "threshold of the conductance",
                        conductance,
                        "S",
                        0,
                        element.smallSignalConductance());
            }
        }
        return new OutputStage(trim.onAmplitude(element), trim.offAmplitude(element), delay);
    }

    /** The same without delay. */
    public OutputStage withoutDelay() {
        return new OutputStage(onAmplitude, offAmplitude, 0);
    }

    /** The levels to watch, in the order in which {@link #output} expects them, V. */
    double[] levels() {
        return new double[] {onAmplitude, offAmplitude};
    }

    /**
     * State of the comparator at a demodulated amplitude, V.
     *
     * @param before its state before, which it keeps between the two amplitudes
     */
    boolean compare(double demodulated, boolean before) {
        return demodulated <= onAmplitude || before && demodulated <= offAmplitude;
    }

    /**
     * Changes of the output.
     *
     * @param passages passages of {@link #levels()}
     * @param startsOn state of comparator and output at the beginning
     * @param end time up to which changes count, s
     */
    List<Change> output(List<Detector.Passage> passages, boolean startsOn, double end) {
        List<Change> changes = new ArrayList<>();
        boolean on = startsOn;
        for (Detector.Passage p : passages) {
            boolean now = on ? !(p.level() == 1 && p.rising()) : p.level() == 0 && !p.rising();
            if (now != on) {
                on = now;
                Change last = changes.isEmpty() ? null : changes.get(changes.size() - 1);
                if (last != null && last.time() > p.time()) {
                    // the change before has not reached the output yet
                    changes.remove(changes.size() - 1);
                } else {
                    changes.add(new Change(p.time() + delay, now));
                }
            }
        }
        changes.removeIf(c -> c.time() > end);
        return List.copyOf(changes);
    }
}
