package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Mount;
import eddyreach.report.words.AssuranceText;
import eddyreach.report.words.Labels;
import eddyreach.units.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of mounts: verdicts, what to change, the trade's rules. */
public final class MountWords {

    /** What the numbers mean. */
    public static final String RESERVE =
            "Reserve used: what the mount adds to the loss in free air, as a share of what switches the output on. 0 % is free air; at 100 %"
                    + " the output is on without a target. Worst: the largest share over -25, 23 and 70 °C and a trim to 0.9 and 1.1 sn, for a"
                    + " switch whose electronics compensates its own drift in free air. Damping: all the loss without a target, as a share of"
                    + " what switches the output on. V: the oscillator's amplitude.";

    public static final String LIMITS =
            "Not OK: it does not release, or uses more than 50 % of the reserve at 23 °C or 70 % at worst, or moves the switch-on distance by"
                    + " more than 10 % of sr. With care: more than 50 % at worst. These limits are common practice.";

    public static final String ASSURED =
            "The worst combination of all tolerances, recomputed: switch, temperature and supply, the materials of target and mount, and the"
                    + " numerical error. Thresholds are those set in free air. The dimensions of the mount are as stated.";

    public static final String PROPOSALS =
            "Proposed dimensions are rounded to 0.5 mm towards the safe side and computed again at the finer resolution, over temperature and"
                    + " trim. No hole is made smaller than the clearance hole of the body.";

    public static final String DRAWINGS =
            "Drawings are explorations, not for manufacture. Try the mount before you cut the series.";

    private MountWords() {}

    /** Verdict, number and what to change, in one sentence. */
    public static String sentence(MountCase c) {
        return sentence(c, "");
    }

    /** The same with a place after the verdict, such as " in mild steel". */
    public static String sentence(MountCase c, String place) {
        Judgement j = c.judgement();
        String numbers = j.findings().isEmpty()
                ? reserve(c) + on(c)
                : j.findings().stream()
                        .filter(f -> f.grade() == j.grade())
                        .map(f -> finding(c, f))
                        .collect(Collectors.joining("; "));
        String verdict = j.grade().label();
        String change = j.grade() == Grade.NOT_OK ? change(c) : "";
        return Texts.capitalised(verdict) + place + ": " + numbers + change + ".";
    }

    private static String reserve(MountCase c) {
        return "uses " + share(c) + " at worst";
    }

    /** A good conductor may lower the loss instead. */
    private static String share(MountCase c) {
        double used = c.worst().used();
        return (used < 0 ? "none" : percent(used)) + " of the reserve";
    }

    private static String on(MountCase c) {
        return c.targets().stream()
                .findFirst()
                .filter(t -> t.distance().outcome() == SwitchDistance.Outcome.SWITCHES)
                .map(t -> "; " + t.target().id() + " on at "
                        + Labels.uncertain(t.distance().on(), t.distance().onError()) + " mm ("
                        + signed(t.shift()) + " of sr)"
                        + t.assurance()
                                .map(a -> "; " + AssuranceText.onWords(a))
                                .orElse(""))
                .orElse("");
    }

    private static String finding(MountCase c, Judgement.Finding f) {
        return switch (f.cause()) {
            case LATCHED -> "the output is on without a target";
            case HOLDS -> "once on, the output stays on without a target";
            case HOLDS_IN_A_CORNER ->
                "the output does not release " + corner(c.worst()) + ": " + percent(f.value())
                        + " of the reserve is used";
            case RESERVE_AT_WORST -> "uses " + percent(f.value()) + " of the reserve " + corner(c.worst());
            case RESERVE -> "uses " + percent(f.value()) + " of the reserve at 23 °C";
            case SHIFT -> "moves " + f.target() + " by " + signed(f.value()) + " of sr";
            case STOPPED -> f.target() + " is stopped by the mount before it is detected";
            case LOST -> f.target() + " is not detected";
            case NOT_RELEASED -> "the output does not release when " + f.target() + " goes away";
            case NEVER_DETECTED -> f.target() + " is not detected, in free air either";
        };
    }

