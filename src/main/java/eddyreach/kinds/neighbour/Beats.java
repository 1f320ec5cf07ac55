package eddyreach.kinds.neighbour;

import eddyreach.oscillator.Pulling;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Two oscillators that pull each other, in hertz, as the first one's demodulator sees it. Which of the two is the faster is not known, so that each difference of the
 * frequencies counts with the sign that disturbs more.
 *
 * <p>{@link Pulling} holds while either disturbs the other's amplitude by no more than a tenth. Beyond, the range of locking is taken as the most that both together
 * can do to the difference of their phases, {@code r abs(k2) + abs(k1)/r}, and the beat as that of amplitudes that stay.
 *
 * @param pulling what they do to each other
 * @param demodulator corner frequency behind the first one's demodulator, Hz
 */
record Beats(Pulling pulling, double demodulator) {

    private static final double HERTZ = 2 * Math.PI;
    private static final int MAX_EVALUATIONS = 200;

    /** Disturbance of an amplitude up to which the pulling is computed. */
    private static final double WEAK = 0.1;

    /** So near to the edge of locking, as a share of the range, the two count as locked: the beat is slow there without limit. */
    private static final double EDGE = 1e-4;

    /** How closely a frequency is found, as a share of it. */
    private static final double FOUND = 1e-4;

    private boolean weak() {
        return pulling.depthOnFirst(0, Double.POSITIVE_INFINITY) <= WEAK
                && pulling.depthOnSecond(0, Double.POSITIVE_INFINITY) <= WEAK;
    }

    /** The most that both can do to the difference of the phases, rad/s. */
    private double most() {
        return pulling.ratio() * pulling.onSecond().abs() + pulling.onFirst().abs() / pulling.ratio();
    }

    private Pulling.Range range() {
        return weak() ? pulling.locking() : new Pulling.Range(-most(), most());
    }

    /** Half range of locking, Hz. */
    double locking() {
        return range().half() / HERTZ;
    }

    /** Slowest beat at a difference of the free frequencies, Hz; 0 when locked. */
    double beat(double difference) {
        Pulling.Range range = range();
        double d = HERTZ * difference;
        return Math.min(beat(range, d), beat(range, -d)) / HERTZ;
    }

    private double beat(Pulling.Range range, double d) {
        double edge = EDGE * range.half();
        if (range.low() - edge <= d && d <= range.high() + edge) {
            return 0;
        }
        return weak() ? pulling.beat(d) : Math.sqrt(d * d - range.half() * range.half());
    }

    /** Largest relative deviation of the demodulated amplitude at a difference of the free frequencies, Hz. */
    double depth(double difference) {
        return depthOf(beat(difference));
    }

    private double depthOf(double beat) {
        return pulling.depthOnFirst(HERTZ * beat, HERTZ * demodulator);
    }

    /** Difference of the free frequencies, Hz, from which on the depth is no more than allowed; 0 when it is so even locked. */
    double difference(double allowed) {
        if (depthOf(0) <= allowed) {
            return 0;
        }
        double high = demodulator;
        while (depthOf(high) > allowed) {
            high *= 2;
        }
        double slow = new BrentSolver(FOUND * demodulator)
                .solve(MAX_EVALUATIONS, b -> Math.log(depthOf(b) / allowed), 0, high);
        // pulled together, the two beat more slowly than their frequencies differ
        double reach = slow;
        while (beat(reach) < slow) {
            reach *= 2;
        }
        return reach == slow
                ? slow
                : new BrentSolver(FOUND * reach).solve(MAX_EVALUATIONS, d -> beat(d) - slow, 0, reach);
    }
}
