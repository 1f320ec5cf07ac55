package eddyreach.kinds.approach;

import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.TargetResult;
import eddyreach.report.words.Labels;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Words and numbers of the answer that terminal and page share. */
final class AnswerTable {

    static final String ALL_METALS_ALIKE =
            "Not computed here: a switch that weighs all metals alike (the trade's kind with a factor near 1"
                    + " for all metals) works on another principle and would see this metal almost as far as steel.";

    private AnswerTable() {}

    /** Surely on, surely off and where to work, each in mm. */
    static List<String> band(Assurance a) {
        return List.of(surelyOn(a), surelyOff(a), work(a));
    }

    /** Rounded down, in mm. */
    static String surelyOn(Assurance a) {
        return a.anywhereOn() ? down(a.surelyOn()) : "-";
    }

    private static String down(double metres) {
        return Labels.fixed(Math.floor(metres * Labels.MM * 100) / 100, 2);
    }

    /** Rounded up, in mm. */
    private static String up(double metres) {
        return Labels.fixed(Math.ceil(metres * Labels.MM * 100) / 100, 2);
    }

    /** Rounded up, in mm, or in words. */
    static String surelyOff(Assurance a) {
        return Double.isInfinite(a.surelyOff()) ? "beyond range" : a.surelyOff() == 0 ? "anywhere" : up(a.surelyOff());
    }

    /** The recommended distances in mm, from half to four fifths of the surely-on distance, rounded down. */
    static String work(Assurance a) {
        return a.anywhereOn() ? down(a.comfortable()) + " to " + down(a.recommended()) : "-";
    }

    /** An on distance in mm without its unit, or what there is instead. */
    static String number(double metres) {
        return Double.isNaN(metres)
                ? "never on"
                : Double.isInfinite(metres) ? "no release" : Labels.millimetres(metres);
    }

    /** A distance with its unit. */
    static String distance(double metres) {
        return Double.isFinite(metres) ? Labels.millimetres(metres) + " mm" : "no distance";
    }

    /** The answer in one sentence. */
    static String sentence(ApproachResult result, List<TargetResult> targets) {
        if (targets.size() == 1) {
            return single(targets.get(0));
        }
        List<TargetResult> sure = targets.stream()
                .filter(t -> t.assessment().map(a -> a.assurance().anywhereOn()).orElse(false))
                .sorted(Comparator.comparingDouble(t -> assurance(t).surelyOn()))
                .toList();
        String others = targets.stream()
                .filter(t -> !sure.contains(t))
                .map(t -> t.target().label())
                .collect(Collectors.joining(", "));
        if (sure.isEmpty()) {
            return "None of these targets is surely seen.";
        }
        TargetResult least = sure.get(0);
        TargetResult most = sure.get(sure.size() - 1);
        return "Surely seen up to distances from " + surelyOn(assurance(least)) + " mm" + " ("
                + least.target().label() + ") to "
                + surelyOn(assurance(most)) + " mm" + " (" + most.target().label() + ")"
                + (others.isEmpty() ? "." : "; not surely at any distance: " + others + ".");
    }

    private static Assurance assurance(TargetResult t) {
        return t.assessment().orElseThrow().assurance();
    }

    /** The answer for one target. */
    static String single(TargetResult t) {
        String name = t.target().label();
        String nominal = Double.isFinite(t.distance().on())
                ? "nominally it is seen from " + distance(t.distance().on())
                : "nominally the answer is: " + t.distance().outcome().label();
        if (t.assessment().isEmpty()) {
            return name + ": " + nominal + ".";
        }
        Assurance a = t.assessment().map(Assessment::assurance).orElseThrow();
        if (a.surelyOff() == 0) {
            return "No: " + name + " is not seen at any distance.";
        }
        if (!a.anywhereOn()) {
            return "Not surely: " + name + " may be missed even at the face; " + nominal + ", and it is " + offWords(a)
                    + ".";
        }
        return "Yes: " + name + " is surely seen up to " + surelyOn(a) + " mm; work at " + work(a) + " mm; it is "
                + offWords(a) + ".";
    }

    /** How far it is surely on, in words. */
    static String onWords(Assurance a) {
        return a.anywhereOn() ? "surely on up to " + surelyOn(a) + " mm" : "nowhere surely on";
    }

    /** From where it is surely off, in words. */
    static String offWords(Assurance a) {
        if (a.surelyOff() == 0) {
            return "surely off everywhere";
        }
        return Double.isInfinite(a.surelyOff())
                ? "nowhere surely off within the range computed"
                : "surely off beyond " + surelyOff(a) + " mm";
    }
}
