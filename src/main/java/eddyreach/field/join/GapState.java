package eddyreach.field.join;

import org.apache.commons.math3.complex.Complex;

/**
 * The waves between switch and target for one ampere in the coil, amplitudes times quadrature weights.
 *
 * @param dz change of the coil's impedance by the target, ohm
 * @param returningRe waves a exp(kz) falling back on the switch, referred to z = 0; real part, T m
 * @param returningIm imaginary part
 * @param arrivingRe waves b exp(-k(z - g)) arriving at the target, referred to its nearest point; real part, T m
 * @param arrivingIm imaginary part
 */
public record GapState(
        Complex dz, double[] returningRe, double[] returningIm, double[] arrivingRe, double[] arrivingIm) {}
