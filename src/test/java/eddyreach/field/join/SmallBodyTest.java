package eddyreach.field.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.mesh.MeshMaker.Fineness;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * Bodies in a wave much longer than themselves, u = J1(kr) exp(-kz): that is a uniform axial field H0 = k b / mu0 of amplitude b, and
 * what comes back is the field of a dipole, A = (mu0 m / 4 pi) int k J1(kr) exp(kz) dk. So T(k, k) = k^2 alpha / (4 pi)
 * for a body of polarisability alpha = m / H0, times exp(-2 k h) where its middle lies at height h.
 */
class SmallBodyTest {

    private static final double A = 0.01;
    private static final double K = 1e-5 / A;
    private static final double OMEGA = 2 * Math.PI * 1e5;

    /** alpha / a^3 of a cylinder of radius a. */
    private static Complex polarisability(double height, Material material, Fineness fine) {
        Part body = new Part("body", Role.TARGET, new Section(0, A, 0, height), material);
        WaveBasis one = new WaveBasis(new double[] {K}, new double[] {1});
        Resolution resolution = new Resolution(fine, fine, 1, 1, 1.15, true);
        BodyTarget target = new BodyTarget(List.of(body), one, new Band(OMEGA, 1.15 * OMEGA), 20, resolution, A);
        Reflection.Full t = (Reflection.Full) target.at(OMEGA);
        return new Complex(t.re()[0], t.im()[0]).multiply(4 * Math.PI * Math.exp(K * height) / (K * K * A * A * A));
    }

    /** Weakly conducting cylinder: the induced field is E = -j w mu0 H0 r / 2, so m = -j w mu0 sigma pi a^4 t H0 / 8. */
    @Test
    void weaklyConductingCylinder() {
        double height = 0.3 * A;
        double sigma = 1e-4 / (OMEGA * Material.MU0 * A * A);
        Complex alpha = polarisability(
                height, ReferenceSwitch.material("weak", sigma, 1, 0), new Fineness(3, 0.1, 1, 3, 0.6, 20));
        double expected = -1e-4 * Math.PI / 8 * height / A;
        assertThat(alpha.getImaginary() / expected).isCloseTo(1, within(1e-5));
    }

    /**
     * Magnetometric demagnetising factor N of a cylinder as the susceptibility chi goes to 0: 1 - K, K being Nagaoka's coefficient of
     * the diameter over the length (Joseph, J. Appl. Phys. 37 (1966) 4639; Chen, Brug and Goldfarb, IEEE Trans. Magn. 27
     * (1991) 3601; K from Rosa and Grover, Bull. Bureau of Standards 8 (1912), table 21). From alpha = V chi / (1 + N chi).
     */
    @Test
    void demagnetisingFactor() {
        double[][] table = {{1, 0.688423}, {2, 0.525510}, {0.5, 0.818136}};
        for (double[] row : table) {
            double height = 2 * A / row[0];
            double chi = 1e-3;
            Complex alpha = polarisability(
                    height, ReferenceSwitch.material("weak", 0, 1 + chi, 0), new Fineness(5, 0.02, 1, 3, 0.6, 40));
            double volume = Math.PI * height / A;
            double n = (volume * chi / alpha.getReal() - 1) / chi;
            assertThat(n).isCloseTo(1 - row[1], within(1e-4));
            assertThat(alpha.getImaginary()).isZero();
        }
    }
}
