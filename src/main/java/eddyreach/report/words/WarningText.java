package eddyreach.report.words;

import static eddyreach.report.words.Labels.fixed;
import static eddyreach.report.words.Labels.length;
import static eddyreach.report.words.Labels.percent;
import static eddyreach.report.words.Labels.significant;

import eddyreach.engine.core.Warning;
import eddyreach.engine.core.Warning.Measure;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The words of each warning, in one place for terminal, page and JSON. */
public final class WarningText {

    private static final String NOT_IN_BAR = "; the error bar does not include this";

    private WarningText() {}

    /** A sentence for each warning, those of the same kind that differ in a number alone in one; without their full stops. */
    public static List<String> sentences(List<Warning> warnings) {
        List<Warning> all = warnings.stream().distinct().toList();
        List<String> sentences = new ArrayList<>();
        together(all, Warning.Kind.PERMEABILITY_ASSUMED, WarningText::permeability)
                .ifPresent(list -> sentences.add("relative permeability assumed (" + list
                        + "): it varies from piece to piece and falls with frequency"));
        together(
                        all,
                        Warning.Kind.SHIELDING,
                        w -> "by up to " + significant(w.value(Measure.RESISTANCE), 2) + " ohm near "
                                + millimetres(w, Measure.DISTANCE, 1))
                .ifPresent(list -> sentences.add("far out the loss falls slightly (" + list
                        + "): the target shields the barrel, which then loses less"));
        all.stream()
                .filter(w -> w.kind() != Warning.Kind.PERMEABILITY_ASSUMED && w.kind() != Warning.Kind.SHIELDING)
                .map(WarningText::withSubject)
                .forEach(sentences::add);
        return sentences;
    }

    private static Optional<String> together(List<Warning> all, Warning.Kind kind, Function<Warning, String> number) {
        String list = all.stream()
                .filter(w -> w.kind() == kind)
                .map(w -> w.subject() + " " + number.apply(w))
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? Optional.empty() : Optional.of(list);
    }

    /** What it says, starting with its subject, without a full stop. */
    public static String withSubject(Warning w) {
        return w.subject() + ": " + of(w);
    }

