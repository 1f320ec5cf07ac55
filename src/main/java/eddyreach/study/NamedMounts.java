package eddyreach.study;

import eddyreach.model.read.MountReader;
import eddyreach.model.values.Mount;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problem;
import java.util.Optional;

/** The mounts that a study names or describes. */
public final class NamedMounts {

    private final StudyContext context;
    private final MountReader reader;

    public NamedMounts(StudyContext context) {
        this.context = context;
        reader = new MountReader(context.materials(), context.switchModel());
    }

    /** Binds the background of a study; empty when something is wrong with it. */
    public Optional<Mount.Background> background(Node node) {
        return reader.bindBackground(node);
    }

    /** Binds the bore of a wall, see {@link MountReader#bindBore}. */
    public double bore(Node wall) {
        return reader.bindBore(wall);
    }

    /** A mount by id, by path, or in place. */
    public Optional<Mount> bind(Node node) {
        if (node.isMap()) {
            return reader.bindInline(node);
        }
        String reference = node.text();
        if (reference.isEmpty()) {
            return Optional.empty();
        }
        try {
            return MountReader.read(
                    context.library().mountFile(reference, context.source()),
                    context.materials(),
                    context.switchModel());
        } catch (InputException e) {
            Problem first = e.problems().get(0);
            if (first.line() == 0) {
                // the file as a whole is missing or unfit: the place to mend is the reference
                node.problem(first.file() + ": " + first.message());
            } else {
                context.problems().addAll(e);
            }
            return Optional.empty();
        }
    }
}
