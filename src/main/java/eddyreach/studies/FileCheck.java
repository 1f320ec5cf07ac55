package eddyreach.studies;

import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.MountReader;
import eddyreach.model.read.SwitchReader;
import eddyreach.model.yaml.Expectation;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import eddyreach.model.yaml.YamlTree;
import eddyreach.units.Texts;
import java.util.Map;
import java.util.Optional;

/** Reads a file of any kind, only to find what is wrong in it. */
public final class FileCheck {

    private static final Map<String, Kind> KINDS =
            Map.of("switch", Kind.SWITCH, "mount", Kind.MOUNT, "study", Kind.STUDY, "materials", Kind.MATERIALS);

    private FileCheck() {}

    /** The kinds of file. */
    public enum Kind {
        SWITCH("switch"),
        MOUNT("mount"),
        STUDY("study"),
        MATERIALS("materials");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The value of the key {@code eddyreach} in such a file. */
        public String label() {
            return label;
        }
    }

    /**
     * Reads a file.
     *
     * @param source the file
     * @param library where a switch and materials are that the file names
     * @return what the file is
     * @throws InputException with everything that is wrong in it
     */
    public static Kind check(SourceFile source, Library library) {
        Kind kind = kind(source);
        switch (kind) {
            case SWITCH -> SwitchReader.read(source, library.materials());
            case MOUNT -> MountReader.read(source, library.materials(), Optional.empty());
            case STUDY -> StudyReader.read(source, library);
            case MATERIALS -> Materials.read(source);
        }
        return kind;
    }

    private static Kind kind(SourceFile source) {
        Problems problems = new Problems();
        Node root = YamlTree.read(source, problems);
        Optional<Node> found = root.isMap() ? root.child("eddyreach") : Optional.empty();
        if (found.isEmpty()) {
            root.problem(
                    "the key \"eddyreach\" that tells the kind of file is missing, needs " + Expectation.oneOf(KINDS));
            throw problems.exception();
        }
        Kind kind = KINDS.get(found.get().text());
        if (kind == null) {
            found.get()
                    .problem("got a file of kind \"" + Texts.excerpt(found.get().text()) + "\", needs "
                            + Expectation.oneOf(KINDS));
            throw problems.exception();
        }
        return kind;
    }
}
