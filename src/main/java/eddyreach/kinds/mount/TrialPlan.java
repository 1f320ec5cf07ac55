package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How to try a mount with shims and a plastic dummy before metal is cut, from the computed numbers. */
final class TrialPlan {

    /** A shim that is at hand, m. */
    private static final double SHIM = 0.5e-3;

    /** Deviation at which the estimate has not held, in s_r: the tolerance of single pieces and that of a mount. */
    private static final double DOUBT = 0.1;

    private TrialPlan() {}

    /**
     * The steps; none without a wall.
     *
     * @param free where the first target switches in free air
     */
    static List<String> of(SwitchModel model, MountCase c, SwitchDistance free) {
        if (c.mount().wall().isEmpty()) {
            return List.of();
        }
        Mount.Wall w = c.mount().wall().get();
        MountTarget t = c.targets().get(0);
        boolean switches = t.distance().outcome() == SwitchDistance.Outcome.SWITCHES;
        List<String> steps = new ArrayList<>();
        steps.add("Hold the switch in plastic, no metal within " + Labels.length(3 * model.faceDiameter())
                + ", and bring " + t.target().label() + " nearer: on is computed at "
                + Labels.uncertain(free.on(), free.onError())
                + " mm, single pieces differ by 10 %. Note what yours does.");
        steps.add("Make a dummy of the wall from plastic with a bore of "
                + Labels.length(Math.max(w.bore(), model.bodyDiameter()), 4)
                + "; plastic has no effect, the distances must stay as they were.");
        steps.add("Add the metal loose: plates of " + w.material().name() + " with "
                + openings(w)
                + (c.mount().edged() ? " and the edge " + Labels.length(w.edge(), 4) + " beside the axis" : "") + ", "
                + Labels.length(w.thickness())
                + " high together, set on shims so that the face is "
                + position(c.mount()) + ".");
        steps.add("Take the target away. "
                + switch (c.verdict()) {
                    case RELEASED ->
                        "The output must release; "
                                + MountText.percent(c.reserve().used())
                                + " of the reserve is computed to be used, up to "
                                + MountText.percent(c.worst().used()) + " over temperature and trim.";
                    case HOLDS -> "The output is computed to stay on once it was on: do not cut this one.";
                    case LATCHED -> "The output is computed to be on without any target: do not cut this one.";
                });
        if (switches) {
            steps.add("Bring the target nearer again: on is computed at "
                    + Labels.uncertain(t.distance().on(), t.distance().onError()) + " mm, "
                    + MountText.signed(t.shift()) + " of sr against free air. If yours moves by more than "
                    + Labels.fixed(100 * DOUBT, 0)
                    + " % of sr differently, material or dimensions are not what was computed: do not cut.");
        }
        shims(c).ifPresent(steps::add);
        steps.add(
                "Repeat warm and cold, with several switches and at both ends of the supply, before the series is cut.");
        return steps;
    }

    private static String openings(Mount.Wall w) {
        if (w.openings().isEmpty()) {
            return "the bare bore";
        }
        Mount.Opening first = w.openings().get(0);
        String deep = Labels.length(w.openings().get(w.openings().size() - 1).to());
        return first.conical()
                ? "a cone from " + Labels.length(first.front()) + ", " + deep + " deep"
                : "an opening of " + Labels.length(first.front()) + ", " + deep + " deep";
    }

    private static String position(Mount m) {
        return m.surface() == 0
                ? "level with the surface"
                : Labels.length(Math.abs(m.surface())) + (m.surface() > 0 ? " below" : " above") + " the surface";
    }

    /** What one shim more does, by the dimension along the axis that matters most. */
    private static Optional<String> shims(MountCase c) {
        return c.effects().stream()
                .filter(e -> e.dimension().equals("sunk by")
                        || e.dimension().equals("proud by")
                        || e.dimension().endsWith("depth"))
                .max((a, b) -> Double.compare(Math.abs(a.slope()), Math.abs(b.slope())))
                .map(e -> "Change \"" + e.dimension() + "\" by one shim of " + Labels.length(SHIM)
                        + ": on is computed to move by " + text(e.slope() * SHIM)
                        + " mm per shim. Leave at least two shims to where it no longer releases.");
    }

    static String text(double metres) {
        double mm = metres * Labels.MM;
        if (Math.abs(mm) < 5e-4) {
            return "0";
        }
        return (mm > 0 ? "+" : "") + Labels.fixed(mm, Math.abs(mm) < 0.1 ? 3 : 2);
    }

    /** The effect of a dimension per tenth of a millimetre. */
    static String perTenth(DimensionEffect e) {
        return e.dimension() + " " + text(e.slope() * 1e-4) + " mm";
    }
}
