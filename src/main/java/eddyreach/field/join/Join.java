package eddyreach.field.join;

import eddyreach.field.axial.FrequencyPair;
import eddyreach.field.axial.WaveBasis;
import eddyreach.linalg.SmallGeneral;
import eddyreach.linalg.SmallSymmetric;
import eddyreach.materials.Material;
import eddyreach.numerics.SelfCheckException;
import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;

/**
 * Switch and target joined over the air gap at one frequency: no field problem is solved for a distance any more.
 *
 * <p>With S and s of the switch, T of the target, E = diag exp(-kg) and W the weights, the waves obey
 * b = s + S W a and a = E T E W b, and the coil sees dZ = j w (4 pi / mu0) s^T W a. In variables scaled by the square root of
 * the weights, c = s' + S' T' c. A plate has a diagonal T', so that (I - T'^1/2 S' T'^1/2) y = T'^1/2 s' stays symmetric.
 *
 * <p>One instance holds scratch space and serves one thread.
 */
public final class Join {

    private final WaveBasis basis;
    private final int n;
    private final double[] sRe;
    private final double[] sIm;
    private double omega;
    private double[] linkRe;
    private double[] linkIm;
    private SmallSymmetric symmetric;
    private SmallGeneral general;
    private final double[] rootRe;
    private final double[] rootIm;
    private final double[] yRe;
    private final double[] yIm;

    public Join(WaveBasis basis, double omega, double[][] response, double[][] link) {
        this.basis = basis;
        n = basis.size();
        this.omega = omega;
        sRe = response[0];
        sIm = response[1];
        linkRe = link[0];
        linkIm = link[1];
        rootRe = new double[n];
        rootIm = new double[n];
        yRe = new double[n];
        yIm = new double[n];
    }

    /** Goes on at another angular frequency, in the arrays that it has: a tank asks for many, each a little away from the last. */
    void tune(double frequency, FrequencyPair pair) {
        omega = frequency;
        pair.response(omega, new double[][] {sRe, sIm});
        double[][] link = pair.link(omega);
        linkRe = link[0];
        linkIm = link[1];
    }

    /** Angular frequency, rad/s. */
    public double omega() {
        return omega;
    }

    /**
     * Change of the coil's impedance by a target, ohm.
     *
     * @param target the target's reflection at this frequency
     * @param gap distance between face and target, m
     * @throws SelfCheckException if a computation fails its own checks
     */
    public Complex impedance(Reflection target, double gap) {
        if (target instanceof Reflection.Diagonal plate) {
            return solveDiagonal(plate, gap);
        }
        return solve(target, gap).dz();
    }

    private Complex solveDiagonal(Reflection.Diagonal plate, double gap) {
        if (symmetric == null) {
            symmetric = new SmallSymmetric(n);
        }
        for (int i = 0; i < n; i++) {
            // principal root of e^(-2kg) Gamma; either root gives the same impedance
            double e = Math.exp(-basis.k()[i] * gap);
            double x = plate.re()[i];
            double y = plate.im()[i];
            double m = Math.sqrt((Math.hypot(x, y) + Math.abs(x)) / 2);
            double other = m == 0 ? 0 : y / (2 * m);
            rootRe[i] = e * (x >= 0 ? m : other);
            rootIm[i] = e * (x >= 0 ? other : m);
            yRe[i] = rootRe[i] * linkRe[i] - rootIm[i] * linkIm[i];
            yIm[i] = rootRe[i] * linkIm[i] + rootIm[i] * linkRe[i];
        }
        for (int j = 0; j < n; j++) {
            double[] cr = symmetric.columnRe(j);
            double[] ci = symmetric.columnIm(j);
            int row = j * n;
            double pr = rootRe[j];
            double pi = rootIm[j];
            for (int i = j; i < n; i++) {
                double ar = sRe[row + i] * pr - sIm[row + i] * pi;
                double ai = sRe[row + i] * pi + sIm[row + i] * pr;
                cr[i] = ai * rootIm[i] - ar * rootRe[i];
                ci[i] = -ar * rootIm[i] - ai * rootRe[i];
            }
            cr[j] += 1;
        }
        symmetric.solve(yRe, yIm);
        double zr = 0;
        double zi = 0;
        for (int i = 0; i < n; i++) {
            double pr = rootRe[i] * linkRe[i] - rootIm[i] * linkIm[i];
            double pi = rootRe[i] * linkIm[i] + rootIm[i] * linkRe[i];
            zr += pr * yRe[i] - pi * yIm[i];
            zi += pr * yIm[i] + pi * yRe[i];
        }
        return scaled(zr, zi);
    }

