package eddyreach.kinds.sweep;

import static eddyreach.engine.assure.Reason.length;

import eddyreach.engine.assure.Reason;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.materials.Material;
import java.util.Locale;
import java.util.Optional;

/** Says from the computed numbers why the curves of sweeps run as they do; the yardsticks are those of {@link Reason}. */
final class SweepReason {

    /** Distances that differ by less than this share count as level. */
    static final double LEVEL = 0.01;

    private SweepReason() {}

    /** Why a metal is seen at each thickness as it is. */
    static String thickness(
            Material m,
            SweepCurve curve,
            Optional<SweepPoint> highest,
            boolean inside,
            double skin,
            double optimum,
            double wavenumber) {
        if (!m.hasEffect()) {
            return "never on: neither conducts nor is magnetic, so the field passes as through air.";
        }
        if (highest.isEmpty()) {
            return "never on between " + length(curve.points().get(0).value()) + " and "
                    + length(last(curve).value()) + ".";
        }
        SweepPoint top = highest.get();
        StringBuilder text = new StringBuilder();
        text.append(String.format(
                Locale.ROOT,
                "largest distance %s at %s%s. ",
                mm(top.on()),
                length(top.value()),
                inside ? "" : ", an end of the range"));
        if (m.conductivity20() == 0) {
            return text + "It does not conduct: it draws the field and takes hardly any loss.";
        }
        text.append(String.format(
                Locale.ROOT,
                "A thin sheet takes the most loss near t* = %s = %s (k = %.0f/m%s). ",
                m.muReal() > 1 ? "k mu_r delta^2" : "k delta^2",
                length(optimum),
                wavenumber,
                optimum > 0.5 * skin
                        ? "; " + percent(optimum / skin) + " of the skin depth, so only roughly a thin sheet"
                        : ""));
        text.append(
                inside
                        ? String.format(
                                Locale.ROOT, "The distance is largest at %.1f times that. ", top.value() / optimum)
                        : "");
        text.append("Thinner metal takes less loss, as a resistor too weakly coupled");
        curve.lastUnseen()
                .ifPresent(p -> text.append(" (never on up to ")
                        .append(length(p.value()))
                        .append(")"));
        text.append("; thicker metal ")
                .append(
                        optimum > 0.5 * skin
                                ? "is soon thicker than its skin depth of " + length(skin)
                                        + ", and what lies deeper carries no current"
                                : "acts more and more as a mirror, its loss falling with 1/t up to about the skin depth of "
                                        + length(skin));
        SweepPoint last = last(curve);
        Optional<SweepPoint> level = curve.levelFrom(LEVEL).filter(p -> p.value() < last.value());
        if (level.isEmpty() || !(top.value() < level.get().value())) {
            return text.append(".").toString();
        }
        text.append("; level from ")
                .append(length(level.get().value()))
                .append(" on at ")
                .append(mm(last.on()));
        curve.points().stream()
                .filter(p -> p.value() > top.value() && p.on() < (1 - LEVEL) * last.on())
                .min((a, b) -> Double.compare(a.on(), b.on()))
                .ifPresent(dip -> text.append(String.format(
                        Locale.ROOT, ", after a shallow dip to %s near %s", mm(dip.on()), length(dip.value()))));
        return text.append(".").toString();
    }

    /** Why a material is seen at each size as it is. */
    static String size(SweepCurve curve, double smallest, SwitchDistance standard, double reference) {
        if (curve.firstSeen().isEmpty()) {
            return "never on up to " + length(last(curve).value()) + ".";
        }
        StringBuilder text = new StringBuilder();
        text.append(
                curve.points().get(0).seen()
                        ? "seen at contact down to the smallest size, " + length(smallest) + ". "
                        : String.format(
                                Locale.ROOT,
                                "smallest size seen at contact %s (%.2f of the standard target). ",
                                length(smallest),
                                smallest / reference));
        SweepPoint last = last(curve);
        Optional<SweepPoint> level = curve.levelFrom(LEVEL).filter(p -> p.value() < last.value());
        text.append(level.map(p -> String.format(
                        Locale.ROOT,
                        "From %s on (%.2f of the standard target) more size changes the distance by less than %s. ",
                        length(p.value()),
                        p.value() / reference,
                        percent(LEVEL)))
                .orElse("The distance still changes at the end of the range. "));
        double gain = last.on() / standard.on() - 1;
        if (Double.isFinite(gain)) {
            text.append(String.format(
                    Locale.ROOT,
                    "Against the standard size %s changes it by %s. ",
                    length(last.value()),
                    Math.abs(gain) < 5e-4 ? "nothing" : String.format(Locale.ROOT, "%+.1f %%", 100 * gain)));
        }
        curve.highest()
                .filter(p -> p.on() > (1 + LEVEL) * last.on() && p.value() < last.value())
                .ifPresent(p -> text.append(String.format(
                        Locale.ROOT,
                        "The most is seen at %s: there the edge adds loss, where the currents crowd. ",
                        length(p.value()))));
        return text.toString().strip();
    }

