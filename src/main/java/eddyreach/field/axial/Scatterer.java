package eddyreach.field.axial;

import eddyreach.linalg.FrontalFactor;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.numerics.SelfCheckException;
import java.util.Arrays;
import org.apache.commons.math3.complex.Complex;

/**
 * A set of parts, with or without a coil, that scatters incoming waves: one factorised field problem at one frequency.
 *
 * <p>With u_i the incoming wave and x_i the scattered field, K x_i = -dK u_i, the response is
 *
 * <pre>S_ij = -1/2 u_i^T dK (u_j + x_j),   s_j = mu0/2 F^T (u_j + x_j),   Z0 = j w 2 pi mu0 F^T K^-1 F</pre>
 *
 * with K divided by nu0 and F the load of unit current.
 */
public final class Scatterer {

    private final Layout layout;
    private final Media media;
    private final double omega;
    private final double density;
    private final FrontalFactor factor;
    private final Slits slits;
    private final double[][] responseRe;
    private final double[][] responseIm;
    private final double[] linkRe;
    private final double[] linkIm;
    private final Complex impedance;

    /**
     * Solves.
     *
     * @param layout the problem without its frequency
     * @param media what its parts are made of at this frequency
     * @param coil the winding, null for none
     * @param omega angular frequency, rad/s
     * @param fields whether fields will be asked for, which takes the memory of the factor
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Scatterer(Layout layout, Media media, CoilRegion coil, double omega, boolean fields) {
        this.layout = layout;
        this.media = media;
        this.omega = omega;
        density = coil == null ? 0 : coil.density();
        factor = new FrontalFactor(layout.plan, new EddySystem(layout, media, density), fields);
        int n = layout.waveCount();
        double[][] cr = factor.schurRe();
        double[][] ci = factor.schurIm();
        slits = new Slits(layout, media, cr, ci);
        responseRe = new double[n][n];
        responseIm = new double[n][n];
        linkRe = new double[n];
        linkIm = new double[n];
        if (n > 0) {
            double[][][] direct = WaveProducts.scattering(layout.basis, layout.direction, layout.parts, media);
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    responseRe[i][j] = -0.5 * (direct[0][i][j] + cr[i][j]);
                    responseIm[i][j] = -0.5 * (direct[1][i][j] + ci[i][j]);
                }
            }
        }
        if (coil == null) {
            impedance = Complex.ZERO;
        } else {
            impedance = new Complex(ci[n][n], -cr[n][n]).multiply(2 * Math.PI * Material.MU0 * omega);
            double[] free = n == 0 ? new double[0] : WaveProducts.linkage(layout.basis, layout.direction, coil);
            for (int i = 0; i < n; i++) {
                linkRe[i] = Material.MU0 / 2 * (free[i] + cr[n][i]);
                linkIm[i] = Material.MU0 / 2 * ci[n][i];
            }
        }
        SelfCheck.passive(this);
        if (fields) {
            checkResidual();
        }
    }

    private void checkResidual() {
        double[][] y = new double[2][factor.schurRe().length];
        Arrays.fill(y[0], 1);
        EddySystem system = new EddySystem(layout, media, density);
        SelfCheck.residual(Residual.of(layout.elements, unknowns(), system, factor.extend(y)), omega);
    }

    double omega() {
        return omega;
    }

    Layout layout() {
        return layout;
    }

    Media media() {
        return media;
    }

    /** Real part of S (or T), waves without weights. */
    double[][] responseRe() {
        return responseRe;
    }

    /** Imaginary part of S (or T). */
    double[][] responseIm() {
        return responseIm;
    }

    /** Real part of the waves emitted by the coil per ampere. */
    double[] linkRe() {
        return linkRe;
    }

    /** Imaginary part of the waves emitted by the coil per ampere. */
    double[] linkIm() {
        return linkIm;
    }

    /** Impedance of the coil without incoming waves, ohm; the winding's own direct-current resistance is not in it. */
    Complex impedance() {
        return impedance;
    }

    /** Number of unknowns. */
    public int unknowns() {
        return layout.mesh.unknowns();
    }

    /**
     * The field for given incoming waves and coil current.
     *
     * @param waveRe amplitudes of the incoming waves times their weights, real parts, T m
     * @param waveIm imaginary parts
     * @param current coil current, A peak (0 for a target)
     */
    MeshField field(double[] waveRe, double[] waveIm, double current) {
        int n = waveRe.length;
        int kept = factor.schurRe().length;
        double[][] y = new double[2][kept];
        System.arraycopy(waveRe, 0, y[0], 0, n);
        System.arraycopy(waveIm, 0, y[1], 0, n);
        if (layout.firstSlit() > n) {
            y[0][n] = -Material.MU0 * current;
        }
        slits.complete(y[0], y[1]);
        double[][] x = factor.extend(y);
        double[][] voltage = new double[2][];
        voltage[0] = Arrays.copyOfRange(y[0], layout.firstSlit(), kept);
        voltage[1] = Arrays.copyOfRange(y[1], layout.firstSlit(), kept);
        return new MeshField(layout, waveRe, waveIm, x[0], x[1], voltage);
    }
}
