package eddyreach.engine.assure;

import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TargetFields;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Says in one sentence, from the computed numbers, why a target switches where it does.
 *
 * <p>The yardstick is the loss part of the reflection of a wave of wavenumber k, the one that dominates in the field at the target.
 * A thick metal (the layered-plate reflection for a half-space, Dodd and Deeds 1968) takes {@code 2s / ((s + 1)^2 + 1)} with
 * s = k mu_r delta, at most sqrt(2) - 1 at s = sqrt(2); a sheet much thinner than its skin takes {@code x / (1 + x^2)} with
 * x = t / (k delta^2), at most 1/2 at t* = k delta^2. Which material of a target takes the loss comes from the budget.
 */
public final class Reason {

    /** Thickness in skin depths below which a sheet's current is nearly even through its depth. */
    private static final double THIN = 0.5;

    /** Thickness in skin depths above which a metal hides what is behind it. */
    private static final double THICK = 2;

    /** Below this share of the most that a thick metal can take, its loss is little. */
    static final double LITTLE = 0.2;

    private final double omega;
    private final double wavenumber;

    private Reason(double omega, double wavenumber) {
        this.omega = omega;
        this.wavenumber = wavenumber;
    }

    /**
     * The sentence.
     *
     * @param target the target
     * @param standard the standard target
     * @param distance what was found
     * @param factor its factor
     * @param face diameter of the active face, m
     * @param omega angular frequency, rad/s
     * @param wavenumber dominant wavenumber of the field at the target, 1/m
     * @param budget losses at the distance found
     */
    public static String of(
            Target target,
            Target standard,
            SwitchDistance distance,
            double factor,
            double face,
            double omega,
            double wavenumber,
            LossBudget budget) {
        if (target.withoutEffect()) {
            return "never on: neither conducts nor is magnetic, so the field passes as through air; non-metals have no"
                    + " effect, only metal is seen.";
        }
        String start = Double.isFinite(factor)
                ? String.format(Locale.ROOT, "%.2f: ", factor)
                : distance.outcome().label() + ": ";
        if (target.offset() > 0 && Double.isFinite(target.radius())) {
            start += "its axis lies " + length(target.offset()) + " beside the switch's; ";
        }
        if (target.offset() > target.radius() + face / 2) {
            return start + "it lies wholly beside the face, " + length(target.offset() - target.radius() - face / 2)
                    + " from its rim at the nearest, where the field is weak.";
        }
        Reason reason = new Reason(omega, wavenumber);
        if (target.equals(standard)) {
            return start + "the standard target, to which the switch is trimmed; magnetic, so that its skin of "
                    + reason.skin(target.front()) + " is thin and its currents lose much.";
        }
        if (target.body() instanceof Body.Ball ball) {
            return start + reason.ball(ball);
        }
        if (target.body() instanceof Body.Rings rings) {
            return start + reason.rings(target, rings, budget);
        }
        return start
                + (target.layers().size() > 1
                        ? reason.metal(target).map(reason::single).orElseGet(() -> reason.layers(target, budget))
                        : reason.single(target.layers().get(0)));
    }

    /** The only layer that matters, if it is in front: a foil on board acts as the foil. */
    private Optional<Layer> metal(Target target) {
        List<Layer> acting =
                target.layers().stream().filter(l -> l.material().hasEffect()).toList();
        return acting.size() == 1 && target.layers().get(0).equals(acting.get(0))
                ? Optional.of(acting.get(0))
                : Optional.empty();
    }

    private String layers(Target target, LossBudget budget) {
        Material front = target.front();
        StringBuilder text = new StringBuilder("layers act together; ");
        double before = 0;
        for (Layer l : target.layers()) {
            if (l.material().hasEffect()) {
                break;
            }
            before += l.thickness();
        }
        if (before > 0) {
            text.append("the front ")
                    .append(length(before))
                    .append(" of non-metal only keep the metal away (the distance counts to the front of all); ");
        }
        if (front.conductivity20() == 0) {
            return text.append("magnetic without conducting: they draw the field, with hardly any loss.")
                    .toString();
        }
        double t = target.layers().stream()
                .filter(l -> l.material().equals(front))
                .findFirst()
                .orElseThrow()
                .thickness();
        double depths = t / front.skinDepth(omega, Temperature.AMBIENT);
        text.append("the front metal, ")
                .append(front.name())
                .append(", is ")
                .append(length(t))
                .append(" thick against a skin depth of ")
                .append(skin(front));
        if (depths > THICK) {
            text.append(" and hides what lies behind it");
        } else if (depths < THIN) {
            text.append(" and lets the field through");
        }
        return text.append(shares(target, budget)).append(".").toString();
    }

