package eddyreach.fem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.linalg.ElementMatrices;
import eddyreach.linalg.FrontalFactor;
import eddyreach.linalg.FrontalPlan;
import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;
import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The operator of the field problem, curl nu curl A + j kappa A = f for A_phi, with a solution chosen beforehand:
 *
 * <pre>A = g(z) J1(alpha r) on r in [0, 1], z in [-1, 1], alpha the first zero of J1, g = nu_upper sin(pi z) below and
 * nu_lower sin(pi z) above z = 0,</pre>
 *
 * so that A and nu dA/dz are continuous where nu jumps, and f = [nu (alpha^2 + pi^2) + j kappa] A in each half. The error must fall
 * with the theoretical orders: h^p in energy, h^2p for the functional int f A (Strang and Fix, An Analysis of the Finite
 * Element Method, 1973, theorems 1.5 and 3.7; Szabo and Babuska 1991, section 4.6 for the exponential rate in p).
 */
class ManufacturedSolutionTest {

    /** First zero of J1 (Abramowitz and Stegun 1964, table 9.5). */
    private static final double ALPHA = 3.8317059702;

    /** int_0^1 J1(alpha r)^2 r dr = J0(alpha)^2 / 2 (Abramowitz and Stegun 11.4.5). */
    private static final double RADIAL = Math.pow(Bessel.j0(ALPHA), 2) / 2;

    /** Coefficients per half space, lower then upper. */
    private record Problem(Complex[] nu, double[] kappa) {

        Complex source(int half) {
            return nu[half].multiply(ALPHA * ALPHA + Math.PI * Math.PI).add(new Complex(0, kappa[half]));
        }

        Complex amplitude(int half) {
            return nu[1 - half];
        }

        /** int f A r dr dz; each half contributes source * amplitude^2 * 1/2. */
        Complex functional() {
            Complex sum = Complex.ZERO;
            for (int half = 0; half < 2; half++) {
                sum = sum.add(source(half).multiply(amplitude(half).pow(2)).multiply(RADIAL / 2));
            }
            return sum;
        }
    }

    private static final Problem UNIFORM = new Problem(new Complex[] {Complex.ONE, Complex.ONE}, new double[] {0, 0});

    /** Air below a lossy material of permeability 500. */
    private static final Problem JUMP =
            new Problem(new Complex[] {Complex.ONE, new Complex(1 / 500.0, 1e-4)}, new double[] {0, 3});

    /** Errors relative to the solution: in the norm of int |curl|^2 + |A|^2, and of the functional. */
    private record Errors(double energy, double functional) {}

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void ordersInTheMeshWidth(int p) {
        for (Problem problem : new Problem[] {UNIFORM, JUMP}) {
            // coarser for high degrees: the functional soon meets rounding
            int n = p <= 2 ? 8 : 3;
            Errors coarse = solve(problem, n, p);
            Errors fine = solve(problem, 2 * n, p);
            assertThat(order(coarse.energy(), fine.energy())).isCloseTo(p, within(0.05 * p));
            assertThat(order(coarse.functional(), fine.functional())).isCloseTo(2 * p, within(0.15 * p));
        }
    }

    private static double order(double coarse, double fine) {
        return Math.log(coarse / fine) / Math.log(2);
    }

    @Test
    void exponentialInTheDegree() {
        Errors[] e = new Errors[9];
        for (int p = 2; p < e.length; p++) {
            e[p] = solve(JUMP, 1, p);
        }
        // analytic solution: each two degrees gain a factor that itself grows
        for (int p = 2; p + 2 < e.length; p++) {
            assertThat(e[p + 2].energy() / e[p].energy()).as("degree %d", p).isLessThan(0.2);
        }
        assertThat(e[8].energy()).isLessThan(2e-5);
        assertThat(e[8].functional()).isLessThan(1e-9);
    }

