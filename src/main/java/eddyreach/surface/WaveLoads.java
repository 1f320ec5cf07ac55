package eddyreach.surface;

import eddyreach.field.axial.WaveBasis;
import eddyreach.numerics.Bessel;

/**
 * Waves arriving at a surface, integrated over its panels with each linear shape function: potentials {@code f(phi) J_n(kr) exp(-kz)} about the z axis with the square root of the
 * weight of k.
 *
 * <p>Families of waves are numbered: 0 is order 0, 2n - 1 is order n with f = sqrt 2 cos(n phi), 2n with sqrt 2 sin(n phi).
 */
final class WaveLoads {

    private final SurfaceMesh mesh;
    private final WaveBasis basis;
    private final int orders;
    private final double before;

    /**
     * @param mesh the surface
     * @param basis the wavenumbers
     * @param orders highest azimuthal order
     * @param before distance before the plane z = 0 at which the waves have unit size, m
     */
    WaveLoads(SurfaceMesh mesh, WaveBasis basis, int orders, double before) {
        this.before = before;
        this.mesh = mesh;
        this.basis = basis;
        this.orders = orders;
    }

    static int families(int orders) {
        return 2 * orders + 1;
    }

    static int order(int family) {
        return (family + 1) / 2;
    }

    static boolean sine(int family) {
        return family > 0 && family % 2 == 0;
    }

    /** Planes x = 0 (bit 0) and y = 0 (bit 1) in which a family changes its sign. */
    static int parity(int family) {
        int n = order(family);
        boolean sine = sine(family);
        return ((n + (sine ? 1 : 0)) % 2) | (sine ? 2 : 0);
    }

    /**
     * The integrals over the panels.
     *
     * @return for fields that keep their sign in the plane z = middle and for those that change it, {@code [parity][3 panel + corner][family times
     *     waves + wave]}; without that mirror plane the first alone
     */
    double[][][] integrals() {
        int k = basis.size();
        int loads = families(orders) * k;
        boolean halves = mesh.mirror[2];
        double[][][] out = new double[halves ? 2 : 1][3 * mesh.panels.size()][loads];
        double[] j = new double[orders + 1];
        double[] angular = new double[families(orders)];
        double[] low = new double[k];
        for (int i = 0; i < k; i++) {
            // a constant added to the potential changes nothing but the size of the numbers
            low[i] = Math.exp(-basis.k()[i] * (before + mesh.middle));
        }
        double[] x = new double[3];
        double[] even = new double[loads];
        double[] odd = new double[loads];
        for (int a = 0; a < mesh.panels.size(); a++) {
            Panel p = mesh.panels.get(a);
            TriangleRule rule = p.radius * basis.k()[k / 2] > 1 ? TriangleRule.QUARTERS : TriangleRule.SEVEN;
            for (int q = 0; q < rule.weights().length; q++) {
                double[] n = rule.points()[q];
                p.point(n, x);
                angular(x[0], x[1], angular);
                double r = Math.hypot(x[0], x[1]);
                for (int i = 0; i < k; i++) {
                    double wave = basis.k()[i];
                    Bessel.orders(orders, wave * r, j);
                    double w = rule.weights()[q] * p.area * Math.sqrt(basis.w()[i]);
                    double here = Math.exp(-wave * (before + x[2]));
                    double there = halves ? Math.exp(-wave * (before + 2 * mesh.middle - x[2])) : here;
                    for (int f = 0; f < angular.length; f++) {
                        double g = w * angular[f] * j[order(f)] / 2;
                        even[f * k + i] = (here + there) * g;
                        odd[f * k + i] = (here - there) * g;
                    }
                    even[i] -= w * low[i];
                }
                for (int c = 0; c < 3; c++) {
                    add(n[c], even, out[0][3 * a + c]);
                    if (halves) {
                        add(n[c], odd, out[1][3 * a + c]);
                    }
                }
            }
        }
        return out;
    }

    private static void add(double f, double[] from, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = Math.fma(f, from[i], to[i]);
        }
    }

    private void angular(double x, double y, double[] out) {
        double r = Math.hypot(x, y);
        double cos = r == 0 ? 1 : x / r;
        double sin = r == 0 ? 0 : y / r;
        out[0] = 1;
        double c = Math.sqrt(2);
        double s = 0;
        for (int n = 1; n <= orders; n++) {
            double next = c * cos - s * sin;
            s = s * cos + c * sin;
            c = next;
            out[2 * n - 1] = c;
            out[2 * n] = s;
        }
    }
}
