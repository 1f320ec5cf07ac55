package eddyreach.oscillator;

import eddyreach.numerics.Require;

/**
 * An external alternating magnetic field at the coil, as of welding: {@code e = w lambda B}, peak, in series with the coil.
 *
 * <p>lambda is the flux linkage per flux density of an even field: of an air coil the area of its turns, with a core more. By reciprocity it is the magnetic moment
 * that coil and core make for a current of 1 A. Across the capacitor
 * appears e/abs(1 - w^2 L C + j w R C), which is e itself far below resonance. It adds to the oscillation; a demodulator of peaks sees the sum, so that the
 * worst case is a deviation of the amplitude by all of it. The active element is taken as unaffected, which asks for a voltage well below the amplitude.
 *
 * @param frequency frequency of the field, Hz
 * @param fluxDensity flux density B of the undisturbed field along the axis, T, peak
 */
public record AlternatingField(double frequency, double fluxDensity) {

    public AlternatingField {
        UnworkableException.require("frequency of the field", frequency, "Hz", Double.MIN_NORMAL, Double.MAX_VALUE);
        UnworkableException.require("flux density of the field", fluxDensity, "T", 0, Double.MAX_VALUE);
    }

    /**
     * Flux linkage per flux density of an air coil, m2: {@code N pi (r1^2 + r1 r2 + r2^2)/3}, the mean area of its turns.
     *
     * @param turns number of turns
     * @param inner inner radius of the winding, m
     * @param outer outer radius of the winding, m
     */
    public static double linkageOfAirCoil(double turns, double inner, double outer) {
        Require.positive("number of turns", turns, "");
        Require.notNegative("inner radius", inner, "m");
        Require.positive("depth of the winding", outer - inner, "m");
        return turns * Math.PI * (inner * inner + inner * outer + outer * outer) / 3;
    }

    /**
     * Voltage induced in the coil, V, peak.
     *
     * @param linkage flux linkage per flux density, m2
     */
    public double induced(double linkage) {
        return 2 * Math.PI * frequency * fluxDensity * Require.positive("flux linkage", linkage, "m2");
    }

    /**
     * Voltage that appears across the tank, V, peak.
     *
     * @param linkage flux linkage per flux density, m2
     * @param inductance inductance of the coil, H
     * @param resistance series resistance of the coil, ohm
     * @param capacitance capacitance, F
     */
    public double acrossTank(double linkage, double inductance, double resistance, double capacitance) {
        double omega = 2 * Math.PI * frequency;
        Require.positive("inductance", inductance, "H");
        Require.notNegative("resistance", resistance, "ohm");
        Require.positive("capacitance", capacitance, "F");
        return induced(linkage)
                / Math.hypot(1 - omega * omega * inductance * capacitance, omega * resistance * capacitance);
    }

    /**
     * What the field does to the output in the worst case.
     *
     * @param voltage voltage across the tank, V, peak
     * @param ofAmplitude that voltage over the amplitude of the oscillation
     * @param ofDistance that voltage over the distance of the amplitude from the threshold: from 1 on the output may change
     * @param largestFluxDensity flux density at which it reaches the threshold, T
     */
    public record Effect(double voltage, double ofAmplitude, double ofDistance, double largestFluxDensity) {

        /** Whether the output may change. */
        public boolean mayDisturb() {
            return ofDistance >= 1;
        }
    }

    /**
     * The worst case.
     *
     * @param perTesla voltage across the tank for a field of 1 T of this frequency, V/T
     * @param amplitude amplitude of the oscillation, V
     * @param threshold the amplitude at which the output would change, V
     */
    public Effect effect(double perTesla, double amplitude, double threshold) {
        double distance = Math.abs(Require.positive("amplitude", amplitude, "V") - threshold);
        double voltage = Require.positive("voltage per tesla", perTesla, "V/T") * fluxDensity;
        return new Effect(voltage, voltage / amplitude, voltage / distance, distance / perTesla);
    }
}
