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
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads a study file together with the switch it names; the problems of both are told at once. */
public final class StudyReader {

    private static final Map<String, StudyKind> KINDS =
            StudyKinds.all().stream().collect(Collectors.toMap(StudyKind::label, k -> k));

    /** Loosest accuracy that is known while the switch is not, m. */
    private static final double ANY_ACCURACY = 1;

    private StudyReader() {}

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
        Optional<StudyKind> kind = root.choice("kind", KINDS);
        Optional<SwitchModel> switchModel = bindSwitch(root, source, library, materials, problems);
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
        problems.throwIfAny();
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
