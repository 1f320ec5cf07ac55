package eddyreach.kinds.speed;

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

/** Binds what is particular to studies of the kind {@code speed}. */
final class SpeedReader {

    /** The standard's wheel has gaps of twice the width of its teeth (IEC 60947-5-2, from memory). */
    private static final double PITCHES = 3;

    /** The standard's shortest pulse for switches of direct current (from memory). */
    private static final double SHORTEST = 50e-6;

    private static final double FASTEST = 1000;
    private static final double LONGEST_TIME = 1;

    private SpeedReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        Node root = context.root();
        List<Target> targets = context.targets().bindOnAxis(root);
        if (targets.size() > 1) {
            root.problem("targets", "got " + targets.size() + " targets, needs one: all teeth of a row are alike");
        }
        Optional<Target> given = targets.stream().findFirst();
        Optional<Double> width =
                given.map(SpeedReader::width).or(() -> context.switchModel().map(SwitchModel::standardSide));
        if (width.filter(w -> Double.isInfinite(w)).isPresent()) {
            root.problem("targets", "an endless plate is no tooth; give a disc, a square or any other bounded shape");
        }
        double distance = root.quantity(
                "distance",
                Dimension.LENGTH,
                0,
                TargetReader.FARTHEST,
                context.switchModel().map(m -> m.ratedDistance() / 2).orElse(Double.NaN));
        Wheel wheel = wheel(root, width.filter(Double::isFinite).orElse(Double.NaN));
        // a filter that passes a tenth of the oscillation would smooth nothing
        double fastest = context.switchModel().map(m -> m.frequency() / 10).orElse(1e7);
        double corner = root.quantity("demodulator", Dimension.FREQUENCY, 1, fastest, 5e3);
        double delay = root.quantity("output delay", Dimension.TIME, 0, LONGEST_TIME, 0);
        double noise = root.quantity("noise", Dimension.VOLTAGE, 1e-9, 1, 1e-5);
        double shortest = root.quantity("shortest pulse", Dimension.TIME, 0, LONGEST_TIME, SHORTEST);
        return header -> new SpeedInput(
                header, given.orElse(header.standard()), distance, wheel, corner, delay, noise, shortest);
    }

    private static Wheel wheel(Node root, double width) {
        Optional<Node> round = root.optionalMap("wheel");
        if (round.isEmpty()) {
            double pitch = root.quantity("pitch", Dimension.LENGTH, 1e-5, 10, PITCHES * width);
            apart(root, "pitch", pitch, width, 1);
            double speed = root.quantity("speed", Dimension.VELOCITY, 1e-6, FASTEST, Double.NaN);
            return new Wheel(pitch, 0, of(speed));
        }
        Node node = round.get();
        for (String key : List.of("pitch", "speed")) {
            if (root.has(key)) {
                root.problem(key, "stands beside wheel, give one of the two");
            }
        }
        int teeth = node.integer("teeth", 1, 10000);
        double diameter = node.quantity("diameter", Dimension.LENGTH, 1e-4, 100);
        double perMinute = node.quantity("turns per minute", Dimension.NONE, 1e-3, 1e6, Double.NaN);
        apart(node, "diameter", Math.PI * diameter / teeth, width, teeth / Math.PI);
        return new Wheel(Math.PI * diameter / teeth, teeth, of(Math.PI * diameter * perMinute / 60));
    }

    private static OptionalDouble of(double speed) {
        return Double.isNaN(speed) ? OptionalDouble.empty() : OptionalDouble.of(speed);
    }

    /** Teeth that touch are no row: says from which value of the key on they do not. */
    private static void apart(Node node, String key, double pitch, double width, double perPitch) {
        if (pitch <= width) {
            node.problem(
                    key,
                    "teeth " + Units.length(width) + " wide touch at a pitch of " + Units.length(pitch)
                            + ", needs more than " + Units.length(perPitch * width));
        }
    }

    /** Extent of a tooth along the row, m. */
    private static double width(Target t) {
        return t.sheet()
                .map(s -> {
                    if (s.outline() instanceof Target.Outline.Square q) {
                        return q.side();
                    }
                    return s.outline() instanceof Target.Outline.Rectangle r ? r.width() : 2 * t.radius();
                })
                .orElse(2 * t.radius());
    }
}
