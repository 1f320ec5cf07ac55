package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.Reason;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Words and numbers of the answer that terminal and page share. */
final class AnswerTable {

    private AnswerTable() {}

    /** What the columns of the band are called. */
    static final String BAND = "all units";

    /** What the columns of the band mean. */
    static final String BAND_NOTE =
            "All units: every switch of this type, over its tolerances, temperature and supply, and over the tolerances of"
                    + " the target's material and thickness. Between on and off the output may be either. Plan to work up to four fifths"
                    + " of the assured distance; half of it leaves reserve for wear, dirt and misalignment. Nearer is also on.";

    /** A distance with its unit. */
    static String distance(double metres) {
        return Double.isFinite(metres) ? Labels.millimetres(metres) + " mm" : "no distance";
    }

    /** The answer in one sentence. */
    static String sentence(ApproachResult result) {
        if (result.mounted().isPresent()) {
            return new MountWords(result, result.mounted().get()).answer();
        }
        List<TargetResult> others = result.targets().stream().skip(1).toList();
        List<TargetResult> asked = others.isEmpty() ? result.targets() : others;
        return asked.size() == 1 ? single(asked.get(0)) : several(asked);
    }

    private static String several(List<TargetResult> targets) {
        List<TargetResult> detected = targets.stream()
                .filter(t -> Double.isFinite(t.distance().on()))
                .sorted(Comparator.comparingDouble(t -> t.distance().on()))
                .toList();
        String never = targets.stream()
                .filter(t -> !detected.contains(t))
                .map(t -> t.target().label())
                .collect(Collectors.joining(", "));
        if (detected.isEmpty()) {
            return "No: none of the " + targets.size() + " targets is detected at any distance.";
        }
        String all = never.isEmpty() ? "Yes, all " + targets.size() : detected.size() + " of " + targets.size();
        return all + " targets are detected: on at " + near(detected.get(0)) + " to "
                + near(detected.get(detected.size() - 1)) + (never.isEmpty() ? "." : "; not detected: " + never + ".");
    }

    private static String near(TargetResult t) {
        return distance(t.distance().on()) + " (" + t.target().label() + ", factor " + Labels.fixed(t.factor(), 2)
                + ")";
    }

    /** The answer for one target. */
    static String single(TargetResult t) {
        Optional<Assurance> band = t.assessment().map(Assessment::assurance);
        if (!Double.isFinite(t.distance().on())) {
            return "No: " + Terms.of(t.distance().outcome()) + ", "
                    + (t.reason().cause() instanceof Reason.NoEffect
                            ? "since only metal is detected."
                            : "not even at the active face.");
        }
        String on = "on at " + distance(t.distance().on()) + " (factor " + Labels.fixed(t.factor(), 2) + ")";
        if (t.distance().outcome() != SwitchDistance.Outcome.SWITCHES) {
            return "Not OK: " + on + ", but it " + Terms.of(t.distance().outcome()) + ".";
        }
        if (band.isEmpty()) {
            return "Yes: " + on + ".";
        }
        return band.get().anywhereOn()
                ? "Yes: " + on + "; every unit is on up to " + AssuranceText.assuredOn(band.get()) + " mm."
                : "Not reliably: " + on + ", but some units may miss it even at the active face.";
    }
}
