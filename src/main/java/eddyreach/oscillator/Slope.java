package eddyreach.oscillator;

import eddyreach.numerics.Require;

/** Slopes of an active element's characteristic. */
public final class Slope {

    /** Step of the numerical derivative: errors of third order and of rounding are both about 1e-10. */
    private static final double STEP = 1e-5;

    private Slope() {}

    /** Change of the negative conductance with the amplitude, dGm/dA, S/V; not positive. */
    public static double ofConductance(ActiveElement element, double amplitude) {
        Require.positive("amplitude", amplitude, "V");
        return (element.conductance(amplitude * (1 + STEP)) - element.conductance(amplitude * (1 - STEP)))
                / (2 * STEP * amplitude);
    }

    /**
     * Change of the steady amplitude with the loss conductance, dA/dG, V/S, negative.
     *
     * @throws UnworkableException when the element cannot sustain an oscillation at that conductance
     */
    public static double ofAmplitude(ActiveElement element, double conductance) {
        double amplitude = element.amplitude(conductance);
        if (amplitude == 0) {
            throw new UnworkableException(
                    "the oscillation has collapsed",
                    "loss conductance of the tank",
                    conductance,
                    "S",
                    0,
                    element.smallSignalConductance());
        }
        return 1 / ofConductance(element, amplitude);
    }
}
