package eddyreach.report.words;

import static eddyreach.report.words.Labels.length;

import eddyreach.engine.assure.Change;

/** The words of advice. */
public final class AdviceText {

    public static final String NONE_NEEDED = "No change needed: detected almost as reliably as the standard target.";

    public static final String NONE_HELPS =
            "None of the usual changes helps: not a steel flag, another size or thickness, nor the other shipped switches.";

    public static final String ALL_METALS_ALIKE =
            "Not computed here: a switch that responds alike to all metals (correction factor near 1 for all) works on another"
                    + " principle and would detect this metal almost as far away as steel.";

    private AdviceText() {}

    /** What to do. */
    public static String of(Change c) {
        return switch (c.kind()) {
            case ON_AXIS -> "move its axis onto that of the switch";
            case CLOSED_RING -> "bridge its slit with metal";
            case STEEL_FLAG -> "a steel flag of the same outline (" + c.name() + ", " + length(c.value()) + ")";
            case SAME_PART_OF_STEEL -> "the same part made of " + c.name();
            case STANDARD_SIZE -> "the size of the standard target, " + length(c.value()) + " square";
            case THINNER -> "thinner " + c.name() + ", about " + length(c.value()) + ", close to the best thickness";
            case THICKER -> "thicker " + c.name() + ", about " + length(c.value()) + ", close to the best thickness";
            case LARGER_TARGET -> Labels.significant(c.value(), 2) + " times as wide";
            case LARGER_SWITCH -> "the next larger switch, " + c.name() + " (sn " + length(c.value()) + ")";
            case NON_FLUSH_SWITCH ->
                "the non-flush switch of this size, " + c.name() + " (sn " + length(c.value()) + ")";
        };
    }
}
