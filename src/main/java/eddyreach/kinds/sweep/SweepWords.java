package eddyreach.kinds.sweep;

import eddyreach.materials.Material;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The sentences about sweeps: the answers, and why the curves run as they do, from the facts in the results. */
final class SweepWords {

    /** Above this share of the skin depth the optimum of a thin sheet is only a rough guide. */
    private static final double ROUGHLY_THIN = 0.5;

    /** So many curves are named one by one in an answer. */
    private static final int NAMED = 4;

    private SweepWords() {}

    /** What a marked point is called. */
    static String mark(MarkedPoint.Mark mark) {
        return switch (mark) {
            case LARGEST -> "largest distance";
            case SHEET_OPTIMUM -> "t*, thin sheet";
            case FOIL -> "10 µm foil";
            case SKIN_DEPTH -> "skin depth";
            case SHEET -> "1 mm sheet";
            case STANDARD_SIZE -> "standard size";
            case ROUND -> "";
        };
    }

    /** The thickness at which each metal is detected from farthest. */
    static String answer(ThicknessResult result) {
        double sr = result.model().effectiveDistance();
        return listed(
                        "Largest on distance: ",
                        result.metals().stream()
                                .map(m -> m.material().name() + " " + farthest(m, sr))
                                .toList())
                + ".";
    }

    private static String farthest(ThicknessResult.Metal m, double sr) {
        if (!m.curve().complete()) {
            return "more than was searched";
        }
        return m.highest()
                .map(p -> Labels.millimetres(p.on()) + " mm at " + Labels.length(p.value(), 2) + " (factor "
                        + Labels.fixed(p.on() / sr, 2) + ")")
                .orElse("never on");
    }

    private static String listed(String head, List<String> parts) {
        String rest = parts.size() > NAMED ? "; the table has " + (parts.size() - NAMED) + " more" : "";
        return head + parts.stream().limit(NAMED).collect(Collectors.joining("; ")) + rest;
    }

    /** Why a metal is detected at each thickness as it is. */
    static String reason(ThicknessResult.Metal metal, double searched) {
        Material m = metal.material();
        SweepCurve curve = metal.curve();
        if (!m.hasEffect()) {
            return "Never on: it neither conducts nor is magnetic, so it does not disturb the field.";
        }
        if (!curve.complete()) {
            return "At some thicknesses it is detected from beyond " + Labels.length(searched)
                    + ", the largest distance searched, so the largest on distance is unknown. Set a larger reach.";
        }
        if (metal.highest().isEmpty()) {
            return "Never on between " + length(curve.points().get(0).value()) + " and "
                    + length(curve.last().value()) + ".";
        }
        SweepPoint top = metal.highest().get();
        String first = "The largest on distance is " + mm(top.on()) + ", at " + length(top.value())
                + (metal.inside() ? ". " : ", an end of the range of thicknesses. ");
        if (m.conductivity20() == 0) {
            return first + "It does not conduct: it draws the field and causes hardly any loss.";
        }
        double share = metal.optimum() / metal.skinDepth();
        boolean rough = share > ROUGHLY_THIN;
        return first
                + "A thin sheet causes the most loss near t* = " + (m.muReal() > 1 ? "k mu_r delta²" : "k delta²")
                + " = " + length(metal.optimum()) + " (k = " + Labels.fixed(metal.wavenumber(), 0) + "/m)"
                + (rough ? "; at " + percent(share) + " of the skin depth this is a rough guide only" : "")
                + (metal.inside()
                        ? ". The largest distance is at " + Labels.fixed(top.value() / metal.optimum(), 1) + " t*"
                        : "")
                + ". Thinner metal has too much resistance to carry much current"
                + curve.lastUnseen()
                        .map(p -> " and is never on up to " + length(p.value()))
                        .orElse("")
                + ". Thicker metal "
                + (rough
                        ? "soon exceeds its skin depth of " + length(metal.skinDepth())
                                + ": the material below carries no current"
                        : "acts more and more as a mirror: its loss falls with 1/t, up to about the skin depth of "
                                + length(metal.skinDepth()))
                + metal.level().map(p -> level(metal, p)).orElse("") + ".";
    }

    private static String level(ThicknessResult.Metal metal, SweepPoint from) {
        return ". From " + length(from.value()) + " the distance stays at "
                + mm(metal.curve().last().on())
                + metal.dip()
                        .map(p -> ", after a shallow dip to " + mm(p.on()) + " near " + length(p.value()))
                        .orElse("");
    }

