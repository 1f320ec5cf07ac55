package eddyreach.field.axial;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.materials.Material;
import eddyreach.numerics.Bessel;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;

/** What the operators of switch and target owe to reciprocity and to the sign of the losses. */
class OperatorPropertiesTest {

    private static final Resolution COARSE = Resolution.COARSE;

    private static final InventedSwitch LARGE = InventedSwitch.large();
    private static final InventedSwitch MEDIUM = InventedSwitch.medium();

    private static Scatterer side(InventedSwitch s, Resolution resolution) {
        WaveBasis basis = resolution.waves(s.scale(), 0);
        return solved(
                new Layout(s.parts(), s.coil(), basis, 1, resolution.body(), s.scale(), s.omega(), 20),
                s.coil(),
                s.omega());
    }

    private static Scatterer target(InventedSwitch s, Material m) {
        WaveBasis basis = COARSE.waves(s.scale(), 0);
        return solved(
                new Layout(s.disc(m, 0), null, basis, -1, COARSE.target(), s.scale(), s.omega(), 20), null, s.omega());
    }

    private static Scatterer solved(Layout layout, CoilRegion coil, double omega) {
        return new Scatterer(
                layout, Media.of(layout.parts, coil == null ? 0 : coil.muLoss(), omega, 20), coil, omega, true);
    }

    @Test
    void reciprocityMakesOperatorsSymmetric() {
        for (Scatterer s : new Scatterer[] {
            side(MEDIUM, COARSE),
            side(LARGE, COARSE),
            target(MEDIUM, ReferenceSwitch.STEEL),
            target(MEDIUM, ReferenceSwitch.COPPER)
        }) {
            double[][] re = s.responseRe();
            double[][] im = s.responseIm();
            double largest = 0;
            double worst = 0;
            for (int i = 0; i < re.length; i++) {
                for (int j = 0; j < re.length; j++) {
                    largest = Math.max(largest, Math.hypot(re[i][j], im[i][j]));
                    worst = Math.max(worst, Math.hypot(re[i][j] - re[j][i], im[i][j] - im[j][i]));
                }
            }
            assertThat(worst).isLessThan(1e-13 * largest);
        }
    }

    /**
     * Reciprocity of the coil: what it receives from a wave, s, is what it emits into that wave. The field of one ampere on the mesh
     * must be the sum of the waves s in front of the face.
     */
    @Test
    void coilEmitsWhatItReceives() {
        Scatterer s = side(MEDIUM, Resolution.FINE);
        WaveBasis basis = s.layout().basis;
        int n = basis.size();
        double[] r = {1e-3, 3e-3, 5e-3, 8e-3, 11e-3};
        double[] z = {1e-3, 2e-3, 5e-3};
        MeshField.Samples mesh = s.field(new double[n], new double[n], 1).sample(r, z);
        double largest = 0;
        double worst = 0;
        for (int j = 0; j < z.length; j++) {
            for (int i = 0; i < r.length; i++) {
                double re = 0;
                double im = 0;
                for (int q = 0; q < n; q++) {
                    double f = basis.w()[q] * Bessel.j1(basis.k()[q] * r[i]) * Math.exp(-basis.k()[q] * z[j]);
                    re += f * s.linkRe()[q];
                    im += f * s.linkIm()[q];
                }
                int at = i + r.length * j;
                largest = Math.max(largest, Math.hypot(re, im));
                worst = Math.max(worst, Math.hypot(re - mesh.aRe()[at], im - mesh.aIm()[at]));
            }
        }
        assertThat(worst).isLessThan(1e-3 * largest);
    }

    /**
     * The loss in the total field A = u + x of waves u = sum c_i u_i is A^H Im(dK) A = Im(u^H dK A) = -2 c^H Im(S) c, since
     * K_air x = -dK A with real K_air: -Im S is positive semidefinite, and so it is with square roots of weights on both sides.
     * With a coil current I added the same steps give the form
     * -2 c^H Im(S) c - 4 Im(s)^T Re(c* I) + mu0 Re(Z0) |I|^2 / (2 pi w), which cannot be negative either.
     */
    @Test
    void operatorsArePassive() {
        for (InventedSwitch s : new InventedSwitch[] {MEDIUM, LARGE}) {
            Scatterer side = side(s, COARSE);
            int n = side.layout().basis.size();
            double[] w = side.layout().basis.w();
            assertSemidefinite(loss(side), 1e-12);
            double[][] joint = new double[n + 1][n + 1];
            double own = Material.MU0 * side.impedance().getReal() / (4 * Math.PI * s.omega());
            // a current that makes the coil's share as large as the waves'
            double current = Math.sqrt(-side.responseIm()[0][0] * w[0] / own);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    joint[i][j] = -side.responseIm()[i][j] * Math.sqrt(w[i] * w[j]);
                }
                joint[i][n] = -side.linkIm()[i] * Math.sqrt(w[i]) * current;
                joint[n][i] = joint[i][n];
            }
            joint[n][n] = own * current * current;
            assertSemidefinite(joint, 1e-12);
        }
        for (Material m : new Material[] {
            ReferenceSwitch.STEEL, ReferenceSwitch.COPPER, ReferenceSwitch.material("ferrite", 0, 300, 50)
        }) {
            assertSemidefinite(loss(target(MEDIUM, m)), 1e-12);
        }
    }

    /** Without conductivity and loss T is real, and a permeable body draws the flux: T is positive semidefinite. */
    @Test
    void losslessPermeableBody() {
        Scatterer t = target(MEDIUM, ReferenceSwitch.material("ideal ferrite", 0, 300, 0));
        int n = t.responseRe().length;
        double[] w = t.layout().basis.w();
        double[][] re = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                assertThat(t.responseIm()[i][j]).isZero();
                re[i][j] = t.responseRe()[i][j] * Math.sqrt(w[i] * w[j]);
            }
        }
        assertSemidefinite(re, 1e-12);
    }

    private static double[][] loss(Scatterer s) {
        double[] w = s.layout().basis.w();
        double[][] m = new double[w.length][w.length];
        for (int i = 0; i < w.length; i++) {
            for (int j = 0; j < w.length; j++) {
                m[i][j] = -s.responseIm()[i][j] * Math.sqrt(w[i] * w[j]);
            }
        }
        return m;
    }

    private static void assertSemidefinite(double[][] m, double rounding) {
        for (int i = 0; i < m.length; i++) {
            for (int j = 0; j < i; j++) {
                double mean = (m[i][j] + m[j][i]) / 2;
                m[i][j] = mean;
                m[j][i] = mean;
            }
        }
        double[] values = new EigenDecomposition(new Array2DRowRealMatrix(m)).getRealEigenvalues();
        double least = Double.POSITIVE_INFINITY;
        double largest = 0;
        for (double v : values) {
            least = Math.min(least, v);
            largest = Math.max(largest, Math.abs(v));
        }
        assertThat(largest).isPositive();
        assertThat(least).isGreaterThan(-rounding * largest);
    }

    @Test
    void nonMetalIsExactlyInvisible() {
        Material plastic = ReferenceSwitch.material("plastic", 0, 1, 0);
        SwitchField field = MEDIUM.field(COARSE);
        BodyTarget target = MEDIUM.target(plastic, COARSE);
        assertThat(field.at(MEDIUM.omega())
                        .impedance(target.at(MEDIUM.omega()), 0.5e-3)
                        .abs())
                .isZero();
        assertThat(MEDIUM.direct(plastic, 0.5e-3, COARSE).change().abs()).isZero();
    }
}
