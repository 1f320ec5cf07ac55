package eddyreach.oscillator;

import eddyreach.numerics.Require;

/**
 * How far a ferrite core in an external field is from saturation.
 *
 * <p>In an even field B0 a body of permeability mu_r and demagnetising factor N carries {@code B = B0 mu_r/(1 + N (mu_r - 1))}: exact for an ellipsoid
 * (J. A. Osborn, Phys. Rev. 67 (1945) 351 has N), an estimate for a pot core. The core's own flux density of the oscillation adds.
 *
 * @param saturation stated flux density at which the core counts as saturated, T
 * @param concentration flux density in the core over that of the external field
 * @param own largest flux density in the core by the oscillation, T, peak
 */
public record CoreSaturation(double saturation, double concentration, double own) {

    public CoreSaturation {
        UnworkableException.require("saturation flux density", saturation, "T", Double.MIN_NORMAL, Double.MAX_VALUE);
        Require.positive("concentration", concentration, "");
        UnworkableException.require("flux density of the oscillation", own, "T", 0, saturation);
    }

    /**
     * Flux density inside over outside.
     *
     * @param relativePermeability mu_r, at least 1
     * @param demagnetisingFactor N, 0 to 1
     */
    public static double concentration(double relativePermeability, double demagnetisingFactor) {
        UnworkableException.require("relative permeability", relativePermeability, "", 1, Double.MAX_VALUE);
        UnworkableException.require("demagnetising factor", demagnetisingFactor, "", 0, 1);
        return relativePermeability / (1 + demagnetisingFactor * (relativePermeability - 1));
    }

    /** Largest external flux density, T, that leaves the core unsaturated. */
    public double largestExternal() {
        return (saturation - own) / concentration;
    }

    /** The saturation over what an external flux density, T, and the oscillation make together: saturated below 1. */
    public double margin(double external) {
        return saturation / (own + concentration * Require.notNegative("external flux density", external, "T"));
    }
}
