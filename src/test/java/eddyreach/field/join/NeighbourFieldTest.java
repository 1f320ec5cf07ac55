package eddyreach.field.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.Loops;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.Field;
import eddyreach.field.axial.InventedSwitch;
import eddyreach.field.axial.MeshField;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.targets.FacingSwitch;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.mesh.MeshMaker.Fineness;
import eddyreach.numerics.GaussLegendre;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two switches near each other: mutual inductance against loops, dipoles and its own reverse, and what one does to the other. */
class NeighbourFieldTest {

    private static final double MM = 1e-3;
    private static final double OMEGA = 2 * Math.PI * 200e3;
    private static final Band BAND = new Band(OMEGA, 1.15 * OMEGA);
    private static final GaussLegendre RULE = GaussLegendre.of(4, 0, 1);

    /** Elements of 0.2 radii round the coil: a window's faces alone are not refined, whatever its size. */
    private static final Fineness EVEN = new Fineness(5, 0.02, 1, 2, 0.2, 20);

    private static final Resolution SMOOTH = new Resolution(EVEN, EVEN, 1, 1, 1.15, true);

    private static final CoilRegion COIL = new CoilRegion(new Section(4 * MM, 6 * MM, -3 * MM, -1 * MM), 80, 0);
    private static final double RADIUS = 6 * MM;

    private static SwitchField airCoil() {
        return new SwitchField(List.of(), w -> COIL, WaveBasis.of(48, 40 / RADIUS), BAND, 20, SMOOTH.remote(), RADIUS);
    }

    private static SwitchField of(InventedSwitch s, WaveBasis basis) {
        return of(s, basis, Resolution.FINE);
    }

    private static SwitchField of(InventedSwitch s, WaveBasis basis, Resolution resolution) {
        return new SwitchField(s.parts(), w -> s.coil(), basis, BAND, 20, resolution, s.scale());
    }

    private static Complex facing(SwitchField first, SwitchField other, double gap) {
        FacingSwitch neighbour = FacingSwitch.open(other);
        return neighbour.mutual(first.at(OMEGA).solve(neighbour.at(OMEGA), gap), OMEGA);
    }

