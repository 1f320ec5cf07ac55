package eddyreach.kinds.hysteresis;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import eddyreach.switching.Hysteresis;
import eddyreach.switching.StandardQuantities;
import java.util.List;
import java.util.stream.Collectors;

/** The sentences of studies of the kind {@code hysteresis}. */
final class HysteresisText {

    /** What stands on every page of this kind. */
    static final List<String> NOT_MODELLED = List.of(
            "Vibration is a sine along the axis. Slow vibration is followed at once; with its frequency stated the output is followed in time.",
            "Repeat accuracy comes from the stated noise alone, constant during a passage and independent from one to the next. Not modelled: drift"
                    + " with temperature over the eight hours of the standard's test, noise of the comparator, play of the machine, ageing.");

    private HysteresisText() {}

    static String answer(HysteresisResult r) {
        return r.loops().stream().map(l -> sentence(r, l)).collect(Collectors.joining(" "));
    }

    private static String sentence(HysteresisResult r, Loop l) {
        String name = l.target().label();
        if (!l.switches()) {
            return "No: " + name + " " + Terms.of(l.distance().outcome()) + outcome(l.distance()) + ".";
        }
        String loop = name + " goes on at " + Labels.millimetres(l.distance().on()) + " mm and off at "
                + Labels.millimetres(l.distance().off()) + " mm, a differential travel of " + share(r, l.travel())
                + " of sr";
        if (l.verdict().isEmpty()) {
            return loop + "; it chatters from a vibration of ±" + Labels.length(l.travel() / 2, 2) + " on.";
        }
        return (l.verdict().get() instanceof Hysteresis.Clean ? "Yes: " : "No: ") + loop + "; " + verdict(r, l) + ".";
    }

    private static String outcome(SwitchDistance d) {
        return Double.isFinite(d.on()) ? " (on at " + Labels.millimetres(d.on()) + " mm)" : "";
    }

    /** What the machine makes of the loop. */
    static String verdict(HysteresisResult r, Loop l) {
        Hysteresis.Verdict v = l.verdict().orElseThrow();
        if (v instanceof Hysteresis.Clean clean) {
            return "one change at each place, " + Labels.length(clean.reserve(), 2) + " in hand";
        }
        if (v instanceof Hysteresis.Chatters c) {
            return "it chatters while the target passes between " + Labels.millimetres(c.nearest()) + " and "
                    + Labels.millimetres(c.farthest()) + " mm, and needs more than "
                    + Labels.length(c.leastTravel(), 3) + " of travel, about "
                    + standard(r, l, c.leastTravel()) + " of sr for the standard target";
        }
        if (v instanceof Hysteresis.NeverOn n) {
            return "it never goes on at the near place, which is " + Labels.length(n.excess(), 2) + " too far";
        }
        Hysteresis.NeverOff n = (Hysteresis.NeverOff) v;
        return "it never goes off at the far place, which is " + Labels.length(n.excess(), 2) + " too near: "
                + (n.mostTravel() > 0
                        ? "the dead zone may be " + Labels.length(n.mostTravel(), 3) + " at most, about "
                                + standard(r, l, n.mostTravel()) + " of sr for the standard target"
                        : "even the on distance lies beyond it");
    }

    /** A travel of this target, m, as a share of s_r. */
    static String share(HysteresisResult r, double travel) {
        return Labels.percent(travel / r.model().effectiveDistance(), 3);
    }

    /** The differential travel of the standard target that gives this target a travel, m, in proportion; no more than all of s_r. */
    static String standard(HysteresisResult r, Loop l, double travel) {
        return Labels.percent(Math.min(1, r.input().travel() * travel / l.travel()), 2);
    }

    /** Changes while the target passes, if they can be told. */
    static String changes(HysteresisResult r, Loop l) {
        Machine m = r.input().machine();
        return l.verdict()
                .filter(v -> v instanceof Hysteresis.Chatters)
                .filter(v -> m.frequency().isPresent() && m.speed().isPresent())
                .map(v -> (Hysteresis.Chatters) v)
                .map(c -> "about "
                        + Labels.significant(
                                c.changes(m.frequency().getAsDouble(), m.speed().getAsDouble()), 2))
                .orElse("-");
    }

    /** The travel against the standard's limit. */
    static String limit(HysteresisResult r) {
        double most = StandardQuantities.MAX_DIFFERENTIAL_TRAVEL;
        return "The standard allows a differential travel of up to " + Labels.percent(most, 2)
                + " of sr for the standard target (IEC 60947-5-2, from memory); here it is "
                + Labels.percent(r.input().travel(), 3)
                + (r.input().travel() > most ? ", more than that." : ".");
    }
}
