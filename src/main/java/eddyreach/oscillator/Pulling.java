package eddyreach.oscillator;

import eddyreach.numerics.Require;
import eddyreach.numerics.SelfCheckException;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Two oscillators that pull each other: where they lock, and how fast they beat otherwise.
 *
 * <p>With the complex amplitudes a1, a2 = A exp(j phi) of the two voltages, the averaged equations are
 *
 * <pre>
 *   da1/dt = [(Gm1(A1) - G1)/(2 C1) + j w1] a1 + k1 a2        da2/dt = [(Gm2(A2) - G2)/(2 C2) + j w2] a2 + k2 a1
 * </pre>
 *
 * An amplitude disturbed returns at the rate rho = -A dGm/dA / (2C). For abs(k) well below rho it follows the phase psi = phi2 - phi1, late by the
 * rate Omega at which that turns. With r = A1/A2 there is left one equation,
 *
 * <pre>
 *   dpsi/dt = w2 - w1 + Im[k2 r (1 + e) exp(-j psi)] - Im[(k1/r) (1 - e) exp(j psi)]
 *   e = Re[(k1/r) exp(j psi)/(rho1 + j Omega)] - Re[k2 r exp(-j psi)/(rho2 - j Omega)]
 * </pre>
 *
 * <p>Without e, which is Adler's case of amplitudes that stay, the right side is a sine of the amplitude abs(r k2 + conj(k1)/r): half the range of locking in
 * rad/s, for k1 = 0 that of R. Adler (Proc. IRE 34, 1946, 351). For two alike that a lossless inductance couples it vanishes: what either does to the
 * frequency of the other is the same. They then lock by e alone, within 2 abs(k)^2/rho, in phase or against it.
 *
 * <p>Good to second order in abs(k)/rho; within 2 % of the averaged equations up to abs(k) = rho/10 (PullingTest).
 *
 * @param ratio amplitude of the first over that of the second, r
 * @param onFirst what the second does to the first, k1, 1/s
 * @param onSecond what the first does to the second, k2, 1/s
 * @param returnOfFirst rate rho1 at which the first's amplitude returns, 1/s; infinite for an amplitude that stays
 * @param returnOfSecond rate rho2 at which the second's amplitude returns, 1/s; infinite for an amplitude that stays
 */
public record Pulling(double ratio, Complex onFirst, Complex onSecond, double returnOfFirst, double returnOfSecond) {

    private static final int SAMPLES = 72;
    private static final int MAX_EVALUATIONS = 200;
    private static final double ACCURACY = 1e-9;
    private static final int MOST_POINTS = 1 << 20;

    public Pulling {
        Require.positive("ratio of the amplitudes", ratio, "");
        UnworkableException.require(
                "return of the first amplitude", returnOfFirst, "1/s", Double.MIN_NORMAL, Double.POSITIVE_INFINITY);
        UnworkableException.require(
                "return of the second amplitude", returnOfSecond, "1/s", Double.MIN_NORMAL, Double.POSITIVE_INFINITY);
    }

    /**
     * Frequency differences w2 - w1 at which the two lock.
     *
     * @param low lower end, rad/s
     * @param high upper end, rad/s
     */
    public record Range(double low, double high) {

        /** Half its width, rad/s. */
        public double half() {
            return (high - low) / 2;
        }

        /** Whether a difference lies inside. */
        public boolean holds(double difference) {
            return low <= difference && difference <= high;
        }
    }

    /**
     * What a mutual inductance M between two coils does to the first: {@code k1 = -j w (kappa/2) sqrt(C2/C1)} with
     * {@code kappa = M/sqrt(L1 L2)}; losses between the coils give kappa a negative imaginary part.
     *
     * @param coupling coupling coefficient kappa
     * @param omega angular frequency, rad/s
     * @param own capacitance C1 of the one that is pulled, F
     * @param other capacitance C2 of the other, F
     */
    public static Complex byInductance(Complex coupling, double omega, double own, double other) {
        double size = Require.positive("angular frequency", omega, "rad/s")
                / 2
                * Math.sqrt(Require.positive("capacitance of the other", other, "F")
                        / Require.positive("own capacitance", own, "F"));
        return coupling.multiply(new Complex(0, -size));
    }

