package eddyreach.field.axial;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.materials.Material;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/**
 * What the parts of a layout are made of at one frequency, by part.
 *
 * @param nuRe real part of the relative reluctivity 1/mu_r
 * @param nuIm imaginary part of 1/mu_r, positive for a lossy medium
 * @param loss w mu0 sigma, 1/m2
 */
public record Media(double[] nuRe, double[] nuIm, double[] loss) {

    /**
     * @param parts the parts
     * @param windingLoss loss part mu'' of the winding, for a part of that role
     * @param omega angular frequency, rad/s
     * @param celsius temperature
     */
    public static Media of(List<Part> parts, double windingLoss, double omega, double celsius) {
        int n = parts.size();
        Media media = new Media(new double[n], new double[n], new double[n]);
        for (int p = 0; p < n; p++) {
            Material m = parts.get(p).material();
            Complex mu = parts.get(p).role() == Role.WINDING ? new Complex(1, -windingLoss) : m.permeability();
            Complex nu = mu.reciprocal();
            media.nuRe[p] = nu.getReal();
            media.nuIm[p] = nu.getImaginary();
            media.loss[p] = omega * Material.MU0 * m.conductivity(celsius);
        }
        return media;
    }

    /** The same with some parts replaced by air. */
    Media without(int first, int count) {
        Media media = new Media(nuRe.clone(), nuIm.clone(), loss.clone());
        for (int p = first; p < first + count; p++) {
            media.nuRe[p] = 1;
            media.nuIm[p] = 0;
            media.loss[p] = 0;
        }
        return media;
    }
}
