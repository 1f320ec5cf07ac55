package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.model.Layer;
import eddyreach.model.Target;
import java.util.Locale;

/**
 * Says in one sentence, from the computed numbers, why a target switches where it does.
 *
 * <p>The yardstick is the surface resistance 1/(sigma delta) of a thick conductor, to which the loss at a given tangential field is
 * proportional, and for a sheet thinner than its skin the sheet resistance 1/(sigma t) against w mu0 / (2k), the value at which a
 * sheet takes the most loss (t* = k delta^2, k the wavenumber that dominates in the field).
 */
final class Reason {

    private Reason() {}

    /**
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
            return "Neither conducts nor is magnetic, so the field passes as through air: only metal is seen.";
        }
        String start = Double.isFinite(factor)
                ? String.format(Locale.ROOT, "%.2f: ", factor)
                : distance.outcome() == SwitchDistance.Outcome.NEVER_ON ? "Never on: " : "Does not release: ";
        if (target.equals(standard)) {
            return start + "the standard target, to which the switch is trimmed; " + skin(front(target), omega)
                    + ", far thinner than the sheet, and it is magnetic: much loss per current.";
        }
        if (target.layers().size() > 1) {
            return start + "layers act together, the front one first: " + skin(front(target), omega) + ", "
                    + length(target.layers().get(0).thickness()) + " thick.";
        }
        return start + single(target.layers().get(0), front(standard), omega, wavenumber);
    }

    private static Material front(Target t) {
        return t.layers().stream()
                .map(Layer::material)
                .filter(m -> m.conductivity20() > 0)
                .findFirst()
                .orElse(t.layers().get(0).material());
    }

    private static String single(Layer layer, Material steel, double omega, double wavenumber) {
        Material m = layer.material();
        if (m.conductivity20() == 0) {
            return "magnetic but not conducting: it draws the field and changes the inductance, with hardly any loss.";
        }
        double delta = m.skinDepth(omega, Bench.AMBIENT);
        double ratio = surface(steel, omega) / surface(m, omega);
        double t = layer.thickness();
        if (m.muReal() > 1) {
            return String.format(
                    Locale.ROOT,
                    "magnetic, and %s: loss grows with the square root of permeability times resistivity, %s the standard steel's.",
                    skin(m, omega),
                    ratio > 1
                            ? String.format(Locale.ROOT, "here 1/%.1f of", ratio)
                            : String.format(Locale.ROOT, "here %.2f times", 1 / ratio));
        }
        double best = wavenumber * delta * delta;
        if (t < 0.7 * delta) {
            return String.format(
                    Locale.ROOT,
                    "%s is %.2g of its skin depth of %s, a plain resistor in the field: the loss is largest near %s, and this is %s.",
                    length(t),
                    t / delta,
                    length(delta),
                    length(best),
                    t < 0.7 * best
                            ? "thinner, so loss falls with thickness"
                            : t > 1.5 * best ? "thicker, so it acts more as a mirror" : "close to it");
        }
        return String.format(
                Locale.ROOT,
                "%s; loss grows with the square root of resistivity and permeability, and its surface resistance is 1/%.2g of the standard"
                        + " steel's: strong currents, little loss.",
                skin(m, omega),
                ratio);
    }

    private static double surface(Material m, double omega) {
        return 1 / (m.conductivity(Bench.AMBIENT) * m.skinDepth(omega, Bench.AMBIENT));
    }

    private static String skin(Material m, double omega) {
        return m.name() + "'s skin is " + length(m.skinDepth(omega, Bench.AMBIENT));
    }

    /** A length in mm, or in um below 0.1 mm, with two or three significant digits. */
    private static String length(double metres) {
        double um = metres * 1e6;
        return um < 100
                ? String.format(Locale.ROOT, um < 10 ? "%.1f um" : "%.0f um", um)
                : String.format(Locale.ROOT, um < 10000 ? "%.2f mm" : "%.0f mm", um / 1000);
    }
}
