package eddyreach.model;

import eddyreach.units.Dimension;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads a study file together with the switch it names; the problems of both are told at once. */
public final class StudyReader {

    private static final Map<String, StudyInput.Kind> KINDS =
            Arrays.stream(StudyInput.Kind.values()).collect(Collectors.toMap(StudyInput.Kind::label, k -> k));

    /** A curve of many distances is accepted with this many times the error of a single one: 0.04 mm at M18. */
    private static final double CURVES = 2;

    /** Distances beside the axis with this many: 0.1 mm at M18. */
    private static final double BESIDE = 5;

    /** Loosest accuracy that is known while the switch is not, m. */
    private static final double ANY_ACCURACY = 1;

    private StudyReader() {}

    /**
     * What the readers of the single kinds need.
     *
     * @param root the file
     * @param kind which study
     * @param switchModel the switch; empty when it could not be read
     * @param materials the materials that may be named
     * @param targets reads targets
     * @param library where files are that the study names
     * @param source the file itself, to which paths in it are relative
     * @param problems where problems of other files go
     */
    record Context(
            Node root,
            StudyInput.Kind kind,
            Optional<SwitchModel> switchModel,
            Materials materials,
            TargetReader targets,
            Library library,
            SourceFile source,
            Problems problems) {}

    /**
     * Reads a study.
     *
     * @param source its file
     * @param library where the switch and the materials are
     * @throws InputException with everything that is wrong in the study and its switch
     */
    public static StudyInput read(SourceFile source, Library library) {
        Problems problems = new Problems();
        Node root = YamlTree.open(source, "study", problems);
        Materials materials = library.materials();
        String name = root.text("name");
        String note = root.note("note");
        Optional<StudyInput.Kind> kind = root.choice("kind", KINDS);
        Optional<SwitchModel> switchModel = bindSwitch(root, source, library, materials, problems);
        double usual = switchModel
                .map(m -> kind.map(StudyReader::looseness).orElse(1.0) * StudyInput.defaultAccuracy(m))
                .orElse(ANY_ACCURACY);
        double accuracy = root.quantity("accuracy", Dimension.LENGTH, 1e-9, 1e-2, usual);
        TargetReader targets = new TargetReader(
                materials, switchModel.map(SwitchModel::standardSide).orElse(Double.NaN));
        Optional<Function<StudyHeader, StudyInput>> study =
                kind.map(k -> bind(new Context(root, k, switchModel, materials, targets, library, source, problems)));
        if (kind.isPresent()) {
            root.finish();
        } else {
            // what can be told without the kind is told at once
            targets.bindAll(root.optionalList("targets"));
        }
        problems.throwIfAny();
        SwitchModel model = switchModel.orElseThrow();
        StudyInput input = study.orElseThrow()
                .apply(new StudyHeader(
                        source.id(),
                        name,
                        note,
                        kind.orElseThrow(),
                        model,
                        TargetReader.standard(materials.get(Materials.STANDARD_STEEL), model),
                        accuracy));
        return input instanceof ApproachInput a && a.kind() == StudyInput.Kind.APPROACH
                ? a.withAlternatives(Family.of(model, library))
                : input;
    }

    /** Error that is accepted unless told, over that of a single distance on the axis. */
    private static double looseness(StudyInput.Kind kind) {
        return switch (kind) {
            case APPROACH, MATERIALS, MOUNT, BACKGROUND, RECESS, NEIGHBOUR -> 1;
            case THICKNESS, SIZE, CONDUCTIVITY, LAYERS -> CURVES;
            case ZONE, PASS -> BESIDE;
        };
    }

    /** Binds what is particular to a kind; what comes out makes the study once nothing is wrong. */
    private static Function<StudyHeader, StudyInput> bind(Context context) {
        return switch (context.kind()) {
            case APPROACH, MATERIALS -> ApproachReader.bind(context);
            case MOUNT -> MountStudyReader.mount(context);
            case BACKGROUND -> MountStudyReader.background(context);
            case NEIGHBOUR -> NeighbourReader.bind(context);
            case RECESS -> RecessReader.bind(context);
            case THICKNESS, SIZE, CONDUCTIVITY, LAYERS -> SweepReader.bind(context);
            case ZONE -> SidewaysReader.zone(context);
            case PASS -> SidewaysReader.pass(context);
        };
    }

    private static Optional<SwitchModel> bindSwitch(
            Node root, SourceFile source, Library library, Materials materials, Problems problems) {
        String reference = root.text("switch");
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(SwitchReader.read(library.switchFile(reference, source), materials));
        } catch (InputException e) {
            Problem first = e.problems().get(0);
            if (first.line() == 0) {
                // the file as a whole is missing or unfit: the place to mend is the reference
                root.problem("switch", first.file() + ": " + first.message());
            } else {
                problems.addAll(e);
            }
            return Optional.empty();
        }
    }
}
