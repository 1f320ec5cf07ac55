package eddyreach.field.join;

import static eddyreach.field.axial.ReferenceSwitch.MM;
import static eddyreach.field.axial.ReferenceSwitch.OMEGA;
import static eddyreach.field.axial.ReferenceSwitch.SCALE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.LoopField;
import eddyreach.closedform.RectangularCoil;
import eddyreach.closedform.SmallBodies;
import eddyreach.closedform.SphereInField;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.targets.BodyTarget;
import eddyreach.field.targets.PlateTarget;
import eddyreach.field.targets.SphereTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.numerics.GaussLegendre;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** Targets beside the axis of the switch. */
class OffAxisTest {

    private static final Band BAND = new Band(OMEGA, 1.15 * OMEGA);
    private static final double RADIUS = 18 * MM / Math.sqrt(Math.PI);
    private static final Resolution FINE = Resolution.FINE.withoutFields();
    private static final Resolution COARSE = Resolution.COARSE.withoutFields();

    private static SwitchField side(List<Part> parts, Resolution resolution, WaveBasis basis) {
        return new SwitchField(parts, w -> ReferenceSwitch.COIL, basis, BAND, 20, resolution, SCALE);
    }

    private static BodyTarget body(Section section, Material material, Resolution resolution, WaveBasis basis) {
        Part part = new Part("body", Role.TARGET, section, material);
        return new BodyTarget(List.of(part), basis, BAND, 20, resolution, SCALE);
    }

    private static void assertClose(Complex actual, Complex expected, double tolerance) {
        assertThat(actual.subtract(expected).abs())
                .as("%s against %s", actual, expected)
                .isLessThan(tolerance * expected.abs());
    }

    /**
     * The reference switch without its tube before a steel disc at 3.5 mm: dR at 6 and 10 mm offset over dR on the axis by an
     * independent three-dimensional edge-element solution, whose own error is below 0.3 %.
     */
    @Test
    void againstAThreeDimensionalSolution() {
        WaveBasis basis = FINE.waves(SCALE, RADIUS, 10 * MM);
        SwitchField field = side(ReferenceSwitch.parts().subList(0, 3), FINE, basis);
        BodyTarget disc = body(new Section(0, RADIUS, 0, 1 * MM), ReferenceSwitch.STEEL, FINE, basis);
        OffAxisJoin join = field.beside(OMEGA);
        double axial = join.at(disc, 0).impedance(3.5 * MM).getReal();
        assertThat(join.at(disc, 6 * MM).impedance(3.5 * MM).getReal() / axial).isCloseTo(0.824, within(0.824e-2));
        assertThat(join.at(disc, 10 * MM).impedance(3.5 * MM).getReal() / axial).isCloseTo(0.460, within(0.46e-2));
    }

    @Test
    void noOffsetIsTheAxis() {
        SwitchField field = ReferenceSwitch.field(COARSE);
        BodyTarget disc = ReferenceSwitch.target(ReferenceSwitch.STEEL, COARSE);
        OffAxisChange change = field.beside(OMEGA).at(disc, 0).change(2 * MM);
        assertThat(change.dz()).isEqualTo(field.at(OMEGA).impedance(disc.at(OMEGA), 2 * MM));
        assertThat(change.truncation()).isZero();
        // and the orders approach it
        assertClose(field.beside(OMEGA).at(disc, 1e-9).impedance(2 * MM), change.dz(), 1e-9);
    }

    /** An endless plate by orders about any axis is the endless plate: the shift's algebra alone, without any mesh of the target. */
    @Test
    void plateByOrders() {
        SwitchField field = ReferenceSwitch.field(COARSE);
        PlateTarget plate = new PlateTarget(LayeredPlate.single(58e6, 1, 1 * MM), field.basis());
        TargetField byOrders = new TargetField() {
            @Override
            public Reflection at(double omega) {
                return at(0, omega);
            }

            @Override
            public Reflection at(int order, double omega) {
                Reflection.Diagonal d = (Reflection.Diagonal) plate.at(order, omega);
                int n = d.re().length;
                double[][] full = new double[2][n * n];
                for (int i = 0; i < n; i++) {
                    full[0][i * (n + 1)] = d.re()[i];
                    full[1][i * (n + 1)] = d.im()[i];
                }
                return new Reflection.Full(full[0], full[1]);
            }
        };
        for (double offset : new double[] {0.5 * MM, 3 * MM, 9 * MM}) {
            for (double gap : new double[] {1 * MM, 4 * MM}) {
                Complex axial = field.at(OMEGA).impedance(plate.at(OMEGA), gap);
                Complex beside = field.beside(OMEGA, 1e-7).at(byOrders, offset).impedance(gap);
                assertClose(beside, axial, 2e-7);
                assertThat(field.beside(OMEGA).at(plate, offset).impedance(gap)).isEqualTo(axial);
            }
        }
    }

