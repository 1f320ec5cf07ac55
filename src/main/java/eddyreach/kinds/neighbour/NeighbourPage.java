package eddyreach.kinds.neighbour;

import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What is said of two switches near each other. */
final class NeighbourPage {

    /** Rows of the table of beats. */
    private static final int ROWS = 6;

    private static final double PERCENT = 100;

    private NeighbourPage() {}

    private static boolean facing(NeighbourResult result) {
        return result.input().arrangement() == NeighbourInput.Arrangement.FACE_TO_FACE;
    }

    /** What the spacing is, for an axis. */
    static String across(NeighbourResult result) {
        return facing(result) ? "distance between the faces, mm" : "distance between the axes, mm";
    }

    static void write(NeighbourResult result, Page page) {
        NeighbourInput input = result.input();
        page.paragraph("Neighbour: " + input.other().name() + ", "
                + Labels.frequency(input.other().frequency()) + ", "
                + input.arrangement().label() + ". Spacing: distance between the "
                + (facing(result) ? "faces" : "axes") + ". Frequencies lie within " + percent(input.tolerance())
                + " of nominal (common practice unless given).");
        page.heading("Shift of the switch-on distance");
        List<Page.Row> rows = new ArrayList<>();
        for (NeighbourResult.Series s : result.targets()) {
            rows.add(Page.Row.of(
                    s.target().id(),
                    Double.isFinite(s.on()) ? Labels.millimetres(s.on()) : "never on",
                    "coil open",
                    limit(s.metalTwentieth()),
                    limit(s.metalTenth())));
            rows.add(Page.Row.of("", "", "no supply", limit(s.twentieth()), limit(s.tenth())));
        }
        page.table(
                List.of("target", "on alone, mm", "neighbour", "below 5 % from, mm", "below 10 % from, mm"),
                Set.of(1, 3, 4),
                rows);
        page.paragraph(
                "Coil open: the neighbour's metal and core alone. No supply: its tank as well, at rest, tuned within the tolerance"
                        + " to where it absorbs most. While it oscillates, see the beats.");
        page.heading("Beats");
        page.paragraph(beats("Beats disturb the output", result.alike()));
        page.paragraph(beats(
                "With a neighbour at " + Labels.significant(input.alternative(), 3)
                        + " times the frequency they disturb it",
                result.apart()));
        page.table(
                List.of(
                        "spacing, mm",
                        "coupling factor",
                        "locking range, ± Hz",
                        "beat depth",
                        "depth at other frequency",
                        "difference needed, kHz"),
                Set.of(0, 1, 2, 3, 4, 5),
                couplings(result));
        page.paragraph(
                "Beat depth: largest change of the demodulated amplitude, within the tolerances, at nominal frequencies; the thresholds"
                        + " tolerate " + share(result.beats().allowed())
                        + ". Difference needed: between the nominal frequencies, to keep the beat below that.");
        page.heading("Without a target");
        page.paragraph(
                result.latchedAtRest() > 0
                        ? "The neighbour without supply holds the output on up to "
                                + Labels.millimetres(result.latchedAtRest()) + " mm; its metal and core alone "
                                + (result.latched() > 0
                                        ? "up to " + Labels.millimetres(result.latched()) + " mm."
                                        : "never do.")
                        : "The neighbour never holds the output on by itself.");
        page.paragraph("Usual rule (common practice): " + rule(input) + ", here " + Labels.millimetres(result.usual())
                + " mm. " + comparison(result));
    }

