package eddyreach.closedform;

import eddyreach.materials.Material;
import org.apache.commons.math3.complex.Complex;

/**
 * A plate of any number of uniform layers with air behind.
 *
 * <p>With q = sqrt(k^2 + j w mu0 mu_r sigma) and y = q/mu_r, the surface admittance goes from the back to the front,
 * {@code Y = y (Y' + y tanh(q t)) / (y + Y' tanh(q t))}, starting from Y = k in air; {@code Gamma = (k - Y)/(k + Y)} (Dodd and Deeds,
 * J. Appl. Phys. 39, 1968, 2829, for layers; Cheng, Dodd and Deeds, Int. J. Nondestr. Test. 3, 1971, 109). Here the recursion runs on
 * d = k - Y and on e = exp(-2 q t), so that neither a thin layer (k and Y nearly equal) nor a thick one (tanh of a large argument)
 * loses digits:
 *
 * <pre>
 *   d = [ (k - y)((1 - e)(k + y) - d') + e d' (k + y) ] / [ y (1 + e) + (k - d')(1 - e) ],   Gamma = d / (2k - d)
 * </pre>
 *
 * <p>Accuracy about 1e-13 relative, at any thickness. An infinite last thickness makes a half-space. Immutable; the array form
 * allocates nothing.
 */
public final class LayeredPlate implements Reflector {

    /** exp(-x) below this is lost against 1. */
    private static final double OPAQUE = 40;

    private final double[] sigma;
    private final double[] muReal;
    private final double[] muLoss;
    private final double[] thickness;

    /**
     * The layers, the first faces the switch.
     *
     * @param sigma conductivities, S/m
     * @param muReal real parts of the relative permeabilities
     * @param muLoss loss parts mu'' of mu_r = mu' - j mu'', not negative
     * @param thickness thicknesses, m, above 0; infinity for a half-space
     * @throws IllegalArgumentException if lengths differ or a value is out of range
     */
    public LayeredPlate(double[] sigma, double[] muReal, double[] muLoss, double[] thickness) {
        int n = thickness.length;
        if (sigma.length != n || muReal.length != n || muLoss.length != n) {
            throw new IllegalArgumentException("layers: " + sigma.length + " conductivities, " + muReal.length + " and "
                    + muLoss.length + " permeabilities, " + n + " thicknesses; must be as many");
        }
        for (int i = 0; i < n; i++) {
            Args.notNegative("conductivity of layer " + (i + 1) + ", S/m", sigma[i]);
            Args.positive("relative permeability of layer " + (i + 1), muReal[i]);
            Args.notNegative("permeability loss part of layer " + (i + 1), muLoss[i]);
            Args.positive("thickness of layer " + (i + 1) + ", m", thickness[i]);
        }
        this.sigma = sigma.clone();
        this.muReal = muReal.clone();
        this.muLoss = muLoss.clone();
        this.thickness = thickness.clone();
    }

    /**
     * One layer without magnetic loss.
     *
     * @param sigma conductivity, S/m
     * @param mu relative permeability
     * @param thickness thickness, m; infinity for a half-space
     */
    public static LayeredPlate single(double sigma, double mu, double thickness) {
        return new LayeredPlate(new double[] {sigma}, new double[] {mu}, new double[] {0}, new double[] {thickness});
    }

    /** Number of layers. */
    public int layers() {
        return thickness.length;
    }

    @Override
    public void reflection(double omega, double[] k, double[] re, double[] im) {
        for (int i = 0; i < k.length; i++) {
            reflect(omega, k[i], i, re, im);
        }
    }

    /**
     * Which share of the plate's loss each layer takes from a wave of one wavenumber: the power that enters through an interface is
     * proportional to Im(Y) |A|^2 there. For explanations; digits are lost in layers that take next to nothing.
     *
     * @param omega angular frequency, rad/s
     * @param k wavenumber, 1/m
     * @return shares that add up to 1, all 0 for a plate without loss
     */
    public double[] lossShares(double omega, double k) {
        int n = thickness.length;
        Complex[] admittance = new Complex[n + 1];
        Complex[] decay = new Complex[n];
        admittance[n] = new Complex(k);
        for (int i = n - 1; i >= 0; i--) {
            Complex mu = new Complex(muReal[i], -muLoss[i]);
            Complex q = mu.multiply(new Complex(0, omega * Material.MU0 * sigma[i]))
                    .add(k * k)
                    .sqrt();
            Complex y = q.divide(mu);
            Complex behind = admittance[i + 1];
            if (q.getReal() * thickness[i] > OPAQUE) {
                admittance[i] = y;
                decay[i] = Complex.ZERO;
                continue;
            }
            Complex c = q.multiply(thickness[i]).cosh();
            Complex s = q.multiply(thickness[i]).sinh();
            // A at the front over A at the back is c + (Y'/y) s
            Complex growth = c.add(behind.divide(y).multiply(s));
            admittance[i] = y.multiply(s).add(behind.multiply(c)).divide(growth);
            decay[i] = growth.reciprocal();
        }
        double[] share = new double[n];
        double entering = admittance[0].getImaginary();
        double square = 1;
        for (int i = 0; i < n && entering > 0; i++) {
            double next = square * decay[i].abs() * decay[i].abs();
            share[i] = (square * admittance[i].getImaginary() - next * admittance[i + 1].getImaginary()) / entering;
            square = next;
        }
        return share;
    }