    /** What the standard size gives, and how small a target may be. */
    static String answer(SizeResult result) {
        return listed(
                        "At the standard size, " + Labels.length(result.reference()) + ": ",
                        result.materials().stream().map(SweepWords::standard).toList())
                + ".";
    }

    private static String standard(SizeResult.Item item) {
        String name = item.material().name() + " ";
        if (!Double.isFinite(item.standard().on())) {
            return name + Terms.of(item.standard().outcome());
        }
        return name + "on at " + mm(item.standard().on())
                + item.curve()
                        .lastUnseen()
                        .map(p -> ", never on below " + length(item.smallest()))
                        .orElse("");
    }

    /** Why a material is detected at each size as it is. */
    static String reason(SizeResult.Item item, double reference, double searched) {
        SweepCurve curve = item.curve();
        SweepPoint last = curve.last();
        if (!curve.complete()) {
            return "At some sizes it is detected from beyond " + Labels.length(searched)
                    + ", the largest distance searched. Set a larger reach.";
        }
        if (curve.firstSeen().isEmpty()) {
            return "Never on up to " + length(last.value()) + ".";
        }
        String smallest = curve.points().get(0).seen()
                ? "Even the smallest size, " + length(item.smallest()) + ", is detected at contact. "
                : "The smallest size detected at contact is " + length(item.smallest()) + " ("
                        + Labels.fixed(item.smallest() / reference, 2) + " of the standard target). ";
        String level = item.level()
                .map(p -> "Targets larger than " + length(p.value()) + " ("
                        + Labels.fixed(p.value() / reference, 2) + " of the standard target) differ by less than "
                        + percent(SweepCurve.LEVEL) + ". ")
                .orElse("The distance still changes at the end of the range. ");
        double gain = last.on() / item.standard().on() - 1;
        String against = !Double.isFinite(gain)
                ? ""
                : "At " + length(last.value())
                        + (Math.abs(gain) < 5e-4
                                ? " the distance is that of the standard size. "
                                : " the distance is " + Labels.fixed(Math.abs(100 * gain), 1) + " % "
                                        + (gain > 0 ? "larger" : "smaller") + " than at the standard size. ");
        String peak = item.peak()
                .map(p -> "It is largest at " + length(p.value()) + ": the currents crowd at the edge and add loss.")
                .orElse("");
        return (smallest + level + against + peak).strip();
    }

    /** From where to where the distances run. */
    static String answer(ConductivityResult result) {
        ConductivityResult.Extremes e = result.extremes();
        if (e.seen() == 0) {
            return "No on distance anywhere on the map.";
        }
        return "On distances from " + Labels.millimetres(e.least()) + " to " + mm(e.most()) + ", the largest at "
                + Labels.significant(e.conductivity() * Labels.MEGASIEMENS, 2) + " MS/m and a relative permeability of "
                + Labels.significant(e.permeability(), 2) + ".";
    }

    /** How the map was computed and what is missing on it. */
    static String mappedRange(ConductivityResult result) {
        ConductivityResult.Extremes e = result.extremes();
        return "The map has " + result.conductivities().length + " conductivities and "
                + result.permeabilities().length + " permeabilities"
                + (e.seen() > 0
                        ? "; the numerical error is at most "
                                + Labels.fixed(Math.ceil(e.error() * Labels.MM * 100) / 100, 2) + " mm"
                        : "")
                + (e.seen() < e.all()
                        ? ". No on distance at " + (e.all() - e.seen()) + " of " + e.all() + " points"
                        : "")
                + "." + outside(result);
    }

    /** Which of the materials asked for lie outside the map. */
    static String outside(ConductivityResult result) {
        List<String> out = result.dots().stream()
                .filter(d -> !result.covers(d))
                .map(d -> d.material().name())
                .toList();
        return out.isEmpty() ? "" : " Outside the map: " + String.join(", ", out) + ".";
    }

    /** Why the map looks as it does. */
    static String reason(ConductivityResult result) {
        double thickness = result.input().thickness();
        double omega = 2 * Math.PI * result.undamped().frequency();
        double k = result.wavenumber();
        double boundary = 2 / (omega * Material.MU0 * thickness * thickness);
        double best = 2 * k / (omega * Material.MU0 * thickness);
        double ratio = omega * Material.MU0 / (k * k);
        return "Where conductivity times permeability exceeds " + mega(boundary) + " MS/m, the skin depth is less than "
                + length(thickness)
                + " and only the ratio of permeability to conductivity counts: distances are equal along rising"
                + " diagonals. The loss grows with the square root of that ratio, up to a maximum at k mu_r delta = sqrt(2), that is"
                + " at a permeability of " + Labels.significant(ratio * 1e6, 3)
                + " for each MS/m. Below that boundary the current"
                + " fills the whole thickness and the target acts as a resistor. It causes the most loss near "
                + mega(best)
                + " MS/m, where its thickness is 2 k / (omega mu0 sigma). Worse conductors carry too little current; better ones act"
                + " as a mirror.";
    }