    /** The spacing to keep, and what decides it. */
    static String answer(NeighbourResult result) {
        double shift = result.latchedAtRest();
        for (NeighbourResult.Series s : result.targets()) {
            if (s.tenth().place() == NeighbourResult.Place.ABOVE) {
                return "Not OK up to " + Labels.millimetres(s.tenth().spacing()) + " mm: the neighbour moves "
                        + s.target().id() + " by more than 10 %.";
            }
            if (s.tenth().place() != NeighbourResult.Place.NEVER) {
                shift = Math.max(shift, s.tenth().spacing());
            }
        }
        double beats = keep(result.alike());
        double apart = keep(result.apart());
        if (Double.isInfinite(beats)) {
            return "Not OK up to " + Labels.millimetres(result.alike().spacing())
                    + " mm: beats between the two oscillators disturb the output."
                    + (Double.isInfinite(apart)
                            ? ""
                            : " With a neighbour at another frequency " + Labels.millimetres(Math.max(shift, apart))
                                    + " mm would do.");
        }
        double all = Math.max(shift, beats);
        return "OK from " + Labels.millimetres(all) + " mm on: "
                + (beats >= shift
                        ? "nearer, beats disturb the output. The shift alone stays below 10 % from "
                                + Labels.millimetres(shift) + " mm."
                        : "nearer, the shift exceeds 10 %. Beats end at " + Labels.millimetres(beats) + " mm.")
                + (Math.max(shift, apart) < all
                        ? " With a neighbour at another frequency " + Labels.millimetres(Math.max(shift, apart))
                                + " mm would do."
                        : "");
    }

    /** Smallest spacing that keeps a limit, m; infinite when none examined does. */
    private static double keep(NeighbourResult.Limit limit) {
        return limit.place() == NeighbourResult.Place.ABOVE ? Double.POSITIVE_INFINITY : limit.spacing();
    }

    private static List<Page.Row> couplings(NeighbourResult result) {
        List<Page.Row> rows = new ArrayList<>();
        int n = result.spacing().length - 1;
        for (int k = 0; k <= ROWS; k++) {
            int i = n * k / ROWS;
            NeighbourResult.Coupling c = result.couplings().get(i);
            rows.add(Page.Row.of(
                    Labels.millimetres(result.spacing()[i]),
                    Labels.significant(c.factor(), 2),
                    Labels.significant(c.locking(), 2),
                    share(c.depth()),
                    share(c.depthApart()),
                    c.difference() > 0 ? Labels.fixed(c.difference() * Labels.KHZ, 1) : "0"));
        }
        return rows;
    }

    private static String beats(String start, NeighbourResult.Limit limit) {
        return start
                + switch (limit.place()) {
                    case WITHIN -> " nearer than " + Labels.uncertain(limit.spacing(), limit.error()) + " mm.";
                    case BELOW, NEVER -> " at no spacing examined.";
                    case ABOVE -> " at every spacing examined, up to " + Labels.millimetres(limit.spacing()) + " mm.";
                };
    }

    private static String rule(NeighbourInput input) {
        if (input.arrangement() == NeighbourInput.Arrangement.FACE_TO_FACE) {
            return "face to face at least six rated distances (3 to 10 are in use)";
        }
        return input.flush()
                ? "flush, side by side, at least two diameters between the axes"
                : "non-flush, side by side, at least three diameters between the axes (3 to 4 are in use)";
    }

    private static String comparison(NeighbourResult result) {
        double last = result.spacing()[result.spacing().length - 1];
        if (last < result.usual()) {
            return "That lies beyond the spacings examined.";
        }
        boolean beats = enough(result.alike(), result.usual());
        boolean shift = result.targets().stream().allMatch(s -> enough(s.tenth(), result.usual()));
        if (!shift) {
            return "That is not enough: the shift is still above 10 % there.";
        }
        return beats
                ? "That is enough: less than 10 % shift and no beats there."
                : "That keeps the shift below 10 %, but two switches whose frequencies happen to meet may still beat there.";
    }

    private static boolean enough(NeighbourResult.Limit limit, double spacing) {
        return limit.place() == NeighbourResult.Place.BELOW
                || limit.place() == NeighbourResult.Place.NEVER
                || limit.place() == NeighbourResult.Place.WITHIN && limit.spacing() <= spacing;
    }

    private static String limit(NeighbourResult.Limit limit) {
        return switch (limit.place()) {
            case WITHIN -> Labels.uncertain(limit.spacing(), limit.error());
            case BELOW -> "everywhere";
            case ABOVE -> "nowhere";
            case NEVER -> "-";
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
