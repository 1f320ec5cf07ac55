package eddyreach.closedform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.materials.Material;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;
import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class SphereMultipolesTest {

    private static final double A = 5e-3;
    private static final double OMEGA = 2 * Math.PI * 2e5;

    private static void close(Complex actual, Complex expected, double relative) {
        assertThat(actual.subtract(expected).abs())
                .as("%s against %s", actual, expected)
                .isLessThanOrEqualTo(relative * expected.abs());
    }

    /** A uniform field: chi_1 = D/2 of the independent formula, from weak conductors to thick skins, with and without permeability. */
    @Test
    void dipoleIsThatOfTheUniformField() {
        for (double sigma : new double[] {1, 1e3, 1e5, 1.4e6, 35e6, 58e6}) {
            for (double mu : new double[] {1, 1.5, 150, 1500}) {
                Complex permeability = new Complex(mu, mu > 1 ? -0.1 : 0);
                Complex chi = new SphereMultipoles(A, sigma, permeability).polarisabilities(OMEGA, 1)[1];
                Complex d = SphereInField.momentFactor(A, sigma, permeability, OMEGA);
                close(chi, d.divide(2), 1e-10);
            }
        }
    }

    @Test
    void limits() {
        Complex[] insulator = new SphereMultipoles(A, 0, new Complex(7)).polarisabilities(OMEGA, 6);
        Complex[] perfect = new SphereMultipoles(A, 1e30, new Complex(1)).polarisabilities(1e-9, 6);
        double sigma = 1e16;
        Complex[] good = new SphereMultipoles(A, sigma, new Complex(1)).polarisabilities(OMEGA, 6);
        double delta = Math.sqrt(2 / (OMEGA * Material.MU0 * sigma));
        for (int l = 1; l <= 6; l++) {
            close(insulator[l], new Complex(l * 6.0 / (7 * l + l + 1)), 1e-14);
            assertThat(perfect[l].getReal()).isCloseTo(-l / (l + 1.0), within(1e-3));
            // a thin skin: chi = -l/(l+1) [1 - (2l+1) d/a], d the skin's complex depth (1 - j) delta/2
            Complex thin = new Complex(1, -1)
                    .multiply(delta / 2 * (2 * l + 1) / A)
                    .negate()
                    .add(1)
                    .multiply(-l / (l + 1.0));
            close(good[l], thin, 1e-6);
            // resistance only: e_l = x^2/(2l+3), chi = l e / ((l+1)(2l+1))
            Complex weak = new SphereMultipoles(A, 1e-3, new Complex(1)).polarisabilities(OMEGA, 6)[l];
            double x2 = OMEGA * Material.MU0 * 1e-3 * A * A;
            close(weak, new Complex(0, -x2 * l / ((2 * l + 3.0) * (l + 1) * (2 * l + 1))), 1e-6);
        }
    }

    /** The continued fraction against j_l as a sum of its power series. */
    @Test
    void ratiosOfSphericalBesselFunctions() {
        Complex square = new Complex(3, -20);
        Complex[] rho = SphereMultipoles.ratios(square, 8);
        for (int l = 1; l <= 8; l++) {
            Complex ratio = series(l - 1, square).divide(series(l, square)).multiply(2 * l + 1);
            close(rho[l], ratio, 1e-13);
        }
    }

    /** j_l(x) (2l+1)!!/x^l. */
    private static Complex series(int l, Complex square) {
        Complex sum = Complex.ONE;
        Complex term = Complex.ONE;
        for (int i = 1; i < 60; i++) {
            term = term.multiply(square).divide(-2.0 * i * (2 * l + 2 * i + 1));
            sum = sum.add(term);
        }
        return sum;
    }

    /**
     * The operator of any order, integrated over the returning waves in points below the sphere, against the multipoles themselves
     * there.
     */
    @Test
    void returningWavesMatchTheMultipolesBelowTheSphere() {
        double[] r = {0.3 * A, 0.8 * A, 1.7 * A};
        for (int m = 0; m <= 3; m++) {
            for (double radius : r) {
                double z = -0.6 * A;
                double k = 0.7 / A;
                double waves = waves(m, k, radius, z);
                double expected = multipoles(m, k, radius, z);
                assertThat(waves).as("order %d", m).isCloseTo(expected, within(1e-7 * Math.abs(expected) + 1e-12));
            }
        }
    }

    /** int T(k', k) exp(k'z) J_m(k'r) dk' for a magnetic insulator of mu 5. */
    private static double waves(int m, double k, double r, double z) {
        GaussLegendre rule = GaussLegendre.of(200, 0, 1);
        double[] all = new double[rule.size() + 1];
        double[] scale = new double[all.length];
        for (int i = 0; i < rule.size(); i++) {
            all[i] = 60 / A * rule.node(i);
            scale[i] = 1;
        }
        all[rule.size()] = k;
        scale[rule.size()] = 1;
        double[] sorted = all.clone();
        Arrays.sort(sorted);
        int mine = Arrays.binarySearch(sorted, k);
        double[] re = new double[all.length * all.length];
        new SphereMultipoles(A, 0, new Complex(5)).reflection(m, OMEGA, sorted, scale, re, new double[re.length]);
        double sum = 0;
        for (int i = 0; i < rule.size(); i++) {
            int at = Arrays.binarySearch(sorted, all[i]);
            sum += rule.weight(i)
                    * 60
                    / A
                    * re[at * all.length + mine]
                    * Math.exp(all[i] * z)
                    * Bessel.jn(m, all[i] * r);
        }
        return sum;
    }

    /** -sum chi_l a^(2l+1) c_l P_l^m(cos) R^(-l-1), c_l the incoming wave's own multipoles. */
    private static double multipoles(int m, double k, double r, double z) {
        double distance = Math.hypot(r, z - A);
        double cos = (z - A) / distance;
        double sum = 0;
        int first = Math.max(1, m);
        double factorial = 1;
        for (int i = 2; i <= first + m; i++) {
            factorial *= i;
        }
        for (int l = first; l < 40; l++) {
            double incoming = Math.exp(-k * A) * Math.pow(-1, l + m) * Math.pow(k, l) / factorial;
            double chi = l * 4.0 / (5 * l + l + 1);
            sum -= chi * Math.pow(A, 2 * l + 1) * incoming * legendre(l, m, cos) * Math.pow(distance, -l - 1);
            factorial *= l + 1 + m;
        }
        return sum;
    }

    /** P_l^m without the sign (-1)^m. */
    private static double legendre(int l, int m, double x) {
        double now = 1;
        for (int i = 1; i <= m; i++) {
            now *= (2 * i - 1) * Math.sqrt(1 - x * x);
        }
        double before = 0;
        for (int i = m + 1; i <= l; i++) {
            double next = ((2 * i - 1) * x * now - (i + m - 1) * before) / (i - m);
            before = now;
            now = next;
        }
        return now;
    }

    /** The wave itself from its multipoles about the centre, which fixes normalisation and signs of the expansion used. */
    @Test
    void wavesAreSumsOfMultipoles() {
        for (int m = 0; m <= 3; m++) {
            double k = 0.7 / A;
            double r = 0.4 * A;
            double z = 0.3 * A;
            double distance = Math.hypot(r, z - A);
            double factorial = 1;
            for (int i = 2; i <= 2 * m; i++) {
                factorial *= i;
            }
            double sum = 0;
            for (int l = m; l < 40; l++) {
                sum += Math.exp(-k * A)
                        * Math.pow(-1, l + m)
                        * Math.pow(k * distance, l)
                        / factorial
                        * legendre(l, m, (z - A) / distance);
                factorial *= l + 1 + m;
            }
            assertThat(sum).as("order %d", m).isCloseTo(Math.exp(-k * z) * Bessel.jn(m, k * r), within(1e-13));
        }
    }

    /** Boundary conditions of the field about the axis: A and B_R continuous, H along the surface too; currents obey w sigma A. */
    @Test
    void fieldIsContinuousThroughTheSurface() {
        double[] k = {30, 200, 600, 1500};
        double[] re = {1, -2, 3, 1};
        double[] im = {0.5, 1, 0, -1};
        double mu = 20;
        SphereField field = new SphereMultipoles(A, 2e6, new Complex(mu)).field(OMEGA, k, re, im);
        for (double angle : new double[] {0.1, 0.9, 1.6, 2.5, 3.0}) {
            double s = Math.sin(angle);
            double c = Math.cos(angle);
            SphereField.Point in = field.at(A * (1 - 1e-9) * s, A + A * (1 - 1e-9) * c);
            double r = A * (1 + 1e-9) * s;
            double z = A + A * (1 + 1e-9) * c;
            SphereField.Point out = field.at(r, z);
            Complex a = out.a();
            Complex br = out.br();
            Complex bz = out.bz();
            for (int q = 0; q < k.length; q++) {
                Complex b = new Complex(re[q], im[q]).multiply(Math.exp(-k[q] * z));
                a = a.add(b.multiply(Bessel.j1(k[q] * r)));
                br = br.add(b.multiply(k[q] * Bessel.j1(k[q] * r)));
                bz = bz.add(b.multiply(k[q] * Bessel.j0(k[q] * r)));
            }
            close(in.a(), a, 1e-6);
            close(in.br().multiply(s).add(in.bz().multiply(c)), br.multiply(s).add(bz.multiply(c)), 1e-6);
            Complex along = br.multiply(c).subtract(bz.multiply(s));
            Complex inside = in.br().multiply(c).subtract(in.bz().multiply(s)).divide(mu);
            assertThat(inside.subtract(along).abs()).isLessThan(1e-6 * bz.abs() + 1e-6 * along.abs());
        }
    }
}
