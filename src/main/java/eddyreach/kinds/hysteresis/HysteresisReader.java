package eddyreach.kinds.hysteresis;

import eddyreach.model.read.TargetReader;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code hysteresis}. */
final class HysteresisReader {

    private static final double LEAST_TRAVEL = 1e-3;
    private static final double MOST_TRAVEL = 1;
    private static final int REPEATS = 10;

    private HysteresisReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        Node root = context.root();
        List<Target> targets = context.targets().bindOnAxis(root);
        double travel = root.quantity(
                "differential travel",
                Dimension.NONE,
                LEAST_TRAVEL,
                MOST_TRAVEL,
                context.switchModel().map(SwitchModel::differentialTravel).orElse(Double.NaN));
        double near = root.quantity("near", Dimension.LENGTH, 0, TargetReader.FARTHEST, Double.NaN);
        double far = root.quantity("far", Dimension.LENGTH, 0, TargetReader.FARTHEST, Double.NaN);
        if (root.has("near") != root.has("far")) {
            root.problem(root.has("near") ? "far" : "near", "missing: near and far stand together");
        } else if (near >= far) {
            root.problem("far", Units.length(far) + " must be beyond near, " + Units.length(near));
        }
        Optional<Node> shaking = root.optionalMap("vibration");
        double vibration = shaking.map(n -> n.quantity("amplitude", Dimension.LENGTH, 0, TargetReader.FARTHEST))
                .orElse(0.0);
        double frequency = shaking.map(n -> n.quantity("frequency", Dimension.FREQUENCY, 1e-3, 1e5, Double.NaN))
                .orElse(Double.NaN);
        double speed = root.quantity("speed", Dimension.VELOCITY, 1e-6, 1000, Double.NaN);
        double noise = root.quantity("amplitude noise", Dimension.VOLTAGE, 0, 10, 0);
        int repeats = root.integer("repeats", 2, 1000, REPEATS);
        double corner = root.quantity("demodulator", Dimension.FREQUENCY, 1, 1e8, 5e3);
        Machine machine = new Machine(near, far, vibration, of(frequency), of(speed), noise, repeats);
        return header -> new HysteresisInput(header, header.orStandard(targets), travel, machine, corner);
    }

    private static OptionalDouble of(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