    /** The impedance that belongs to s^T a, ohm. */
    Complex scaled(double re, double im) {
        double f = omega * 4 * Math.PI / Material.MU0;
        return new Complex(-im * f, re * f);
    }

    /**
     * The waves in the gap and the change of impedance.
     *
     * @param target the target's reflection at this frequency
     * @param gap distance between face and target, m
     * @throws SelfCheckException if a computation fails its own checks
     */
    public GapState solve(Reflection target, double gap) {
        double[] decay = new double[n];
        for (int i = 0; i < n; i++) {
            decay[i] = Math.exp(-basis.k()[i] * gap);
        }
        double[][] t =
                target instanceof Reflection.Full full ? new double[][] {full.re(), full.im()} : expanded(target);
        if (general == null) {
            general = new SmallGeneral(n);
        }
        fill(t[0], t[1], decay);
        double[] cr = linkRe.clone();
        double[] ci = linkIm.clone();
        general.solve(cr, ci);
        double zr = 0;
        double zi = 0;
        double[][] waves = new double[4][n];
        for (int i = 0; i < n; i++) {
            double w = Math.sqrt(basis.w()[i]);
            double ar = back(t[0], t[1], i, decay, cr, ci, -1);
            double ai = back(t[0], t[1], i, decay, ci, cr, 1);
            zr += linkRe[i] * ar - linkIm[i] * ai;
            zi += linkRe[i] * ai + linkIm[i] * ar;
            waves[0][i] = w * ar;
            waves[1][i] = w * ai;
            waves[2][i] = w * decay[i] * cr[i];
            waves[3][i] = w * decay[i] * ci[i];
        }
        return new GapState(scaled(zr, zi), waves[0], waves[1], waves[2], waves[3]);
    }

    /** Row i of E T' E c: its real part, or its imaginary part with the parts of c exchanged and the other sign. */
    private double back(double[] tRe, double[] tIm, int i, double[] decay, double[] c, double[] other, int sign) {
        double sum = 0;
        for (int j = 0; j < n; j++) {
            sum += decay[i] * decay[j] * (tRe[i * n + j] * c[j] + sign * tIm[i * n + j] * other[j]);
        }
        return sum;
    }

    private double[][] expanded(Reflection target) {
        double[][] t = new double[2][n * n];
        if (target instanceof Reflection.Diagonal d) {
            for (int i = 0; i < n; i++) {
                t[0][i * (n + 1)] = d.re()[i];
                t[1][i * (n + 1)] = d.im()[i];
            }
        }
        return t;
    }

    /** Puts I - S' E T' E into the solver's columns. */
    private void fill(double[] tRe, double[] tIm, double[] decay) {
        for (int j = 0; j < n; j++) {
            double[] cr = general.columnRe(j);
            double[] ci = general.columnIm(j);
            Arrays.fill(cr, 0);
            Arrays.fill(ci, 0);
            cr[j] = 1;
            fillColumn(j, tRe, tIm, decay, cr, ci);
        }
    }

    private void fillColumn(int j, double[] tRe, double[] tIm, double[] decay, double[] cr, double[] ci) {
        for (int k = 0; k < n; k++) {
            double e = decay[j] * decay[k];
            double wr = e * tRe[j * n + k];
            double wi = e * tIm[j * n + k];
            // S is symmetric: its rows are its columns
            subtract(cr, ci, sRe, sIm, k * n, wr, wi);
        }
    }

    private static void subtract(double[] cr, double[] ci, double[] ar, double[] ai, int from, double wr, double wi) {
        for (int i = 0; i < cr.length; i++) {
            double x = ar[from + i];
            double y = ai[from + i];
            cr[i] = Math.fma(y, wi, Math.fma(-x, wr, cr[i]));
            ci[i] = Math.fma(-y, wr, Math.fma(-x, wi, ci[i]));
        }
    }
}
