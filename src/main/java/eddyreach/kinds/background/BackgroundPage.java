package eddyreach.kinds.background;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What is said of metal behind targets. */
final class BackgroundPage {

    /** Room behind a part, m, below which the background as good as touches it. */
    private static final double TOUCHING = 0.1e-3;

    private BackgroundPage() {}

    static void write(BackgroundResult result, Page page) {
        page.paragraph("Background: " + result.background().material().name() + ", "
                + Labels.length(result.background().thickness()) + " thick"
                + (Double.isInfinite(result.background().diameter())
                        ? ", endless"
                        : ", " + Labels.length(result.background().diameter()) + " across")
                + ". Its distance counts from the active face.");
        page.table(
                List.of(
                        "target",
                        "on without background, mm",
                        "shift below 10 % of sr from, mm",
                        "below 1 % from, mm",
                        "what limits"),
                Set.of(1, 2, 3),
                result.targets().stream()
                        .map(s -> Page.Row.of(
                                s.target().id(),
                                Labels.uncertainCell(s.free().on(), s.free().onError()),
                                Labels.uncertain(s.tenth(), s.tolerance()),
                                Labels.uncertain(s.hundredth(), s.tolerance()),
                                limit(s)))
                        .toList());
        page.paragraph("From these distances on, out to " + last(result)
                + ", the shift stays below 10 % or 1 % of sr and the output releases when the target goes away.");
        String hidden = result.targets().stream()
                .filter(BackgroundPage::touching)
                .map(s -> s.target().id())
                .collect(Collectors.joining(" and "));
        if (!hidden.isEmpty()) {
            page.paragraph(
                    "Only contact limits " + hidden
                            + ": as long as the metal leaves room behind the part until the output releases, the shift stays below 10 %.");
        }
        page.paragraph(alone(result));
        page.paragraph("Usual rule (common practice): three rated distances free in front of the face, "
                + Labels.length(result.usualFront(), 4) + ". "
                + result.targets().stream().map(s -> rule(result, s)).collect(Collectors.joining(" ")));
    }

    /** The distance to keep. */
    static String answer(BackgroundResult result) {
        double far = 0;
        for (BackgroundResult.Series s : result.targets()) {
            if (!(s.tenth() > 0)) {
                return "Not OK at any distance up to " + last(result) + ": the background moves "
                        + s.target().id() + " by more than 10 % of sr, or the output does not release.";
            }
            far = Math.max(far, s.tenth());
        }
        SwitchDistance alone = result.alone();
        String latch = alone.outcome() == SwitchDistance.Outcome.SWITCHES
                ? "; nearer than " + Labels.millimetres(alone.off()) + " mm it holds the output on by itself"
                : "";
        return "OK from " + Labels.millimetres(far)
                + " mm on: the background then moves no target by more than 10 % of sr" + latch + ".";
    }

    private static boolean touching(BackgroundResult.Series s) {
        return s.tenthRoom() < TOUCHING + s.tolerance();
    }

    private static String limit(BackgroundResult.Series s) {
        return Double.isNaN(s.tenth()) ? "-" : touching(s) ? "contact with the part's back" : "shift";
    }

    private static String alone(BackgroundResult result) {
        SwitchDistance alone = result.alone();
        return switch (alone.outcome()) {
            case SWITCHES ->
                "Without a target the background switches the output on when it comes nearer than "
                        + Labels.uncertain(alone.on(), alone.onError())
                        + " mm, and the output stays on until it is farther than "
                        + Labels.uncertain(alone.off(), alone.offError()) + " mm.";
            case NEVER_ON -> "Without a target the background never switches the output on.";
            case BEYOND_RANGE, NEVER_OFF ->
                "Without a target the background holds the output on at every distance examined, up to " + last(result)
                        + ".";
        };
    }

    private static String rule(BackgroundResult result, BackgroundResult.Series s) {
        if (!(s.tenth() <= result.usualFront())) {
            return "For " + s.target().id() + " that is not enough: the shift is still above 10 % there.";
        }
        return "For " + s.target().id() + " that is stricter than needed by "
                + Labels.millimetres(result.usualFront() - s.tenth()) + " mm.";
    }

    private static String last(BackgroundResult result) {
        return Labels.millimetres(result.distance()[result.distance().length - 1]) + " mm";
    }
}
