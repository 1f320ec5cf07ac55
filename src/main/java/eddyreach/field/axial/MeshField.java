package eddyreach.field.axial;

import eddyreach.fem.Shape;
import eddyreach.mesh.Axis;
import eddyreach.mesh.Slant;
import eddyreach.mesh.TensorMesh;
import eddyreach.numerics.Bessel;

/**
 * A computed field: incoming waves, known exactly, plus the scattered part on the mesh.
 *
 * <p>Immutable; coefficients are for A_phi in T m.
 */
public final class MeshField implements Field {

    private final Layout layout;
    private final double[] waveRe;
    private final double[] waveIm;
    private final double[] re;
    private final double[] im;
    private final double[][] voltage;

    /**
     * @param voltage for each slit body the unknown V of {@link EddySystem}, T m2: real parts, imaginary parts
     */
    MeshField(Layout layout, double[] waveRe, double[] waveIm, double[] re, double[] im, double[][] voltage) {
        this.layout = layout;
        this.waveRe = waveRe.clone();
        this.waveIm = waveIm.clone();
        this.re = re;
        this.im = im;
        this.voltage = voltage;
    }

    /**
     * Field values on a grid of points, indexed {@code [ir + nr * iz]}.
     *
     * @param aRe real part of A_phi, T m
     * @param aIm imaginary part of A_phi, T m
     * @param brRe real part of B_r = -dA/dz, T
     * @param brIm imaginary part of B_r, T
     * @param bzRe real part of B_z = (1/r) d(rA)/dr, T
     * @param bzIm imaginary part of B_z, T
     */
    public record Samples(double[] aRe, double[] aIm, double[] brRe, double[] brIm, double[] bzRe, double[] bzIm) {

        public Samples(int n) {
            this(new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        }
    }

    /** This field times a plus another one times b, on the same mesh. */
    MeshField mix(double a, MeshField other, double b) {
        return new MeshField(
                layout,
                mix(waveRe, a, other.waveRe, b),
                mix(waveIm, a, other.waveIm, b),
                mix(re, a, other.re, b),
                mix(im, a, other.im, b),
                new double[][] {mix(voltage[0], a, other.voltage[0], b), mix(voltage[1], a, other.voltage[1], b)});
    }

    /** Largest wavenumber among the incoming waves, 1/m; 0 without any. */
    double steepest() {
        return layout.basis == null ? 0 : layout.basis.k()[layout.basis.size() - 1];
    }

    private static double[] mix(double[] x, double a, double[] y, double b) {
        double[] out = new double[x.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = a * x[i] + b * y[i];
        }
        return out;
    }

    /** Values of the functions of an axis at one point. */
    private record Foot(int element, double[] value, double[] slope) {

        static Foot at(Axis axis, double x) {
            int e = axis.find(x);
            if (e < 0) {
                throw new IllegalArgumentException("point " + x + " m lies outside the mesh");
            }
            int p = axis.degree(e);
            double half = axis.length(e) / 2;
            double[] v = new double[p + 1];
            double[] d = new double[p + 1];
            double t = Math.max(-1, Math.min(1, (x - axis.middle(e)) / half));
            Shape.values(p, t, v);
            Shape.derivatives(p, t, d);
            for (int i = 0; i <= p; i++) {
                d[i] /= half;
            }
            return new Foot(e, v, d);
        }
    }

    /**
     * What drives the current on the grid of all pairs (r, z), indexed {@code [ir + nr * iz]}: the current density over w sigma, T m.
     * That is |A|, less the voltage round a slit ring.
     */
    public double[] drive(double[] r, double[] z) {
        Samples s = sample(r, z);
        double[] out = new double[s.aRe().length];
        int at = 0;
        for (double height : z) {
            for (int i = 0; i < r.length; i++, at++) {
                out[at] = Math.hypot(s.aRe()[at], s.aIm()[at]);
                for (int p = 0; p < layout.slitBody.length; p++) {
                    if (layout.slitBody[p] >= 0 && layout.parts.get(p).section().contains(r[i], height)) {
                        out[at] = Math.sqrt(square(p, r[i], s.aRe()[at], s.aIm()[at]));
                    }
                }
            }
        }
        return out;
    }

