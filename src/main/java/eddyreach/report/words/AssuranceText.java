package eddyreach.report.words;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.Assurance.Contribution;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Words and numbers of assured distances. */
public final class AssuranceText {

    /** What is said to matter most, at most. */
    private static final int MOST = 3;

    private AssuranceText() {}

    /** Assured on, assured off, up to where to work, and where there is reserve, each in mm. */
    public static List<String> cells(Assurance a) {
        return List.of(assuredOn(a), assuredOff(a), work(a.recommended()), work(a.comfortable()));
    }

    /** Rounded down, in mm. */
    public static String assuredOn(Assurance a) {
        return a.anywhereOn() ? down(a.assuredOn()) : "-";
    }

    private static String down(double metres) {
        return Labels.fixed(Math.floor(metres * Labels.MM * 100) / 100, 2);
    }

    /** Rounded up, in mm. */
    private static String up(double metres) {
        return Labels.fixed(Math.ceil(metres * Labels.MM * 100) / 100, 2);
    }

    /** Rounded up, in mm, or in words. */
    public static String assuredOff(Assurance a) {
        return Double.isInfinite(a.assuredOff())
                ? "beyond range"
                : a.assuredOff() == 0 ? "anywhere" : up(a.assuredOff());
    }

    private static String work(double metres) {
        return Double.isFinite(metres) ? down(metres) : "-";
    }

    /** An on distance in mm without its unit, or what there is instead. */
    public static String number(double metres) {
        return Double.isNaN(metres)
                ? "never on"
                : Double.isInfinite(metres) ? "no release" : Labels.millimetres(metres);
    }

    private static String withUnit(double metres, boolean unit) {
        return number(metres) + (unit && Double.isFinite(metres) ? " mm" : "");
    }

    /** How far it is assured to be on, in words. */
    public static String onWords(Assurance a) {
        return a.anywhereOn() ? "every unit is on up to " + assuredOn(a) + " mm" : "on nowhere for every unit";
    }

    /** From where it is assured to be off, in words. */
    public static String offWords(Assurance a) {
        if (a.assuredOff() == 0) {
            return "every unit is off everywhere";
        }
        return Double.isInfinite(a.assuredOff())
                ? "off is not assured anywhere within the computed range"
                : "every unit is off beyond " + assuredOff(a) + " mm";
    }

    /** Each cause alone, that which moves the on distance most first. */
    public static List<Contribution> ranked(Assurance a) {
        return a.contributions().stream()
                .sorted(Comparator.comparingDouble(AssuranceText::width).reversed())
                .toList();
    }

    private static double width(Contribution c) {
        double width = c.longest() - c.shortest();
        return Double.isNaN(width) ? Double.POSITIVE_INFINITY : width;
    }

    /** What moves the on distance most, each with the distances that it alone gives. */
    public static String most(Assurance a) {
        return ranked(a).stream()
                .limit(MOST)
                .map(c -> Terms.of(c) + " (" + withUnit(c.shortest(), !Double.isFinite(c.longest())) + " to "
                        + withUnit(c.longest(), true) + ")")
                .collect(Collectors.joining("; "));
    }
}