    /** A disc four times as wide as the core, anywhere but at its edge, is the endless plate. */
    @Test
    void wideDiscIsAPlate() {
        double radius = 4 * SCALE;
        WaveBasis basis = FINE.waves(SCALE, radius, 8 * MM);
        SwitchField field = side(ReferenceSwitch.parts().subList(0, 3), FINE, basis);
        BodyTarget disc = body(new Section(0, radius, 0, 0.5 * MM), ReferenceSwitch.COPPER, FINE, basis);
        PlateTarget plate = new PlateTarget(LayeredPlate.single(58e6, 1, 0.5 * MM), basis);
        for (double offset : new double[] {4 * MM, 8 * MM}) {
            for (double gap : new double[] {1.5 * MM, 4 * MM}) {
                // at 8 mm the edge is 20 mm away, where the field of the coil has fallen to a hundredth
                assertClose(
                        field.beside(OMEGA).at(disc, offset).impedance(gap),
                        field.beside(OMEGA).at(plate, offset).impedance(gap),
                        1e-3);
            }
        }
    }

    /** What is left out is no more than what is said; the orders needed grow with offset and nearness. */
    @Test
    void ordersConverge() {
        WaveBasis basis = COARSE.waves(SCALE, RADIUS, 12 * MM);
        SwitchField field = side(ReferenceSwitch.parts(), COARSE, basis);
        BodyTarget disc = body(new Section(0, RADIUS, 0, 1 * MM), ReferenceSwitch.STEEL, COARSE, basis);
        int before = 0;
        for (double offset : new double[] {1 * MM, 4 * MM, 8 * MM, 12 * MM}) {
            for (double gap : new double[] {1 * MM, 3 * MM}) {
                Complex exact = field.beside(OMEGA, 1e-7).at(disc, offset).impedance(gap);
                int orders = 0;
                for (double tolerance : new double[] {1e-2, 1e-3, 1e-4}) {
                    OffAxisChange change =
                            field.beside(OMEGA, tolerance).at(disc, offset).change(gap);
                    double error = change.dz().subtract(exact).abs();
                    assertThat(error)
                            .as("%s mm beside, gap %s mm, tolerance %s", offset / MM, gap / MM, tolerance)
                            .isLessThan(change.truncation() + 1e-7 * exact.abs());
                    assertThat(change.truncation()).isLessThan(tolerance * exact.abs());
                    assertThat(change.targetOrders()).isGreaterThanOrEqualTo(orders);
                    orders = change.targetOrders();
                }
                if (gap == 1 * MM) {
                    assertThat(orders).isGreaterThan(before);
                    before = orders;
                }
            }
        }
    }

    /** A target that answers up to an azimuthal order alone. */
    private record UpTo(TargetField whole, int highest) implements TargetField {

        @Override
        public Reflection at(double omega) {
            return whole.at(omega);
        }

        @Override
        public Reflection at(int order, double omega) {
            Reflection.Full full = (Reflection.Full) whole.at(order, omega);
            return order <= highest
                    ? full
                    : new Reflection.Full(new double[full.re().length], new double[full.im().length]);
        }
    }

    /** What is left of dZ shrinks with each azimuthal order, to 0.1 % with order 5 at 6 mm and order 7 at 10 mm, and to nothing. */
    @Test
    void eachOrderLeavesLess() {
        WaveBasis basis = FINE.waves(SCALE, RADIUS, 10 * MM);
        SwitchField field = side(ReferenceSwitch.parts(), FINE, basis);
        BodyTarget disc = body(new Section(0, RADIUS, 0, 1 * MM), ReferenceSwitch.STEEL, FINE, basis);
        int[] sufficient = {5, 7};
        double[] offsets = {6 * MM, 10 * MM};
        for (int i = 0; i < offsets.length; i++) {
            Complex all = field.beside(OMEGA, 1e-9).at(disc, offsets[i]).impedance(3.5 * MM);
            double[] left = new double[15];
            for (int m = 0; m < left.length; m++) {
                Complex dz = field.beside(OMEGA, 1e-9)
                        .at(new UpTo(disc, m), offsets[i])
                        .impedance(3.5 * MM);
                left[m] = dz.subtract(all).abs() / all.abs();
                assertThat(left[m]).as("order %d", m).isLessThan(m == 0 ? 1 : left[m - 1]);
            }
            assertThat(left[sufficient[i]]).isLessThan(1e-3);
            assertThat(left[sufficient[i] - 2]).isGreaterThan(1e-3);
            assertThat(left[14]).isLessThan(1e-6);
        }
    }

