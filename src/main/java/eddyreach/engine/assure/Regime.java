package eddyreach.engine.assure;

import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Layer;

/** How a target takes its loss. */
public enum Regime {
    /** Neither conducts nor is magnetic. */
    TRANSPARENT,
    /** Magnetic without conducting. */
    DRAWING,
    /** Thinner than its skin depth: its resistance decides. */
    RESISTOR,
    /** Thick against its skin depth, which is thin against the field: near a mirror. */
    MIRROR,
    /** Not magnetic and about as thick as its skin depth, which is wide enough to lose a fair part. */
    LOSSY,
    /** Magnetic and conducting: a thin skin of high loss. */
    MAGNETIC;

    /** Thickness in skin depths below which the current is nearly even through a sheet, and its resistance decides. */
    static final double THIN = 0.5;

    /** Thickness in skin depths above which a metal hides what is behind it. */
    static final double THICK = 2;

    /** Below this share of what the best thick metal takes, a metal's loss is little. */
    public static final double LITTLE = 0.2;

    /**
     * The regime of a layer.
     *
     * @param omega angular frequency, rad/s
     * @param wavenumber wavenumber that dominates at the target, 1/m
     */
    static Regime of(Layer front, double omega, double wavenumber) {
        Material m = front.material();
        if (!m.hasEffect()) {
            return TRANSPARENT;
        }
        if (m.conductivity20() == 0) {
            return DRAWING;
        }
        if (m.muReal() > 1) {
            return MAGNETIC;
        }
        double delta = m.skinDepth(omega, Temperature.AMBIENT);
        if (front.thickness() < THIN * delta) {
            return RESISTOR;
        }
        return thickShare(wavenumber * delta) < LITTLE ? MIRROR : LOSSY;
    }

    /** Loss of a thick metal with s = k mu_r delta, as a share of the most that a thick metal can take. */
    static double thickShare(double s) {
        return 2 * s / ((s + 1) * (s + 1) + 1) / (Math.sqrt(2) - 1);
    }
}
