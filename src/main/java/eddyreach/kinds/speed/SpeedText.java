package eddyreach.kinds.speed;

import eddyreach.report.words.Labels;
import eddyreach.switching.PulseTrain;
import eddyreach.switching.SpeedLimit;
import java.util.List;

/** The sentences of studies of the kind {@code speed}. */
final class SpeedText {

    /** What stands on every page of this kind. */
    static final List<String> NOT_MODELLED = List.of(
            "Teeth are discs of equal area. They pass in a straight line with parallel faces; the curvature of a wheel, the metal between its"
                    + " teeth and what the teeth do to each other are left out.",
            "Demodulator, delay and noise are what the study states or assumes, not measured on a switch; neighbour uses the same corner.",
            "Not modelled: eddy currents by the motion itself (negligible: the speed is far below the angular frequency times the size of the coil), edges of the output and cable, the input filter"
                    + " of the controller, which often misses pulses first.");

    private SpeedText() {}

    static String answer(SpeedResult r) {
        if (r.limit() instanceof SpeedLimit.NeverClean never) {
            return "No speed: even slowly passing, " + r.input().tooth().label() + " at "
                    + Labels.millimetres(r.input().distance()) + " mm does not give one clean pulse each: "
                    + never.train().fault().map(SpeedText::fault).orElse("") + ".";
        }
        if (r.limit() instanceof SpeedLimit.Unlimited) {
            return "No limit: with nothing that takes time and no shortest pulse every speed gives clean pulses.";
        }
        SpeedLimit.Limited limited = (SpeedLimit.Limited) r.limit();
        String most = "up to " + frequency(limited.frequency(), r.error()) + " pulses per second ("
                + speeds(r, limited.frequency()) + ") each tooth gives one clean pulse";
        String why = "; " + limit(limited.limiting()) + " limits it.";
        if (r.asked().isEmpty()) {
            return "At " + Labels.millimetres(r.input().distance()) + " mm, " + most + why;
        }
        PulseTrain asked = r.asked().get();
        String margin = Labels.significant(limited.frequency() / asked.frequency(), 3);
        return (asked.clean()
                        ? "Yes, with a margin of " + margin + ": "
                        : "No, the speed is too high by " + excess(r) + ": ")
                + Labels.significant(asked.frequency(), 4) + " pulses per second asked for, " + most + why;
    }

    private static String excess(SpeedResult r) {
        return "a factor of " + Labels.significant(r.asked().orElseThrow().frequency() / r.frequency(), 3);
    }

    private static String frequency(double hertz, double error) {
        return Labels.significant(hertz, 4) + (Double.isFinite(error) ? " ± " + Labels.significant(error, 1) : "");
    }

    /** The same frequency as speed and, of a wheel, as revolutions. */
    static String speeds(SpeedResult r, double frequency) {
        Wheel w = r.input().wheel();
        String speed = Labels.significant(w.speed(frequency), 3) + " m/s at a pitch of " + Labels.length(w.pitch());
        return w.teeth() == 0
                ? speed
                : Labels.significant(w.perMinute(frequency), 4) + " rpm with " + w.teeth() + " teeth, " + speed;
    }

    static String limit(SpeedLimit.Stage stage) {
        return switch (stage) {
            case OSCILLATOR -> "the oscillator, whose amplitude follows the loss late,";
            case DEMODULATOR -> "the filter of the demodulator";
            case DELAY -> "the delay of the output";
            case GEOMETRY -> "the geometry, that is the share of the pitch over which the output is on or off,";
        };
    }

    static String stage(SpeedLimit.Stage stage) {
        return switch (stage) {
            case OSCILLATOR -> "oscillator";
            case DEMODULATOR -> "demodulator";
            case DELAY -> "output delay";
            case GEOMETRY -> "geometry";
        };
    }

    static String fault(PulseTrain.Fault fault) {
        return switch (fault) {
            case NEVER_ON -> "the output never goes on";
            case NEVER_OFF -> "the output never goes off";
            case MISSED -> "teeth are missed";
            case SEVERAL -> "teeth give more than one pulse";
            case SHORT_ON -> "the output is on for too short a time";
            case SHORT_OFF -> "the output is off for too short a time";
        };
    }

    /** A time, always in microseconds below a millisecond. */
    static String time(double seconds) {
        return seconds < 1e-3
                ? Labels.significant(seconds * 1e6, 3) + " µs"
                : Labels.significant(seconds * 1e3, 3) + " ms";
    }
}
