package eddyreach.kinds.neighbour;

import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import java.util.List;

/** What is said of two switches near each other. */
final class NeighbourText {

    private static final int[] COLUMNS = {-20, 14, 20, 20};
    private static final int[] BEATS = {12, 13, 12, 12, 12, 14};

    /** Rows of the table of beats. */
    private static final int ROWS = 6;

    private static final double PERCENT = 100;

    private NeighbourText() {}

    private static boolean facing(NeighbourResult result) {
        return result.input().arrangement() == NeighbourInput.Arrangement.FACE_TO_FACE;
    }

    /** What the spacing is, for an axis. */
    static String across(NeighbourResult result) {
        return facing(result) ? "distance between the faces, mm" : "distance between the axes, mm";
    }

    static void write(NeighbourResult result, TextPage page) {
        NeighbourInput input = result.input();
        page.paragraph("Neighbour: " + input.other().name() + ", "
                + Labels.frequency(input.other().frequency()) + ", "
                + input.arrangement().label() + "; spacing: distance between the "
                + (facing(result) ? "faces." : "axes.") + " Frequencies within " + percent(input.tolerance())
                + " of nominal (common practice unless given).");
        page.gap();
        page.line(page.mark(
                TextPage.row(COLUMNS, "target", "on alone, mm", "shift < 5 % from", "< 10 % from, mm"), TextPage.BOLD));
        for (NeighbourResult.Series s : result.targets()) {
            List<String> name = TextPage.wrap(s.target().id(), -COLUMNS[0]);
            page.line(TextPage.row(
                    COLUMNS,
                    name.get(0),
                    Labels.millimetres(s.on()),
                    limit(s.metalTwentieth()),
                    limit(s.metalTenth())));
            name.stream().skip(1).forEach(page::line);
            page.line(TextPage.row(COLUMNS, "  its tank at rest", "", limit(s.twentieth()), limit(s.tenth())));
        }
        page.gap();
        page.paragraph(
                "First its metal and core alone; then with its tank as well, the oscillator not running and the tank tuned, within the"
                        + " tolerance, to where it takes most loss, as it may be while it has no supply. While it runs, see the beats.");
        page.gap();
        page.line(page.mark(
                TextPage.row(BEATS, "spacing, mm", "coupling", "locking, Hz", "depth", "with alt.", "apart, kHz"),
                TextPage.BOLD));
        int n = result.spacing().length - 1;
        for (int k = 0; k <= ROWS; k++) {
            int i = n * k / ROWS;
            NeighbourResult.Coupling c = result.couplings().get(i);
            page.line(TextPage.row(
                    BEATS,
                    Labels.millimetres(result.spacing()[i]),
                    Labels.significant(c.factor(), 2),
                    Labels.significant(c.locking(), 2),
                    share(c.depth()),
                    share(c.depthApart()),
                    c.difference() > 0 ? Labels.fixed(c.difference() * Labels.KHZ, 1) : "0"));
        }
        page.gap();
        page.paragraph(
                "Depth: largest deviation of the demodulated amplitude within the tolerances, nominal frequencies; the thresholds bear "
                        + share(result.beats().allowed())
                        + ". Apart: difference of the nominal frequencies that keeps the beat below that.");
        page.paragraph(beats("Beats of the two disturb the output", result.alike()));
        page.paragraph(beats(
                "With the neighbour at " + Labels.significant(input.alternative(), 3) + " times the frequency they do",
                result.apart()));
        page.paragraph(
                result.latchedAtRest() > 0
                        ? "Without a target the neighbour alone, its tank at rest, holds the output on up to "
                                + Labels.millimetres(result.latchedAtRest()) + " mm; its metal and core alone "
                                + (result.latched() > 0
                                        ? "up to " + Labels.millimetres(result.latched()) + " mm."
                                        : "never do.")
                        : "The neighbour alone never holds the output on.");
        page.paragraph("Usual rule (common practice): " + result.rule() + ", here " + Labels.millimetres(result.usual())
                + " mm. " + comparison(result));
    }

    private static String beats(String start, NeighbourResult.Limit limit) {
        return start
                + switch (limit.place()) {
                    case WITHIN -> " when nearer than " + Labels.uncertain(limit.spacing(), limit.error()) + " mm.";
                    case BELOW -> " at no spacing examined.";
                    case ABOVE -> " at every spacing examined, up to " + Labels.millimetres(limit.spacing()) + " mm.";
                };
    }

    private static String comparison(NeighbourResult result) {
        double last = result.spacing()[result.spacing().length - 1];
        if (last < result.usual()) {
            return "That lies beyond the spacings examined.";
        }
        boolean beats = enough(result.alike(), result.usual());
        boolean shift = result.targets().stream().allMatch(s -> enough(s.tenth(), result.usual()));
        if (!shift) {
            return "That is not enough: the shift is still over 10 % there.";
        }
        return beats
                ? "That is enough: less than 10 % shift and no beats there."
                : "That keeps the shift below 10 %, but switches whose frequencies happen to meet may still beat there.";
    }

    private static boolean enough(NeighbourResult.Limit limit, double spacing) {
        return limit.place() == NeighbourResult.Place.BELOW
                || limit.place() == NeighbourResult.Place.WITHIN && limit.spacing() <= spacing;
    }

    private static String limit(NeighbourResult.Limit limit) {
        return switch (limit.place()) {
            case WITHIN -> Labels.uncertain(limit.spacing(), limit.error());
            case BELOW -> "everywhere";
            case ABOVE -> "nowhere";
        };
    }

    private static String percent(double share) {
        return Labels.significant(share * PERCENT, 3) + " %";
    }

    private static String share(double share) {
        // the linear theory ends long before
        return share > 1 ? "> 100 %" : Labels.significant(share * PERCENT, 2) + " %";
    }
}
