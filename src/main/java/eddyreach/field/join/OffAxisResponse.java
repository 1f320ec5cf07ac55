package eddyreach.field.join;

import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.WaveBasis;
import eddyreach.linalg.Gmres;
import eddyreach.linalg.MemoryException;
import eddyreach.linalg.SmallGeneral;
import eddyreach.numerics.Bessel;
import eddyreach.numerics.SelfCheckException;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.complex.Complex;

/**
 * A target with its axis beside that of the switch, at one frequency and any distance; see {@link OffAxisJoin} for the equations.
 *
 * <p>Orders are added until those left out are estimated to change dZ by less than the wanted share of it, half of it for target and
 * switch each. In first order (dZ being stationary) an order n of the target adds v_n^T T_n v_n, v_n = G_n0 E b, and an order m of the
 * switch a_m^T S_m a_m. How much of the waves is left for higher orders is known without computing any of them, from
 * sum_n G_n0^2 = 1 at each wavenumber; and higher orders are taken to reflect no more than the last one computed, element by
 * element, as they do once the body is small against their radius. With Cauchy's inequality,
 *
 * <pre>|rest| &lt; sum_ij |T_N,ij| L_i L_j,   L_i^2 = sum_(n above N) |v_n,i|^2</pre>
 *
 * which sees the second maximum that the terms have where the spectrum of the coil changes sign.
 */
public final class OffAxisResponse {

    private final OffAxisJoin join;
    private final TargetField target;
    private final double nearest;
    private final int k;

    /** J_l(k d), {@code [order][wave]}; null where an offset changes nothing. */
    private final double[][] bessel;

    private final double[][] shift =
            new double[(FieldAccuracy.HIGHEST_ORDER + 1) * (FieldAccuracy.HIGHEST_ORDER + 1)][];
    private final double[][][] reflections = new double[FieldAccuracy.HIGHEST_ORDER + 1][][];
    private final double[] decay;
    private int mostTarget = FieldAccuracy.HIGHEST_ORDER;
    private int mostSwitch = FieldAccuracy.HIGHEST_ORDER;
    private boolean limited;
    private double lastGap = Double.NaN;
    private OffAxisChange last;

    OffAxisResponse(OffAxisJoin join, TargetField target, double offset, double nearest) {
        this.join = join;
        this.target = target;
        this.nearest = nearest;
        k = join.basis().size();
        decay = new double[k];
        // an endless plate has no axis of its own
        boolean moved = offset > 0 && target.at(join.omega()) instanceof Reflection.Full;
        bessel = moved ? bessel(join.basis(), offset) : null;
    }

    private static double[][] bessel(WaveBasis basis, double offset) {
        double[][] out = new double[2 * FieldAccuracy.HIGHEST_ORDER + 1][basis.size()];
        double[] j = new double[2 * FieldAccuracy.HIGHEST_ORDER + 1];
        for (int i = 0; i < basis.size(); i++) {
            Bessel.orders(2 * FieldAccuracy.HIGHEST_ORDER, basis.k()[i] * offset, j);
            for (int l = 0; l < j.length; l++) {
                out[l][i] = j[l];
            }
        }
        return out;
    }

    /**
     * Change of the coil's impedance, ohm, at a distance between face and target, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Complex impedance(double gap) {
        return change(gap).dz();
    }

    /**
     * Estimate of what the azimuthal orders left out would add to the impedance at a distance, ohm.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public double truncation(double gap) {
        return change(gap).truncation();
    }

    /**
     * Change of impedance and how it was found, at a distance between face and target, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public OffAxisChange change(double gap) {
        if (gap != lastGap) {
            last = bessel == null
                    ? new OffAxisChange(join.axial().impedance(target.at(join.omega()), gap), 0, 0, 0)
                    : solve(gap);
            lastGap = gap;
        }
        return last;
    }

    private OffAxisChange solve(double gap) {
        if (gap < nearest && !limited) {
            OffAxisChange limit = solve(nearest);
            mostTarget = limit.targetOrders();
            mostSwitch = limit.switchOrders();
            limited = true;
        }
        return solve(
                gap,
                gap < nearest ? mostTarget : FieldAccuracy.HIGHEST_ORDER,
                gap < nearest ? mostSwitch : FieldAccuracy.HIGHEST_ORDER);
    }

    private OffAxisChange solve(double gap, int most, int mostOwn) {
        for (int i = 0; i < k; i++) {
            decay[i] = Math.exp(-join.basis().k()[i] * gap);
        }
        double unit = join.scaled(0, 1).abs();
        double faint = FieldAccuracy.FAINT
                * join.axial().impedance(target.at(join.omega()), gap).abs()
                / unit;
        double share = join.tolerance() / 2;
        // first with the waves of the coil alone, then with those that the order 0 of the switch makes of them
        int highest = targetOrders(join.link(), FieldAccuracy.LEAST_ORDERS, most, share, faint);
        double[][] b = axialWaves(highest);
        int more = targetOrders(b, highest, most, share, faint);
        if (more > highest) {
            highest = more;
            b = axialWaves(highest);
        }
        double[][][] reflected = reflected(b, highest, 0);
        int own = 1;
        double size = Math.max(faint, size(reflected));
        while (own < mostOwn && switchRest(reflected, own) > share * size) {
            own++;
        }
        double[][] a = returning(all(b, highest, own), highest, own);
        double[] dz = dot(join.link(), a);
        double rest = targetRest(b, highest) + switchRest(reflected, own);
        return new OffAxisChange(join.scaled(dz[0], dz[1]), unit * rest, highest, own);
    }

    /** Highest order of the target that matters to given waves, from a first guess upwards. */
    private int targetOrders(double[][] b, int least, int most, double share, double faint) {
        int highest = least;
        while (highest < most) {
            double[] left = targetLeft(b, highest);
            // most often the diagonal alone tells that more are needed
            double size = Math.max(faint, size(reflected(b, highest, 0)));
            while (highest < most && diagonal(reflection(highest), left) > share * size) {
                highest++;
                left = targetLeft(b, highest);
            }
            if (bound(reflection(highest), left) <= share * size) {
                return highest;
            }
            highest++;
        }
        return most;
    }

