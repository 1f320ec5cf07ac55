package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.page.Page;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The answer of a study of mounts: verdicts, what happens without a target, what targets do, and the trade's rules beside it. */
public final class MountPage {

    private static final double TENTH = 1e-4;

    private MountPage() {}

    static void write(MountResult result, Page page) {
        without(result, page);
        with(result, page);
        assured(result, page);
        for (MountCase c : result.cases()) {
            if (!c.mount().isEmpty()) {
                page.heading(c.mount().id() + ": " + c.mount().name());
                page.paragraph(MountWords.sentence(c));
                single(c, result.rules(), page);
            }
        }
        page.heading("What the numbers mean");
        page.paragraph(MountWords.RESERVE);
        page.paragraph(MountWords.LIMITS);
        if (result.cases().stream().anyMatch(c -> !c.proposals().isEmpty())) {
            page.paragraph(MountWords.PROPOSALS);
        }
        TrialPlan.of(
                        result.cases().stream(),
                        result.cases().get(0).targets().get(0).distance())
                .ifPresent(p -> TrialWords.write(result.model(), p, page));
        page.caution(MountWords.DRAWINGS);
    }

    /** What is said of one mount below its verdict. */
    public static void single(MountCase c, List<UsualRule> rules, Page page) {
        List<String> items = new ArrayList<>();
        c.proposals().forEach(p -> items.add(MountWords.proposal(p)));
        items.addAll(MountWords.notes(c));
        rules.stream().filter(r -> r.mount().equals(c.mount().id())).forEach(r -> items.add(MountWords.rule(r)));
        page.items(items);
        if (!c.effects().isEmpty()) {
            page.table(
                    List.of("dimension", "value, mm", "on distance per +0.1 mm, mm"),
                    Set.of(1, 2),
                    c.effects().stream()
                            .map(e -> Page.Row.of(
                                    e.label(), Labels.millimetres(e.value()), MountWords.change(e.slope() * TENTH)))
                            .toList());
        }
    }

    private static void without(MountResult result, Page page) {
        page.heading("Without a target");
        page.table(
                List.of("mount", "verdict", "reserve used", "at worst", "damping", "V", "output"),
                Set.of(2, 3, 4, 5),
                result.cases().stream()
                        .map(c -> new Page.Row(
                                List.of(
                                        c.mount().id(),
                                        c.mount().isEmpty()
                                                ? ""
                                                : c.judgement().grade().label(),
                                        MountWords.percent(c.reserve().used()),
                                        MountWords.percent(c.worst().used()),
                                        MountWords.percent(c.reserve().total()),
                                        Labels.fixed(c.undamped().amplitude(), 2),
                                        c.verdict().label()),
                                c.judgement().grade() == Grade.NOT_OK))
                        .toList());
    }

    private static void assured(MountResult result, Page page) {
        List<Page.Row> rows = new ArrayList<>();
        for (MountCase c : result.cases()) {
            for (MountTarget t : c.targets()) {
                t.assurance().ifPresent(a -> {
                    List<String> cells =
                            new ArrayList<>(List.of(c.mount().id(), t.target().id()));
                    cells.addAll(AssuranceText.cells(a));
                    rows.add(new Page.Row(cells, !a.anywhereOn() || Double.isInfinite(a.assuredOff())));
                });
            }
        }
        if (!rows.isEmpty()) {
            page.heading("All units");
            page.table(
                    List.of("mount", "target", "on up to, mm", "off beyond", "work up to", "with reserve"),
                    Set.of(2, 3, 4, 5),
                    rows);
            page.paragraph(MountWords.ASSURED);
        }
    }

    private static void with(MountResult result, Page page) {
        page.heading("Targets");
        List<Page.Row> rows = new ArrayList<>();
        for (MountCase c : result.cases()) {
            for (MountTarget t : c.targets()) {
                SwitchDistance d = t.distance();
                boolean switches = d.outcome() == SwitchDistance.Outcome.SWITCHES;
                rows.add(new Page.Row(
                        List.of(
                                c.mount().id(),
                                t.target().id(),
                                Labels.uncertainCell(d.on(), d.onError()),
                                Labels.uncertainCell(d.off(), d.offError()),
                                Double.isFinite(t.shift()) ? MountWords.signed(t.shift()) : "-",
                                switches ? t.within() ? "" : "over 10 %" : Terms.of(d.outcome())),
                        !t.within() && !c.mount().isEmpty()));
            }
        }
        page.table(List.of("mount", "target", "on, mm", "off, mm", "shift of sr", ""), Set.of(2, 3, 4), rows);
    }
}
