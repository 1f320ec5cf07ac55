package eddyreach.studies;

import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.SwitchReader;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problem;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import eddyreach.model.yaml.YamlTree;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import eddyreach.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Reads a study file together with the switch it names; the problems of both are told at once. */
public final class StudyReader {

    private static final Map<String, StudyKind> KINDS =
            StudyKinds.all().stream().collect(Collectors.toMap(StudyKind::label, k -> k));

    /** Loosest accuracy that is known while the switch is not, m. */
    private static final double ANY_ACCURACY = 1;

    /** Most switches that one study compares: more do not fit on a page. */
    private static final int MOST_SWITCHES = 8;

    private final SourceFile source;
    private final Library library;
    private final Materials materials;
    private final Problems problems = new Problems();
    private final Node root;
    private final Optional<StudyKind> kind;

    private StudyReader(SourceFile source, Library library) {
        this.source = source;
        this.library = library;
        root = YamlTree.open(source, "study", problems);
        materials = library.materials();
        kind = root.choice("kind", KINDS);
    }

    /**
     * Reads a study.
     *
     * @param source its file
     * @param library where the switch and the materials are
     * @throws InputException with everything that is wrong in the study and its switch
     */
    public static StudyInput read(SourceFile source, Library library) {
        return new StudyReader(source, library).study();
    }

    private StudyInput study() {
        String name = root.text("name");
        String note = root.note("note");
        List<Optional<SwitchModel>> models = root.has("switches") ? bindSwitches() : List.of(bindSwitch());
        root.knows("switch", "switches");
        List<Supplier<StudyInput>> each = new ArrayList<>();
        for (Optional<SwitchModel> model : models) {
            each.add(bind(name, note, model));
        }
        problems.throwIfAny();
        List<StudyInput> studies = each.stream().map(Supplier::get).toList();
        return studies.size() == 1
                ? studies.get(0)
                : kind.orElseThrow().comparison().orElseThrow().apply(studies);
    }

    /** The study for one switch. */
    private Supplier<StudyInput> bind(String name, String note, Optional<SwitchModel> switchModel) {
        double usual = switchModel
                .map(m -> kind.map(StudyKind::looseness).orElse(1.0) * StudyInput.defaultAccuracy(m))
                .orElse(ANY_ACCURACY);
        double accuracy = root.quantity("accuracy", Dimension.LENGTH, 1e-9, 1e-2, usual);
        TargetReader targets = new TargetReader(
                materials, switchModel.map(SwitchModel::standardSide).orElse(Double.NaN));
        Optional<Function<StudyHeader, StudyInput>> study = kind.map(
                k -> k.bind(new StudyContext(root, switchModel, materials, targets, library, source, problems)));
        if (kind.isPresent()) {
            root.finish();
        } else {
            // what can be told without the kind is told at once
            targets.bindAll(root.optionalList("targets"));
        }
        return () -> {
            SwitchModel model = switchModel.orElseThrow();
            return study.orElseThrow()
                    .apply(new StudyHeader(
                            source.id(),
                            name,
                            note,
                            kind.orElseThrow(),
                            model,
                            TargetReader.standard(materials.get(Materials.STANDARD_STEEL), model),
                            accuracy));
        };
    }

    /** The switches that a study compares; one that cannot be read is empty. */
    private List<Optional<SwitchModel>> bindSwitches() {
        if (root.has("switch")) {
            root.problem("switches", "stands beside switch; give one of the two");
        }
        List<Node> nodes = root.list("switches");
        if (nodes.size() > 1 && kind.isPresent() && kind.get().comparison().isEmpty()) {
            root.problem(
                    "switches",
                    "a study of the kind " + kind.get().label() + " is of one switch; several go with the kinds "
                            + KINDS.values().stream()
                                    .filter(k -> k.comparison().isPresent())
                                    .map(StudyKind::label)
                                    .sorted()
                                    .collect(Collectors.joining(" and ")));
        }
        if (nodes.size() > MOST_SWITCHES) {
            root.problem("switches", "more than " + MOST_SWITCHES + " switches");
        }
        List<Optional<SwitchModel>> models = new ArrayList<>();
        for (Node node : nodes.stream().limit(MOST_SWITCHES).toList()) {
            Optional<SwitchModel> model = bindSwitch(node.text(), node::problem);
            model.filter(m -> models.stream().flatMap(Optional::stream).anyMatch(o -> o.id().equals(m.id())))
                    .ifPresent(m -> node.problem("\"" + m.id() + "\" stands twice in the list"));
            models.add(model);
        }
        return models.isEmpty() ? List.of(Optional.empty()) : models;
    }

    private Optional<SwitchModel> bindSwitch() {
        return bindSwitch(root.text("switch"), message -> root.problem("switch", message));
    }

    private Optional<SwitchModel> bindSwitch(String reference, Consumer<String> problem) {
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(SwitchReader.read(library.switchFile(reference, source), materials));
        } catch (InputException e) {
            Problem first = e.problems().get(0);
            if (first.line() == 0) {
                // the file as a whole is missing or unfit: the place to mend is the reference
                problem.accept(first.file() + ": " + first.message());
            } else {
                problems.addAll(e);
            }
            return Optional.empty();
        }
    }
}