    private static String mega(double conductivity) {
        return Labels.significant(conductivity * Labels.MEGASIEMENS, 3);
    }

    /** What the coatings do at the round thickness that is nearest to a usual one. */
    static String answer(LayersResult result, double usual) {
        String base = result.againstBare()
                ? "The bare base is on at " + mm(result.bare().on())
                : "The bare base is " + Terms.of(result.bare().outcome());
        List<String> parts = result.coatings().stream()
                .flatMap(i -> nearest(i, usual).stream().map(p -> i.material().name() + " " + coated(result, p)))
                .toList();
        return parts.isEmpty()
                ? base + "."
                : listed(
                                base + "; with "
                                        + Labels.length(
                                                nearest(result.coatings().get(0), usual)
                                                        .orElseThrow()
                                                        .value())
                                        + " of coating: ",
                                parts)
                        + ".";
    }

    private static Optional<SweepPoint> nearest(LayersResult.Item item, double usual) {
        return item.marked().stream()
                .map(MarkedPoint::point)
                .min((a, b) ->
                        Double.compare(Math.abs(Math.log(a.value() / usual)), Math.abs(Math.log(b.value() / usual))));
    }

    private static String coated(LayersResult result, SweepPoint p) {
        if (!Double.isFinite(p.on())) {
            return Terms.of(p.distance().outcome());
        }
        double change = 100 * (p.on() / result.reference() - 1);
        String sign = change < 0 ? "-" : "+";
        return mm(p.on()) + (result.againstBare() ? " (" + sign + Labels.fixed(Math.abs(change), 0) + " %)" : "");
    }

    /** What a coating does to the distance of its base. */
    static String reason(LayersResult.Item item, double reference, double searched) {
        Material m = item.material();
        SweepCurve curve = item.curve();
        if (!m.hasEffect()) {
            return "It neither conducts nor is magnetic: it only keeps the base at a distance.";
        }
        if (!curve.complete()) {
            return "At some thicknesses the coated target is detected from beyond " + Labels.length(searched)
                    + ", the largest distance searched. Set a larger reach.";
        }
        if (curve.points().stream().noneMatch(p -> Double.isFinite(p.on()))) {
            return "The coated target is never on.";
        }
        StringBuilder text = new StringBuilder();
        Optional<SweepPoint> raised = item.raised(reference);
        raised.ifPresent(p -> text.append("Raises the distance, by at most ")
                .append(percent(p.on() / reference - 1))
                .append(" at ")
                .append(length(p.value()))
                .append(
                        m.conductivity20() > 0
                                ? ": so thin a coating acts as a resistor and adds its own loss (on its own it would cause the most near "
                                        + length(item.optimum()) + "). "
                                : ". "));
        Optional<SweepPoint> lowered = item.lowered(reference);
        SweepPoint last = curve.last();
        if (lowered.isPresent()) {
            text.append("Lowers it from ")
                    .append(length(lowered.get().value()))
                    .append(" on, ")
                    .append(
                            Double.isFinite(last.on())
                                    ? "to " + percent(last.on() / reference) + " at " + length(last.value())
                                    : "until the target is never on at " + length(last.value()))
                    .append(": it acts as a mirror in front of the base")
                    .append(
                            last.value() < item.skinDepth()
                                    ? ", well below its skin depth of " + length(item.skinDepth())
                                    : "")
                    .append(". ");
        } else if (raised.isEmpty() && item.everywhereOn()) {
            text.append("Changes the distance by less than ")
                    .append(percent(SweepCurve.LEVEL))
                    .append(" over the whole range. ");
        }
        if (Double.isFinite(item.solid().on())) {
            text.append("Solid ")
                    .append(m.name())
                    .append(": ")
                    .append(percent(item.solid().on() / reference))
                    .append(".");
        }
        return text.toString().strip();
    }

    private static String length(double metres) {
        return Labels.length(metres, 2);
    }

    private static String mm(double metres) {
        return Labels.millimetres(metres) + " mm";
    }

    private static String percent(double share) {
        return Labels.fixed(100 * share, 0) + " %";
    }
}
