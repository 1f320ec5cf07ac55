package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.Resolution;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.numerics.GaussLegendre;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A coil on the axis of an endless bore in a perfect conductor, through the field solver.
 *
 * <p>The vector potential of a loop of radius a is (mu0 I a / pi) int I1(k r&lt;) K1(k r&gt;) cos(kz) dk (Smythe, Static and Dynamic
 * Electricity, from memory); the wall at b adds what makes the sum vanish there, -(mu0 I a / pi) int I1(ka) K1(kb)/I1(kb) I1(kr) cos(kz) dk.
 * Averaged over a rectangular section of N turns, r0 to r1 and of length l:
 *
 * <pre>dL = -2 mu0 N^2 int M(k)^2 (sin(kl/2)/(kl/2))^2 K1(kb)/I1(kb) dk,   M = int r I1(kr) dr / (r1 - r0)</pre>
 */
class CoilInBoreTest {

    private static final int TURNS = 10;

    @ParameterizedTest
    @CsvSource({"4.5e-3, 5.5e-3, 2e-3, 9e-3", "3e-3, 6e-3, 4e-3, 7e-3", "4.9e-3, 5.1e-3, 0.2e-3, 15e-3"})
    void inductanceFalls(double r0, double r1, double length, double bore) {
        CoilRegion coil = new CoilRegion(new Section(r0, r1, -length / 2, length / 2), TURNS, 0);
        // so good a conductor that its skin depth, 0.16 um, does not count
        Material perfect = new Material("perfect", "perfect", 1e14, 0, 1, 0, "test");
        Part wall = new Part("wall", Role.MOUNT, new Section(bore, bore + 5e-3, -12 * bore, 12 * bore), perfect);
        double omega = 2 * Math.PI * 100e3;
        Complex change = new DirectSolve(List.of(), coil, List.of(wall), omega, 20, Resolution.FINE, bore).change();
        double expected = change(r0, r1, length, bore);
        assertThat(change.getImaginary() / omega).isCloseTo(expected, within(1e-3 * Math.abs(expected)));
    }

    private static double change(double r0, double r1, double length, double bore) {
        double integral = integrate(
                k -> {
                    double mean = integrate(r -> r * i1(k * r), r0, r1, 24) / (r1 - r0);
                    double x = k * length / 2;
                    double shape = x < 1e-6 ? 1 : Math.sin(x) / x;
                    return mean * mean * shape * shape * k1(k * bore) / i1(k * bore);
                },
                0,
                // the integrand falls as exp(-2 k (b - r1))
                20 / (bore - r1),
                200);
        return -2 * Material.MU0 * TURNS * TURNS * integral;
    }

    private static double integrate(DoubleUnaryOperator f, double a, double b, int points) {
        GaussLegendre rule = GaussLegendre.of(points, a, b);
        double sum = 0;
        for (int i = 0; i < points; i++) {
            sum += rule.weight(i) * f.applyAsDouble(rule.node(i));
        }
        return sum;
    }

    /** (1/pi) int exp(x cos t) cos t dt from 0 to pi (Abramowitz and Stegun 9.6.19). */
    private static double i1(double x) {
        return integrate(t -> Math.exp(x * Math.cos(t)) * Math.cos(t), 0, Math.PI, 80) / Math.PI;
    }

    /** int exp(-x cosh t) cosh t dt (Abramowitz and Stegun 9.6.24), to where the integrand has died out. */
    private static double k1(double x) {
        double end = Math.log(2 * (50 + x) / x) + 1;
        return integrate(t -> Math.exp(-x * Math.cosh(t)) * Math.cosh(t), 0, end, 80);
    }
}
