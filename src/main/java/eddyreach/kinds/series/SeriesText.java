package eddyreach.kinds.series;

import eddyreach.report.words.Labels;
import eddyreach.switching.Spread;
import eddyreach.units.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The sentences of studies of the kind {@code series}. */
final class SeriesText {

    /** What stands on every page of this kind. */
    static final List<String> NOT_MODELLED = List.of(
            "The tolerances are what the study states, independent of each other; nothing about a real production follows from them.",
            "Supply acts on the electronics alone, of which the model has none: its share of the distance is taken as stated. So is nothing"
                    + " said of ageing, of drift of the electronics themselves, or of damage by discharge or welding.",
            "A unit's temperature is that of its target; the temperature is spread evenly over its range.");

    private SeriesText() {}

    static String answer(SeriesResult r) {
        String share = share(r.input().share());
        double on = r.assuredOn().value();
        double off = r.assuredOff().value();
        String units = String.format(Locale.ROOT, "%,d", r.input().units()).replace(',', ' ') + " units";
        String first = on > 0
                ? share + " of " + units + " are on up to " + Labels.millimetres(on) + " mm"
                : "No distance at which " + share + " of " + units + " are on";
        return first
                + (Double.isInfinite(off)
                        ? ", and no distance beyond which as many are off"
                        : ", and as many are off beyond " + Labels.millimetres(off) + " mm")
                + " (worst case of all tolerances of this program: "
                + distance(r.worst().assuredOn()) + " and "
                + distance(r.worst().assuredOff()) + ")"
                + most(r).map(s -> "; " + s).orElse("") + ".";
    }

    private static Optional<String> most(SeriesResult r) {
        return r.shares().stream()
                .findFirst()
                .filter(s -> s.share() > 0)
                .map(s -> s.factor().label() + " matters most, with " + percent(s.share()) + " of the variance");
    }

    /** A share of the units, with as many digits as it was given. */
    static String share(double share) {
        return Labels.significant(100 * share, 5) + " %";
    }

    static String percent(double share) {
        return Double.isFinite(share) ? Labels.fixed(100 * Math.max(0, share), 0) + " %" : "-";
    }

    /** A distance of a band; the ends that are none in words. */
    static String distance(double metres) {
        if (Double.isNaN(metres) || metres == 0) {
            return "nowhere";
        }
        return Double.isInfinite(metres) ? "no distance" : Labels.millimetres(metres) + " mm";
    }

    /** A quantile with its interval. */
    static String interval(Spread.Quantile q) {
        return distance(q.low()).replace(" mm", "") + " to "
                + distance(q.high()).replace(" mm", "");
    }

    /** The limit of a factor as the study states it. */
    static String limit(Tolerances t, Factor f) {
        double limit = t.limit(f);
        if (f == Factor.TEMPERATURE) {
            return Labels.fixed(t.middle() - limit, 0) + " to " + Labels.fixed(t.middle() + limit, 0) + " °C";
        }
        return "±" + (f.dimension().equals(Dimension.LENGTH) ? Labels.length(limit) : Labels.percent(limit, 3));
    }
}
