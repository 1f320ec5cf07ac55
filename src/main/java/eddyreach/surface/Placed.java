package eddyreach.surface;

import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.join.OffAxisChange;
import eddyreach.field.join.OffAxisJoin;
import eddyreach.linalg.Gmres;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.SelfCheckException;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.complex.Complex;

/**
 * A body that is not round before a switch, at one offset and angle and any distance: the equations of {@link OffAxisJoin} with cosines
 * and sines of all orders, since the body couples them.
 *
 * <pre>
 *   cosines  G_nm = J_(m-n) + (-1)^n J_(m+n)  (sqrt 2 with order 0),   sines  G_nm = J_(m-n) - (-1)^n J_(m+n)
 *   b = s + S a,   a = Y C Y^T b,   Y = E G^T V
 * </pre>
 *
 * <p>Orders of the switch are added until those left out are estimated, as in {@link eddyreach.field.join.OffAxisResponse}, to change dZ by less than half the
 * wanted share. Those of the body are what it was computed with; what they leave out is estimated from the waves that arrive in
 * higher ones, taken to be reflected no more than the highest one is.
 *
 * <p>One instance holds scratch space and serves one thread.
 */
public final class Placed {

    private final OffAxisJoin join;
    private final CoupledReflection body;
    private final double[] wave;
    private final int k;
    private final int highest;
    private final double[][] bessel;

    /** V turned into the frame of the offset, {@code [block][vector][family * waves + wave]}. */
    private final double[][][] turned;

    /** G^T V by families of the switch, {@code [family][block][vector][wave]}, as far as needed. */
    private final double[][][][] shifted;