    /**
     * Why the map of conductivity and permeability looks as it does.
     *
     * @param thickness thickness of the targets, m
     * @param omega angular frequency, rad/s
     * @param k dominant wavenumber at the effective distance, 1/m
     */
    static String map(double thickness, double omega, double k) {
        double boundary = 2 / (omega * Material.MU0 * thickness * thickness);
        double best = 2 * k / (omega * Material.MU0 * thickness);
        double ratio = omega * Material.MU0 / (k * k);
        return String.format(
                Locale.ROOT,
                "Skin-limited where conductivity times permeability is above %.3g MS/m, so that the skin is thinner than %s: there only the"
                        + " ratio of the two counts, distances are equal along rising diagonals, and the loss grows with the square root of"
                        + " permeability over conductivity, up to the most at k mu_r delta = sqrt(2), that is at a permeability of %.3g for"
                        + " each MS/m. Resistance-limited below that boundary: the current fills the whole thickness and the target acts as a"
                        + " plain resistor, with the most loss near %.3g MS/m, where its thickness is 2 k / (omega mu0 sigma); less conducts too"
                        + " little, more acts as a mirror.",
                boundary * 1e-6,
                length(thickness),
                ratio * 1e6,
                best * 1e-6);
    }

    /** What a coating does to the distance of its base. */
    static String coating(
            Material m, SweepCurve curve, double reference, SwitchDistance solid, double optimum, double skin) {
        SweepPoint last = last(curve);
        if (!m.hasEffect()) {
            return "neither conducts nor is magnetic: only its thickness counts, as distance.";
        }
        StringBuilder text = new StringBuilder();
        Optional<SweepPoint> highest = curve.highest();
        double most = highest.map(SweepPoint::on).orElse(Double.NaN) / reference;
        double end = last.on() / reference;
        if (most > 1 + LEVEL) {
            text.append(String.format(
                    Locale.ROOT,
                    "raises the distance at first, most by %s at %s",
                    percent(most - 1),
                    length(highest.orElseThrow().value())));
            text.append(
                    m.conductivity20() > 0
                            ? ": so thin a coat is a resistor that adds its own loss (alone it would take the most near "
                                    + length(optimum) + "). "
                            : ". ");
        }
        Optional<SweepPoint> lower = curve.points().stream()
                .filter(p -> p.on() < (1 - LEVEL) * reference
                        && p.value() > highest.map(SweepPoint::value).orElse(0.0))
                .findFirst();
        if (lower.isPresent()) {
            text.append(String.format(
                    Locale.ROOT,
                    "Lowers it from %s on, to %s at %s: a mirror before the base%s. ",
                    length(lower.get().value()),
                    percent(end),
                    length(last.value()),
                    last.value() < skin ? ", long before its skin depth of " + length(skin) : ""));
        } else if (!(most > 1 + LEVEL)) {
            text.append("changes it by less than ").append(percent(LEVEL)).append(" over the whole range. ");
        }
        if (Double.isFinite(solid.on())) {
            text.append(String.format(Locale.ROOT, "Solid %s: %s.", m.name(), percent(solid.on() / reference)));
        }
        String all = text.toString().strip();
        return all.isEmpty()
                ? "the coated target is never on."
                : Character.toLowerCase(all.charAt(0)) + all.substring(1);
    }

    private static SweepPoint last(SweepCurve curve) {
        return curve.points().get(curve.points().size() - 1);
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.2f mm", metres * 1e3);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
