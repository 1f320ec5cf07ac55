package eddyreach.field.axial;

import eddyreach.fem.Shape;
import eddyreach.mesh.Axis;
import eddyreach.mesh.Slant;
import eddyreach.mesh.TensorMesh;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.GaussLegendre;
import java.util.stream.IntStream;

/**
 * The integrals of {@link EddySystem} on one cell whose sides lean, by quadrature in two dimensions: there they are no products of
 * integrals along the axes. Shape functions are those of the axes, in the names of the mesh lines.
 */
final class SlantedCell {

    /** int (dz u dz v + (1/r d(ru)/dr)(1/r d(rv)/dr)) r dr dz, lower triangle over the unknowns of the cell. */
    final double[] curl;

    /** int u v r dr dz, the same. */
    final double[] mass;

    /** The curls of a wave and of v, {@code [wave][unknown]}. */
    final double[][] waveCurl;

    /** A wave and v, {@code [wave][unknown]}. */
    final double[][] waveMass;

    /** int v r dr dz. */
    final double[] mean;

    /** int v dr dz. */
    final double[] meanFlat;

    /**
     * @param local the unknowns among the functions of the cell, as {@code axial * (pr + 1) + radial}
     * @param basis waves that are scattered here, null for none
     * @param direction of the waves
     */
    SlantedCell(TensorMesh mesh, int cell, int[] local, WaveBasis basis, int direction) {
        int n = local.length;
        int waves = basis == null ? 0 : basis.size();
        curl = new double[n * (n + 1) / 2];
        mass = new double[curl.length];
        waveCurl = new double[waves][n];
        waveMass = new double[waves][n];
        mean = new double[n];
        meanFlat = new double[n];
        Axis r = mesh.r();
        Axis z = mesh.z();
        int er = cell % r.elements();
        int ez = cell / r.elements();
        double steepest = waves == 0 ? 0 : basis.k()[waves - 1];
        GaussLegendre alongZ = rule(z.degree(ez), steepest * z.length(ez));
        Values vz = new Values(z.degree(ez));
        Values vr = new Values(r.degree(er));
        double wide = width(mesh, er, ez);
        GaussLegendre alongR = rule(r.degree(er), steepest * wide);
        double[] value = new double[n];
        double[] slopeR = new double[n];
        double[] slopeZ = new double[n];
        int nr = r.degree(er) + 1;
        int[] onR = IntStream.of(local).map(l -> l % nr).toArray();
        int[] onZ = IntStream.of(local).map(l -> l / nr).toArray();
        for (int j = 0; j < alongZ.size(); j++) {
            double height = z.middle(ez) + z.length(ez) / 2 * alongZ.node(j);
            vz.at(alongZ.node(j), z.length(ez) / 2);
            for (int i = 0; i < alongR.size(); i++) {
                double line = r.middle(er) + r.length(er) / 2 * alongR.node(i);
                vr.at(alongR.node(i), r.length(er) / 2);
                Slant.Place p = mesh.slant().at(line, height);
                double area = alongR.weight(i) * alongZ.weight(j) * r.length(er) / 2 * z.length(ez) / 2 * p.stretch();
                double inverse = 1 / p.radius();
                double stretch = 1 / p.stretch();
                for (int a = 0; a < n; a++) {
                    double fr = vr.value[onR[a]];
                    double fz = vz.value[onZ[a]];
                    double slope = vr.slope[onR[a]] * fz * stretch;
                    value[a] = fr * fz;
                    slopeR[a] = slope + value[a] * inverse;
                    slopeZ[a] = fr * vz.slope[onZ[a]] - p.lean() * slope;
                    mean[a] += area * p.radius() * value[a];
                    meanFlat[a] += area * value[a];
                }
                add(area * p.radius(), value, slopeR, slopeZ);
                for (int q = 0; q < waves; q++) {
                    double k = basis.k()[q];
                    double e = area * p.radius() * Math.exp(direction * k * height);
                    double j1 = e * Bessel.j1(k * p.radius());
                    double up = direction * k * j1;
                    double across = k * e * Bessel.j0(k * p.radius());
                    for (int a = 0; a < n; a++) {
                        waveMass[q][a] += j1 * value[a];
                        waveCurl[q][a] += up * slopeZ[a] + across * slopeR[a];
                    }
                }
            }
        }
    }

    private void add(double weight, double[] value, double[] slopeR, double[] slopeZ) {
        int at = 0;
        for (int a = 0; a < value.length; a++) {
            double v = weight * value[a];
            double x = weight * slopeR[a];
            double y = weight * slopeZ[a];
            for (int b = 0; b <= a; b++, at++) {
                mass[at] += v * value[b];
                curl[at] += x * slopeR[b] + y * slopeZ[b];
            }
        }
    }

    private static double width(TensorMesh mesh, int er, int ez) {
        double widest = 0;
        for (int end = 0; end <= 1; end++) {
            double height = mesh.z().end(ez + end);
            double inner = mesh.slant().at(mesh.r().end(er), height).radius();
            widest = Math.max(
                    widest, mesh.slant().at(mesh.r().end(er + 1), height).radius() - inner);
        }
        return widest;
    }

    private static GaussLegendre rule(int degree, double phase) {
        return GaussLegendre.of(degree + FieldAccuracy.SLANTED_POINTS + (int) Math.ceil(phase / 2), -1, 1);
    }

    /** Shape functions and their slopes at a point of an element. */
    private static final class Values {

        private final int degree;
        private final double[] value;
        private final double[] slope;

        Values(int degree) {
            this.degree = degree;
            value = new double[degree + 1];
            slope = new double[degree + 1];
        }

        void at(double t, double half) {
            Shape.values(degree, t, value);
            Shape.derivatives(degree, t, slope);
            for (int i = 0; i <= degree; i++) {
                slope[i] /= half;
            }
        }
    }
}