    private static String corner(MountCase.Corner k) {
        return "at " + Labels.significant(k.celsius(), 3) + " °C, trimmed to " + Labels.significant(k.trim(), 3)
                + " sn";
    }

    /** What would do instead; begins with a semicolon unless empty. */
    private static String change(MountCase c) {
        List<String> ways = c.proposals().stream()
                .flatMap(p -> p.found().map(f -> way(p, f)).stream())
                .toList();
        if (!ways.isEmpty()) {
            return "; " + String.join(", or ", ways) + " would do";
        }
        Optional<Mount.Cover> metal = c.mount().cover().filter(m -> m.material().hasEffect());
        if (metal.isPresent()) {
            return "; make the cover of plastic";
        }
        return c.mount().background().isPresent() ? "; move the background away" : "";
    }

    private static String way(SafeDimension p, SafeDimension.Found f) {
        String value = f.value() == 0 ? "level with the surface" : Labels.length(f.value(), 4);
        if (p.kind() == SafeDimension.Kind.DIAMETER) {
            return "an opening at least " + value + " wide and " + Labels.length(p.depth(), 4) + " deep";
        }
        if (p.sinks()) {
            return f.value() == 0 ? value : "at most " + value + " deep";
        }
        return "a recess " + Labels.length(p.diameter(), 4) + " wide and at least " + value + " deep";
    }

    /** The study in one sentence. */
    static String answer(List<MountCase> cases) {
        List<MountCase> mounts =
                cases.stream().filter(c -> !c.mount().isEmpty()).toList();
        if (mounts.size() == 1) {
            return sentence(mounts.get(0));
        }
        List<String> parts = new ArrayList<>();
        for (Grade g : List.of(Grade.NOT_OK, Grade.CARE, Grade.OK)) {
            String names = mounts.stream()
                    .filter(c -> c.judgement().grade() == g)
                    .map(c -> c.mount().id() + " (" + briefly(c) + ")")
                    .collect(Collectors.joining(", "));
            if (!names.isEmpty()) {
                parts.add(Texts.capitalised(g.label()) + ": " + names + ".");
            }
        }
        return String.join(" ", parts);
    }

    private static String briefly(MountCase c) {
        return c.judgement().findings().stream()
                .findFirst()
                .map(f -> finding(c, f) + (f.grade() == Grade.NOT_OK ? change(c) : ""))
                .orElseGet(() -> share(c) + " at worst");
    }

    /** A safe dimension and what it gives. */
    public static String proposal(SafeDimension p) {
        boolean wider = p.kind() == SafeDimension.Kind.DIAMETER;
        String given = wider ? Labels.length(p.depth(), 4) + " deep" : Labels.length(p.diameter(), 4) + " wide";
        if (p.found().isEmpty()) {
            return "At " + given + " no " + (wider ? "diameter" : "depth") + " " + (p.sinks() && !wider ? "down" : "up")
                    + " to " + Labels.length(p.limit(), 4) + " is OK.";
        }
        SafeDimension.Found f = p.found().get();
        String what = wider ? "smallest diameter" : p.sinks() ? "largest depth" : "smallest depth";
        return "At " + given + ": " + what + " " + (f.value() == 0 ? "0 mm (level)" : Labels.length(f.value(), 4))
                + ". That uses " + percent(f.used()) + " of the reserve, " + percent(f.worst()) + " at worst; on at "
                + Labels.uncertain(f.on(), f.onError()) + " mm, " + signed(f.shift()) + " of sr."
                + (f.direct().isPresent()
                        ? " Solved as one field problem, the impedance change differs by "
                                + Labels.significant(100 * f.direct().getAsDouble(), 2) + " %."
                        : "");
    }

    /** A rule, and how the verdict comments it. */
    public static String rule(UsualRule r) {
        return "Usual rule (common practice): " + text(r) + " " + comment(r);
    }

