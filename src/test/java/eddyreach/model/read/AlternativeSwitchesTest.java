package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.values.SwitchModel;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AlternativeSwitchesTest {

    @TempDir
    private Path folder;

    private static List<String> of(String id, Library library) {
        return AlternativeSwitches.of(library.switchModel(id), library, library.materials()).stream()
                .map(SwitchModel::id)
                .toList();
    }

    @Test
    void theNextLargerOneAndTheNonFlushOneOfThatSize() {
        Library shipped = new Library(folder);
        assertThat(of("m8-flush", shipped)).containsExactly("m12-flush", "m8-non-flush");
        assertThat(of("m18-flush", shipped)).containsExactly("m30-flush", "m18-non-flush");
        assertThat(of("m12-non-flush", shipped)).containsExactly("m18-non-flush");
        assertThat(of("block40-non-flush", shipped)).as("none is larger").isEmpty();
    }

    /** Those of the working folder take part; one that is not in order is passed over. */
    @Test
    void ownSwitchesTakePart() throws java.io.IOException {
        java.nio.file.Files.createDirectory(folder.resolve("models"));
        String m30 = ModelFiles.text(Path.of("models/m30-flush.yaml"));
        java.nio.file.Files.writeString(folder.resolve("models/a-copy.yaml"), m30);
        java.nio.file.Files.writeString(folder.resolve("models/broken.yaml"), m30.replace("mounting:", "mouting:"));
        assertThat(of("m18-flush", new Library(folder))).containsExactly("a-copy", "m18-non-flush");
    }
}