    /** What it says, without its subject and without a full stop. */
    public static String of(Warning w) {
        return switch (w.kind()) {
            case TRIM_WEAK ->
                "the standard target at " + length(w.value(Measure.DISTANCE)) + " raises the loss of the tank by only "
                        + percent(w.value(Measure.SHARE), 2) + ". A real comparator needs about "
                        + percent(w.value(Measure.LOW), 1) + " (common practice): do not rely on any distance below."
                        + " Lower the rated distance or make the coil larger";
            case QUALITY_LOW ->
                "the quality factor of the tank without a target is " + significant(w.value(Measure.QUALITY), 2)
                        + ". Below about " + fixed(w.value(Measure.LOW), 0)
                        + " it hardly oscillates and not as a sine: do not rely on any distance below."
                        + " Lower the loss of the coil or change the frequency";
            case NOT_OSCILLATING ->
                "it does not oscillate even without a target: the tank loses "
                        + Units.text(w.value(Measure.CONDUCTANCE), Dimension.CONDUCTANCE)
                        + " and the active element makes up for at most "
                        + Units.text(w.value(Measure.MOST), Dimension.CONDUCTANCE)
                        + ". Give the oscillator more transconductance or lower the loss of the coil";
            case PERMEABILITY_ASSUMED ->
                "relative permeability of " + w.about() + " assumed to be "
                        + permeability(w)
                        + "; it varies from piece to piece and falls with frequency";
            case SHIELDING ->
                "far out, near " + millimetres(w, Measure.DISTANCE, 1) + ", it lowers the loss by up to "
                        + significant(w.value(Measure.RESISTANCE), 3)
                        + " ohm: it shields the barrel, so the total loss falls slightly";
            case SQUARE_AS_DISC -> "computed as discs of equal area; on the axis the loss is right within about 1 %";
            case OUTLINE_BESIDE_AXIS ->
                "computed as the disc of equal area. The real edge lies up to " + millimetres(w, Measure.SHIFT, 1)
                        + " further in at the middle of a side and further out at a corner; the error bars beside the axis"
                        + " include that";
            case RECTANGLE_AS_DISC, RECTANGLE_LONG -> rectangle(w);
            case OPEN_AREA_AS_SHEET ->
                "computed as a solid sheet with " + fixed(w.value(Measure.CONDUCTIVITY_RATIO), 2)
                        + " times the conductivity: (1 - f)/(1 + f), Maxwell's rule for regular round holes that take up to about half"
                        + " the area and are small against the coil" + NOT_IN_BAR;
            case OPEN_AREA_THICK ->
                fixed(w.value(Measure.SKIN_DEPTHS), 1)
                        + " skin depths thick: currents also run down the walls of the holes, which the rule leaves out";
            case MESH_AS_SHEET ->
                "computed as a sheet whose thickness is the wire's section over the pitch (common practice). This holds for wires"
                        + " bonded at every crossing; crossings that only touch open the loops and are not covered"
                        + NOT_IN_BAR;
            case MESH_COARSE ->
                "the openings measure " + fixed(w.value(Measure.CORE_RADII), 2)
                        + " core radii: coarse enough for single openings to matter";
            case MESH_WIRE_THICK ->
                "the wires are " + fixed(w.value(Measure.SKIN_DEPTHS), 1)
                        + " skin depths thick: their current runs in the skin only, which the rule leaves out";
            case SLIT_AS_NARROW ->
                "the slit is taken as narrow. How the currents turn at its ends, over up to "
                        + percent(w.value(Measure.SHARE), 2) + " of the circumference, is left out" + NOT_IN_BAR;
            case WIDE_RINGS_CUT ->
                "computed without what lies more than " + fixed(w.value(Measure.CORE_RADII), 0)
                        + " core radii from the axis";
            case WIDE_AS_ENDLESS -> "so wide against the core that it is computed as an endless plate";
            case OFFSET_WITHOUT_EFFECT -> "an endless plate: an offset changes nothing";
            case BESIDE_UNSEEN ->
                "its nearest edge lies " + millimetres(w, Measure.DISTANCE, 0) + " beside the axis, more than "
                        + fixed(w.value(Measure.CORE_RADII), 0)
                        + " core radii, where the field is too weak to matter: treated as absent";
            case ERROR_ABOVE_REQUEST -> error(w);
            case LOST_NEARER ->
                "detected on its way in, but lost again nearer than " + millimetres(w, Measure.DISTANCE, 2)
                        + ", where its loss is smaller";
            case OUTSIDE_USUAL_BAND ->
                "factor " + fixed(w.value(Measure.FACTOR), 2) + " is outside the typical range of "
                        + fixed(w.value(Measure.LOW), 2) + " to " + fixed(w.value(Measure.HIGH), 2);
            case ROUND_MOUNT ->
                "everything except a straight edge is axisymmetric; a nut counts as the circle across its corners";
            case STRAIGHT_EDGE ->
                "the straight edge " + length(w.value(Measure.DISTANCE))
                        + " from the axis is an estimate: the mean of a wall without that edge and of one that ends there all round."
                        + " The error bars include both; verdicts use the worse";
            case BEATS_WITHOUT_TARGET ->
                "from the mutual inductance without a target between the switches, each pulling the other; where either"
                        + " disturbs the other by more than a tenth the range of locking is a bound; the demodulator's corner frequency of "
                        + Labels.frequency(w.value(Measure.CORNER)) + " is assumed";
            case BESIDE_ESTIMATED ->
                "the effect of the neighbour's metal is estimated from its polarisability, with an error bar at least as large as the"
                        + " effect itself; target and neighbour do not influence each other";
            case NOT_ASSESSED -> "no assured distances and no advice: " + w.about();
        };
    }

    private static String rectangle(Warning w) {
        boolean doubtful = w.kind() == Warning.Kind.RECTANGLE_LONG;
        return "computed as the disc of equal area"
                + (doubtful ? ", although it is too elongated to be approximated well by a disc" : "")
                + ". In a uniform field a thin sheet with sides " + significant(w.value(Measure.ASPECT), 2)
                + " to 1 loses " + percent(w.value(Measure.LESS), 2)
                + " less than that disc; under a coil smaller than the sheet the difference is small" + NOT_IN_BAR;
    }

    private static String error(Warning w) {
        String asked = significant(w.value(Measure.ASKED) * Labels.MM, 2) + " mm";
        String error = significant(w.value(Measure.ERROR) * Labels.MM, 2) + " mm";
        return w.has(Measure.COUNT)
                ? "numerical error of " + fixed(w.value(Measure.COUNT), 0) + " of " + fixed(w.value(Measure.TOTAL), 0)
                        + " distances is above the " + asked + " asked for, up to " + error
                : "numerical error " + error + " at the finest mesh, asked for " + asked;
    }

    private static String millimetres(Warning w, Measure measure, int decimals) {
        return fixed(w.value(measure) * Labels.MM, decimals) + " mm";
    }

    /** An assumed permeability: a value, and the range where one is stated. */
    public static String permeability(Warning w) {
        String value = significant(w.value(Measure.PERMEABILITY), 3);
        return w.has(Measure.LOW)
                ? value + " within " + significant(w.value(Measure.LOW), 3) + " to "
                        + significant(w.value(Measure.HIGH), 3)
                : value;
    }
}