    /** Bound of what the orders of the target above the highest add to dZ. */
    private double targetRest(double[][] b, int highest) {
        return bound(reflection(highest), targetLeft(b, highest));
    }

    /** Squares of the waves that arrive at the target in orders above the highest. */
    private double[] targetLeft(double[][] b, int highest) {
        double[] left = new double[k];
        Arrays.fill(left, 1);
        for (int n = 0; n <= highest; n++) {
            double[] g = shift(n, 0);
            for (int i = 0; i < k; i++) {
                left[i] -= g[i] * g[i];
            }
        }
        for (int i = 0; i < k; i++) {
            // rounding may make nothing less than nothing
            left[i] = Math.max(0, left[i]) * decay[i] * decay[i] * (b[0][i] * b[0][i] + b[1][i] * b[1][i]);
        }
        return left;
    }

    /** Bound of what the orders of the switch above its highest add to dZ. */
    private double switchRest(double[][][] reflected, int own) {
        double[] left = new double[k];
        for (double[][] t : reflected) {
            for (int i = 0; i < k; i++) {
                left[i] += decay[i] * decay[i] * (t[0][i] * t[0][i] + t[1][i] * t[1][i]);
            }
        }
        for (int m = 0; m <= own; m++) {
            double[][] a = new double[2][k];
            gather(reflected, m, a, 0);
            for (int i = 0; i < k; i++) {
                left[i] = Math.max(0, left[i] - a[0][i] * a[0][i] - a[1][i] * a[1][i]);
            }
        }
        return bound(join.response(own), left);
    }

