package eddyreach.report.words;

import static eddyreach.report.words.Labels.computed;
import static eddyreach.report.words.Labels.fixed;
import static eddyreach.report.words.Labels.length;
import static eddyreach.report.words.Labels.percent;
import static eddyreach.report.words.Labels.significant;

import eddyreach.engine.assure.Explanation;
import eddyreach.engine.assure.Regime;
import eddyreach.engine.assure.Sensitivity;
import eddyreach.engine.core.LossBudget;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The words of an explanation. */
public final class ExplanationText {

    private static final double SMALL_SHARE = 0.005;

    private ExplanationText() {}

    /**
     * The explanation, sentence by sentence.
     *
     * @param budget losses with the target where it switches on
     */
    public static List<String> sentences(Explanation e, LossBudget budget) {
        List<String> all = new ArrayList<>();
        e.front().ifPresent(f -> {
            if (Double.isFinite(f.skinDepth())) {
                all.add(depth(f, e.frequency()));
            }
            all.add(regime(f.regime()));
        });
        all.add(losses(budget));
        e.steadiness().ifPresent(s -> all.add(steadiness(s)));
        e.remedy().ifPresent(r -> all.add(remedy(r)));
        return all;
    }

    private static String depth(Explanation.Front f, double frequency) {
        return "At " + Labels.frequency(frequency) + " the skin depth of " + f.material() + " is "
                + computed(f.skinDepth()) + ". " + (f.several() ? "The " + f.material() : "The part") + " is "
                + length(f.thickness()) + " thick at its thinnest, " + significant(f.thickness() / f.skinDepth(), 2)
                + " skin depths.";
    }

    private static String regime(Regime regime) {
        return switch (regime) {
            case TRANSPARENT -> "It neither conducts nor is magnetic, so the field passes through it as through air.";
            case DRAWING ->
                "It draws in the field without conducting: the inductance rises, but hardly any loss is added, and this type of"
                        + " switch responds to loss.";
            case RESISTOR ->
                "It is a resistance-limited sheet: the current is uniform through its thickness. The loss is largest where the"
                        + " sheet's resistance matches the reactance of its current loop; thinner metal carries too little current,"
                        + " thicker metal too much against too little resistance.";
            case MIRROR ->
                "It is skin-limited and acts almost as a mirror: strong currents in a thin skin push the field back with little"
                        + " loss, and this type of switch responds to loss.";
            case LOSSY ->
                "Its skin depth is not small against the field: the currents are weaker than in a good conductor and lose more.";
            case MAGNETIC ->
                "It is magnetic: the field is drawn into a thin skin of high resistance, where even moderate currents lose much.";
        };
    }

    private static String losses(LossBudget budget) {
        double total = budget.total();
        String shares = budget.shares().stream()
                .map(LossBudget.Share::role)
                .distinct()
                .filter(g -> Math.abs(budget.of(g)) >= SMALL_SHARE * total)
                .map(g -> Terms.of(g) + " " + fixed(100 * budget.of(g) / total, 0) + " %")
                .collect(Collectors.joining(", "));
        return "With the target at " + Labels.millimetres(budget.distance()) + " mm the loss divides into " + shares
                + ".";
    }

    private static String steadiness(Explanation.Steadiness s) {
        String thickness = moves("thickness", s.thickness());
        return Double.isNaN(s.size())
                ? "A change of 10 % in " + thickness + "."
                : "A change of 10 % in " + thickness + ", and in " + moves("size", s.size()) + ".";
    }

    private static String moves(String what, double by) {
        return by < Explanation.FLAT
                ? what + " hardly moves the factor"
                : what + " moves the factor by up to " + fixed(by, 2);
    }

    private static String remedy(Explanation.Remedy remedy) {
        return switch (remedy) {
            case ONLY_METAL -> "Only metal helps: fit a steel flag to the part.";
            case THINNER -> "Thinner metal would be detected from farther away.";
            case THICKER -> "Thicker metal would be detected from farther away.";
            case THICKNESS_NEAR_BEST -> "Its thickness is near the best.";
            case NO_MORE_METAL -> "More of the same metal does not help; a steel flag does.";
        };
    }

    /** What changes in a variant. */
    public static String change(Sensitivity s) {
        String by = s.by() == 0.5
                ? "halved"
                : s.by() == 2 ? "doubled" : percent(Math.abs(s.by() - 1), 2) + (s.by() < 1 ? " less" : " more");
        return switch (s.quantity()) {
            case THICKNESS -> "thickness " + by;
            case SIZE -> "size " + by;
            case FREQUENCY -> "frequency " + by + ", trimmed again";
        };
    }
}
