package eddyreach.closedform;

import eddyreach.materials.Material;
import org.apache.commons.math3.complex.Complex;

/**
 * A conducting permeable sphere in any quasi-static field: multipoles of every order, exact.
 *
 * <p>An outer potential {@code R^l P_l^m} about the centre (H = -grad psi) adds {@code -chi_l a^(2l+1) R^(-l-1) P_l^m}. Inside, B_R is
 * proportional to j_l(x R/a)/R with x^2 = -j w mu0 mu sigma a^2; B_R and H_theta are continuous. With
 * {@code e_l = x^2 / rho_(l+1)}, {@code rho_l = x j_(l-1)(x) / j_l(x) = 2l + 1 - x^2 / rho_(l+1)},
 *
 * <pre>chi_l = l/(l+1) [(l+1)(mu-1) + e_l] / [l mu + l + 1 - e_l]</pre>
 *
 * <p>so that nothing cancels in a weak conductor. chi_l is {@code -l/(l+1)} for a perfect conductor, {@code l(mu-1)/(l mu + l + 1)} for a
 * magnetic insulator; chi_1 is half the D of {@link SphereInField}. Derived as in Landau and Lifshitz, Electrodynamics of
 * Continuous Media, section 59, and Smythe, section 11, for l = 1. Currents flow in circles about the centre only: a field with
 * B_R = 0 outside excites none, so that these multipoles are complete.
 */
public final class SphereMultipoles {

    /** A term below this share of the largest is left out. */
    private static final double NEGLIGIBLE = 1e-17;

    private static final int BEYOND = 30;

    private final double radius;
    private final double sigma;
    private final Complex mu;

    /**
     * @param radius radius a, m
     * @param sigma conductivity, S/m
     * @param mu relative permeability mu' - j mu''
     */
    public SphereMultipoles(double radius, double sigma, Complex mu) {
        this.radius = Args.positive("radius, m", radius);
        this.sigma = Args.notNegative("conductivity, S/m", sigma);
        this.mu = mu;
    }

    /** Radius, m. */
    public double radius() {
        return radius;
    }

    /** x^2 = -j w mu0 mu sigma a^2 at an angular frequency, rad/s. */
    private Complex square(double omega) {
        return mu.multiply(new Complex(0, -omega * Material.MU0 * sigma * radius * radius));
    }

    /**
     * chi_l for l = 0 (which is 0: there are no magnetic charges) to the highest.
     *
     * @param omega angular frequency, rad/s
     * @param highest largest l
     */
    public Complex[] polarisabilities(double omega, int highest) {
        Complex[] rho = ratios(square(omega), highest + 1);
        Complex[] chi = new Complex[highest + 1];
        chi[0] = Complex.ZERO;
        for (int l = 1; l <= highest; l++) {
            Complex e = square(omega).divide(rho[l + 1]);
            Complex top = mu.subtract(1).multiply(l + 1).add(e);
            Complex bottom = mu.multiply(l).add(l + 1).subtract(e);
            chi[l] = top.divide(bottom).multiply((double) l / (l + 1));
        }
        return chi;
    }

    /**
     * rho_l = x j_(l-1)(x) / j_l(x) for l = 0 (unused) to the highest, by downward recurrence, which is stable, from the fixed point of
     * the recurrence far above |x|.
     */
    static Complex[] ratios(Complex square, int highest) {
        int start = highest + BEYOND + (int) Math.ceil(1.2 * Math.sqrt(square.abs()));
        double b = 2.0 * start + 1;
        Complex root = new Complex(b * b).subtract(square.multiply(4)).sqrt();
        double re = (b + root.getReal()) / 2;
        double im = root.getImaginary() / 2;
        double x = square.getReal();
        double y = square.getImaginary();
        Complex[] rho = new Complex[highest + 1];
        rho[0] = Complex.ZERO;
        for (int l = start; l >= 1; l--) {
            double size = re * re + im * im;
            double nextRe = 2 * l + 1 - (x * re + y * im) / size;
            double nextIm = -(y * re - x * im) / size;
            re = nextRe;
            im = nextIm;
            if (l <= highest) {
                rho[l] = new Complex(re, im);
            }
        }
        return rho;
    }