    /** Sum of sqrt(left_i) |matrix_ij| sqrt(left_j). */
    private double bound(double[][] matrix, double[] left) {
        double[] root = new double[k];
        for (int i = 0; i < k; i++) {
            root[i] = Math.sqrt(left[i]);
        }
        double off = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < i; j++) {
                off += root[i] * root[j] * magnitude(matrix, i * k + j);
            }
        }
        return diagonal(matrix, left) + 2 * off;
    }

    private double diagonal(double[][] matrix, double[] left) {
        double sum = 0;
        for (int i = 0; i < k; i++) {
            sum += left[i] * magnitude(matrix, i * (k + 1));
        }
        return sum;
    }

    private static double magnitude(double[][] matrix, int at) {
        return Math.sqrt(matrix[0][at] * matrix[0][at] + matrix[1][at] * matrix[1][at]);
    }

    /** Waves b with order 0 of the switch alone. */
    private double[][] axialWaves(int highest) {
        double[] tr = new double[k * k];
        double[] ti = new double[k * k];
        for (int n = 0; n <= highest; n++) {
            double[] d = shift(n, 0);
            double[][] t = reflection(n);
            for (int i = 0; i < k; i++) {
                for (int j = 0; j < k; j++) {
                    double f = decay[i] * d[i] * decay[j] * d[j];
                    tr[i * k + j] += f * t[0][i * k + j];
                    ti[i * k + j] += f * t[1][i * k + j];
                }
            }
        }
        double[][] s = join.response(0);
        SmallGeneral system = new SmallGeneral(k);
        double[][] column = new double[2][k];
        double[][] product = new double[2][k];
        for (int j = 0; j < k; j++) {
            // both matrices are symmetric: rows are columns
            System.arraycopy(tr, j * k, column[0], 0, k);
            System.arraycopy(ti, j * k, column[1], 0, k);
            Arrays.fill(product[0], 0);
            Arrays.fill(product[1], 0);
            multiply(s, column, 0, product, 0);
            for (int i = 0; i < k; i++) {
                system.columnRe(j)[i] = -product[0][i];
                system.columnIm(j)[i] = -product[1][i];
            }
            system.columnRe(j)[j] += 1;
        }
        double[][] b = {join.link()[0].clone(), join.link()[1].clone()};
        system.solve(b[0], b[1]);
        return b;
    }

    /** Waves b of all orders of the switch, starting from those of order 0 alone. */
    private double[][] all(double[][] axial, int highest, int own) {
        int size = (own + 1) * k;
        double[][] b = {Arrays.copyOf(axial[0], size), Arrays.copyOf(axial[1], size)};
        double[][] source = {Arrays.copyOf(join.link()[0], size), Arrays.copyOf(join.link()[1], size)};
        Gmres.Operator loop = (xr, xi, yr, yi) -> {
            double[][] a = returning(new double[][] {xr, xi}, highest, own);
            double[][] y = new double[2][size];
            for (int m = 0; m <= own; m++) {
                multiply(join.response(m), a, m * k, y, m * k);
            }
            for (int i = 0; i < size; i++) {
                yr[i] = xr[i] - y[0][i];
                yi[i] = xi[i] - y[1][i];
            }
        };
        try {
            // waves of switch and target that both draw the field go to and fro many times
            new Gmres(size, size).solve(loop, source[0], source[1], b[0], b[1], FieldAccuracy.WAVES_SOLVED);
        } catch (SelfCheckException e) {
            throw new SelfCheckException(String.format(
                    Locale.ROOT,
                    "the waves between the switch and a target beside its axis do not settle at %.4g kHz: %s",
                    join.omega() / (2e3 * Math.PI),
                    e.getMessage()));
        }
        return b;
    }

    /** Waves a that come back to the switch in its orders 0 to own. */
    private double[][] returning(double[][] b, int highest, int own) {
        double[][][] t = reflected(b, highest, own);
        double[][] a = new double[2][(own + 1) * k];
        for (int m = 0; m <= own; m++) {
            gather(t, m, a, m * k);
        }
        return a;
    }

    /** T G E b by orders of the target. */
    private double[][][] reflected(double[][] b, int highest, int own) {
        double[][][] out = new double[highest + 1][2][k];
        for (int n = 0; n <= highest; n++) {
            double[][] in = new double[2][k];
            for (int m = 0; m <= own; m++) {
                addScaled(shift(n, m), b[0], b[1], m * k, in);
            }
            multiply(reflection(n), in, 0, out[n], 0);
        }
        return out;
    }

    /** Adds order m of E G^T times waves given by orders of the target to a. */
    private void gather(double[][][] reflected, int m, double[][] a, int at) {
        for (int n = 0; n < reflected.length; n++) {
            double[] g = shift(n, m);
            double[][] t = reflected[n];
            for (int i = 0; i < k; i++) {
                double f = decay[i] * g[i];
                a[0][at + i] += f * t[0][i];
                a[1][at + i] += f * t[1][i];
            }
        }
    }

    /** Adds E g times a block of b to a vector. */
    private void addScaled(double[] g, double[] br, double[] bi, int from, double[][] to) {
        for (int i = 0; i < k; i++) {
            double f = decay[i] * g[i];
            to[0][i] += f * br[from + i];
            to[1][i] += f * bi[from + i];
        }
    }

    /** G_nm of all waves. */
    private double[] shift(int n, int m) {
        int at = n * (FieldAccuracy.HIGHEST_ORDER + 1) + m;
        if (shift[at] == null) {
            double[] g = new double[k];
            double sign = n % 2 == 0 ? 1 : -1;
            for (int i = 0; i < k; i++) {
                if (n == 0 || m == 0) {
                    double root = n == m ? 1 : Math.sqrt(2);
                    g[i] = sign * root * bessel[n + m][i];
                } else {
                    double difference = m < n && (n - m) % 2 == 1 ? -1 : 1;
                    g[i] = difference * bessel[Math.abs(m - n)][i] + sign * bessel[m + n][i];
                }
            }
            shift[at] = g;
        }
        return shift[at];
    }

    /** The target's response in an order, in the convention of order 0. */
    private double[][] reflection(int n) {
        if (reflections[n] == null) {
            Reflection.Full full = (Reflection.Full) target.at(n, join.omega());
            double[][] t = {full.re(), full.im()};
            reflections[n] = n == 0 ? t : OffAxisJoin.negated(t);
        }
        return reflections[n];
    }

    /** Adds a symmetric matrix times a block of x to a block of y. */
    private void multiply(double[][] matrix, double[][] x, int from, double[][] y, int to) {
        for (int j = 0; j < k; j++) {
            addColumn(k, matrix[0], matrix[1], j * k, x[0][from + j], x[1][from + j], y[0], y[1], to);
        }
    }

    private static void addColumn(
            int n, double[] ar, double[] ai, int column, double xr, double xi, double[] yr, double[] yi, int to) {
        for (int i = 0; i < n; i++) {
            yr[to + i] = Math.fma(-ai[column + i], xi, Math.fma(ar[column + i], xr, yr[to + i]));
            yi[to + i] = Math.fma(ai[column + i], xr, Math.fma(ar[column + i], xi, yi[to + i]));
        }
    }

    /** |dZ| in the units of s^T a, given what the target reflects. */
    private double size(double[][][] reflected) {
        double[][] a = new double[2][k];
        gather(reflected, 0, a, 0);
        double[] z = dot(join.link(), a);
        return Math.hypot(z[0], z[1]);
    }

    /** x^T y over the waves of order 0. */
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
