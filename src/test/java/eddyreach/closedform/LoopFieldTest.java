package eddyreach.closedform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import eddyreach.numerics.GaussLegendre;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoopFieldTest {

    private static final RectangularCoil COIL = new RectangularCoil(2.5e-3, 5.5e-3, 2e-3, 100);

    /** Biot and Savart by the midpoint rule, which converges geometrically here. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.3", "1.2, -0.4", "1, 0.1", "3, 2", "1e-3, 0.5"})
    void loopAgreesWithBiotSavart(double r, double z) {
        int n = 4000;
        double hr = 0;
        double hz = 0;
        for (int i = 0; i < n; i++) {
            double phi = 2 * Math.PI * (i + 0.5) / n;
            double dx = r - Math.cos(phi);
            double dy = -Math.sin(phi);
            double cube = Math.pow(dx * dx + dy * dy + z * z, 1.5);
            hr += z * Math.cos(phi) / cube / (2 * n);
            hz += -(dx * Math.cos(phi) + dy * Math.sin(phi)) / cube / (2 * n);
        }
        LoopField.Vector h = LoopField.loop(1, r, z, 1);
        assertThat(h.r()).isCloseTo(hr, within(1e-12));
        assertThat(h.z()).isCloseTo(hz, within(1e-12));
    }

    @Test
    void loopOnItsAxis() {
        LoopField.Vector h = LoopField.loop(0.01, 0, 0.02, 3);
        assertThat(h.r()).isZero();
        assertThat(h.z()).isCloseTo(3 * 1e-4 / (2 * Math.pow(5e-4, 1.5)), within(1e-10));
        assertThatThrownBy(() -> LoopField.loop(1, 1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    /** On the axis H = (j/2)[s ln((r2 + sqrt(r2^2 + s^2))/(r1 + sqrt(r1^2 + s^2)))], taken between the ends. */
    @ParameterizedTest
    @CsvSource({"-3", "0", "1.1", "2", "9"})
    void coilOnItsAxis(double zmm) {
        double z = zmm * 1e-3;
        double density = 100 / (2e-3 * 3e-3);
        double expected = density / 2 * (axial(z) - axial(z - 2e-3));
        assertThat(LoopField.coil(COIL, 0, z, 1).z()).isCloseTo(expected, within(1e-6 * 1e-4 * density * 3e-3));
    }

    private static double axial(double s) {
        double r1 = 2.5e-3;
        double r2 = 5.5e-3;
        return s * Math.log((r2 + Math.hypot(r2, s)) / (r1 + Math.hypot(r1, s)));
    }

    @ParameterizedTest
    @CsvSource({"1, 5", "4, 4", "8, 1", "4, -3"})
    void coilOutsideAgreesWithItsLoops(double rmm, double zmm) {
        double r = rmm * 1e-3;
        double z = zmm * 1e-3;
        GaussLegendre radii = GaussLegendre.of(30, 2.5e-3, 5.5e-3);
        GaussLegendre heights = GaussLegendre.of(30, 0, 2e-3);
        double hr = 0;
        double hz = 0;
        for (int i = 0; i < 30; i++) {
            for (int j = 0; j < 30; j++) {
                double current = 100 / 6e-6 * radii.weight(i) * heights.weight(j);
                LoopField.Vector h = LoopField.loop(radii.node(i), r, z - heights.node(j), current);
                hr += h.r();
                hz += h.z();
            }
        }
        LoopField.Vector h = LoopField.coil(COIL, r, z, 1);
        assertThat(h.r()).isCloseTo(hr, within(1e-9 * Math.hypot(hr, hz)));
        assertThat(h.z()).isCloseTo(hz, within(1e-9 * Math.hypot(hr, hz)));
    }

    /** Ampere's law round a rectangle inside the winding: the current through it. */
    @Test
    void ampereInsideTheWinding() {
        double ra = 3e-3;
        double rb = 4.5e-3;
        double za = 0.4e-3;
        double zb = 1.5e-3;
        GaussLegendre along = GaussLegendre.of(20, ra, rb);
        GaussLegendre up = GaussLegendre.of(20, za, zb);
        double circulation = 0;
        for (int i = 0; i < 20; i++) {
            circulation += along.weight(i)
                    * (LoopField.coil(COIL, along.node(i), zb, 1).r()
                            - LoopField.coil(COIL, along.node(i), za, 1).r());
            circulation += up.weight(i)
                    * (LoopField.coil(COIL, ra, up.node(i), 1).z()
                            - LoopField.coil(COIL, rb, up.node(i), 1).z());
        }
        assertThat(circulation).isCloseTo(100 / 6e-6 * 1.5e-3 * 1.1e-3, within(1e-7));
    }

    /** Inductance as the flux linked by the winding, from the field in the bore and inside the section. */
    @Test
    void fluxLinkageGivesTheInductance() {
        GaussLegendre heights = GaussLegendre.of(16, 0, 2e-3);
        GaussLegendre bore = GaussLegendre.of(16, 0, 2.5e-3);
        GaussLegendre build = GaussLegendre.of(24, 2.5e-3, 5.5e-3);
        double linkage = 0;
        for (int j = 0; j < heights.size(); j++) {
            double row = 0;
            for (int i = 0; i < bore.size(); i++) {
                row += bore.weight(i)
                        * bore.node(i)
                        * LoopField.coil(COIL, bore.node(i), heights.node(j), 1).z();
            }
            for (int i = 0; i < build.size(); i++) {
                // flux at radius r links the turns wound outside r
                double share = (5.5e-3 - build.node(i)) / 3e-3;
                row += share
                        * build.weight(i)
                        * build.node(i)
                        * LoopField.coil(COIL, build.node(i), heights.node(j), 1)
                                .z();
            }
            linkage += heights.weight(j) / 2e-3 * 2 * Math.PI * 4e-7 * Math.PI * 100 * row;
        }
        // log singularities of H at the section's ends limit the plain Gauss rule
        assertThat(linkage / CoilInductance.rectangular(COIL)).isCloseTo(1, within(1e-5));
    }
}
