package eddyreach.kinds.temperature;

import eddyreach.engine.assure.Allowances;
import eddyreach.report.words.Labels;
import java.util.List;
import java.util.stream.Collectors;

/** The sentences of studies of the kind {@code temperature}. */
final class TemperatureText {

    /** What stands on every page of this kind. */
    static final List<String> NOT_MODELLED = List.of(
            "Not modelled: drift of the electronics themselves, such as comparator and current of the oscillator, unless compensation states it; ageing; moisture;"
                    + " expansion of the parts; the permeability of the target over temperature.",
            "The supply acts on the electronics alone, of which the model has none. The standard leaves it and the temperature"
                    + " together ±10 % of sr (IEC 60947-5-2, from memory): what is left of the band here is what the supply may take.",
            "Switch and target have one temperature throughout; warming up is not followed.");

    private TemperatureText() {}

    static String answer(TemperatureResult result) {
        if (result.input().causes().isEmpty()) {
            return "Nothing follows the temperature in this study, so the on distance stays.";
        }
        return result.curves().stream()
                .map(c -> sentence(result.input().celsius(), c))
                .collect(Collectors.joining(" "));
    }

    /** The verdict on one target. */
    private static String sentence(List<Double> celsius, TemperatureCurve c) {
        String name = c.target().label();
        if (!Double.isFinite(c.trim())) {
            return "No: " + name + " is not detected at 23 °C.";
        }
        String range =
                range(c) + " from " + celsius(celsius.get(0)) + " to " + celsius(celsius.get(celsius.size() - 1));
        String band = "±10 % of its " + Labels.millimetres(c.trim()) + " mm";
        if (Double.isNaN(c.coldLimit()) && Double.isNaN(c.hotLimit())) {
            return "Yes: " + name + " stays within " + band + ", " + range + ".";
        }
        boolean rated =
                !(c.coldLimit() > Allowances.STANDARD.coldest()) && !(c.hotLimit() < Allowances.STANDARD.hottest());
        return (rated ? "Yes from -25 to 70 °C, no beyond: " : "No: ") + name + " leaves " + band + " " + limits(c)
                + "; " + range + ".";
    }

    private static String limits(TemperatureCurve c) {
        String cold = Double.isNaN(c.coldLimit()) ? "" : "below " + celsius(c.coldLimit());
        String hot = Double.isNaN(c.hotLimit()) ? "" : "above " + celsius(c.hotLimit());
        return cold + (cold.isEmpty() || hot.isEmpty() ? "" : " and ") + hot;
    }

    private static String range(TemperatureCurve c) {
        if (Double.isNaN(c.nearest())) {
            return "not detected somewhere";
        }
        return "on at " + Labels.millimetres(c.nearest()) + " to "
                + (Double.isInfinite(c.farthest())
                        ? "any distance (on without a target)"
                        : Labels.millimetres(c.farthest()) + " mm");
    }

    /** What compensation would do. */
    static String compensation(TemperatureResult result, TemperatureCurve c) {
        if (!Double.isFinite(c.remaining())) {
            return "No straight compensation keeps " + c.target().label() + " detected over the whole range.";
        }
        double stated = result.input().drift().compensation();
        return "Compensation for " + c.target().label() + ": thresholds, told as conductances, that change by "
                + Labels.fixed(100 * c.best(), 3) + " % per kelvin keep it within ±" + Labels.percent(c.remaining(), 2)
                + (result.input().causes().contains(Cause.COMPENSATION)
                        ? "; here they change by " + Labels.fixed(100 * stated, 3) + " %."
                        : "; here they do not change.");
    }

    static String celsius(double t) {
        return Labels.fixed(t, 0) + " °C";
    }

    static String change(double share) {
        if (!Double.isFinite(share)) {
            return "-";
        }
        return (share > 0 ? "+" : "") + Labels.fixed(100 * share, 1);
    }
}
