package eddyreach.field;

import eddyreach.linalg.SmallSymmetric;
import eddyreach.materials.Material;
import org.apache.commons.math3.complex.Complex;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;

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
    private final double omega;
    private final int n;
    private final double[] sRe;
    private final double[] sIm;
    private final double[] linkRe;
    private final double[] linkIm;
    private final SmallSymmetric solver;
    private final double[] rootRe;
    private final double[] rootIm;
    private final double[] yRe;
    private final double[] yIm;

    Join(WaveBasis basis, double omega, double[][] response, double[][] link) {
        this.basis = basis;
        this.omega = omega;
        n = basis.size();
        sRe = response[0];
        sIm = response[1];
        linkRe = link[0];
        linkIm = link[1];
        solver = new SmallSymmetric(n);
        rootRe = new double[n];
        rootIm = new double[n];
        yRe = new double[n];
        yIm = new double[n];
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
     */
    public Complex impedance(Reflection target, double gap) {
        if (target instanceof Reflection.Diagonal plate) {
            return solveDiagonal(plate, gap);
        }
        return solve(target, gap).dz();
    }

    private Complex solveDiagonal(Reflection.Diagonal plate, double gap) {
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
            double[] cr = solver.columnRe(j);
            double[] ci = solver.columnIm(j);
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
        solver.solve(yRe, yIm);
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

    private Complex scaled(double re, double im) {
        double f = omega * 4 * Math.PI / Material.MU0;
        return new Complex(-im * f, re * f);
    }

    /**
     * The waves in the gap and the change of impedance.
     *
     * @param target the target's reflection at this frequency
     * @param gap distance between face and target, m
     */
    public GapState solve(Reflection target, double gap) {
        double[] decay = new double[n];
        for (int i = 0; i < n; i++) {
            decay[i] = Math.exp(-basis.k()[i] * gap);
        }
        ZMatrixRMaj t = shifted(target, decay);
        ZMatrixRMaj s = new ZMatrixRMaj(n, n);
        ZMatrixRMaj link = new ZMatrixRMaj(n, 1);
        for (int i = 0; i < n; i++) {
            link.set(i, 0, linkRe[i], linkIm[i]);
            for (int j = 0; j < n; j++) {
                s.set(i, j, -sRe[i * n + j], -sIm[i * n + j]);
            }
        }
        ZMatrixRMaj system = new ZMatrixRMaj(n, n);
        CommonOps_ZDRM.mult(s, t, system);
        for (int i = 0; i < n; i++) {
            system.set(i, i, system.getReal(i, i) + 1, system.getImag(i, i));
        }
        ZMatrixRMaj c = new ZMatrixRMaj(n, 1);
        if (!CommonOps_ZDRM.solve(system, link, c)) {
            throw new ArithmeticException("the join over a gap of " + gap + " m is singular at w = " + omega);
        }
        ZMatrixRMaj a = new ZMatrixRMaj(n, 1);
        CommonOps_ZDRM.mult(t, c, a);
        double zr = 0;
        double zi = 0;
        double[][] waves = new double[4][n];
        for (int i = 0; i < n; i++) {
            double w = Math.sqrt(basis.w()[i]);
            double ar = a.getReal(i, 0);
            double ai = a.getImag(i, 0);
            zr += linkRe[i] * ar - linkIm[i] * ai;
            zi += linkRe[i] * ai + linkIm[i] * ar;
            waves[0][i] = w * ar;
            waves[1][i] = w * ai;
            waves[2][i] = w * decay[i] * c.getReal(i, 0);
            waves[3][i] = w * decay[i] * c.getImag(i, 0);
        }
        return new GapState(scaled(zr, zi), waves[0], waves[1], waves[2], waves[3]);
    }

    private ZMatrixRMaj shifted(Reflection target, double[] decay) {
        ZMatrixRMaj t = new ZMatrixRMaj(n, n);
        if (target instanceof Reflection.Diagonal d) {
            for (int i = 0; i < n; i++) {
                double e = decay[i] * decay[i];
                t.set(i, i, e * d.re()[i], e * d.im()[i]);
            }
        } else if (target instanceof Reflection.Full f) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    double e = decay[i] * decay[j];
                    t.set(i, j, e * f.re()[i * n + j], e * f.im()[i * n + j]);
                }
            }
        }
        return t;
    }
}
