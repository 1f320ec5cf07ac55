package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import java.util.List;
import java.util.stream.Collectors;

/** The answer of a study of mounts: what happens without a target, what targets do, and the trade's rules beside it. */
public final class MountText {

    private static final int[] WITHOUT = {-18, 6, 7, 12, 8, -24};
    private static final int[] WITH = {-18, -14, 12, 12, 7, -10};

    private static final String DEFINITION =
            "Reserve used: what the mount adds to the loss in free air, in percent of what it takes to switch the output on. 0 % is free"
                    + " air, 100 % is on without a target; a careful limit is 50 to 70 % (common practice). Worst: over -25, 23 and 70 C and"
                    + " a trim to 0.9 and 1.1 sn, for a switch whose electronics makes up for its own drift in free air.";

    public static final String GUARD =
            "A proximity switch of this kind is no guard: it must not be what protects people. Safety functions"
                    + " need devices, standards and people made for them (ISO 13849-1, IEC 62061, ISO 14119), explosive atmospheres those"
                    + " of IEC 60079. Drawings are explorations, not for manufacture; try the mount before cutting the series.";

    private MountText() {}

    static void write(MountResult result, TextPage page) {
        without(result, page);
        with(result, page);
        for (MountCase c : result.cases()) {
            if (!c.mount().isEmpty()) {
                page.paragraph(c.mount().id() + ", " + c.mount().name() + ": " + sentence(c));
                c.proposals().forEach(p -> page.paragraph(SafeDimensionText.of(p)));
                if (!c.effects().isEmpty()) {
                    page.paragraph("0.1 mm more moves on by: "
                            + c.effects().stream().map(TrialPlan::perTenth).collect(Collectors.joining(", ")) + ".");
                }
                result.rules().stream()
                        .filter(r -> r.mount().equals(c.mount().id()))
                        .forEach(r -> page.paragraph("Usual rule (common practice): " + text(r)));
            }
        }
        page.gap();
        page.paragraph(DEFINITION);
        if (result.cases().stream().anyMatch(c -> !c.proposals().isEmpty())) {
            page.paragraph(SafeDimensionText.DEFINITION);
        }
        result.cases().stream()
                .filter(c -> c.mount().wall().isPresent())
                .max((a, b) -> Boolean.compare(a.safe(), b.safe()))
                .ifPresent(c -> plan(
                        result.model(),
                        c,
                        result.cases().get(0).targets().get(0).distance(),
                        page));
        page.gap();
        page.paragraph(GUARD);
    }

    /** How to try a mount before it is cut. */
    public static void plan(SwitchModel model, MountCase c, SwitchDistance free, TextPage page) {
        List<String> steps = TrialPlan.of(model, c, free);
        page.gap();
        page.heading(
                "Try it before cutting: " + c.mount().id() + ", " + c.mount().name());
        for (int i = 0; i < steps.size(); i++) {
            page.paragraph((i + 1) + ". " + steps.get(i));
        }
    }

    public static String text(UsualRule r) {
        return r.rule() + ": " + r.comparison() + ".";
    }

    private static void without(MountResult result, TextPage page) {
        page.line(page.mark(
                TextPage.row(WITHOUT, "without target", "V", "damping", "reserve used", "worst", "output"),
                TextPage.BOLD));
        for (MountCase c : result.cases()) {
            boolean released = c.verdict() == MountCase.Verdict.RELEASED;
            List<String> name = TextPage.wrap(c.mount().id(), -WITHOUT[0]);
            String verdict = c.verdict().label().replace("latched: ", "");
            String line = TextPage.row(
                    WITHOUT,
                    name.get(0),
                    Labels.fixed(c.undamped().amplitude(), 2),
                    percent(c.reserve().total()),
                    percent(c.reserve().used()),
                    percent(c.worst().used()),
                    verdict);
            int start = line.length() - verdict.length();
            page.line(line.substring(0, start) + page.mark(verdict, released ? "" : TextPage.RED));
            name.stream().skip(1).forEach(page::line);
        }
        page.gap();
    }

    private static void with(MountResult result, TextPage page) {
        page.line(
                page.mark(TextPage.row(WITH, "mount", "target", "on, mm", "off, mm", "shift", "of sr"), TextPage.BOLD));
        for (MountCase c : result.cases()) {
            for (MountTarget t : c.targets()) {
                SwitchDistance d = t.distance();
                String verdict = d.outcome() != SwitchDistance.Outcome.SWITCHES
                        ? d.outcome().label()
                        : c.mount().isEmpty() ? "" : t.within() ? "within 10 %" : "over 10 %";
                List<String> name = TextPage.wrap(c.mount().id(), -WITH[0]);
                List<String> target = TextPage.wrap(t.target().id(), -WITH[1]);
                String line = TextPage.row(
                        WITH,
                        name.get(0),
                        target.get(0),
                        Labels.uncertain(d.on(), d.onError()),
                        Labels.uncertain(d.off(), d.offError()),
                        Double.isFinite(t.shift()) ? signed(t.shift()) : "-",
                        verdict);
                page.line(line.stripTrailing());
                for (int i = 1; i < Math.max(name.size(), target.size()); i++) {
                    String left = i < name.size() ? name.get(i) : "";
                    page.line(TextPage.row(WITH, left, i < target.size() ? target.get(i) : "")
                            .stripTrailing());
                }
            }
        }
        page.gap();
    }

