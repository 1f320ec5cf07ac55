package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** How to try a mount before it is cut, step by step. */
public final class TrialWords {

    private TrialWords() {}

    /** Writes the plan. */
    public static void write(SwitchModel model, TrialPlan plan, Page page) {
        MountCase c = plan.mount();
        page.heading(
                "Try it before cutting: " + c.mount().id() + ", " + c.mount().name());
        if (c.judgement().grade() == Grade.NOT_OK) {
            page.paragraph(
                    "As drawn this mount is not OK: do not cut it. The trial shows what your switch makes of it, and with other"
                            + " shims where it becomes OK.");
        }
        List<String> steps = steps(model, plan);
        for (int i = 0; i < steps.size(); i++) {
            page.paragraph((i + 1) + ". " + steps.get(i));
        }
        if (!plan.others().isEmpty()) {
            page.paragraph("Try the others in the same way; expect:");
            page.table(
                    List.of("mount", "reserve used at worst", "on, mm"),
                    Set.of(1, 2),
                    plan.others().stream()
                            .map(o -> Page.Row.of(
                                    o.mount().id(),
                                    MountWords.percent(o.worst().used()),
                                    Labels.uncertainCell(
                                            o.targets().get(0).distance().on(),
                                            o.targets().get(0).distance().onError())))
                            .toList());
        }
    }

    private static List<String> steps(SwitchModel model, TrialPlan plan) {
        MountCase c = plan.mount();
        Mount.Wall w = c.mount().wall().orElseThrow();
        MountTarget t = c.targets().get(0);
        List<String> steps = new ArrayList<>();
        boolean detected = plan.free().outcome() == SwitchDistance.Outcome.SWITCHES;
        steps.add("Hold the switch in plastic with no metal within " + Labels.length(3 * model.faceDiameter()) + ". "
                + (detected
                        ? "Move the target (" + t.target().label() + ") towards it: on is computed at "
                                + Labels.uncertain(plan.free().on(), plan.free().onError())
                                + " mm; single switches differ by 10 %. Note where yours switches."
                        : "Check that it is off without a target."));
        steps.add("Make a plastic dummy of the wall with a hole of " + Labels.length(w.bore(), 4)
                + ". Plastic has no effect: the distance must stay the same.");
        steps.add("Add the metal: loose plates of " + w.material().name() + ", " + Labels.length(w.thickness())
                + " thick in all, with " + openings(w)
                + (c.mount().edged() ? " and the edge " + Labels.length(w.edge(), 4) + " from the axis" : "")
                + ". Set the face " + position(c.mount()) + " with shims.");
        steps.add("Remove the target. The output must release: computed, "
                + MountWords.percent(c.reserve().used()) + " of the reserve is used, up to "
                + MountWords.percent(c.worst().used()) + " over temperature and trim.");
        if (t.distance().outcome() == SwitchDistance.Outcome.SWITCHES && Double.isFinite(t.shift())) {
            steps.add("Move the target towards it again: on is computed at "
                    + Labels.uncertain(t.distance().on(), t.distance().onError()) + " mm, "
                    + MountWords.signed(t.shift()) + " of sr from free air. If your shift differs by more than "
                    + Labels.fixed(100 * TrialPlan.DOUBT, 0)
                    + " % of sr, the material or a dimension is not what was computed: do not cut.");
        }
        plan.shim()
                .ifPresent(e -> steps.add("Change \"" + e.label() + "\" by one shim of " + Labels.length(TrialPlan.SHIM)
                        + ": on should move by " + MountWords.change(e.slope() * TrialPlan.SHIM)
                        + " mm per shim. Stay at least two shims away from where it no longer releases."));
        steps.add(
                "Repeat hot and cold, with several switches, at both ends of the supply range. Only then cut the series.");
        return steps;
    }

    private static String openings(Mount.Wall w) {
        if (w.openings().isEmpty()) {
            return "only the hole";
        }
        Mount.Opening first = w.openings().get(0);
        String deep = Labels.length(w.openings().get(w.openings().size() - 1).to());
        return first.conical()
                ? "a countersink from " + Labels.length(first.front()) + ", " + deep + " deep"
                : "an opening of " + Labels.length(first.front()) + ", " + deep + " deep";
    }

    private static String position(Mount m) {
        return m.surface() == 0
                ? "level with the surface"
                : Labels.length(Math.abs(m.surface())) + (m.surface() > 0 ? " below" : " above") + " the surface";
    }
}