    /** Which material takes which share of the target's loss; nothing when there is only one that can. */
    private String shares(Target target, LossBudget budget) {
        Map<String, Double> loss = new LinkedHashMap<>();
        List<Part> parts = target.parts();
        boolean budgeted = parts.stream()
                .filter(p -> p.material().hasEffect())
                .allMatch(p -> budget.shares().stream().anyMatch(s -> s.part().equals(p.name())));
        if (!parts.isEmpty() && budgeted) {
            for (Part p : parts) {
                budget.shares().stream()
                        .filter(s -> s.part().equals(p.name()))
                        .forEach(s -> loss.merge(p.material().name(), s.resistance(), Double::sum));
            }
        } else if (target.body() instanceof Body.Sheet) {
            double[] share = TargetFields.plate(target, Temperature.AMBIENT).lossShares(omega, wavenumber);
            for (int i = 0; i < share.length; i++) {
                loss.merge(target.layers().get(i).material().name(), share[i], Double::sum);
            }
        }
        double total = loss.values().stream().mapToDouble(Double::doubleValue).sum();
        List<Map.Entry<String, Double>> sorted = new ArrayList<>(loss.entrySet());
        sorted.removeIf(e -> !(e.getValue() > 0));
        sorted.sort(Comparator.comparingDouble(e -> -e.getValue()));
        if (sorted.size() < 2 || !(total > 0)) {
            return "";
        }
        return "; of its loss "
                + sorted.stream()
                        .map(e -> e.getKey() + String.format(Locale.ROOT, " takes %.0f %%", 100 * e.getValue() / total))
                        .collect(Collectors.joining(", "));
    }

    private String rings(Target target, Body.Rings body, LossBudget budget) {
        List<Ring> metal = body.rings().stream()
                .filter(r -> r.material().conductivity20() > 0)
                .toList();
        if (metal.isEmpty()) {
            return "magnetic without conducting: it draws the field and raises the inductance, with hardly any loss.";
        }
        StringBuilder text = new StringBuilder();
        boolean hollow = metal.stream().allMatch(r -> r.section().r0() > 0);
        if (metal.stream().anyMatch(Ring::slit)) {
            text.append("slit, so that no current runs round it and only what turns within its section is left; ");
        } else {
            text.append(hollow ? "a closed ring, round which current runs; " : "solid; ");
        }
        Material front = metal.get(0).material();
        Material base = front;
        double plating = thinnest(metal.get(0).section());
        if (plating < THIN * front.skinDepth(omega, Temperature.AMBIENT)) {
            base = metal.stream()
                    .map(Ring::material)
                    .filter(m -> !m.equals(front))
                    .findFirst()
                    .orElse(front);
            if (!base.equals(front)) {
                text.append("its front, ")
                        .append(length(plating))
                        .append(" of ")
                        .append(front.name())
                        .append(" with a skin depth of ")
                        .append(skin(front))
                        .append(", lets the field through to ")
                        .append(base.name())
                        .append("; ");
            }
        }
        Material of = base;
        double least =
                thinnest(metal.stream().filter(r -> r.material().equals(of)).toList());
        double delta = base.skinDepth(omega, Temperature.AMBIENT);
        double depths = least / delta;
        text.append(length(least))
                .append(" of ")
                .append(base.name())
                .append(" at its thinnest, ")
                .append(String.format(Locale.ROOT, depths < 10 ? "%.2g" : "%.0f", depths))
                .append(" skin depths");
        if (depths > THICK) {
            text.append("; ").append(thick(base, delta));
        } else {
            text.append(": not enough for a skin to form, it acts more as a resistor");
        }
        return text.append(shares(target, budget)).append(".").toString();
    }

