package eddyreach.kinds.mount;

import eddyreach.report.page.JsonNode;
import eddyreach.report.words.Labels;
import java.util.OptionalDouble;

/** Nearest safe dimensions in words. */
public final class SafeDimensionText {

    public static final String DEFINITION =
            "Safe means here: released without a target, at most 50 % of the reserve used (70 % in the worst corner"
                    + " of temperature and trim), and the switch-on distance within 10 % of sr of that in free air; these limits are common practice. Dimensions are rounded to 0.5 mm"
                    + " towards the safe side and computed again at the finer resolution.";

    private SafeDimensionText() {}

    public static String of(SafeDimension p) {
        boolean wider = p.kind() == SafeDimension.Kind.DIAMETER;
        String given =
                wider ? "a depth of " + Labels.length(p.depth(), 4) : "a diameter of " + Labels.length(p.diameter(), 4);
        String what = wider ? "smallest diameter" : p.sinks() ? "largest depth it may be sunk by" : "smallest depth";
        if (p.found().isEmpty()) {
            return "For " + given + " no "
                    + (wider ? "diameter" : "depth") + " "
                    + (p.sinks() && !wider ? "down" : "up") + " to " + Labels.length(p.limit(), 4) + " is safe.";
        }
        SafeDimension.Found f = p.found().get();
        return "Nearest safe for " + given + ": " + what + " "
                + (f.value() == 0 ? "0 mm (level)" : Labels.length(f.value(), 4)) + "; then "
                + MountText.percent(f.used()) + " of the reserve is used, "
                + MountText.percent(f.worst()) + " at worst, on at "
                + Labels.uncertain(f.on(), f.onError()) + " mm, " + MountText.signed(f.shift()) + " of sr"
                + direct(f.direct())
                + ".";
    }

    private static String direct(OptionalDouble deviation) {
        return deviation.isPresent()
                ? "; everything in one field problem differs by " + Labels.significant(100 * deviation.getAsDouble(), 2)
                        + " % of |dZ|"
                : "";
    }

    static JsonNode json(SafeDimension p) {
        JsonNode node = new JsonNode()
                .with("varied", p.kind() == SafeDimension.Kind.DIAMETER ? "diameter" : "depth")
                .with("given_diameter_m", p.diameter())
                .with("given_depth_m", p.depth())
                .with("searched_to_m", p.limit());
        p.found()
                .ifPresent(f -> node.with("safe_m", f.value())
                        .with("reserve_used", f.used())
                        .with("reserve_used_at_worst", f.worst())
                        .with("on_m", f.on())
                        .with("on_error_m", f.onError())
                        .with("shift_of_effective_distance", f.shift())
                        .with("deviation_of_direct_solve", f.direct().orElse(Double.NaN)));
        return node;
    }
}
