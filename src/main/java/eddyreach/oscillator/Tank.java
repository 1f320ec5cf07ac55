package eddyreach.oscillator;

import eddyreach.numerics.Require;
import java.util.Optional;

/**
 * Parallel resonant circuit: a coil (L and R in series, both at the frequency in question) across a capacitor.
 *
 * <p>{@code Y = j w C + (R - j w L)/(R^2 + w^2 L^2)}. At resonance Im Y = 0, so {@code R^2 + w0^2 L^2 = L/C}:
 *
 * <pre>
 * w0^2 = 1/(LC) - (R/L)^2        G = Re Y(w0) = R/(R^2 + w0^2 L^2) = R C/L        Q = w0 L/R
 * </pre>
 *
 * Against an active element -Gm the free oscillation grows as {@code exp((Gm - G) t/(2C))}, with the same G, by
 * the characteristic equation {@code s^2 + s (R/L - Gm/C) + (1 - R Gm)/(LC) = 0}. There is no resonance when
 * {@code R^2 C >= L}. Any textbook on circuits has the formulas.
 *
 * @param capacitance capacitance C, F
 */
public record Tank(double capacitance) {

    public Tank {
        Require.positive("capacitance", capacitance, "F");
    }

    /**
     * State at resonance.
     *
     * @param omega angular frequency, rad/s
     * @param conductance loss conductance, S
     * @param quality quality of the coil at that frequency
     */
    public record Resonance(double omega, double conductance, double quality) {

        /** Frequency, Hz. */
        public double frequency() {
            return omega / (2 * Math.PI);
        }
    }

    /**
     * The tank whose undamped coil resonates at the given frequency: {@code C = L/(R^2 + w^2 L^2)}.
     *
     * @param inductance L, H
     * @param resistance R in series, ohm
     * @param frequency resonance wanted, Hz
     */
    public static Tank forFrequency(double inductance, double resistance, double frequency) {
        Require.positive("inductance", inductance, "H");
        Require.notNegative("resistance", resistance, "ohm");
        double reactance = 2 * Math.PI * Require.positive("frequency", frequency, "Hz") * inductance;
        return new Tank(inductance / (resistance * resistance + reactance * reactance));
    }

    /**
     * Loss conductance R C/L, S, which is also defined when the damping is too strong for a resonance.
     *
     * @param inductance L, H
     * @param resistance R in series, ohm
     */
    public double conductance(double inductance, double resistance) {
        Require.positive("inductance", inductance, "H");
        return Require.notNegative("resistance", resistance, "ohm") * capacitance / inductance;
    }

    /**
     * The resonance, or nothing when {@code R^2 C >= L}.
     *
     * @param inductance L, H
     * @param resistance R in series, ohm; with 0 the quality is infinite
     */
    public Optional<Resonance> resonance(double inductance, double resistance) {
        double conductance = conductance(inductance, resistance);
        double square = (1 - resistance * conductance) / (inductance * capacitance);
        if (square <= 0) {
            return Optional.empty();
        }
        double omega = Math.sqrt(square);
        return Optional.of(new Resonance(omega, conductance, omega * inductance / resistance));
    }

    /**
     * Angular frequency of the resonance, rad/s, or half of {@code 1/sqrt(LC)} where it would be lower or is none: damped so much (R^2 C/L
     * above 3/4) no oscillator runs, but its coil has to be taken at some frequency to tell that the damping goes on growing.
     *
     * @param inductance L, H
     * @param resistance R in series, ohm
     */
    public double frequency(double inductance, double resistance) {
        double least = 0.5 / Math.sqrt(Require.positive("inductance", inductance, "H") * capacitance);
        return resonance(inductance, resistance)
                .map(r -> Math.max(least, r.omega()))
                .orElse(least);
    }

    /**
     * Time constant 2C/G of the amplitude, s: of the free decay, and of the return to the steady state with a hard
     * limiter.
     *
     * @param conductance loss conductance, S
     */
    public double timeConstant(double conductance) {
        return 2 * capacitance / Require.positive("conductance", conductance, "S");
    }
}
