package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.UnworkableException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the output makes of a row of targets that passes evenly, once it has settled.
 *
 * @param frequency targets passing per second, Hz
 * @param targets number of targets watched
 * @param pulses the pulses that began while they passed, the first first
 * @param fault why not every target gives one clean pulse; empty when each does
 */
public record PulseTrain(double frequency, int targets, List<Pulse> pulses, Optional<Fault> fault) {

    /** Periods, and time constants of the switch, after which the pulses repeat. */
    private static final int PERIODS = 2;

    private static final int TIME_CONSTANTS = 10;
    private static final int WATCHED = 3;
    private static final int STEPS_PER_PITCH = 16;

    public PulseTrain {
        pulses = List.copyOf(pulses);
    }

    /**
     * A pulse of the output.
     *
     * @param start when the output goes on, s after the row began to pass
     * @param onTime how long it stays on, s
     * @param offTime how long it is then off, s
     */
    public record Pulse(double start, double onTime, double offTime) {}

    /** Why a row of targets does not give one clean pulse each. */
    public enum Fault {
        /** The output never goes on. */
        NEVER_ON,
        /** The output never goes off. */
        NEVER_OFF,
        /** Targets are missed. */
        MISSED,
        /** Targets give more than one pulse. */
        SEVERAL,
        /** The output is on for too short a time. */
        SHORT_ON,
        /** The output is off for too short a time. */
        SHORT_OFF
    }

    /**
     * Lets a row pass.
     *
     * @param timing the switch
     * @param teeth the row
     * @param frequency targets passing per second, Hz
     * @param shortest shortest time for which a clean pulse is on, and off, s
     */
    public static PulseTrain of(Timing timing, Teeth teeth, double frequency, double shortest) {
        UnworkableException.require("frequency of the targets", frequency, "Hz", Double.MIN_NORMAL, Double.MAX_VALUE);
        Require.notNegative("shortest pulse", shortest, "s");
        double speed = frequency * teeth.pitch();
        double settled = (PERIODS + Math.ceil(TIME_CONSTANTS * timing.timeConstant() * frequency)) / frequency;
        double end = settled + WATCHED / frequency;
        List<OutputStage.Change> changes =
                timing.changes(t -> teeth.at(t * speed), end + 1.5 / frequency, 1 / (STEPS_PER_PITCH * frequency));
        List<Pulse> pulses = new ArrayList<>();
        for (int i = 0; i + 2 < changes.size(); i++) {
            OutputStage.Change on = changes.get(i);
            if (on.on() && on.time() >= settled && on.time() < end) {
                double off = changes.get(i + 1).time();
                pulses.add(
                        new Pulse(on.time(), off - on.time(), changes.get(i + 2).time() - off));
            }
        }
        boolean onAtTheEnd = changes.isEmpty()
                ? timing.output().compare(timing.detector().settled(teeth.at(0)).demodulated(), false)
                : changes.get(changes.size() - 1).on();
        return new PulseTrain(frequency, WATCHED, pulses, fault(pulses, onAtTheEnd, frequency, shortest));
    }

    private static Optional<Fault> fault(List<Pulse> pulses, boolean onAtTheEnd, double frequency, double shortest) {
        if (pulses.isEmpty()) {
            return Optional.of(onAtTheEnd ? Fault.NEVER_OFF : Fault.NEVER_ON);
        }
        for (Pulse p : pulses) {
            double periods = (p.onTime + p.offTime) * frequency;
            if (periods > 1.5) {
                return Optional.of(Fault.MISSED);
            }
            if (periods < 0.5) {
                return Optional.of(Fault.SEVERAL);
            }
        }
        if (pulses.size() != WATCHED) {
            return Optional.of(pulses.size() < WATCHED ? Fault.MISSED : Fault.SEVERAL);
        }
        if (pulses.stream().anyMatch(p -> p.onTime < shortest)) {
            return Optional.of(Fault.SHORT_ON);
        }
        return pulses.stream().anyMatch(p -> p.offTime < shortest) ? Optional.of(Fault.SHORT_OFF) : Optional.empty();
    }

    /** Whether each target gives one clean pulse. */
    public boolean clean() {
        return fault.isEmpty();
    }

    /** Shortest time for which the output is on, s; 0 without a pulse. */
    public double shortestOn() {
        return pulses.stream().mapToDouble(Pulse::onTime).min().orElse(0);
    }

    /** Shortest time for which the output is off, s; 0 without a pulse. */
    public double shortestOff() {
        return pulses.stream().mapToDouble(Pulse::offTime).min().orElse(0);
    }

    /** Share of the time for which the output is on; 0 without a pulse. */
    public double duty() {
        double on = pulses.stream().mapToDouble(Pulse::onTime).sum();
        double off = pulses.stream().mapToDouble(Pulse::offTime).sum();
        return on == 0 ? 0 : on / (on + off);
    }
}
