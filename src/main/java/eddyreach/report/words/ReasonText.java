package eddyreach.report.words;

import static eddyreach.report.words.Labels.computed;
import static eddyreach.report.words.Labels.fixed;
import static eddyreach.report.words.Labels.length;
import static eddyreach.report.words.Labels.percent;
import static eddyreach.report.words.Labels.significant;

import eddyreach.engine.assure.Reason;
import eddyreach.engine.assure.Regime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The words of the reason why a target switches where it does. */
public final class ReasonText {

    private static final String DRAWS =
            "magnetic but not conducting: it draws in the field and raises the inductance, with hardly any loss";

    /** A skin depth within this factor of the thickness is called close to it. */
    private static final double CLOSE = 1.35;

    private static final String RESISTOR = "too thin for a skin to form, so it acts more as a resistor";

    /** What the reasons of thick metals share; said once. */
    private static final String LAW =
            "Among thick metals the loss grows with the square root of resistivity times permeability.";

    private ReasonText() {}

    /** What the reasons of these targets share: empty unless at least two of them are thick metals. */
    public static Optional<String> shared(List<Reason> reasons) {
        return reasons.stream().filter(r -> r.cause() instanceof Reason.Thick).count() > 1
                ? Optional.of(LAW)
                : Optional.empty();
    }

    /** One sentence or a few, starting with the factor or the outcome, to stand behind the target's name and a comma. */
    public static String of(Reason r) {
        String start =
                Double.isFinite(r.factor()) ? "factor " + fixed(r.factor(), 2) + ": " : Terms.of(r.outcome()) + ": ";
        String offset = r.offset() > 0 ? "its axis is " + length(r.offset()) + " from that of the switch; " : "";
        return start + offset + cause(r.cause()) + ".";
    }

    private static String cause(Reason.Cause cause) {
        if (cause instanceof Reason.NoEffect) {
            return "it neither conducts nor is magnetic, so the field passes through it as through air. Only metal is detected";
        }
        if (cause instanceof Reason.BesideFace b) {
            return "it lies entirely beside the active face, " + computed(b.clearance())
                    + " from its rim, where the field is weak";
        }
        if (cause instanceof Reason.Standard s) {
            return "the standard target, on which the switch is trimmed. It is magnetic, so its skin depth is only "
                    + computed(s.skinDepth()) + " and the currents there lose much";
        }
        if (cause instanceof Reason.Draws) {
            return DRAWS;
        }
        if (cause instanceof Reason.Resistor r) {
            return resistor(r);
        }
        if (cause instanceof Reason.Thick t) {
            return thick(t);
        }
        if (cause instanceof Reason.Ball b) {
            return ball(b);
        }
        if (cause instanceof Reason.Rings r) {
            return rings(r);
        }
        return layers((Reason.Layers) cause);
    }

    private static String resistor(Reason.Resistor r) {
        String share =
                r.share() < 0.005 ? "less than 1 %" : r.share() > 0.985 ? "about" : fixed(100 * r.share(), 0) + " %";
        double x = r.thickness() / r.best();
        String side = x > 1.2 ? "; thicker metal acts more like a mirror" : x < 0.8 ? "; thinner metal loses less" : "";
        return "only " + length(r.thickness()) + " thick against a skin depth of " + computed(r.skinDepth())
                + ", so it acts as a resistor. It damps the switch " + share
                + " as much as the best thickness of this metal (" + computed(r.best()) + ") would" + side;
    }

    private static String thick(Reason.Thick t) {
        if (t.metal().magnetic()) {
            return metal(t.metal(), "");
        }
        double ratio = t.metal().skinDepth() / t.thickness();
        String aside = Reason.thick(t.thickness(), t.metal().skinDepth())
                ? ""
                : ratio > CLOSE
                        ? ", " + significant(ratio, 2) + " times its thickness"
                        : ratio * CLOSE > 1 ? ", close to its thickness" : ", more than half its thickness";
        return metal(t.metal(), aside);
    }

    private static String metal(Reason.Metal m, String aside) {
        return (m.magnetic() ? "magnetic, " : "") + "skin depth " + computed(m.skinDepth()) + aside
                + (!m.magnetic() && m.share() < Regime.LITTLE ? ", strong currents but little loss" : "")
                + "; it absorbs "
                + percent(m.share(), 2) + " of what the best thick metal would";
    }

    private static String ball(Reason.Ball b) {
        double depths = b.diameter() / 2 / b.metal().skinDepth();
        return "a ball of " + length(b.diameter()) + ", " + depths(depths)
                + " in radius, whose surface curves away from the coil; "
                + (Reason.thick(b.diameter() / 2, b.metal().skinDepth()) ? metal(b.metal(), "") : RESISTOR);
    }

    private static String rings(Reason.Rings r) {
        String form = r.slit()
                ? "slit: no current flows round it, only eddies within its section; "
                : r.hollow() ? "a closed ring: current flows round it; " : "solid; ";
        String plating = r.plating()
                .map(c -> "its plating, " + length(c.thickness()) + " of " + c.material() + " (skin depth "
                        + computed(c.skinDepth()) + "), lets the field through to "
                        + r.base().name() + "; ")
                .orElse("");
        String base = length(r.thinnest()) + " of " + r.base().name() + " at its thinnest, "
                + depths(r.thinnest() / r.base().skinDepth()) + "; "
                + (Reason.thick(r.thinnest(), r.base().skinDepth()) ? metal(r.base(), "") : RESISTOR);
        return form + plating + base + shares(r.shares());
    }

    private static String layers(Reason.Layers l) {
        String spacing = l.spacing() > 0
                ? "the " + length(l.spacing())
                        + " of non-metal in front only adds distance (all distances count from the very front); "
                : "";
        Reason.Coat front = l.front();
        String effect = front.hides()
                ? "It hides what lies behind it"
                : front.thin() ? "It lets the field through" : "It takes part of the field";
        return spacing + "the front metal, " + length(front.thickness()) + " of " + front.material()
                + ", has a skin depth of " + computed(front.skinDepth()) + ". " + effect + shares(l.shares());
    }

    private static String shares(List<Reason.LossShare> shares) {
        return shares.isEmpty()
                ? ""
                : ". Of its loss, "
                        + shares.stream()
                                .map(s -> s.material() + " takes " + fixed(100 * s.share(), 0) + " %")
                                .collect(Collectors.joining(", "));
    }

    private static String depths(double depths) {
        return (depths < 10 ? significant(depths, 2) : fixed(depths, 0)) + " skin depths";
    }
}
