package eddyreach.field.join;

import eddyreach.field.axial.Field;
import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.MeshField;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.materials.Material;
import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;

/**
 * A switch seen from afar: a magnetic dipole on its axis that also answers to a field along the axis.
 *
 * <p>A dipole m at the height c emits waves {@code b = mu0 m k exp(kc) / (4 pi)}; a uniform field B arrives as {@code a = B/k} at small k. So
 * the limits of the emitted waves and of the response at small wavenumbers are the moment, its height, and the polarisability.
 *
 * @param moment magnetic moment per ampere of the coil, m2
 * @param centre height of the dipole, m
 * @param polarisability moment per axial field H with the coil open, m3
 */
public record FarField(Complex moment, double centre, Complex polarisability) {

    /** What remains of a switch far away at an angular frequency, rad/s. */
    public static FarField of(SwitchField field, double omega) {
        double[][] link = field.link(omega);
        double[][] s = field.response(omega);
        WaveBasis basis = field.basis();
        Complex near = emitted(link, basis, FieldAccuracy.NEAR_NODE);
        Complex far = emitted(link, basis, FieldAccuracy.FAR_NODE);
        double k0 = basis.k()[FieldAccuracy.NEAR_NODE];
        double k1 = basis.k()[FieldAccuracy.FAR_NODE];
        Complex slope = far.subtract(near).divide(k1 - k0);
        Complex limit = near.subtract(slope.multiply(k0));
        double centre = slope.divide(limit).getReal();
        return new FarField(
                limit.multiply(4 * Math.PI / Material.MU0), centre, answer(s, basis, FieldAccuracy.NEAR_NODE));
    }

    /**
     * Axial moment per axial field H at the face, m3, with the coil open, in a field that dies out behind the face as exp(kz); between nodes
     * linear in k.
     *
     * @param field the switch
     * @param omega angular frequency, rad/s
     * @param k rate of the decay, 1/m
     */
    public static Complex polarisability(SwitchField field, double omega, double k) {
        double[][] s = field.response(omega);
        WaveBasis basis = field.basis();
        int i = 1;
        while (i < basis.size() - 1 && basis.k()[i] < k) {
            i++;
        }
        double t = (k - basis.k()[i - 1]) / (basis.k()[i] - basis.k()[i - 1]);
        return answer(s, basis, i - 1).multiply(1 - t).add(answer(s, basis, i).multiply(t));
    }

    private static Complex answer(double[][] s, WaveBasis basis, int i) {
        int at = i * basis.size() + i;
        double k = basis.k()[i];
        return new Complex(s[0][at], s[1][at]).multiply(4 * Math.PI / (basis.w()[i] * k * k));
    }

    /** Emitted wave over its wavenumber, T m3. */
    private static Complex emitted(double[][] link, WaveBasis basis, int i) {
        return new Complex(link[0][i], link[1][i]).divide(Math.sqrt(basis.w()[i]) * basis.k()[i]);
    }

    /**
     * Mutual inductance of two dipoles on one axis, H: {@code mu0 m1 m2 / (2 pi D^3)}.
     *
     * @param other the other switch, facing this one
     * @param gap distance between the faces, m
     */
    public Complex facing(FarField other, double gap) {
        double d = gap - centre - other.centre;
        return moment.multiply(other.moment).multiply(Material.MU0 / (2 * Math.PI * d * d * d));
    }

    /**
     * Mutual inductance of two dipoles side by side, axes parallel, H: {@code mu0 m1 m2 (3 cos^2 - 1) / (4 pi R^3)}.
     *
     * @param other the other switch, its face in the same plane
     * @param spacing distance of the axes, m
     */
    public Complex beside(FarField other, double spacing) {
        double height = centre - other.centre;
        double distance = Math.hypot(spacing, height);
        double share = 3 * (height / distance) * (height / distance) - 1;
        return moment.multiply(other.moment).multiply(Material.MU0 * share / (4 * Math.PI * Math.pow(distance, 3)));
    }

    /**
     * A computed field near the switch and the dipole's beyond: the mesh ends somewhere.
     *
     * @param near computed field of one ampere, without incoming waves, of a switch solved with {@link Resolution#remote}
     * @param radius distance from the dipole up to which it is taken, m
     */
    public Field around(Field near, double radius) {
        return (r, z) -> {
            MeshField.Samples out = new MeshField.Samples(r.length * z.length);
            int at = 0;
            for (double height : z) {
                int within = 0;
                while (within < r.length && Math.hypot(r[within], height - centre) <= radius) {
                    within++;
                }
                if (within > 0) {
                    copy(near.sample(Arrays.copyOf(r, within), new double[] {height}), out, at, within);
                }
                for (int i = within; i < r.length; i++) {
                    dipole(r[i], height - centre, at + i, out);
                }
                at += r.length;
            }
            return out;
        };
    }

    private static void copy(MeshField.Samples from, MeshField.Samples to, int at, int n) {
        System.arraycopy(from.aRe(), 0, to.aRe(), at, n);
        System.arraycopy(from.aIm(), 0, to.aIm(), at, n);
        System.arraycopy(from.brRe(), 0, to.brRe(), at, n);
        System.arraycopy(from.brIm(), 0, to.brIm(), at, n);
        System.arraycopy(from.bzRe(), 0, to.bzRe(), at, n);
        System.arraycopy(from.bzIm(), 0, to.bzIm(), at, n);
    }

    private void dipole(double r, double z, int at, MeshField.Samples out) {
        double square = r * r + z * z;
        double cube = square * Math.sqrt(square);
        double a = Material.MU0 / (4 * Math.PI) * r / cube;
        double br = Material.MU0 / (4 * Math.PI) * 3 * r * z / (cube * square);
        double bz = Material.MU0 / (4 * Math.PI) * (3 * z * z / square - 1) / cube;
        out.aRe()[at] = a * moment.getReal();
        out.aIm()[at] = a * moment.getImaginary();
        out.brRe()[at] = br * moment.getReal();
        out.brIm()[at] = br * moment.getImaginary();
        out.bzRe()[at] = bz * moment.getReal();
        out.bzIm()[at] = bz * moment.getImaginary();
    }
}