    /** A rule with its numbers for the switch. */
    static String text(UsualRule r) {
        String width = Labels.length(r.width(), 4);
        String length = Labels.length(r.length(), 4);
        return switch (r.kind()) {
            case FLUSH_LEVEL ->
                "a flush switch sits level with the metal or proud of it; sunk, it needs an opening at least " + width
                        + " wide (two diameters).";
            case CLEAR_AROUND ->
                "no metal within a diameter of " + width
                        + " (three diameters) around a non-flush switch, from the face to " + length
                        + " behind it (two rated distances).";
            case CLEAR_IN_FRONT -> "no other metal within " + length + " in front of the face (three rated distances).";
        };
    }

    static String comment(UsualRule r) {
        return switch (r.grade()) {
            case OK -> r.kept() ? "Kept." : "Not kept, but here the mount is OK: the rule is stricter than needed.";
            case CARE -> r.kept() ? "Kept; care is needed all the same." : "Not kept, hence the care that is needed.";
            case NOT_OK -> r.kept() ? "Kept, but that is not enough here." : "Not kept, and it matters here.";
        };
    }

    /** What else there is to know of a mount, a sentence each. */
    static List<String> notes(MountCase c) {
        List<String> notes = new ArrayList<>();
        boolean bare = c.corners().stream().allMatch(k -> k.bareVerdict() == MountCase.Verdict.RELEASED);
        if (!bare && c.alwaysReleases()) {
            notes.add(
                    "Without compensation of the switch's own drift the output would not release at every temperature.");
        }
        for (MountTarget t : c.targets()) {
            if (t.floor() > 0) {
                double wide = 2 * Mount.halfWidth(t.target());
                double free = c.mount().clearance(0, t.floor());
                notes.add("The mount stops " + t.target().id()
                        + (Double.isFinite(wide) ? " (" + Labels.length(wide) + " across)" : "") + " at "
                        + Labels.millimetres(t.floor()) + " mm"
                        + (free > 0 && Double.isFinite(free)
                                ? ": nearer than that only " + Labels.length(free) + " is free."
                                : "."));
            }
        }
        for (MountTarget t : c.targets()) {
            t.assurance()
                    .ifPresent(a -> notes.add(t.target().id() + ": " + AssuranceText.onWords(a) + "; "
                            + AssuranceText.offWords(a) + ". What moves it most: " + AssuranceText.most(a) + "."));
        }
        edge(c).ifPresent(notes::add);
        return notes;
    }

    /** A wall with a straight edge: what the bounds are. */
    private static Optional<String> edge(MountCase c) {
        if (!c.mount().edged()) {
            return Optional.empty();
        }
        String shifts = c.targets().stream()
                .filter(t -> Double.isFinite(t.shift()))
                .map(t -> ", the shift of " + t.target().id() + " " + signed(t.shift() - t.spread()) + " to "
                        + signed(t.shift() + t.spread()))
                .collect(Collectors.joining());
        return Optional.of("The straight edge "
                + Labels.length(c.mount().wall().orElseThrow().edge(), 4)
                + " from the axis is estimated as the middle between a wall without it and one that ends all round there:"
                + " the reserve used is "
                + percent(c.reserve().used() - c.reserve().spread()) + " to "
                + percent(c.reserve().used() + c.reserve().spread()) + shifts + ". The verdict takes the worse end.");
    }

    public static String percent(double share) {
        double p = 100 * share;
        return (Math.abs(p) < 1000 ? Labels.fixed(p, Math.abs(p) < 10 ? 1 : 0) : Labels.significant(p, 2)) + " %";
    }

    static String signed(double share) {
        return (share > 0 ? "+" : "") + Labels.fixed(100 * share, 1) + " %";
    }

    /** A small change of a distance, mm. */
    static String change(double metres) {
        double mm = metres * Labels.MM;
        if (Math.abs(mm) < 5e-4) {
            return "0";
        }
        return (mm > 0 ? "+" : "") + Labels.fixed(mm, Math.abs(mm) < 0.1 ? 3 : 2);
    }
}