    static double thinnest(Section s) {
        return Math.min(s.r0() > 0 ? s.r1() - s.r0() : 2 * s.r1(), s.z1() - s.z0());
    }

    private static double thinnest(List<Ring> rings) {
        return rings.stream().mapToDouble(r -> thinnest(r.section())).min().orElse(0);
    }

    private String ball(Body.Ball ball) {
        Material m = ball.material();
        if (m.conductivity20() == 0) {
            return "a magnetic ball that does not conduct: it draws the field and raises the inductance, with hardly any"
                    + " loss.";
        }
        double delta = m.skinDepth(omega, Temperature.AMBIENT);
        String text = String.format(
                Locale.ROOT,
                ball.radius() < 10 * delta
                        ? "a ball of %s, %.2g skin depths in radius, which curves away from the coil; "
                        : "a ball of %s, %.0f skin depths in radius, which curves away from the coil; ",
                length(ball.diameter()),
                ball.radius() / delta);
        return text
                + (ball.radius() > THICK * delta
                        ? thick(m, delta)
                        : "too small for a skin to form, it acts more as a resistor")
                + ".";
    }

    private String single(Layer layer) {
        Material m = layer.material();
        if (m.conductivity20() == 0) {
            return "magnetic but no conductor: it draws the field and raises the inductance, with hardly any loss.";
        }
        double delta = m.skinDepth(omega, Temperature.AMBIENT);
        double t = layer.thickness();
        if (m.muReal() == 1 && t < THIN * delta) {
            return sheet(t, delta, wavenumber * delta * delta);
        }
        if (m.muReal() > 1) {
            return thick(m, delta) + ".";
        }
        String thickness = t < THICK * delta ? ", not much less than its thickness" : "";
        return "its skin is " + length(delta) + thickness + ": " + loss(m, delta)
                + ", for the loss grows with the square root of resistivity and permeability.";
    }

    /** What a metal thicker than its skin takes. */
    private String thick(Material m, double delta) {
        return m.muReal() > 1
                ? "magnetic, with a skin of " + length(delta) + ": it takes " + most(m, delta)
                : "its skin is " + length(delta) + ": " + loss(m, delta);
    }

    private String loss(Material m, double delta) {
        return (ofMost(m, delta) < LITTLE ? "strong currents with little loss, " : "") + most(m, delta);
    }

    private double ofMost(Material m, double delta) {
        return thickShare(wavenumber * m.muReal() * delta);
    }

    private String most(Material m, double delta) {
        return String.format(
                Locale.ROOT, "about %.0f %% of the most that a thick metal can take here", 100 * ofMost(m, delta));
    }

    /** Loss of a thick metal with s = k mu_r delta, as a share of the most that a thick metal can take. */
    static double thickShare(double s) {
        return 2 * s / ((s + 1) * (s + 1) + 1) / (Math.sqrt(2) - 1);
    }

    private static String sheet(double t, double delta, double best) {
        double x = t / best;
        String side = x > 1.2 ? ", and thicker acts more as a mirror" : x < 0.8 ? ", and thinner loses less" : "";
        return String.format(
                Locale.ROOT,
                "%s is %s of its skin depth of %s, so it acts as a plain resistor: %s of the most that a sheet can take, which"
                        + " is near %s%s.",
                length(t),
                t < 1e-3 * delta ? "less than a thousandth" : String.format(Locale.ROOT, "%.2g", t / delta),
                length(delta),
                x < 0.005 ? "less than 1 %" : String.format(Locale.ROOT, "about %.0f %%", 100 * 2 * x / (1 + x * x)),
                length(best),
                side);
    }

    private String skin(Material m) {
        return length(m.skinDepth(omega, Temperature.AMBIENT));
    }

    /** A length in mm, in µm below 0.1 mm or in nm below 0.1 µm, with two or three significant digits. */
    public static String length(double metres) {
        double um = metres * 1e6;
        if (um < 0.1) {
            return String.format(Locale.ROOT, "%.0f nm", 1000 * um);
        }
        return um < 100
                ? String.format(Locale.ROOT, um < 10 ? "%.1f \u00b5m" : "%.0f \u00b5m", um)
                : String.format(Locale.ROOT, um < 10000 ? "%.2f mm" : "%.0f mm", um / 1000);
    }
}
