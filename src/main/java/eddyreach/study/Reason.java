package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.model.Layer;
import eddyreach.model.Target;
import java.util.Locale;

/**
 * Says in one sentence, from the computed numbers, why a target switches where it does.
 *
 * <p>The yardstick is the loss part of the reflection of a wave of wavenumber k, the one that dominates in the field at the target.
 * A thick metal (the layered-plate reflection for a half-space, Dodd and Deeds 1968) takes {@code 2s / ((s + 1)^2 + 1)} with
 * s = k mu_r delta, at most sqrt(2) - 1 at s = sqrt(2); a sheet much thinner than its skin takes {@code x / (1 + x^2)} with
 * x = t / (k delta^2), at most 1/2 at t* = k delta^2.
 */
final class Reason {

    /** Thickness in skin depths below which a sheet's current is nearly even through its depth. */
    private static final double THIN = 0.5;

    private Reason() {}

    /**
     * The sentence.
     *
     * @param target the target
     * @param standard the standard target
     * @param distance what was found
     * @param factor its factor
     * @param omega angular frequency, rad/s
     * @param wavenumber dominant wavenumber of the field at the target, 1/m
     */
    static String of(
            Target target, Target standard, SwitchDistance distance, double factor, double omega, double wavenumber) {
        if (target.layers().stream().noneMatch(l -> l.material().hasEffect())) {
            return "never on: neither conducts nor is magnetic, so the field passes as through air; only metal is seen.";
        }
        String start = Double.isFinite(factor)
                ? String.format(Locale.ROOT, "%.2f: ", factor)
                : distance.outcome().label() + ": ";
        if (target.equals(standard)) {
            return start + "the standard target, to which the switch is trimmed; magnetic, so that its skin of "
                    + skin(front(target), omega) + " is thin and its currents lose much.";
        }
        if (target.layers().size() > 1) {
            Layer first = target.layers().get(0);
            return start + "layers act together; the front one, "
                    + first.material().name() + ", is "
                    + length(first.thickness()) + " thick"
                    + (first.material().conductivity20() > 0
                            ? " against a skin depth of " + skin(first.material(), omega)
                            : "")
                    + ".";
        }
        return start + single(target.layers().get(0), omega, wavenumber);
    }

    private static Material front(Target t) {
        return t.layers().stream()
                .map(Layer::material)
                .filter(m -> m.conductivity20() > 0)
                .findFirst()
                .orElse(t.layers().get(0).material());
    }

    private static String single(Layer layer, double omega, double wavenumber) {
        Material m = layer.material();
        if (m.conductivity20() == 0) {
            return "magnetic but no conductor: it draws the field and raises the inductance, with hardly any loss.";
        }
        double delta = m.skinDepth(omega, Bench.AMBIENT);
        double t = layer.thickness();
        if (m.muReal() == 1 && t < THIN * delta) {
            return sheet(t, delta, wavenumber * delta * delta);
        }
        double s = wavenumber * m.muReal() * delta;
        double share = 2 * s / ((s + 1) * (s + 1) + 1) / (Math.sqrt(2) - 1);
        String most =
                String.format(Locale.ROOT, "about %.0f %% of the most that a thick metal can take here", 100 * share);
        if (m.muReal() > 1) {
            return "magnetic, with a skin of " + length(delta) + ": it takes " + most + ".";
        }
        String thickness = t < 2 * delta ? ", not much less than its thickness" : "";
        String why = share < 0.2 ? "strong currents with little loss, " : "";
        return "its skin is " + length(delta) + thickness + ": " + why + most
                + ", for the loss grows with the square root of resistivity and permeability.";
    }

    private static String sheet(double t, double delta, double best) {
        double x = t / best;
        String side = x > 1.2 ? ", and thicker acts more as a mirror" : x < 0.8 ? ", and thinner loses less" : "";
        return String.format(
                Locale.ROOT,
                "%s is %.2g of its skin depth of %s, so it acts as a plain resistor: about %.0f %% of the most that a sheet can take, which"
                        + " is near %s%s.",
                length(t),
                t / delta,
                length(delta),
                100 * 2 * x / (1 + x * x),
                length(best),
                side);
    }

    private static String skin(Material m, double omega) {
        return length(m.skinDepth(omega, Bench.AMBIENT));
    }

    /** A length in mm, or in um below 0.1 mm, with two or three significant digits. */
    static String length(double metres) {
        double um = metres * 1e6;
        return um < 100
                ? String.format(Locale.ROOT, um < 10 ? "%.1f um" : "%.0f um", um)
                : String.format(Locale.ROOT, um < 10000 ? "%.2f mm" : "%.0f mm", um / 1000);
    }
}
