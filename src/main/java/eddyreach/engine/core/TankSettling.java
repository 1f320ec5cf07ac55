package eddyreach.engine.core;

import eddyreach.oscillator.NoOscillationException;
import eddyreach.oscillator.Tank;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;

/**
 * Finds the frequency at which coil and tank agree: the oscillator follows the inductance, so that at each distance the frequency is iterated.
 *
 * @param tank the tank's capacitor
 * @param impedance impedance of the coil without a target, ohm, over the angular frequency, rad/s
 */
record TankSettling(Tank tank, DoubleFunction<Complex> impedance) {

    /** The tank at a frequency that is given and not looked for, without a target. */
    TankState at(double omega) {
        Complex z = impedance.apply(omega);
        return new TankState(omega, z, Complex.ZERO, tank.conductance(z.getImaginary() / omega, z.getReal()));
    }

    /**
     * The tank under an effect.
     *
     * @param effect what the target does
     * @param distance distance of the target, m
     * @param start angular frequency to begin with, rad/s
     * @throws NoOscillationException if there is no such frequency
     */
    TankState settle(TargetEffect effect, double distance, double start) {
        return settleIfAny(effect, distance, start).orElseThrow(() -> {
            Complex z = impedance.apply(start).add(effect.change(start, distance));
            return new NoOscillationException(String.format(
                    Locale.ROOT,
                    "the oscillator finds no frequency %s: its coil then has a quality factor of %.3g (%.4g ohm, %.4g uH at %.4g kHz,"
                            + " with %.4g nF); first lower the coil's loss (thicker wire, a core with less loss) or change the frequency",
                    Double.isInfinite(distance)
                            ? "without a target"
                            : String.format(Locale.ROOT, "with the target at %.4g mm", distance * 1e3),
                    z.getImaginary() / z.getReal(),
                    z.getReal(),
                    z.getImaginary() / start * 1e6,
                    start / (2 * Math.PI) * 1e-3,
                    tank.capacitance() * 1e9));
        });
    }

    /** The same; empty when there is no such frequency. */
    Optional<TankState> settleIfAny(TargetEffect effect, double distance, double start) {
        double before = 0;
        double beforeNext = 0;
        double omega = start;
        for (int i = 0; i < AccuracyPolicy.FREQUENCY_STEPS; i++) {
            Complex change = effect.change(omega, distance);
            Complex z = impedance.apply(omega).add(change);
            double inductance = z.getImaginary() / omega;
            if (!(inductance > 0)) {
                return Optional.empty();
            }
            double next = tank.frequency(inductance, z.getReal());
            if (Math.abs(next - omega) <= AccuracyPolicy.FREQUENCY * omega) {
                return Optional.of(new TankState(omega, z, change, tank.conductance(inductance, z.getReal())));
            }
            // secant step to the fixed point; the first step has no slope yet
            double slope = i == 0 ? 0 : (next - beforeNext) / (omega - before);
            before = omega;
            beforeNext = next;
            omega = (next - slope * omega) / (1 - slope);
            if (!(omega > 0)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