    /**
     * Rate rho at which an amplitude returns to its steady value, 1/s.
     *
     * @param element active element
     * @param capacitance capacitance of the tank, F
     * @param amplitude steady amplitude, V
     */
    public static double rateOfReturn(ActiveElement element, double capacitance, double amplitude) {
        Require.positive("capacitance", capacitance, "F");
        return -amplitude * Slope.ofConductance(element, amplitude) / (2 * capacitance);
    }

    /** Sum of what both do to the difference of the phases while the amplitudes stay, r k2 + conj(k1)/r, 1/s. */
    public Complex together() {
        return onSecond.multiply(ratio).add(onFirst.conjugate().divide(ratio));
    }

    /** Frequency differences at which they lock. */
    public Range locking() {
        return new Range(-extreme(GoalType.MAXIMIZE), -extreme(GoalType.MINIMIZE));
    }

    /**
     * Angular frequency of the beat, rad/s, not negative; 0 when locked.
     *
     * @param difference free w2 - w1, rad/s
     * @throws SelfCheckException if a computation fails its own checks
     */
    public double beat(double difference) {
        if (locking().holds(difference)) {
            return 0;
        }
        // the amplitudes lag by the mean turning, found to first order before
        double held = together().abs();
        double turning = Math.abs(difference) > held
                ? Math.copySign(Math.sqrt((difference - held) * (difference + held)), difference)
                : 0;
        double last = Double.POSITIVE_INFINITY;
        for (int n = SAMPLES; n <= MOST_POINTS; n *= 2) {
            double period = 0;
            for (int i = 0; i < n; i++) {
                period += 2 * Math.PI / n / (difference + pull(2 * Math.PI * i / n, turning));
            }
            double beat = Math.abs(2 * Math.PI / period);
            if (Math.abs(beat - last) <= ACCURACY * beat) {
                return beat;
            }
            last = beat;
        }
        throw new SelfCheckException("beat at a difference of " + difference
                + " rad/s, at the edge of locking: not found with " + MOST_POINTS + " points");
    }

    /**
     * Largest relative deviation of the first's demodulated amplitude while the two beat, to first order and for phases that turn evenly, as they do
     * away from the edge of locking.
     *
     * @param beat angular frequency of the beat, rad/s
     * @param corner angular corner frequency of the filter behind the demodulator, rad/s
     */
    public double depthOnFirst(double beat, double corner) {
        return depth(onFirst.abs() / ratio, returnOfFirst, beat, corner);
    }

    /** The same of the second. */
    public double depthOnSecond(double beat, double corner) {
        return depth(onSecond.abs() * ratio, returnOfSecond, beat, corner);
    }

    private static double depth(double pull, double rate, double beat, double corner) {
        Require.notNegative("beat", beat, "rad/s");
        UnworkableException.require(
                "corner of the demodulator", corner, "rad/s", Double.MIN_NORMAL, Double.POSITIVE_INFINITY);
        return pull / Math.hypot(rate, beat) / Math.hypot(1, beat / corner);
    }

    /** dpsi/dt less the free difference, rad/s. */
    private double pull(double psi, double turning) {
        Complex phasor = new Complex(Math.cos(psi), Math.sin(psi));
        Complex first = onFirst.divide(ratio).multiply(phasor);
        Complex second = onSecond.multiply(ratio).multiply(phasor.conjugate());
        double e = deviation(first, returnOfFirst, turning) - deviation(second, returnOfSecond, -turning);
        return second.getImaginary() * (1 + e) - first.getImaginary() * (1 - e);
    }

    private static double deviation(Complex pull, double rate, double turning) {
        return rate == Double.POSITIVE_INFINITY
                ? 0
                : pull.divide(new Complex(rate, turning)).getReal();
    }

    private double extreme(GoalType goal) {
        double step = 2 * Math.PI / SAMPLES;
        int best = 0;
        double sign = goal == GoalType.MAXIMIZE ? 1 : -1;
        for (int i = 1; i < SAMPLES; i++) {
            if (sign * pull(i * step, 0) > sign * pull(best * step, 0)) {
                best = i;
            }
        }
        return new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(MAX_EVALUATIONS),
                        goal,
                        new UnivariateObjectiveFunction(psi -> pull(psi, 0)),
                        new SearchInterval((best - 1) * step, (best + 1) * step, best * step))
                .getValue();
    }
}
