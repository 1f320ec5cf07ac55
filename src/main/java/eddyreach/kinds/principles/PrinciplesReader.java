package eddyreach.kinds.principles;

import eddyreach.materials.Material;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.Node;
import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Binds what is particular to studies of the kind {@code principles}. */
final class PrinciplesReader {

    private static final String REFERENCE = "aluminium";

    private PrinciplesReader() {}

    static Function<StudyHeader, StudyInput> bind(StudyContext context) {
        Node root = context.root();
        List<Target> targets = context.targets().bindOnAxis(root);
        if (!root.has("targets")) {
            root.problem("targets", "missing, needs a list of targets to compare");
        }
        List<String> ids = targets.stream().map(Target::id).toList();
        List<String> alike = new ArrayList<>();
        for (Node n : root.optionalList("alike")) {
            String id = n.text();
            if (!id.isEmpty() && !ids.contains(id)) {
                n.problem("\"" + id + "\" is no target of this study, needs one of " + String.join(", ", ids));
            }
            alike.add(id);
        }
        Optional<Material> reference = root.has("reference")
                ? context.materials().bind(root, "reference")
                : Optional.of(context.materials().get(REFERENCE));
        reference
                .filter(m -> m.muReal() > 1 || m.conductivity20() == 0)
                .ifPresent(m -> root.problem(
                        "reference", m.name() + " is no non-ferrous metal, on which such a switch could be trimmed"));
        return header -> new PrinciplesInput(header, targets, alike.isEmpty() ? ids : alike, reference.orElseThrow());
    }
}
