package eddyreach.kinds.neighbour;

import eddyreach.model.read.SwitchReader;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Body;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problem;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Binds what is particular to studies of the kind {@code neighbour}. */
public final class NeighbourReader {

    private static final Map<String, NeighbourInput.Arrangement> ARRANGEMENTS = Arrays.stream(
                    NeighbourInput.Arrangement.values())
            .collect(Collectors.toMap(NeighbourInput.Arrangement::label, a -> a));

    private static final int FEWEST_POINTS = 11;
    private static final int MOST_POINTS = 201;
    private static final int USUAL_POINTS = 31;

    /** Usual range of spacings face to face, in rated distances. */
    private static final double NEAREST = 1.1;

    private static final double FARTHEST = 12;

    /** End of the usual range side by side, in spacings at which the bodies touch. */
    private static final double BESIDE = 5;

    /** Frequency tolerance of a switch: common practice. */
    private static final double TOLERANCE = 0.05;

    private static final double ALTERNATIVE = 0.2;

    /** Assumed: the upper end of usual switching frequencies. */
    private static final double DEMODULATOR = 5e3;

    /** Thickness of the standard target, m. */
    private static final double STANDARD = 1e-3;

    /** Radius of a target, in radii of the core, from which on it is no longer computed as bounded. */
    private static final double BOUNDED = 6;

    private final StudyContext context;
    private final Node root;

    private NeighbourReader(StudyContext context) {
        this.context = context;
        root = context.root();
    }

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return new NeighbourReader(context).bind();
    }

    private Function<StudyHeader, StudyInput> bind() {
        Optional<SwitchModel> first = context.switchModel();
        Optional<SwitchModel> other = root.has("other") ? bindOther() : first;
        root.knows("other");
        Optional<NeighbourInput.Arrangement> arrangement = root.choice("arrangement", ARRANGEMENTS);
        List<Target> targets = context.targets().bindOnAxis(root);
        double tolerance = root.quantity("tolerance", Dimension.NONE, 0, 0.2, TOLERANCE);
        double alternative = root.quantity("alternative frequency", Dimension.NONE, 1.01, 3, 1 + ALTERNATIVE);
        double demodulator = root.quantity("demodulator", Dimension.FREQUENCY, 1, 1e6, DEMODULATOR);
        if (alternative - 1 <= 2 * tolerance) {
            root.problem(
                    root.has("alternative frequency") ? "alternative frequency" : "tolerance",
                    "the alternative frequency is " + percent(alternative - 1)
                            + " away, and two tolerances of " + percent(tolerance)
                            + " bridge that: the two may meet");
        }
        DistanceRange spacings = arrangement.isPresent() && first.isPresent() && other.isPresent()
                ? spacings(first.get(), other.get(), arrangement.get(), targets)
                : spacings(1e-4, TargetReader.FARTHEST);
        if (first.isPresent() && arrangement.equals(Optional.of(NeighbourInput.Arrangement.FACE_TO_FACE))) {
            targets.forEach(t -> checkBetween(t, first.get()));
        }
        return header -> new NeighbourInput(
                header,
                other.orElseThrow(),
                arrangement.orElseThrow(),
                targets.isEmpty() ? List.of(header.standard()) : targets,
                spacings,
                tolerance,
                alternative,
                demodulator);
    }

    private Optional<SwitchModel> bindOther() {
        String reference = root.text("other");
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    SwitchReader.read(context.library().switchFile(reference, context.source()), context.materials()));
        } catch (InputException e) {
            Problem problem = e.problems().get(0);
            if (problem.line() == 0) {
                // the file as a whole is missing or unfit: the place to mend is the reference
                root.problem("other", problem.file() + ": " + problem.message());
            } else {
                context.problems().addAll(e);
            }
            return Optional.empty();
        }
    }

    private DistanceRange spacings(
            SwitchModel first, SwitchModel other, NeighbourInput.Arrangement arrangement, List<Target> targets) {
        boolean facing = arrangement == NeighbourInput.Arrangement.FACE_TO_FACE;
        double touching = NeighbourInput.touching(first, other);
        double thick = targets.stream().mapToDouble(Target::thickness).max().orElse(STANDARD);
        double sn = Math.max(first.ratedDistance(), other.ratedDistance());
        double low = facing ? NEAREST * sn + thick : touching;
        DistanceRange range = spacings(low, facing ? FARTHEST * sn : BESIDE * touching);
        // a user types diameters as rounded as they are printed
        if (!facing && range.first() < touching * (1 - 1e-9)) {
            root.problem(
                    "spacings",
                    "from " + Units.length(range.first()) + ": the axes of two bodies of "
                            + Units.length(2 * touching) + " together are at least "
                            + Units.length(touching) + " apart");
        }
        return range;
    }

    /** Binds the spacings with the ends that are usual. */
    private DistanceRange spacings(double low, double high) {
        Optional<Node> node = root.optionalMap("spacings");
        double from = node.map(n -> n.quantity("from", Dimension.LENGTH, 1e-4, TargetReader.FARTHEST, low))
                .orElse(low);
        double usualEnd = Math.max(high, 2 * from);
        double to = node.map(n -> n.quantity("to", Dimension.LENGTH, 1e-4, TargetReader.FARTHEST, usualEnd))
                .orElse(usualEnd);
        int points = node.map(n -> n.integer("points", FEWEST_POINTS, MOST_POINTS, USUAL_POINTS))
                .orElse(USUAL_POINTS);
        if (from >= to) {
            node.orElseThrow().problem("to", Units.length(to) + " must be larger than from, " + Units.length(from));
        }
        return new DistanceRange(from, to, points);
    }

    private void checkBetween(Target target, SwitchModel first) {
        double limit = BOUNDED * first.coreRadius();
        if (target.body() instanceof Body.Ball) {
            root.problem(
                    "targets",
                    "\"" + target.id() + "\" is a ball, which cannot be computed between two switches face to face");
        } else if (!(target.radius() <= limit)) {
            root.problem(
                    "targets",
                    "\"" + target.id() + "\" measures "
                            + (Double.isInfinite(target.radius()) ? "endlessly" : Units.length(2 * target.radius()))
                            + " across; between two switches face to face at most "
                            + Units.length(2 * limit) + ", six diameters of the core");
        }
    }

    private static String percent(double share) {
        return Math.round(share * 1000) / 10.0 + " %";
    }
}