    /** Of two windows, each cut into loops. */
    private static double ofLoops(DoubleBinaryOperator radii) {
        double sum = 0;
        for (int i = 0; i < RULE.size(); i++) {
            for (int j = 0; j < RULE.size(); j++) {
                double a = COIL.section().r0() + 2 * MM * RULE.node(i);
                double b = COIL.section().r0() + 2 * MM * RULE.node(j);
                sum += RULE.weight(i) * RULE.weight(j) * radii.applyAsDouble(a, b);
            }
        }
        return sum * COIL.turns() * COIL.turns();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 6, 30})
    void airCoilsFaceToFaceAgainstLoops(double millimetres) {
        double gap = millimetres * MM;
        double expected = 0;
        for (int i = 0; i < RULE.size(); i++) {
            for (int j = 0; j < RULE.size(); j++) {
                double planes = gap + 2 * MM + 2 * MM * (RULE.node(i) + RULE.node(j));
                expected += RULE.weight(i) * RULE.weight(j) * ofLoops((a, b) -> Loops.mutual(a, b, planes));
            }
        }
        Complex m = facing(airCoil(), airCoil(), gap);
        assertThat(m.getReal()).isCloseTo(expected, within(1e-3 * expected));
        assertThat(Math.abs(m.getImaginary())).isLessThan(1e-9 * expected);
    }

    /** Neumann's integral of two loops with parallel axes; the trapezoidal rule converges exponentially. */
    private static double neumann(double a, double b, double spacing, double planes) {
        int n = 48;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double p = 2 * Math.PI * i / n;
                double q = 2 * Math.PI * j / n;
                double x = spacing + b * Math.cos(q) - a * Math.cos(p);
                double y = b * Math.sin(q) - a * Math.sin(p);
                sum += Math.cos(p - q) / Math.sqrt(x * x + y * y + planes * planes);
            }
        }
        return Material.MU0 * a * b * Math.PI * sum / (n * n);
    }

    @ParameterizedTest
    @ValueSource(doubles = {13, 18, 36, 60})
    void airCoilsSideBySideAgainstNeumannsIntegral(double millimetres) {
        double spacing = millimetres * MM;
        double expected = 0;
        for (int i = 0; i < RULE.size(); i++) {
            for (int j = 0; j < RULE.size(); j++) {
                double planes = 2 * MM * (RULE.node(i) - RULE.node(j));
                expected += RULE.weight(i) * RULE.weight(j) * ofLoops((a, b) -> neumann(a, b, spacing, planes));
            }
        }
        SwitchField coil = airCoil();
        Field field = FarField.of(coil, OMEGA).around(coil.solveFree(OMEGA).field(), 12 * RADIUS);
        Complex m = SideBySide.mutual(field, field, spacing);
        assertThat(expected).isNegative();
        assertThat(m.getReal()).isCloseTo(expected, within(1e-3 * -expected));
    }

    /** Without a tube; for a long tube of metal see below. */
    @Test
    void tenRadiiAwayTheyAreDipoles() {
        InventedSwitch s = InventedSwitch.large();
        SwitchField field = of(s, Resolution.FINE.waves(s.scale(), 0), Resolution.FINE.remote());
        FarField far = FarField.of(field, OMEGA);
        double away = 10 * s.scale();
        Complex dipoles = far.facing(far, away);
        assertThat(facing(field, field, away).subtract(dipoles).abs()).isLessThan(0.02 * dipoles.abs());
        Field around = far.around(field.solveFree(OMEGA).field(), 12 * s.scale());
        Complex beside = SideBySide.mutual(around, around, away);
        assertThat(beside.subtract(far.beside(far, away)).abs()).isLessThan(0.02 * beside.abs());
    }

    /**
     * A tube of metal 40 mm long makes a switch a spread source, which is no dipole ten core radii away. Ten of its lengths away it is one, of
     * the moment and at the place that waves much longer than the tube show.
     */
    @Test
    void aLongTubeIsADipoleTenOfItsLengthsAway() {
        InventedSwitch s = InventedSwitch.medium();
        double length = 40 * MM;
        double away = 10 * length;
        WaveBasis longWaves = WaveBasis.of(24, 24 / away);
        Fineness body = Resolution.FINE.body();
        Fineness wide = new Fineness(body.degree(), body.corner(), body.skin(), body.growth(), body.cap(), 600);
        SwitchField field = of(s, longWaves, new Resolution(wide, wide, 24, 24, 1.15, true));
        FarField far = FarField.of(field, OMEGA);
        Complex facing = far.facing(far, away);
        assertThat(facing(field, field, away).subtract(facing).abs()).isLessThan(0.02 * facing.abs());
        Field computed = field.solveFree(OMEGA).field();
        Field around = far.around(computed, 40 * length);
        Complex beside = far.beside(far, away);
        assertThat(SideBySide.mutual(around, around, away).subtract(beside).abs())
                .isLessThan(0.02 * beside.abs());
        // its vector potential as the mesh has it: mu0 m / (4 pi r^2) beside the dipole
        MeshField.Samples there = computed.sample(new double[] {away}, new double[] {far.centre()});
        Complex a = far.moment().multiply(Material.MU0 / (4 * Math.PI * away * away));
        assertThat(new Complex(there.aRe()[0], there.aIm()[0]).subtract(a).abs())
                .isLessThan(2e-3 * a.abs());
        // and the waves that results are computed with give the same moment
        FarField usual = FarField.of(of(s, Resolution.FINE.waves(s.scale(), 0), Resolution.FINE.remote()), OMEGA);
        assertThat(usual.moment().subtract(far.moment()).abs())
                .isLessThan(0.01 * far.moment().abs());
    }

    /**
     * A cylinder as long as wide that is hardly magnetic answers with chi V / (1 + N chi), N = 0.3116 (magnetometric factor, Joseph 1966; from
     * memory).
     */
    @Test
    void polarisabilityOfAWeaklyMagneticCylinder() {
        double a = 5 * MM;
        double chi = 0.01;
        Part core = new Part(
                "core",
                Role.CORE,
                new Section(0, a, -12 * MM, -12 * MM + 2 * a),
                ReferenceSwitch.material("core", 0, 1 + chi, 0));
        CoilRegion coil = new CoilRegion(new Section(6 * MM, 7 * MM, -2 * MM, -1 * MM), 10, 0);
        SwitchField field = new SwitchField(
                List.of(core), w -> coil, WaveBasis.of(48, 40 / RADIUS), BAND, 20, SMOOTH.remote(), RADIUS);
        double expected = chi * Math.PI * a * a * 2 * a / (1 + 0.3116 * chi);
        Complex alpha = FarField.of(field, OMEGA).polarisability();
        assertThat(alpha.getReal()).isCloseTo(expected, within(0.02 * expected));
        // behind the face the field of such a wave is weaker by exp(-kz): once on the way in, once on the way out
        double k = 10;
        double there = expected * Math.exp(-2 * k * 7 * MM);
        assertThat(FarField.polarisability(field, OMEGA, k).getReal()).isCloseTo(there, within(0.02 * there));
    }

    /** Of two different switches either one may be the first: the gap is solved from the other side then. */
    @Test
    void reciprocity() {
        WaveBasis basis = Resolution.FINE.waves(
                InventedSwitch.small().scale(), 4 * InventedSwitch.medium().scale());
        SwitchField medium = of(InventedSwitch.medium(), basis);
        SwitchField small = of(InventedSwitch.small(), basis);
        for (double gap : new double[] {1 * MM, 5 * MM, 20 * MM}) {
            Complex there = facing(medium, small, gap);
            Complex back = facing(small, medium, gap);
            assertThat(back.subtract(there).abs()).isLessThan(1e-9 * there.abs());
        }
    }

    /** An open neighbour is metal and core, nothing else: both switches in one field problem, the neighbour as a target. */
    @Test
    void openPartnerAgainstBothInOneProblem() {
        InventedSwitch s = InventedSwitch.medium();
        SwitchField field = of(s, Resolution.FINE.waves(s.scale(), 2 * s.scale()));
        for (double gap : new double[] {2 * MM, 6 * MM}) {
            List<Part> mirrored = new ArrayList<>();
            for (Part p : s.parts()) {
                Section q = p.section();
                mirrored.add(new Part(
                        "other " + p.name(),
                        Role.TARGET,
                        new Section(q.r0(), q.r1(), gap - q.z1(), gap - q.z0()),
                        p.material()));
            }
            Complex direct =
                    new DirectSolve(s.parts(), s.coil(), mirrored, OMEGA, 20, Resolution.FINE, s.scale()).change();
            Complex joined = field.at(OMEGA).impedance(FacingSwitch.open(field).at(OMEGA), gap);
            assertThat(joined.subtract(direct).abs())
                    .as("%s against %s", joined, direct)
                    .isLessThan(3e-3 * direct.abs());
        }
    }

    /** With no target between them a closed neighbour adds w^2 M^2 / Z of the coupled circuits, with Z of the loop where it stands. */
    @Test
    void closedPartnerIsACoupledCircuit() {
        InventedSwitch s = InventedSwitch.medium();
        SwitchField field = of(s, Resolution.FINE.waves(s.scale(), 0));
        Complex z = field.impedance(OMEGA);
        for (double tuning : new double[] {0.8, 1.02, 1.3}) {
            double capacitor = z.getImaginary() / tuning;
            FacingSwitch open = FacingSwitch.open(field);
            FacingSwitch closed = FacingSwitch.closed(field, w -> z.add(new Complex(3, -capacitor)));
            double gap = 10 * MM;
            Complex without = field.at(OMEGA).impedance(open.at(OMEGA), gap);
            Complex with = field.at(OMEGA).impedance(closed.at(OMEGA), gap);
            Complex m = facing(field, field, gap);
            Complex loop = z.add(without).add(new Complex(3, -capacitor));
            Complex expected = m.multiply(m).multiply(OMEGA * OMEGA).divide(loop);
            assertThat(with.subtract(without).subtract(expected).abs()).isLessThan(1e-9 * expected.abs());
        }
    }

    @Test
    void aNeighbourFarOutDoesNothing() {
        InventedSwitch s = InventedSwitch.medium();
        SwitchField field = of(s, Resolution.FINE.waves(s.scale(), 0));
        FacingSwitch open = FacingSwitch.open(field);
        double near = field.at(OMEGA).impedance(open.at(OMEGA), 2 * s.scale()).abs();
        double far = field.at(OMEGA).impedance(open.at(OMEGA), 20 * s.scale()).abs();
        assertThat(far).as("as the sixth power of the distance").isLessThan(1e-5 * near);
    }
}
