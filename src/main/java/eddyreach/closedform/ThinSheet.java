package eddyreach.closedform;

import eddyreach.materials.Material;

/**
 * A sheet much thinner than a skin depth: Gamma = -j w mu0 S / (2k + j w mu0 S) (Maxwell, Treatise, section 657 ff.; Smythe, Static
 * and Dynamic Electricity, 1950, chapter 11).
 *
 * <p>Its loss part -Im Gamma is largest, 1/2, at w mu0 S = 2k, that is at thickness k delta^2. The error against a layer of
 * thickness t is of the order of (t/delta)^2 and of k t.
 *
 * @param surfaceConductance S = sigma t, siemens
 */
public record ThinSheet(double surfaceConductance) implements Reflector {

    /** Refuses a conductance that is negative or no number. */
    public ThinSheet {
        Args.notNegative("surface conductance, S", surfaceConductance);
    }

    @Override
    public void reflection(double omega, double[] k, double[] re, double[] im) {
        for (int i = 0; i < k.length; i++) {
            double x = omega * Material.MU0 * surfaceConductance / (2 * k[i]);
            double scale = 1 / (1 + x * x);
            re[i] = -x * x * scale;
            im[i] = -x * scale;
        }
    }
}
