package eddyreach.kinds.neighbour;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.oscillator.ActiveElement;

/**
 * An oscillator into whose coil another one induces a voltage: locking, beat and what of it the demodulator sees.
 *
 * <p>The other oscillator's coil current induces the peak voltage e in series with the coil; own amplitude A. As a current into the tank,
 * e/(w L), it is Q e/A of the tank's loss current, which is Adler's E1/E (Proc. IRE 34, 1946, 351). Hence
 *
 * <pre>
 *   half range of locking   f_l = (f0/2Q) (E1/E) = (f0/2) (e/A)
 *   beat                    f_b = sqrt(df^2 - f_l^2)
 *   depth, peak             m = f_l / sqrt(f_b^2 + f_r^2) / sqrt(1 + (f_b/f_d)^2)
 * </pre>
 *
 * <p>The depth follows from the envelope 2C dA/dt = (Gm(A) - G) A + (e/wL) cos phi, linearised about its steady state: the amplitude returns
 * with the corner frequency f_r = -A dGm/dA / (4 pi C); f_d is the corner of a first-order filter behind the demodulator.
 *
 * <p>Limits: f_l below f_r; phases turn evenly, which they do away from the edge of locking; one way, the reaction on the other oscillator left
 * out. Two alike that are coupled by a lossless inductance hold each other less than this says: what either does to the other's frequency is the
 * same, and drops out of the difference.
 *
 * @param frequency own frequency f0, Hz
 * @param injected induced voltage over own amplitude, e/A
 * @param relaxation corner frequency f_r of the amplitude, Hz
 * @param demodulator corner frequency f_d behind the demodulator, Hz
 */
record Beats(double frequency, double injected, double relaxation, double demodulator) {

    /** Corner frequency with which an amplitude returns to its steady state, Hz. */
    static double relaxation(ActiveElement element, double capacitance, double amplitude) {
        double slope = (element.conductance(amplitude * (1 + AccuracyPolicy.BEAT_STEP))
                        - element.conductance(amplitude * (1 - AccuracyPolicy.BEAT_STEP)))
                / (2 * AccuracyPolicy.BEAT_STEP);
        return -slope / (4 * Math.PI * capacitance);
    }

    /** Half range of locking, Hz. */
    double locking() {
        return frequency / 2 * injected;
    }

    /** Beat at a difference of the free frequencies, Hz; 0 when locked. */
    double beat(double difference) {
        double lock = locking();
        return Math.abs(difference) <= lock ? 0 : Math.sqrt((difference - lock) * (difference + lock));
    }

    /** Largest relative deviation of the demodulated amplitude at a difference of the free frequencies, Hz. */
    double depth(double difference) {
        double beat = beat(difference);
        return locking() / (Math.hypot(beat, relaxation) * Math.hypot(1, beat / demodulator));
    }

    /** Difference of the free frequencies, Hz, from which on the depth is no more than allowed. */
    double difference(double allowed) {
        double lock = locking();
        double a = relaxation * relaxation;
        double b = demodulator * demodulator;
        double product = lock * lock / (allowed * allowed) * b;
        // (x + a)(x + b) = product with x the square of the beat
        double excess = product - a * b;
        if (excess <= 0) {
            return 0;
        }
        double half = (a + b) / 2;
        double square = excess / (half + Math.sqrt(half * half + excess));
        return Math.sqrt(square + lock * lock);
    }
}
