package eddyreach.field.axial;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;
import java.util.List;

/** Integrals over whole parts and windows of the incoming waves u = J1(kr) exp(dkz): exact in z, Gauss-Legendre in r. */
public final class WaveProducts {

    private WaveProducts() {}

    /**
     * u_i^T dK u_j summed over the parts.
     *
     * @return {@code [2][size][size]}: real and imaginary part, symmetric
     */
    public static double[][][] scattering(WaveBasis basis, int direction, List<Part> parts, Media media) {
        int n = basis.size();
        double[][][] out = new double[2][n][n];
        double[] k = basis.k();
        for (int p = 0; p < parts.size(); p++) {
            Section s = parts.get(p).section();
            double nuRe = media.nuRe()[p] - 1;
            double nuIm = media.nuIm()[p];
            double loss = media.loss()[p];
            if (s.flare() > 0) {
                flared(basis, direction, s, nuRe, nuIm, loss, out);
            }
            double[][] mass = new double[n][n];
            double[][] curl = new double[n][n];
            radialProducts(basis, s, mass, curl);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double z = axial(direction * (k[i] + k[j]), s.z0(), s.z1());
                    double c = k[i] * k[j] * (mass[i][j] + curl[i][j]) * z;
                    double a = mass[i][j] * z;
                    out[0][i][j] += nuRe * c;
                    out[1][i][j] += nuIm * c + loss * a;
                }
            }
        }
        return out;
    }

    /**
     * u_i^T dK u_j summed over the parts for the potentials u = J_m(kr) exp(dkz) of an order m of 1 or more: the products of their
     * gradients times mu_r - 1. With the recurrences of J_m the radial and azimuthal parts add up to
     * k k' (J_(m-1) J_(m-1) + J_(m+1) J_(m+1)) / 2.
     *
     * @return {@code [2][size][size]}: real and imaginary part, symmetric
     */
    public static double[][][] scattering(WaveBasis basis, int direction, int order, List<Part> parts, Media media) {
        int n = basis.size();
        double[][][] out = new double[2][n][n];
        double[] k = basis.k();
        for (int p = 0; p < parts.size(); p++) {
            Section s = parts.get(p).section();
            double nuRe = media.nuRe()[p];
            double nuIm = media.nuIm()[p];
            double size = nuRe * nuRe + nuIm * nuIm;
            double muRe = nuRe / size - 1;
            double muIm = -nuIm / size;
            if (muRe == 0 && muIm == 0) {
                continue;
            }
            double[][] product = gradientProducts(basis, order, s);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double c = product[i][j] * axial(direction * (k[i] + k[j]), s.z0(), s.z1());
                    out[0][i][j] += muRe * c;
                    out[1][i][j] += muIm * c;
                }
            }
        }
        return out;
    }

    private static double[][] gradientProducts(WaveBasis basis, int m, Section s) {
        int n = basis.size();
        double[][] out = new double[n][n];
        GaussLegendre rule = GaussLegendre.of(rule(basis, s).size() + m / 2, -1, 1);
        double half = (s.r1() - s.r0()) / 2;
        double[] bessel = new double[m + 2];
        double[] value = new double[n];
        double[] below = new double[n];
        double[] above = new double[n];
        for (int q = 0; q < rule.size(); q++) {
            double r = (s.r0() + s.r1()) / 2 + half * rule.node(q);
            double w = rule.weight(q) * half * r;
            for (int i = 0; i < n; i++) {
                double k = basis.k()[i];
                Bessel.orders(m + 1, k * r, bessel);
                value[i] = k * bessel[m];
                below[i] = k * bessel[m - 1];
                above[i] = k * bessel[m + 1];
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    out[i][j] += w * (value[i] * value[j] + (below[i] * below[j] + above[i] * above[j]) / 2);
                }
            }
        }
        return out;
    }

    /** int int n J1(kr) exp(dkz) r dr dz for each wave: the turns' share in u. */
    static double[] linkage(WaveBasis basis, int direction, CoilRegion coil) {
        int n = basis.size();
        double[] out = new double[n];
        Section s = coil.section();
        GaussLegendre rule = rule(basis, s);
        double half = (s.r1() - s.r0()) / 2;
        for (int q = 0; q < rule.size(); q++) {
            double r = (s.r0() + s.r1()) / 2 + half * rule.node(q);
            for (int i = 0; i < n; i++) {
                out[i] += rule.weight(q) * half * r * Bessel.j1(basis.k()[i] * r);
            }
        }
        for (int i = 0; i < n; i++) {
            out[i] *= coil.density() * axial(direction * basis.k()[i], s.z0(), s.z1());
        }
        return out;
    }

    /**
     * What the voltages round slit bodies do to waves, int w mu0 sigma (-u / r) r dr dz, times j.
     *
     * @param body number of the slit body of each part, -1 for none
     * @param count number of slit bodies
     * @return {@code [count][size]}
     */
    static double[][] slits(WaveBasis basis, int direction, List<Part> parts, Media media, int[] body, int count) {
        int n = basis.size();
        double[][] out = new double[count][n];
        for (int p = 0; p < body.length; p++) {
            if (body[p] < 0) {
                continue;
            }
            Section s = parts.get(p).section();
            GaussLegendre rule = rule(basis, s);
            double half = (s.r1() - s.r0()) / 2;
            for (int i = 0; i < n; i++) {
                double sum = 0;
                for (int q = 0; q < rule.size(); q++) {
                    double r = (s.r0() + s.r1()) / 2 + half * rule.node(q);
                    sum += rule.weight(q) * half * Bessel.j1(basis.k()[i] * r);
                }
                out[body[p]][i] -= media.loss()[p] * sum * axial(direction * basis.k()[i], s.z0(), s.z1());
            }
        }
        return out;
    }

    /** What the voltage round a slit body does to itself, int w mu0 sigma / r dr dz, times j, for each body. */
    static double[] slitSelf(List<Part> parts, Media media, int[] body, int count) {
        double[] out = new double[count];
        for (int p = 0; p < body.length; p++) {
            if (body[p] >= 0) {
                Section s = parts.get(p).section();
                out[body[p]] += media.loss()[p] * Math.log(s.r1() / s.r0()) * (s.z1() - s.z0());
            }
        }
        return out;
    }

    /** What lies between the leaning inner side of a section and its inner radius at the upper end. */
    private static void flared(
            WaveBasis basis, int direction, Section s, double nuRe, double nuIm, double loss, double[][][] out) {
        double[] k = basis.k();
        int n = k.length;
        double inner = s.r0();
        GaussLegendre rule = rule(basis, inner, inner + s.flare());
        double half = s.flare() / 2;
        double[] j0 = new double[n];
        double[] j1 = new double[n];
        for (int q = 0; q < rule.size(); q++) {
            double share = (1 + rule.node(q)) / 2;
            double r = inner + share * s.flare();
            double top = s.z0() + share * (s.z1() - s.z0());
            double w = rule.weight(q) * half * r;
            for (int i = 0; i < n; i++) {
                j0[i] = Bessel.j0(k[i] * r);
                j1[i] = Bessel.j1(k[i] * r);
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double a = w * axial(direction * (k[i] + k[j]), s.z0(), top);
                    double c = k[i] * k[j] * (j1[i] * j1[j] + j0[i] * j0[j]) * a;
                    out[0][i][j] += nuRe * c;
                    out[1][i][j] += nuIm * c + loss * j1[i] * j1[j] * a;
                }
            }
        }
    }

    private static GaussLegendre rule(WaveBasis basis, Section s) {
        return rule(basis, s.innerAt(s.z1()), s.r1());
    }

    private static GaussLegendre rule(WaveBasis basis, double from, double to) {
        return GaussLegendre.of(12 + (int) Math.ceil(basis.k()[basis.size() - 1] * (to - from)), -1, 1);
    }

    private static void radialProducts(WaveBasis basis, Section s, double[][] mass, double[][] curl) {
        int n = basis.size();
        GaussLegendre rule = rule(basis, s);
        double inner = s.innerAt(s.z1());
        double half = (s.r1() - inner) / 2;
        double[] j0 = new double[n];
        double[] j1 = new double[n];
        for (int q = 0; q < rule.size(); q++) {
            double r = (inner + s.r1()) / 2 + half * rule.node(q);
            double w = rule.weight(q) * half * r;
            for (int i = 0; i < n; i++) {
                j0[i] = Bessel.j0(basis.k()[i] * r);
                j1[i] = Bessel.j1(basis.k()[i] * r);
            }
            for (int i = 0; i < n; i++) {
                addTimes(w * j1[i], j1, mass[i]);
                addTimes(w * j0[i], j0, curl[i]);
            }
        }
    }

    private static void addTimes(double factor, double[] x, double[] to) {
        for (int j = 0; j < x.length; j++) {
            to[j] += factor * x[j];
        }
    }

    /** int exp(q z) dz from a to b; two waves that run against each other have q = 0. */
    private static double axial(double q, double a, double b) {
        if (q == 0) {
            return b - a;
        }
        return q > 0 ? -Math.exp(q * b) * Math.expm1(q * (a - b)) / q : Math.exp(q * a) * Math.expm1(q * (b - a)) / q;
    }
}
