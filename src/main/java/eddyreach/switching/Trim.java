package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.UnworkableException;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * Thresholds of the switch as loss conductances of the tank: the output goes on when the conductance rises to the on
 * threshold and off when it falls below the off threshold.
 *
 * <p>A switch that evaluates something else of its tank has its thresholds in the unit of that {@link Principle}'s signal.
 *
 * <p>The demodulated amplitude is what the circuit compares. It falls as the conductance rises, so the two amplitudes
 * are the active element's at these conductances; where the oscillation has collapsed it is 0.
 *
 * @param on conductance at which the output goes on, S
 * @param off conductance below which it goes off again, S, less than on
 */
public record Trim(double on, double off) {

    private static final int TRIED = 100;
    private static final double MICRO = 1e6;

    public Trim {
        Require.positive("on threshold", on, "S");
        Require.positive("off threshold", off, "S");
        if (!(off < on)) {
            throw new IllegalArgumentException(
                    "off threshold " + off + " S: must be below the on threshold " + on + " S");
        }
    }

    /**
     * Factory trim: the switch goes on at s_r and off at s_r (1 + H) for the standard target, in free air, at
     * 23 degrees Celsius (IEC 60947-5-2).
     *
     * @param standard loss conductance of the tank, S, as a function of the distance of the standard target, m
     * @param effectiveDistance effective operating distance s_r, m
     * @param differentialTravel differential travel H as a fraction of s_r
     * @param free loss conductance of the tank without a target, S
     * @throws NoTrimException when the conductance does not fall from s_r to s_r (1 + H), or not below that without a target, so that
     *     no such trim exists
     */
    public static Trim atFactory(
            DoubleUnaryOperator standard, double free, double effectiveDistance, double differentialTravel) {
        Require.positive("conductance without a target", free, "S");
        Require.positive("effective operating distance", effectiveDistance, "m");
        Require.positive("differential travel", differentialTravel, "");
        double offDistance = effectiveDistance * (1 + differentialTravel);
        double on = standard.applyAsDouble(effectiveDistance);
        double off = standard.applyAsDouble(offDistance);
        if (off >= on) {
            throw new NoTrimException(String.format(
                    Locale.ROOT,
                    "the switch cannot be trimmed to %.4g mm: its standard target adds no more loss there (%.6g uS) than at the switch-off"
                            + " distance of %.4g mm (%.6g uS); first lower the rated distance",
                    effectiveDistance * 1e3,
                    on * MICRO,
                    offDistance * 1e3,
                    off * MICRO));
        }
        if (free >= off) {
            throw new NoTrimException(String.format(
                    Locale.ROOT,
                    "the switch cannot be trimmed to %.4g mm: with the standard target at the switch-off distance of %.4g mm its tank loses no"
                            + " more than without a target (%.6g uS), so the output would never release; first lower the rated distance or"
                            + " bring the coil nearer to the face",
                    effectiveDistance * 1e3,
                    offDistance * 1e3,
                    free * MICRO));
        }
        return new Trim(on, off);
    }

    /**
     * The same for any signal that falls with the distance, whatever it is without a target.
     *
     * @param signal its name, for the message
     * @param standard the signal as a function of the distance of the standard target, m
     * @throws UnworkableException when the differential travel exceeds s_r, or the signal does not fall from s_r to s_r (1 + H), with the
     *     differential travels for which it does
     */
    static Trim ofSignal(
            String signal, DoubleUnaryOperator standard, double effectiveDistance, double differentialTravel) {
        Require.positive("effective operating distance", effectiveDistance, "m");
        Require.positive("differential travel", differentialTravel, "");
        UnworkableException.require("differential travel", differentialTravel, "", 0, 1);
        double offDistance = effectiveDistance * (1 + differentialTravel);
        double on = standard.applyAsDouble(effectiveDistance);
        double off = standard.applyAsDouble(offDistance);
        if (off >= on) {
            double most = reachable(standard, effectiveDistance, differentialTravel, on);
            throw new UnworkableException(
                    String.format(
                            Locale.ROOT,
                            "the switch cannot be trimmed: before its standard target %s should fall from %.6g mm to the switch-off distance"
                                    + " of %.6g mm, but it does not",
                            signal,
                            effectiveDistance * 1e3,
                            offDistance * 1e3),
                    "differential travel",
                    differentialTravel,
                    "",
                    most > 0 ? 0 : 1,
                    most);
        }
        return new Trim(on, off);
    }

    /** Largest differential travel, to 1 % of the one asked for, up to which the conductance stays below that at s_r; 0 when it rises there. */
    private static double reachable(DoubleUnaryOperator standard, double distance, double asked, double on) {
        int reached = 0;
        while (reached < TRIED && standard.applyAsDouble(distance * (1 + asked * (reached + 1) / TRIED)) < on) {
            reached++;
        }
        return asked * reached / TRIED;
    }

    /** Amplitude at and below which the output goes on, V; 0 when it goes on by the collapse of the oscillation. */
    public double onAmplitude(ActiveElement element) {
        return element.amplitude(on);
    }

    /** Amplitude above which the output goes off, V. */
    public double offAmplitude(ActiveElement element) {
        return element.amplitude(off);
    }
}