    /** The recursion in real arithmetic: complex objects would cost most of the time. */
    private void reflect(double omega, double k, int at, double[] re, double[] im) {
        double dRe = 0;
        double dIm = 0;
        for (int layer = thickness.length - 1; layer >= 0; layer--) {
            double muR = muReal[layer];
            double muL = muLoss[layer];
            double w = omega * Material.MU0 * sigma[layer];

            // q^2 has both parts not negative, so this root is free of cancellation
            double q2Re = k * k + w * muL;
            double q2Im = w * muR;
            double qRe = Math.sqrt((Math.sqrt(q2Re * q2Re + q2Im * q2Im) + q2Re) / 2);
            double qIm = q2Im / (2 * qRe);

            // 1/mu = (mu' + j mu'')/|mu|^2
            double norm = 1 / (muR * muR + muL * muL);
            double uRe = muR * norm;
            double uIm = muL * norm;
            double yRe = qRe * uRe - qIm * uIm;
            double yIm = qRe * uIm + qIm * uRe;

            // k^2 - y^2 = k^2 (1 - 1/mu)(1 + 1/mu) - j w mu0 sigma/mu
            double vRe = ((muR - 1) * muR + muL * muL) * norm;
            double vIm = -uIm;
            double k2 = k * k;
            double gRe = k2 * (vRe * (1 + uRe) - vIm * uIm) + w * uIm;
            double gIm = k2 * (vRe * uIm + vIm * (1 + uRe)) - w * uRe;

            double t = thickness[layer];
            double decay = 2 * qRe * t;
            double eRe = 0;
            double eIm = 0;
            double mRe = 1;
            double mIm = 0;
            if (decay < OPAQUE) {
                double half = qIm * t;
                double s = Math.sin(half);
                double c = Math.cos(half);
                double x = Math.exp(-decay);
                double oneMinusX = decay < 0.5 ? -Math.expm1(-decay) : 1 - x;
                mRe = oneMinusX + 2 * x * s * s;
                mIm = 2 * x * s * c;
                eRe = x * (1 - 2 * s * s);
                eIm = -mIm;
            }

            // k - y = (k^2 - y^2)/(k + y); the difference itself would cancel in a poor conductor
            double sumRe = k + yRe;
            double perSum = 1 / (sumRe * sumRe + yIm * yIm);
            double cRe = (gRe * sumRe + gIm * yIm) * perSum;
            double cIm = (gIm * sumRe - gRe * yIm) * perSum;

            double edRe = eRe * dRe - eIm * dIm;
            double edIm = eRe * dIm + eIm * dRe;
            double hRe = mRe * sumRe - mIm * yIm - dRe;
            double hIm = mRe * yIm + mIm * sumRe - dIm;
            double numRe = cRe * hRe - cIm * hIm + edRe * sumRe - edIm * yIm;
            double numIm = cRe * hIm + cIm * hRe + edRe * yIm + edIm * sumRe;
            double denRe = yRe * (1 + eRe) - yIm * eIm + (k - dRe) * mRe + dIm * mIm;
            double denIm = yRe * eIm + yIm * (1 + eRe) + (k - dRe) * mIm - dIm * mRe;
            double inverse = 1 / (denRe * denRe + denIm * denIm);
            dRe = (numRe * denRe + numIm * denIm) * inverse;
            dIm = (numIm * denRe - numRe * denIm) * inverse;
        }
        double sRe = 2 * k - dRe;
        double sIm = -dIm;
        double inverse = 1 / (sRe * sRe + sIm * sIm);
        re[at] = (dRe * sRe + dIm * sIm) * inverse;
        im[at] = (dIm * sRe - dRe * sIm) * inverse;
    }
}