    /** What the numbers mean, in the trade's words. */
    public static String sentence(MountCase c) {
        StringBuilder s = new StringBuilder();
        s.append(
                switch (c.verdict()) {
                    case RELEASED -> "released without a target";
                    case HOLDS -> "latched: once on, the output stays on without a target";
                    case LATCHED -> "latched: on without any target";
                });
        MountCase.Corner worst = c.worst();
        if (c.verdict() == MountCase.Verdict.RELEASED) {
            s.append("; worst at ")
                    .append(Labels.significant(worst.celsius(), 3))
                    .append(" C, trimmed to ")
                    .append(Labels.significant(worst.trim(), 3))
                    .append(" sn, with ")
                    .append(percent(worst.used()))
                    .append(" of the reserve used, ")
                    .append(
                            !c.alwaysReleases()
                                    ? "where it does not release any more"
                                    : worst.used() <= MountCase.CAREFUL
                                            ? "within the careful limit"
                                            : worst.used() <= MountCase.LIMIT
                                                    ? "at the careful limit of 50 to 70 %"
                                                    : "over the careful limit of 50 to 70 %");
            bare(c, s);
        }
        for (MountTarget t : c.targets()) {
            if (t.distance().outcome() == SwitchDistance.Outcome.SWITCHES && Double.isFinite(t.shift())) {
                s.append("; ")
                        .append(t.target().id())
                        .append(" moved by ")
                        .append(signed(t.shift()))
                        .append(" of sr, differential travel ")
                        .append(Labels.millimetres(t.travel()))
                        .append(" mm");
            }
            if (t.floor() > 0) {
                double wide = 2 * Mount.halfWidth(t.target());
                double free = c.mount().clearance(0, t.floor());
                s.append("; ")
                        .append(t.target().id())
                        .append(Double.isFinite(wide) ? ", " + Labels.length(wide) + " across," : "")
                        .append(" is stopped by the mount at ")
                        .append(Labels.millimetres(t.floor()))
                        .append(" mm")
                        .append(
                                free > 0 && Double.isFinite(free)
                                        ? ", below which it leaves " + Labels.length(free)
                                        : "")
                        .append(t.keptAway() ? ", too far away to be seen" : "");
            }
        }
        edge(c, s);
        return s.append(conical(c.mount())).append('.').toString();
    }

    /** A wall with a straight edge: what the bounds are. */
    private static void edge(MountCase c, StringBuilder s) {
        if (!c.mount().edged()) {
            return;
        }
        s.append("; the straight edge ")
                .append(Labels.length(c.mount().wall().orElseThrow().edge(), 4))
                .append(
                        " from the axis is the middle between a wall without it and one that ends all round there: reserve used ")
                .append(percent(c.reserve().used() - c.reserve().spread()))
                .append(" to ")
                .append(percent(c.reserve().used() + c.reserve().spread()));
        for (MountTarget t : c.targets()) {
            if (Double.isFinite(t.shift())) {
                s.append(", ")
                        .append(t.target().id())
                        .append(" moved by ")
                        .append(signed(t.shift() - t.spread()))
                        .append(" to ")
                        .append(signed(t.shift() + t.spread()));
            }
        }
        s.append("; verdicts take the worse of the two");
    }

    private static void bare(MountCase c, StringBuilder s) {
        boolean bare = c.corners().stream().allMatch(k -> k.bareVerdict() == MountCase.Verdict.RELEASED);
        if (!bare && c.alwaysReleases()) {
            s.append("; without that compensation it would not release everywhere");
        }
    }

    private static String conical(Mount mount) {
        boolean cone = mount.wall().stream().flatMap(w -> w.openings().stream()).anyMatch(Mount.Opening::conical);
        return cone ? "; the countersink is computed in steps, whose number grows until the error bar fits" : "";
    }

    static String percent(double share) {
        double p = 100 * share;
        return (Math.abs(p) < 1000 ? Labels.fixed(p, Math.abs(p) < 10 ? 1 : 0) : Labels.significant(p, 2)) + " %";
    }

    static String signed(double share) {
        return (share > 0 ? "+" : "") + Labels.fixed(100 * share, 1) + " %";
    }
}
