package eddyreach.kinds.disturbance;

import eddyreach.materials.Material;
import eddyreach.model.yaml.Node;
import eddyreach.oscillator.AlternatingField;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code disturbance}. */
final class DisturbanceReader {

    /** Of common power ferrites when warm; from memory. */
    private static final double SATURATION = 0.35;

    private static final double MOST_FIELD = 10;

    private DisturbanceReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        Node root = context.root();
        Optional<Node> field = root.map("field");
        // far below the oscillation, where the active element does not notice it
        double fastest = context.switchModel().map(m -> m.frequency() / 2).orElse(1e7);
        double frequency = field.map(n -> n.quantity("frequency", Dimension.FREQUENCY, 1, fastest))
                .orElse(Double.NaN);
        double saturation = root.quantity("saturation", Dimension.FLUX_DENSITY, 1e-3, 3, SATURATION);
        double density = field.map(DisturbanceReader::density).orElse(Double.NaN);
        String source = field.filter(n -> n.has("current"))
                .map(n -> n.text("current") + " at " + n.text("distance"))
                .orElse("");
        return header -> new DisturbanceInput(header, new AlternatingField(frequency, density), source, saturation);
    }

    /** Peak flux density, stated or that of a long straight conductor: mu0 I/(2 pi r). */
    private static double density(Node n) {
        if (!n.has("current")) {
            return n.quantity("flux density", Dimension.FLUX_DENSITY, 0, MOST_FIELD);
        }
        if (n.has("flux density")) {
            n.problem("flux density", "stands beside current, give one of the two");
        }
        double current = n.quantity("current", Dimension.CURRENT, 0, 1e7);
        double distance = n.quantity("distance", Dimension.LENGTH, 1e-4, 100);
        double density = Material.MU0 * current / (2 * Math.PI * distance);
        if (density > MOST_FIELD) {
            n.problem(
                    "distance",
                    Units.length(distance) + " from so large a current gives "
                            + Units.text(density, Dimension.FLUX_DENSITY) + ", needs at most 10 T");
        }
        return density;
    }
}
