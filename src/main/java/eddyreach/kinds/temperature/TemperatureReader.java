package eddyreach.kinds.temperature;

import eddyreach.geometry.Role;
import eddyreach.materials.Temperature;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code temperature}. */
final class TemperatureReader {

    private static final double ZERO_CELSIUS = 273.15;

    /** Below, no switch is built; above, no ferrite of the common kinds. */
    private static final ValueRange LIMITS = new ValueRange(ZERO_CELSIUS - 60, ZERO_CELSIUS + 180, 61);

    private static final ValueRange USUAL = new ValueRange(ZERO_CELSIUS - 40, ZERO_CELSIUS + 100, 8);
    private static final double MOST_DRIFT = 0.02;

    private TemperatureReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        Node root = context.root();
        List<Target> targets = context.targets().bindOnAxis(root);
        ValueRange range = ValueRange.bind(root, "temperatures", Dimension.TEMPERATURE, LIMITS, USUAL);
        double coldest = celsius(range.first());
        double hottest = celsius(range.last());
        if (coldest > Temperature.AMBIENT || hottest < Temperature.AMBIENT) {
            root.problem(
                    "temperatures",
                    "from " + Units.text(range.first(), Dimension.TEMPERATURE) + " to "
                            + Units.text(range.last(), Dimension.TEMPERATURE)
                            + " leaves out the 23 degC of the trim, to which all else is compared");
        }
        Optional<Node> ferrite = root.optionalMap("ferrite");
        Drift drift = new Drift(
                ferrite.map(n -> drift(n, "permeability", range)).orElse(0.0),
                ferrite.map(n -> drift(n, "loss", range)).orElse(0.0),
                drift(root, "capacitor", range),
                drift(root, "compensation", range));
        context.switchModel()
                .filter(m -> m.parts().stream().noneMatch(p -> p.role() == Role.CORE))
                .ifPresent(m -> ferrite.ifPresent(n -> n.problem("this switch has no core that could drift")));
        List<Cause> causes = new ArrayList<>(List.of(Cause.values()));
        root.optionalMap("follows")
                .ifPresent(n -> Arrays.stream(Cause.values()).forEach(c -> {
                    if (!n.flag(c.label(), true)) {
                        causes.remove(c);
                    }
                }));
        causes.removeIf(c -> !drift.moves(c));
        return header -> new TemperatureInput(
                header, header.orStandard(targets), temperatures(range, coldest, hottest), causes, drift);
    }

    /** Degrees Celsius as they were written, free of what the conversion to kelvins and back leaves. */
    private static double celsius(double kelvin) {
        return Math.rint((kelvin - ZERO_CELSIUS) * 1e6) / 1e6;
    }

    /** A change per kelvin that leaves more than a tenth of the value at both ends of the range. */
    private static double drift(Node node, String key, ValueRange range) {
        double drift = node.quantity(key, Dimension.PER_TEMPERATURE, -MOST_DRIFT, MOST_DRIFT, 0);
        double trim = ZERO_CELSIUS + Temperature.AMBIENT;
        double least = 1 + Math.min(drift * (range.first() - trim), drift * (range.last() - trim));
        if (least < 0.1) {
            double farthest = drift > 0 ? trim - range.first() : range.last() - trim;
            node.problem(
                    key,
                    "with " + Units.text(drift, Dimension.PER_TEMPERATURE)
                            + " less than a tenth of the value is left at an end of the temperatures, needs at most "
                            + Units.text(0.9 / farthest, Dimension.PER_TEMPERATURE) + " in size");
        }
        return drift;
    }

    /** Even temperatures with that of the trim among them. */
    private static List<Double> temperatures(ValueRange range, double coldest, double hottest) {
        List<Double> all = new ArrayList<>();
        double step = (hottest - coldest) / (range.points() - 1);
        for (int i = 0; i < range.points(); i++) {
            double t = coldest + i * step;
            // what lies next to the trim makes room for it
            boolean end = i == 0 || i == range.points() - 1;
            if (end || Math.abs(t - Temperature.AMBIENT) >= step / 2) {
                all.add(t);
            }
        }
        if (!all.contains(Temperature.AMBIENT)) {
            all.add(Temperature.AMBIENT);
        }
        return all.stream().sorted().toList();
    }
}