    /**
     * The operator that sends waves {@code exp(-kz) J_m(k r)} of the scalar potential back as {@code exp(kz) J_m(k r)}, the sphere's
     * nearest point in the origin:
     *
     * <pre>T(k, k') = -a exp(-(k + k') a) sum_l chi_l (k a)^l (k' a)^l / ((l - m)! (l + m)!)</pre>
     *
     * <p>from {@code exp(kz) J_m(k r) = sum_l (k R)^l / (l + m)! P_l^m} and {@code P_l^m / R^(l+1) = int k^l exp(-kz) J_m(k r) dk / (l - m)!},
     * P_l^m without the sign (-1)^m (Morse and Feshbach, Methods of Theoretical Physics, 10.3; both checked by their leading terms). For
     * A_phi, of order 0, the sign is the other one.
     *
     * @param order m, not negative
     * @param omega angular frequency, rad/s
     * @param k wavenumbers, 1/m, ascending
     * @param scale factor of each wave on both sides
     * @param re real part, row by row, to be filled
     * @param im imaginary part
     */
    public void reflection(int order, double omega, double[] k, double[] scale, double[] re, double[] im) {
        int n = k.length;
        double largest = k[n - 1] * radius;
        int highest = order + BEYOND + (int) Math.ceil(largest + 9 * Math.sqrt(largest + order));
        Complex[] chi = polarisabilities(omega, highest);
        double[] logFactorial = new double[highest + order + 1];
        for (int i = 1; i < logFactorial.length; i++) {
            logFactorial[i] = logFactorial[i - 1] + Math.log(i);
        }
        double[] sum = new double[2];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                add(order, k[i] * radius, k[j] * radius, chi, logFactorial, sum);
                double f = -radius * scale[i] * scale[j];
                re[i * n + j] = f * sum[0];
                im[i * n + j] = f * sum[1];
                re[j * n + i] = re[i * n + j];
                im[j * n + i] = im[i * n + j];
            }
        }
    }

    /** The sum over l, outwards from its largest term, which lies near the geometric mean of both arguments. */
    private static void add(int m, double x, double y, Complex[] chi, double[] logFactorial, double[] sum) {
        int lowest = Math.max(1, m);
        int middle = Math.max(lowest, (int) Math.sqrt(x * y + (double) m * m));
        double peak = Math.exp(middle * Math.log(x * y) - x - y - logFactorial[middle - m] - logFactorial[middle + m]);
        sum[0] = 0;
        sum[1] = 0;
        double term = peak;
        for (int l = middle; l < chi.length && term > NEGLIGIBLE * peak; l++) {
            sum[0] += term * chi[l].getReal();
            sum[1] += term * chi[l].getImaginary();
            term *= x * y / ((l + 1.0 - m) * (l + 1.0 + m));
        }
        term = peak;
        for (int l = middle - 1; l >= lowest && term > NEGLIGIBLE * peak; l--) {
            term *= (l + 1.0 - m) * (l + 1.0 + m) / (x * y);
            sum[0] += term * chi[l].getReal();
            sum[1] += term * chi[l].getImaginary();
        }
    }

    /**
     * Field inside and outside for waves of A_phi (order 0).
     *
     * @param omega angular frequency, rad/s
     * @param k wavenumbers, 1/m, ascending
     * @param re amplitudes of the waves {@code exp(-kz) J1(k r)} times their weights, real parts, T m; the sphere's nearest point lies in
     *     the origin
     * @param im imaginary parts
     */
    public SphereField field(double omega, double[] k, double[] re, double[] im) {
        return new SphereField(this, square(omega), omega, k, re, im);
    }
}