    private static final RectangularCoil AIR = new RectangularCoil(2.5e-3, 5.5e-3, 2e-3, 100);

    /** A coil without core: its waves are exact, and nothing is reflected twice. */
    private static SwitchField airCoil(WaveBasis basis) {
        CoilRegion region = new CoilRegion(new Section(2.5e-3, 5.5e-3, -2e-3, 0), 100, 0);
        return new SwitchField(List.of(), w -> region, basis, BAND, 20, COARSE, 5.5e-3);
    }

    /**
     * A weakly magnetic disc: to first order in chi its change of inductance per ampere squared is mu0 chi times the integral of the
     * squared field of the coil over it, here with the closed field of the coil. chi = 1e-3, so that the next order is below 1e-3.
     */
    @Test
    void weaklyMagneticDisc() {
        WaveBasis basis = WaveBasis.of(48, 24 / 5.5e-3);
        SwitchField coil = airCoil(basis);
        double chi = 1e-3;
        double radius = 3e-3;
        double height = 1e-3;
        double gap = 1.5e-3;
        Material weak = ReferenceSwitch.material("weak", 0, 1 + chi, 0);
        BodyTarget disc = body(new Section(0, radius, 0, height), weak, FINE, basis);
        for (double offset : new double[] {0, 2e-3, 5e-3, 9e-3}) {
            double expected = OMEGA * Material.MU0 * chi * squaredField(offset, radius, gap, height);
            Complex dz = coil.beside(OMEGA, 1e-5).at(disc, offset).impedance(gap);
            assertThat(dz.getImaginary() / expected).as("offset %s", offset).isCloseTo(1, within(1e-3));
            assertThat(dz.getReal()).isZero();
        }
    }

    /** The integral of H^2 for one ampere over a cylinder beside the air coil. */
    private static double squaredField(double offset, double radius, double gap, double height) {
        GaussLegendre rule = GaussLegendre.of(7, 0, 1);
        int angles = 16;
        double sum = 0;
        for (int i = 0; i < rule.size(); i++) {
            double rho = radius * rule.node(i);
            for (int a = 0; a < angles; a++) {
                double phi = Math.PI * (a + 0.5) / angles;
                double r = Math.hypot(offset + rho * Math.cos(phi), rho * Math.sin(phi));
                for (int q = 0; q < rule.size(); q++) {
                    // the closed form has the coil's lower end at 0
                    LoopField.Vector h = LoopField.coil(AIR, r, 2e-3 + gap + height * rule.node(q), 1);
                    double w = radius * rule.weight(i) * rho * 2 * Math.PI / angles * height * rule.weight(q);
                    sum += w * (h.r() * h.r() + h.z() * h.z());
                }
            }
        }
        return sum;
    }

    /**
     * A small thin disc of a metal so good that the field stays out: moment -(8/3) a^3 Hz across it (Landau and Lifshitz), nearly
     * none along it, so that dZ = -j w mu0 (8/3) a^3 Hz^2 at any offset. Its thickness of a hundredth of the radius adds about 2 % to the
     * moment, which the ratio to the axis does not feel; the field's curvature over the disc adds (a/h)^2, 0.5 %.
     */
    @Test
    void smallPerfectlyConductingDisc() {
        double a = 0.2e-3;
        WaveBasis basis = WaveBasis.of(48, 24 / 5.5e-3);
        SwitchField coil = airCoil(basis);
        Part disc = new Part(
                "disc", Role.TARGET, new Section(0, a, 0, a / 100), ReferenceSwitch.material("perfect", 1e13, 1, 0));
        BodyTarget target = new BodyTarget(List.of(disc), basis, BAND, 20, FINE, a);
        double gap = 2e-3;
        Complex axial = coil.beside(OMEGA).at(target, 0).impedance(gap);
        double hz = LoopField.coil(AIR, 0, 2e-3 + gap, 1).z();
        double expected = OMEGA * Material.MU0 * SmallBodies.perfectDiscMoment(a, 1) * hz * hz;
        assertThat(axial.getImaginary() / expected).isCloseTo(1, within(0.03));
        for (double offset : new double[] {1e-3, 3e-3, 4.5e-3, 8e-3}) {
            double there = LoopField.coil(AIR, offset, 2e-3 + gap, 1).z();
            Complex dz = coil.beside(OMEGA, 1e-5).at(target, offset).impedance(gap);
            // relative to the axis, since at 4.5 mm the axial field nearly vanishes
            assertThat(dz.getImaginary() / axial.getImaginary())
                    .as("offset %s", offset)
                    .isCloseTo(there * there / (hz * hz), within(6e-3));
        }
    }

