package eddyreach.field.orders;

import static eddyreach.field.axial.ReferenceSwitch.MM;
import static eddyreach.field.axial.ReferenceSwitch.OMEGA;
import static eddyreach.field.axial.ReferenceSwitch.SCALE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.ThinSheet;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Media;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Residual;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.field.targets.PlateTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.linalg.FrontalFactor;
import eddyreach.materials.Material;
import eddyreach.mesh.MeshMaker.Fineness;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** Responses of switch and targets to waves that vary round the axis. */
class AzimuthalOrdersTest {

    private static final double RADIUS = 18 * MM / Math.sqrt(Math.PI);
    private static final Resolution COARSE = Resolution.COARSE;
    private static final WaveBasis BASIS = COARSE.waves(SCALE, 0);

    /** Waves that make up narrow spots. */
    private static final WaveBasis SPOT = WaveBasis.of(60, 20 / SCALE);

    private static List<Part> body(Section section, Material material) {
        return List.of(new Part("body", Role.TARGET, section, material));
    }

    private static Layout target(List<Part> parts) {
        return new Layout(parts, null, BASIS, -1, COARSE.target(), SCALE, OMEGA, 20);
    }

    private static OrderScatterer solve(OrderLayout layout, int order, double omega) {
        return new OrderScatterer(layout, Media.of(layout.base.parts, 0, omega, 20), layout.loads(order), order, omega);
    }

    /**
     * From the fields of all waves, each by back substitution: the products with the loads, all of them, agree with the Schur
     * complement, of which elimination computes one half; the equations hold; and the loss in the parts,
     * -Im(x^H K x) = int rho/(w mu0) |J|^2 + mu'' |H|^2, x being the whole potential there, is 2 Im S.
     */
    @Test
    void reciprocityAndEnergy() {
        Layout[] layouts = {
            new Layout(ReferenceSwitch.parts(), ReferenceSwitch.COIL, BASIS, 1, COARSE.body(), SCALE, OMEGA, 20),
            target(body(new Section(0, RADIUS, 0, 1 * MM), ReferenceSwitch.STEEL))
        };
        for (Layout base : layouts) {
            OrderLayout layout = new OrderLayout(base, OMEGA, 20);
            assertThat(layout.lifted).isTrue();
            for (int m : new int[] {1, 4}) {
                reciprocityAndEnergy(layout, m);
            }
        }
    }

    private static void reciprocityAndEnergy(OrderLayout layout, int m) {
        OrderLoads loads = layout.loads(m);
        OrderLayout.Pattern pattern = layout.pattern(loads.count());
        OrderSystem system = new OrderSystem(layout, Media.of(layout.base.parts, 0, OMEGA, 20), loads, m);
        FrontalFactor factor = new FrontalFactor(pattern.plan(), system, true);
        double[][][] s = {factor.schurRe(), factor.schurIm()};
        OrderScatterer solved = solve(layout, m, OMEGA);
        int n = loads.count();
        double worst = 0;
        double largest = 0;
        for (int j = 0; j < n; j += 5) {
            double[][] y = new double[2][n];
            y[0][j] = 1;
            double[][] x = factor.extend(y);
            double[][] product = product(layout.unknowns, pattern.elements(), system, x, n);
            double scale = Math.hypot(s[0][j][j], s[1][j][j]);
            for (int i = 0; i < n; i++) {
                // rows of the loads hold B^T x with x = -K^-1 B y
                double size = Math.sqrt(scale * Math.hypot(s[0][i][i], s[1][i][i]));
                int row = layout.unknowns + i;
                worst = Math.max(worst, Math.hypot(product[0][row] - s[0][i][j], product[1][row] - s[1][i][j]) / size);
                largest = Math.max(largest, Math.hypot(s[0][i][j], s[1][i][j]) / size);
            }
            double energy = 0;
            for (int u = 0; u < layout.unknowns; u++) {
                // the rows of the mesh must vanish, K x + B y = 0
                energy -= x[0][u] * product[3][u] - x[1][u] * product[2][u];
            }
            assertThat(energy / (2 * solved.im()[loads.wave(j)][loads.wave(j)]))
                    .as("order %d, wave %d", m, j)
                    .isCloseTo(1, within(1e-6));
            assertThat(Residual.of(pattern.elements(), layout.unknowns, system, x))
                    .isLessThan(1e-11);
        }
        assertThat(largest).isCloseTo(1, within(0.5));
        assertThat(worst).isLessThan(1e-9);
    }