    /** |A|^2, less what the voltage round a slit part takes away from A: |A - V/r|^2. */
    double square(int part, double r, double aRe, double aIm) {
        int body = layout.slitBody[part];
        double x = body < 0 ? aRe : aRe - voltage[0][body] / r;
        double y = body < 0 ? aIm : aIm - voltage[1][body] / r;
        return x * x + y * y;
    }

    /**
     * Samples the field on the grid of all pairs (r, z).
     *
     * @param r radii, m, not negative
     * @param z heights, m
     * @throws IllegalArgumentException if a point lies outside the mesh
     */
    @Override
    public Samples sample(double[] r, double[] z) {
        Samples s = new Samples(r.length * z.length);
        addScattered(r, z, s);
        if (layout.basis != null) {
            addWaves(layout.basis, layout.direction, waveRe, waveIm, r, z, s);
        }
        return s;
    }

    private void addScattered(double[] r, double[] z, Samples s) {
        TensorMesh mesh = layout.mesh;
        Slant slant = mesh.slant();
        Foot[] feet = new Foot[r.length];
        Slant.Place[] places = new Slant.Place[r.length];
        int at = 0;
        for (double height : z) {
            Foot fz = Foot.at(mesh.z(), height);
            for (int i = 0; i < r.length && (at == 0 || !slant.none()); i++) {
                double line = slant.line(r[i], height);
                feet[i] = Foot.at(mesh.r(), line);
                places[i] = slant.at(line, height);
            }
            for (int i = 0; i < r.length; i++, at++) {
                for (int b = 0; b < fz.value().length; b++) {
                    int iz = mesh.z().function(fz.element(), b);
                    addScattered(feet[i], places[i], iz, fz.value()[b], fz.slope()[b], at, s);
                }
            }
        }
    }

    /** Adds at one point what belongs to one axial function of a given value and slope there. */
    private void addScattered(Foot fr, Slant.Place place, int iz, double value, double slope, int at, Samples s) {
        TensorMesh mesh = layout.mesh;
        double r = place.radius();
        double vRe = 0;
        double vIm = 0;
        double cRe = 0;
        double cIm = 0;
        double sRe = 0;
        double sIm = 0;
        for (int a = 0; a < fr.value().length; a++) {
            int u = mesh.unknown(mesh.r().function(fr.element(), a), iz);
            if (u >= 0) {
                // on the axis A / r tends to dA/dr
                double across = fr.slope()[a] / place.stretch();
                double over = r > 0 ? fr.value()[a] / r : across;
                double curl = over + across;
                vRe += re[u] * fr.value()[a];
                vIm += im[u] * fr.value()[a];
                cRe += re[u] * curl;
                cIm += im[u] * curl;
                sRe += re[u] * across;
                sIm += im[u] * across;
            }
        }
        s.aRe()[at] += vRe * value;
        s.aIm()[at] += vIm * value;
        double along = place.lean() * value;
        s.brRe()[at] -= vRe * slope - sRe * along;
        s.brIm()[at] -= vIm * slope - sIm * along;
        s.bzRe()[at] += cRe * value;
        s.bzIm()[at] += cIm * value;
    }

    /** Adds waves J1(kr) exp(kz times the direction) to samples. */
    public static void addWaves(
            WaveBasis basis, int direction, double[] waveRe, double[] waveIm, double[] r, double[] z, Samples s) {
        for (int q = 0; q < basis.size(); q++) {
            double k = basis.k()[q];
            double slope = direction * k;
            double[] j1 = new double[r.length];
            double[] j0 = new double[r.length];
            for (int i = 0; i < r.length; i++) {
                j1[i] = Bessel.j1(k * r[i]);
                j0[i] = k * Bessel.j0(k * r[i]);
            }
            int at = 0;
            for (double height : z) {
                double e = Math.exp(slope * height);
                double eRe = e * waveRe[q];
                double eIm = e * waveIm[q];
                add(eRe, j1, s.aRe(), at);
                add(eIm, j1, s.aIm(), at);
                add(-slope * eRe, j1, s.brRe(), at);
                add(-slope * eIm, j1, s.brIm(), at);
                add(eRe, j0, s.bzRe(), at);
                add(eIm, j0, s.bzIm(), at);
                at += r.length;
            }
        }
    }

    private static void add(double factor, double[] x, double[] to, int from) {
        for (int i = 0; i < x.length; i++) {
            to[from + i] += factor * x[i];
        }
    }
}
