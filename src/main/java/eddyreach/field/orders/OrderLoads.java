package eddyreach.field.orders;

import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.WaveBasis;
import java.util.Arrays;

/**
 * The incoming waves of one azimuthal order as loads: of those that differ within the parts only few, of which all others are sums there.
 *
 * <p>A pivoted Cholesky factorisation of the products of their gradients, {@code G = int grad u_i . grad u_j} scaled to a unit diagonal,
 * picks wave after wave that is farthest from a sum of those picked. The rest is {@code u_i = sum_p C_ip u_p}, and a response of the
 * picked ones, being a form in the waves within the parts, becomes {@code C S C^T} of all (the interpolative decomposition of Cheng,
 * Gimbutas, Martinsson and Rokhlin, SIAM J. Sci. Comput. 26 (2005) 1389).
 */
final class OrderLoads {

    private final OrderWaves radial;
    private final OrderWaves axial;
    private final int[] picked;

    /** C, {@code [wave][picked]}. */
    private final double[][] shares;

    OrderLoads(OrderWaves radial, OrderWaves axial) {
        this.radial = radial;
        this.axial = axial;
        int n = radial.products.length;
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            double size = product(i, i);
            scale[i] = size > 0 ? 1 / Math.sqrt(size) : 0;
        }
        double[] left = new double[n];
        Arrays.fill(left, 1);
        double[][] columns = new double[n][];
        int[] order = new int[n];
        int count = 0;
        while (count < n) {
            int next = largest(left);
            if (left[next] <= FieldAccuracy.MISSED_ENERGY
                    && (count > 0 && count % FieldAccuracy.PICKED_WAVES == 0 || left[next] <= 0)) {
                break;
            }
            order[count] = next;
            columns[count] = column(next, count, columns, scale, left);
            count++;
        }
        picked = Arrays.copyOf(order, count);
        shares = shares(columns, scale);
    }

    private static int largest(double[] left) {
        int best = 0;
        for (int i = 1; i < left.length; i++) {
            if (left[i] > left[best]) {
                best = i;
            }
        }
        return best;
    }

    /** The next column of the Cholesky factor; what is left of each wave shrinks, of the picked one to nothing. */
    private double[] column(int next, int count, double[][] columns, double[] scale, double[] left) {
        double root = Math.sqrt(left[next]);
        double[] l = new double[left.length];
        for (int i = 0; i < l.length; i++) {
            double v = i == next ? 1 : product(i, next) * scale[i] * scale[next];
            for (int k = 0; k < count; k++) {
                v -= columns[k][i] * columns[k][next];
            }
            l[i] = v / root;
            left[i] -= l[i] * l[i];
        }
        left[next] = Double.NEGATIVE_INFINITY;
        return l;
    }

    /** C = L L_p^-1, L_p being the rows of the picked waves, with the scale taken off; by back substitution. */
    private double[][] shares(double[][] columns, double[] scale) {
        int r = picked.length;
        double[][] c = new double[scale.length][r];
        for (int i = 0; i < c.length; i++) {
            for (int k = r - 1; k >= 0; k--) {
                double v = columns[k][i];
                for (int j = k + 1; j < r; j++) {
                    v -= c[i][j] * columns[k][picked[j]];
                }
                c[i][k] = v / columns[k][picked[k]];
            }
            for (int k = 0; k < r; k++) {
                c[i][k] = scale[i] == 0 ? 0 : c[i][k] * scale[picked[k]] / scale[i];
            }
        }
        for (int k = 0; k < r; k++) {
            Arrays.fill(c[picked[k]], 0);
            c[picked[k]][k] = 1;
        }
        return c;
    }

    /** int grad(theta u_i) . grad(theta u_j) r dr dz. */
    private double product(int i, int j) {
        return radial.slopeProducts[i][j] * axial.products[i][j] + radial.products[i][j] * axial.slopeProducts[i][j];
    }

    /** Radial integrals of all waves. */
    OrderWaves radial() {
        return radial;
    }

    /** Axial integrals of all waves. */
    OrderWaves axial() {
        return axial;
    }

    /** Number of picked waves. */
    int count() {
        return picked.length;
    }

    /** Number of a picked wave among all. */
    int wave(int load) {
        return picked[load];
    }

    /** The picked waves. */
    WaveBasis picked(WaveBasis all) {
        return new WaveBasis(
                Arrays.stream(picked).mapToDouble(i -> all.k()[i]).toArray(),
                Arrays.stream(picked).mapToDouble(i -> all.w()[i]).toArray());
    }

    /** int grad(theta u_i) . grad(theta u_j) r dr dz of the picked waves. */
    double[][] gradients() {
        int r = picked.length;
        double[][] out = new double[r][r];
        for (int i = 0; i < r; i++) {
            for (int j = 0; j < r; j++) {
                out[i][j] = product(picked[i], picked[j]);
            }
        }
        return out;
    }

    /** What a response of the picked waves is of all. */
    double[][] all(double[][] response) {
        int n = shares.length;
        int r = picked.length;
        double[][] half = new double[n][r];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < r; k++) {
                for (int j = 0; j < r; j++) {
                    half[i][j] += shares[i][k] * response[k][j];
                }
            }
        }
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int k = 0; k < r; k++) {
                    sum += half[i][k] * shares[j][k];
                }
                out[i][j] = sum;
                out[j][i] = sum;
            }
        }
        return out;
    }
}