    /** All rows of the whole matrix times x, and of K alone times x without the loads: real and imaginary parts. */
    private static double[][] product(int unknowns, int[][] elements, OrderSystem system, double[][] x, int loads) {
        int n = unknowns + loads;
        double[][] out = new double[4][n];
        double[] re = new double[40_000];
        double[] im = new double[40_000];
        for (int c = 0; c < elements.length; c++) {
            int[] u = elements[c];
            system.fill(c, re, im);
            int at = 0;
            for (int i = 0; i < u.length; i++) {
                for (int j = 0; j <= i; j++, at++) {
                    add(out, u[i], u[j], re[at], im[at], x, unknowns);
                    if (i != j) {
                        add(out, u[j], u[i], re[at], im[at], x, unknowns);
                    }
                }
            }
        }
        return out;
    }

    private static void add(double[][] out, int row, int column, double kr, double ki, double[][] x, int unknowns) {
        double re = kr * x[0][column] - ki * x[1][column];
        double im = kr * x[1][column] + ki * x[0][column];
        out[0][row] += re;
        out[1][row] += im;
        if (column < unknowns) {
            out[2][row] += re;
            out[3][row] += im;
        }
    }

    /**
     * A wide disc before a wave that is a narrow spot, psi = r^m exp(-(r/2h)^2): order m reflects -Gamma of the endless plate, the same
     * function in every order, and order 0, from the vector potential and thus by quite other equations, Gamma. The edge, 17 h away, is
     * beyond reach.
     */
    private static void everyOrderIsThePlate(Material material, double thickness, TargetField plate, double tolerance) {
        double h = 4 / BASIS.k()[BASIS.size() - 1];
        BodyTarget target = new BodyTarget(
                List.of(new Part("disc", Role.TARGET, new Section(0, 17 * h, 0, thickness), material)),
                SPOT,
                new Band(OMEGA, 1.15 * OMEGA),
                20,
                Resolution.FINE.withoutFields(),
                SCALE);
        for (int m = 0; m <= 6; m++) {
            Reflection.Full t = (Reflection.Full) target.at(m, OMEGA);
            Reflection.Diagonal gamma = (Reflection.Diagonal) plate.at(m, OMEGA);
            int n = SPOT.size();
            double[] p = new double[n];
            Complex expected = Complex.ZERO;
            for (int i = 0; i < n; i++) {
                double x = SPOT.k()[i] * h;
                p[i] = Math.sqrt(SPOT.w()[i]) * Math.pow(x, m + 1) * Math.exp(-x * x);
                expected = expected.add(new Complex(gamma.re()[i], gamma.im()[i]).multiply(p[i] * p[i]));
            }
            Complex actual = Complex.ZERO;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    int at = i * n + j;
                    actual = actual.add(new Complex(t.re()[at], t.im()[at]).multiply(p[i] * p[j]));
                }
            }
            assertThat(actual.subtract(expected).abs())
                    .as("order %d of %s: %s against %s", m, material.id(), actual, expected)
                    .isLessThan(tolerance * expected.abs());
        }
    }

    @Test
    void wideFoilIsTheThinSheetInEveryOrder() {
        double thickness = 1e-6;
        double conductance = 350;
        double[] re = new double[SPOT.size()];
        double[] im = new double[SPOT.size()];
        new ThinSheet(conductance).reflection(OMEGA, SPOT.k(), re, im);
        TargetField sheet = omega -> new Reflection.Diagonal(re, im);
        // a sheet of 1 um is off by k t, up to 2e-3 here
        everyOrderIsThePlate(ReferenceSwitch.material("foil", conductance / thickness, 1, 0), thickness, sheet, 3e-3);
    }

    /** As thick as its skin or so, and many times thicker and magnetic. */
    @Test
    void wideDiscIsThePlateInEveryOrder() {
        for (Material m : List.of(ReferenceSwitch.COPPER, ReferenceSwitch.STAINLESS, ReferenceSwitch.STEEL)) {
            LayeredPlate plate = LayeredPlate.single(m.conductivity(20), m.muReal(), 0.3e-3);
            everyOrderIsThePlate(m, 0.3e-3, new PlateTarget(plate, SPOT), 1e-4);
        }
    }

    /** A magnetic body that hardly conducts, with and without its currents as unknowns. */
    @Test
    void vanishingConductivityIsTheMagneticBody() {
        Section section = new Section(2 * MM, RADIUS, 0, 1 * MM);
        for (double mu : new double[] {1.5, 100}) {
            // the layout takes it for a conductor at a frequency at which it is one
            OrderLayout conducting =
                    new OrderLayout(target(body(section, ReferenceSwitch.material("poor", 1, mu, 0))), 1e12, 20);
            OrderLayout magnetic =
                    new OrderLayout(target(body(section, ReferenceSwitch.material("none", 0, mu, 0))), 1e12, 20);
            assertThat(conducting.unknowns).isGreaterThan(magnetic.unknowns);
            for (int m : new int[] {1, 4}) {
                double[][] a = solve(conducting, m, 1e-3).re();
                double[][] b = solve(magnetic, m, 1e-3).re();
                double[][] loss = solve(conducting, m, 1e-3).im();
                for (int i = 0; i < a.length; i++) {
                    assertThat(a[i][i] / b[i][i]).isCloseTo(1, within(1e-8));
                    assertThat(loss[i][i]).isBetween(0.0, 1e-8 * Math.abs(b[i][i]));
                }
            }
        }
    }

    /** Whether the incoming or the whole potential is the unknown in the parts is a matter of accuracy alone. */
    @Test
    void bothUnknownsAgree() {
        Section section = new Section(0, RADIUS, 0, 1 * MM);
        OrderLayout plain =
                new OrderLayout(target(body(section, ReferenceSwitch.material("below", 6e6, 1.999999, 0))), OMEGA, 20);
        OrderLayout lifted =
                new OrderLayout(target(body(section, ReferenceSwitch.material("above", 6e6, 2.000001, 0))), OMEGA, 20);
        assertThat(plain.lifted).isFalse();
        assertThat(lifted.lifted).isTrue();
        for (int m : new int[] {1, 3}) {
            OrderScatterer a = solve(plain, m, OMEGA);
            OrderScatterer b = solve(lifted, m, OMEGA);
            for (int i = 0; i < BASIS.size() && BASIS.k()[i] * SCALE < 8; i++) {
                double difference = Math.hypot(a.re()[i][i] - b.re()[i][i], a.im()[i][i] - b.im()[i][i]);
                assertThat(difference).isLessThan(5e-3 * Math.hypot(a.re()[i][i], a.im()[i][i]));
            }
        }
    }

    /**
     * In a wave much longer than the body, order 1 is a uniform field across the axis, H = k/2, and a dipole comes back:
     * T_1(k, k) = -alpha k^2/(8 pi). A weakly magnetic cylinder has alpha = V chi/(1 + N chi) with the magnetometric demagnetising
     * factor N = (1 - N_axial)/2 across (the factors add up to 1); N_axial = 1 - Nagaoka's coefficient of diameter over length
     * (Joseph, J. Appl. Phys. 37 (1966) 4639; Rosa and Grover, Bull. Bureau of Standards 8 (1912), table 21).
     */
    @Test
    void demagnetisingFactorAcross() {
        double a = 0.01;
        double k = 1e-5 / a;
        double chi = 1e-3;
        WaveBasis one = new WaveBasis(new double[] {k}, new double[] {1});
        Fineness fine = new Fineness(5, 0.02, 1, 3, 0.6, 40);
        Resolution resolution = new Resolution(fine, fine, 1, 1, 1.15, false);
        double[][] table = {{1, 0.688423}, {2, 0.525510}, {0.5, 0.818136}};
        for (double[] row : table) {
            double height = 2 * a / row[0];
            BodyTarget target = new BodyTarget(
                    body(new Section(0, a, 0, height), ReferenceSwitch.material("weak", 0, 1 + chi, 0)),
                    one,
                    new Band(OMEGA, 1.15 * OMEGA),
                    20,
                    resolution,
                    a);
            Reflection.Full t = (Reflection.Full) target.at(1, OMEGA);
            double alpha = -t.re()[0] * 8 * Math.PI * Math.exp(k * height) / (k * k);
            double n = (Math.PI * a * a * height * chi / alpha - 1) / chi;
            assertThat(n).isCloseTo(row[1] / 2, within(1e-4));
            assertThat(t.im()[0]).isZero();
        }
    }

    /** Waves of high orders hardly touch a small body; what underflows is not taken for a fault. */
    @Test
    void highestOrderOfASmallBody() {
        for (Material m : List.of(ReferenceSwitch.STEEL, ReferenceSwitch.COPPER)) {
            OrderLayout layout = new OrderLayout(target(body(new Section(0, 0.05 * MM, 0, 0.1 * MM), m)), OMEGA, 20);
            double[][] first = solve(layout, 1, OMEGA).re();
            double[][] last = solve(layout, FieldAccuracy.HIGHEST_ORDER, OMEGA).re();
            int steepest = BASIS.size() - 1;
            assertThat(Math.abs(last[steepest][steepest])).isLessThan(1e-60 * Math.abs(first[steepest][steepest]));
        }
    }
}