    private static Errors solve(Problem problem, int cells, int p) {
        TensorMesh mesh = new TensorMesh(axis(0, 1, cells, p), axis(-1, 1, 2 * cells, p));
        Assembly assembly = new Assembly(problem, mesh);
        FrontalFactor factor = new FrontalFactor(new FrontalPlan(mesh.dissection(1), assembly.lists), assembly, true);
        double[][] x = factor.extend(new double[][] {{-1}, {0}});
        Complex functional = new Complex(-factor.schurRe()[0][0], -factor.schurIm()[0][0]);
        Complex exact = problem.functional();
        return new Errors(assembly.energyError(x), functional.subtract(exact).abs() / exact.abs());
    }

    private static Axis axis(double a, double b, int n, int p) {
        double[] ends = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            ends[i] = a + (b - a) * i / n;
        }
        int[] degrees = new int[n];
        Arrays.fill(degrees, p);
        return new Axis(ends, degrees);
    }

    /** The problem on a mesh, its load as the one kept unknown. */
    private static final class Assembly implements ElementMatrices {

        private static final int POINTS = 14;

        private final Problem problem;
        private final TensorMesh mesh;
        private final int[][] lists;
        private final int[][] locals;
        private final double[][] massR;
        private final double[][] curlR;
        private final double[][] massZ;
        private final double[][] stiffZ;

        Assembly(Problem problem, TensorMesh mesh) {
            this.problem = problem;
            this.mesh = mesh;
            massR = LineForms.radialMass(mesh.r());
            curlR = LineForms.radialCurl(mesh.r());
            massZ = LineForms.mass(mesh.z());
            stiffZ = LineForms.stiffness(mesh.z());
            lists = new int[mesh.cells()][];
            locals = new int[mesh.cells()][];
            for (int c = 0; c < lists.length; c++) {
                int p = mesh.r().degree(0);
                int[] list = new int[(p + 1) * (p + 1) + 1];
                int[] local = new int[list.length];
                int n = 0;
                for (int b = 0; b <= p; b++) {
                    for (int a = 0; a <= p; a++) {
                        int u = mesh.unknown(
                                mesh.r().function(er(c), a), mesh.z().function(ez(c), b));
                        if (u >= 0) {
                            local[n] = b * (p + 1) + a;
                            list[n++] = u;
                        }
                    }
                }
                list[n++] = mesh.unknowns();
                lists[c] = Arrays.copyOf(list, n);
                locals[c] = local;
            }
        }

        private int er(int cell) {
            return cell % mesh.r().elements();
        }

        private int ez(int cell) {
            return cell / mesh.r().elements();
        }

        private int half(int cell) {
            return mesh.z().middle(ez(cell)) < 0 ? 0 : 1;
        }

        @Override
        public void fill(int c, double[] re, double[] im) {
            int n1 = mesh.r().degree(0) + 1;
            int n = lists[c].length - 1;
            Complex nu = problem.nu()[half(c)];
            double kappa = problem.kappa()[half(c)];
            int at = 0;
            for (int i = 0; i < n; i++) {
                for (int j = 0; j <= i; j++, at++) {
                    int r = locals[c][i] % n1 * n1 + locals[c][j] % n1;
                    int z = locals[c][i] / n1 * n1 + locals[c][j] / n1;
                    double curl = stiffZ[ez(c)][z] * massR[er(c)][r] + massZ[ez(c)][z] * curlR[er(c)][r];
                    re[at] = nu.getReal() * curl;
                    im[at] = nu.getImaginary() * curl + kappa * massZ[ez(c)][z] * massR[er(c)][r];
                }
            }
            double[] load = load(c);
            Complex f = problem.source(half(c)).multiply(problem.amplitude(half(c)));
            for (int j = 0; j < n; j++, at++) {
                re[at] = f.getReal() * load[locals[c][j]];
                im[at] = f.getImaginary() * load[locals[c][j]];
            }
            re[at] = 0;
            im[at] = 0;
        }

        /** int J1(alpha r) sin(pi z) v r dr dz for each local function v. */
        private double[] load(int c) {
            int n1 = mesh.r().degree(0) + 1;
            double[] out = new double[n1 * n1];
            double[] radial = new double[n1];
            double[] axial = new double[n1];
            double[] v = new double[n1];
            Axis ar = mesh.r();
            Axis az = mesh.z();
            GaussLegendre rule = GaussLegendre.of(POINTS, -1, 1);
            for (int q = 0; q < POINTS; q++) {
                Shape.values(n1 - 1, rule.node(q), v);
                double r = ar.middle(er(c)) + ar.length(er(c)) / 2 * rule.node(q);
                double z = az.middle(ez(c)) + az.length(ez(c)) / 2 * rule.node(q);
                for (int a = 0; a < n1; a++) {
                    radial[a] += rule.weight(q) * ar.length(er(c)) / 2 * Bessel.j1(ALPHA * r) * r * v[a];
                    axial[a] += rule.weight(q) * az.length(ez(c)) / 2 * Math.sin(Math.PI * z) * v[a];
                }
            }
            for (int b = 0; b < n1; b++) {
                for (int a = 0; a < n1; a++) {
                    out[b * n1 + a] = axial[b] * radial[a];
                }
            }
            return out;
        }

        /** Relative error of the field in the norm sqrt(int |curl|^2 + |A|^2), by quadrature. */
        double energyError(double[][] x) {
            double error = 0;
            double whole = 0;
            for (int c = 0; c < lists.length; c++) {
                double[] e = cellError(c, x);
                error += e[0];
                whole += e[1];
            }
            return Math.sqrt(error / whole);
        }

        private double[] cellError(int c, double[][] x) {
            int n1 = mesh.r().degree(0) + 1;
            Axis ar = mesh.r();
            Axis az = mesh.z();
            double hr = ar.length(er(c)) / 2;
            double hz = az.length(ez(c)) / 2;
            Complex amplitude = problem.amplitude(half(c));
            GaussLegendre rule = GaussLegendre.of(POINTS, -1, 1);
            double[] sum = new double[2];
            double[] vr = new double[n1];
            double[] dr = new double[n1];
            double[] vz = new double[n1];
            double[] dz = new double[n1];
            for (int i = 0; i < POINTS; i++) {
                Shape.values(n1 - 1, rule.node(i), vr);
                Shape.derivatives(n1 - 1, rule.node(i), dr);
                double r = ar.middle(er(c)) + hr * rule.node(i);
                for (int j = 0; j < POINTS; j++) {
                    Shape.values(n1 - 1, rule.node(j), vz);
                    Shape.derivatives(n1 - 1, rule.node(j), dz);
                    double z = az.middle(ez(c)) + hz * rule.node(j);
                    double w = rule.weight(i) * rule.weight(j) * hr * hz * r;
                    Complex[] exact = {
                        amplitude.multiply(Bessel.j1(ALPHA * r) * Math.sin(Math.PI * z)),
                        amplitude.multiply(-Bessel.j1(ALPHA * r) * Math.PI * Math.cos(Math.PI * z)),
                        amplitude.multiply(ALPHA * Bessel.j0(ALPHA * r) * Math.sin(Math.PI * z))
                    };
                    Complex[] found = {Complex.ZERO, Complex.ZERO, Complex.ZERO};
                    for (int k = 0; k < lists[c].length - 1; k++) {
                        int a = locals[c][k] % n1;
                        int b = locals[c][k] / n1;
                        Complex u = new Complex(x[0][lists[c][k]], x[1][lists[c][k]]);
                        found[0] = found[0].add(u.multiply(vr[a] * vz[b]));
                        found[1] = found[1].subtract(u.multiply(vr[a] * dz[b] / hz));
                        found[2] = found[2].add(u.multiply((vr[a] / r + dr[a] / hr) * vz[b]));
                    }
                    for (int k = 0; k < 3; k++) {
                        sum[0] += w * Math.pow(found[k].subtract(exact[k]).abs(), 2);
                        sum[1] += w * Math.pow(exact[k].abs(), 2);
                    }
                }
            }
            return sum;
        }
    }
}