    /**
     * A small ball of any metal anywhere near the coil: dZ = j w mu0 m H0 / I^2 with the moment of a sphere in a uniform field (Landau and Lifshitz,
     * section 59) along the coil's own field there, whatever its direction.
     */
    @Test
    void smallBallAnywhereNearACoil() {
        double a = 0.15e-3;
        WaveBasis basis = WaveBasis.of(64, 24 / 5.5e-3);
        SwitchField coil = airCoil(basis);
        for (Material m : List.of(ReferenceSwitch.COPPER, ReferenceSwitch.STEEL)) {
            TargetField ball = new SphereTarget("ball", a, m, basis, 20);
            Complex moment = SphereInField.momentFactor(a, m.conductivity(20), m.permeability(), OMEGA)
                    .multiply(2 * Math.PI * a * a * a);
            for (double gap : new double[] {1.5e-3, 4e-3}) {
                for (double offset : new double[] {0.5e-3, 2.5e-3, 4e-3, 5.5e-3, 9e-3}) {
                    LoopField.Vector h = LoopField.coil(AIR, offset, 2e-3 + gap + a, 1);
                    Complex expected = moment.multiply(h.r() * h.r() + h.z() * h.z())
                            .multiply(new Complex(0, OMEGA * Material.MU0));
                    assertClose(coil.beside(OMEGA, 1e-4).at(ball, offset).impedance(gap), expected, 0.01);
                }
            }
        }
    }

    /** Meshes of the target and of the switch beside the next finer ones, 6 mm off the axis: within 0.1 %, and the coarse one within 0.5 %. */
    @Test
    void meshesConverge() {
        Resolution finer = Resolution.LADDER.get(2).withoutFields();
        WaveBasis basis = FINE.waves(SCALE, RADIUS, 6 * MM);
        SwitchField field = side(ReferenceSwitch.parts(), FINE, basis);
        SwitchField finerField = side(ReferenceSwitch.parts(), finer, basis);
        Section[] sections = {
            new Section(0, RADIUS, 0, 1 * MM),
            new Section(0, RADIUS, 0, 1 * MM),
            new Section(0, RADIUS, 0, 0.01 * MM),
            new Section(RADIUS - 1 * MM, RADIUS, 0, 5 * MM)
        };
        Material[] materials = {
            ReferenceSwitch.STEEL, ReferenceSwitch.STAINLESS, ReferenceSwitch.ALUMINIUM, ReferenceSwitch.BRASS
        };
        for (int i = 0; i < sections.length; i++) {
            BodyTarget coarseBody = body(sections[i], materials[i], COARSE, basis);
            BodyTarget fineBody = body(sections[i], materials[i], FINE, basis);
            BodyTarget finerBody = body(sections[i], materials[i], finer, basis);
            Complex best = field.beside(OMEGA).at(finerBody, 6 * MM).impedance(2 * MM);
            assertClose(field.beside(OMEGA).at(fineBody, 6 * MM).impedance(2 * MM), best, 1e-3);
            assertClose(field.beside(OMEGA).at(coarseBody, 6 * MM).impedance(2 * MM), best, 5e-3);
            if (i == 0) {
                assertClose(finerField.beside(OMEGA).at(finerBody, 6 * MM).impedance(2 * MM), best, 1e-3);
            }
        }
    }

    @Test
    void refusals() {
        SwitchField field = ReferenceSwitch.field(COARSE);
        BodyTarget disc = ReferenceSwitch.target(ReferenceSwitch.STEEL, COARSE);
        assertThatThrownBy(() -> field.beside(OMEGA).at(disc, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> field.beside(OMEGA).at(disc, -1e-3)).isInstanceOf(IllegalArgumentException.class);
        TargetField axialOnly = disc::at;
        assertThatThrownBy(() -> field.beside(OMEGA).at(axialOnly, 1e-3).impedance(1e-3))
                .isInstanceOf(UnsupportedOperationException.class);
    }
}