    Placed(OffAxisJoin join, CoupledReflection body, double offset, double angle) {
        if (!(offset >= 0 && offset < Double.POSITIVE_INFINITY) || !Double.isFinite(angle)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "offset %s m, angle %s rad: must be finite, the offset not negative", offset, angle));
        }
        this.join = join;
        this.body = body;
        wave = body.basis().k();
        k = wave.length;
        highest = body.orders();
        bessel = new double[2 * highest + 1][k];
        double[] j = new double[2 * highest + 1];
        for (int i = 0; i < k; i++) {
            Bessel.orders(2 * highest, wave[i] * offset, j);
            for (int l = 0; l < j.length; l++) {
                bessel[l][i] = j[l];
            }
        }
        List<CoupledReflection.Block> blocks = body.blocks();
        turned = new double[blocks.size()][][];
        for (int c = 0; c < turned.length; c++) {
            turned[c] = turned(blocks.get(c).span(), angle);
        }
        shifted = new double[WaveLoads.families(highest)][][][];
    }

    private double[][] turned(double[][] span, double angle) {
        if (angle == 0) {
            return span;
        }
        double[][] out = new double[span.length][];
        for (int p = 0; p < span.length; p++) {
            double[] v = span[p].clone();
            for (int n = 1; n <= highest; n++) {
                double cos = Math.cos(n * angle);
                double sin = Math.sin(n * angle);
                for (int i = 0; i < k; i++) {
                    double c = span[p][(2 * n - 1) * k + i];
                    double s = span[p][2 * n * k + i];
                    v[(2 * n - 1) * k + i] = cos * c - sin * s;
                    v[2 * n * k + i] = sin * c + cos * s;
                }
            }
            out[p] = v;
        }
        return out;
    }

    /**
     * Change of the coil's impedance, ohm, at a distance between face and nearest point of the body, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Complex impedance(double gap) {
        return change(gap).dz();
    }

    /**
     * Change of impedance and how it was found, at a distance between face and nearest point of the body, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public OffAxisChange change(double gap) {
        double[] decay = new double[k];
        for (int i = 0; i < k; i++) {
            decay[i] = Math.exp(-wave[i] * (gap - body.before()));
        }
        double unit = join.scaled(0, 1).abs();
        double[][] b = solve(decay, 0);
        double[][] a = returning(decay, 0, b);
        double[] dz = dot(join.link(), a);
        double size = Math.hypot(dz[0], dz[1]);
        int own = Math.min(1, highest);
        double[] left = returningPower(decay, b, own);
        double rest = bound(join.response(own), left);
        while (own < highest && rest > join.tolerance() / 2 * size) {
            own++;
            left = returningPower(decay, b, own);
            rest = bound(join.response(own), left);
        }
        if (bound(join.response(0), power(b)) > 0) {
            b = solve(decay, own);
            a = returning(decay, own, b);
            dz = dot(join.link(), a);
        }
        return new OffAxisChange(join.scaled(dz[0], dz[1]), unit * (rest + bodyRest(decay, b)), highest, own);
    }

    private static double[] power(double[][] b) {
        double[] out = new double[b[0].length];
        for (int i = 0; i < out.length; i++) {
            out[i] = b[0][i] * b[0][i] + b[1][i] * b[1][i];
        }
        return out;
    }

    /** Waves b of the switch in its orders 0 to own. */
    private double[][] solve(double[] decay, int own) {
        int families = WaveLoads.families(own);
        int size = families * k;
        double[][] source = {new double[size], new double[size]};
        for (int part = 0; part < 2; part++) {
            System.arraycopy(join.link()[part], 0, source[part], 0, k);
        }
        double[][] b = {source[0].clone(), source[1].clone()};
        Gmres.Operator loop = (xr, xi, yr, yi) -> {
            double[][] a = returning(decay, own, new double[][] {xr, xi});
            System.arraycopy(xr, 0, yr, 0, size);
            System.arraycopy(xi, 0, yi, 0, size);
            for (int f = 0; f < families; f++) {
                subtract(join.response(WaveLoads.order(f)), a, f * k, yr, yi);
            }
        };
        try {
            new Gmres(size, size).solve(loop, source[0], source[1], b[0], b[1], FieldAccuracy.WAVES_SOLVED);
        } catch (SelfCheckException e) {
            throw new SelfCheckException(String.format(
                    Locale.ROOT,
                    "the waves between the switch and a part that is not round do not settle at %.4g kHz: %s",
                    join.omega() / (2e3 * Math.PI),
                    e.getMessage()));
        }
        return b;
    }

    /** Y C Y^T b in the orders of the switch. */
    private double[][] returning(double[] decay, int own, double[][] b) {
        int families = WaveLoads.families(own);
        double[][] a = new double[2][families * k];
        double[][] e = damped(decay, b, families);
        for (int c = 0; c < turned.length; c++) {
            double[][] t = reflected(c, e, families);
            for (int f = 0; f < families; f++) {
                double[][] y = shifted(f)[c];
                for (int p = 0; p < y.length; p++) {
                    for (int i = 0; i < k; i++) {
                        a[0][f * k + i] = Math.fma(t[0][p], y[p][i], a[0][f * k + i]);
                        a[1][f * k + i] = Math.fma(t[1][p], y[p][i], a[1][f * k + i]);
                    }
                }
            }
        }
        return damped(decay, a, families);
    }

    private double[][] damped(double[] decay, double[][] b, int families) {
        double[][] out = new double[2][families * k];
        for (int i = 0; i < families * k; i++) {
            out[0][i] = decay[i % k] * b[0][i];
            out[1][i] = decay[i % k] * b[1][i];
        }
        return out;
    }

    /** C (G^T V)^T of damped waves, for one block. */
    private double[][] reflected(int c, double[][] damped, int families) {
        CoupledReflection.Block block = body.blocks().get(c);
        int r = block.span().length;
        double[] pr = new double[r];
        double[] pi = new double[r];
        for (int f = 0; f < families; f++) {
            double[][] y = shifted(f)[c];
            for (int p = 0; p < r; p++) {
                double re = 0;
                double im = 0;
                for (int i = 0; i < k; i++) {
                    re += y[p][i] * damped[0][f * k + i];
                    im += y[p][i] * damped[1][f * k + i];
                }
                pr[p] += re;
                pi[p] += im;
            }
        }
        double[][] out = new double[2][r];
        for (int p = 0; p < r; p++) {
            double[] cr = block.re()[p];
            double[] ci = block.im()[p];
            double re = 0;
            double im = 0;
            for (int q = 0; q < r; q++) {
                re += cr[q] * pr[q] - ci[q] * pi[q];
                im += cr[q] * pi[q] + ci[q] * pr[q];
            }
            out[0][p] = re;
            out[1][p] = im;
        }
        return out;
    }

    /** G^T V of a family of the switch. */
    private double[][][] shifted(int family) {
        if (shifted[family] == null) {
            int m = WaveLoads.order(family);
            boolean sine = WaveLoads.sine(family);
            double[][][] out = new double[turned.length][][];
            for (int c = 0; c < out.length; c++) {
                out[c] = new double[turned[c].length][k];
            }
            for (int n = sine ? 1 : 0; n <= highest; n++) {
                double[] g = shift(n, m, sine);
                int from = (sine ? 2 * n : Math.max(0, 2 * n - 1)) * k;
                for (int c = 0; c < out.length; c++) {
                    for (int p = 0; p < out[c].length; p++) {
                        double[] v = turned[c][p];
                        double[] to = out[c][p];
                        for (int i = 0; i < k; i++) {
                            to[i] = Math.fma(g[i], v[from + i], to[i]);
                        }
                    }
                }
            }
            shifted[family] = out;
        }
        return shifted[family];
    }

    /** G of an order of the body and one of the switch, both cosines or both sines. */
    private double[] shift(int n, int m, boolean sine) {
        double[] g = new double[k];
        double sign = n % 2 == 0 ? 1 : -1;
        for (int i = 0; i < k; i++) {
            if (n == 0 || m == 0) {
                g[i] = sign * (n == m ? 1 : Math.sqrt(2)) * bessel[n + m][i];
            } else {
                double difference = m < n && (n - m) % 2 == 1 ? -1 : 1;
                g[i] = difference * bessel[Math.abs(m - n)][i] + (sine ? -sign : sign) * bessel[m + n][i];
            }
        }
        return g;
    }

    /** Squares of the waves that return to the switch in orders above own, order 0 of it alone sending. */
    private double[] returningPower(double[] decay, double[][] b, int own) {
        double[] left = new double[k];
        int all = WaveLoads.families(highest);
        double[][] e = damped(decay, b, 1);
        double[][] out = new double[2][all * k];
        for (int c = 0; c < turned.length; c++) {
            double[][] t = reflected(c, e, 1);
            for (int p = 0; p < turned[c].length; p++) {
                double[] v = turned[c][p];
                for (int i = 0; i < all * k; i++) {
                    out[0][i] = Math.fma(t[0][p], v[i], out[0][i]);
                    out[1][i] = Math.fma(t[1][p], v[i], out[1][i]);
                }
            }
        }
        for (int i = 0; i < all * k; i++) {
            double d = decay[i % k];
            left[i % k] += d * d * (out[0][i] * out[0][i] + out[1][i] * out[1][i]);
        }
        double[][] a = returning(decay, own, padded(b, own));
        for (int i = 0; i < a[0].length; i++) {
            left[i % k] -= a[0][i] * a[0][i] + a[1][i] * a[1][i];
        }
        for (int i = 0; i < k; i++) {
            left[i] = Math.max(0, left[i]);
        }
        return left;
    }

    private double[][] padded(double[][] b, int own) {
        int size = WaveLoads.families(own) * k;
        return new double[][] {
            java.util.Arrays.copyOf(java.util.Arrays.copyOf(b[0], k), size),
            java.util.Arrays.copyOf(java.util.Arrays.copyOf(b[1], k), size)
        };
    }

    /** Estimate of what orders of the body above its highest add, in units of s^T a. */
    private double bodyRest(double[] decay, double[][] b) {
        double[] left = new double[k];
        java.util.Arrays.fill(left, 1);
        for (int n = 0; n <= highest; n++) {
            double[] g = shift(n, 0, false);
            for (int i = 0; i < k; i++) {
                left[i] -= g[i] * g[i];
            }
        }
        for (int i = 0; i < k; i++) {
            left[i] = Math.max(0, left[i]) * decay[i] * decay[i] * (b[0][i] * b[0][i] + b[1][i] * b[1][i]);
        }
        double[] lastOrder = body.highestOrder();
        double sum = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                sum += Math.sqrt(left[i] * left[j]) * lastOrder[i * k + j];
            }
        }
        return sum;
    }

    /** Sum of sqrt(left_i) |matrix_ij| sqrt(left_j). */
    private double bound(double[][] matrix, double[] left) {
        double sum = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                sum += Math.sqrt(left[i] * left[j]) * Math.hypot(matrix[0][i * k + j], matrix[1][i * k + j]);
            }
        }
        return sum;
    }

    /** Subtracts a symmetric matrix times a block of x from the same block of y. */
    private void subtract(double[][] matrix, double[][] x, int at, double[] yr, double[] yi) {
        for (int j = 0; j < k; j++) {
            double xr = x[0][at + j];
            double xi = x[1][at + j];
            for (int i = 0; i < k; i++) {
                double re = matrix[0][j * k + i];
                double im = matrix[1][j * k + i];
                yr[at + i] -= re * xr - im * xi;
                yi[at + i] -= re * xi + im * xr;
            }
        }
    }

    /** s^T a over the waves of order 0. */
    private double[] dot(double[][] x, double[][] y) {
        double re = 0;
        double im = 0;
        for (int i = 0; i < k; i++) {
            re += x[0][i] * y[0][i] - x[1][i] * y[1][i];
            im += x[0][i] * y[1][i] + x[1][i] * y[0][i];
        }
        return new double[] {re, im};
    }
}
