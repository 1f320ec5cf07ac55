package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Commands that print or write files to begin with, and the script of the shell. */
class FilesCommandsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "p14-reference, models/p14-reference.yaml",
        "steel-recess-36, models/steel-recess-36.yaml",
        "m18-derating, studies/m18-derating.yaml",
        "materials, shared/materials.yaml"
    })
    void showPrintsShippedFiles(String id, String file) throws IOException {
        Session s = Session.in(folder, "show", id);
        assertThat(s).isEqualTo(new Session(0, Files.readString(Path.of(file)).replace('\\', '/'), ""));
    }

    @Test
    void showTellsWhatIsNotThere() {
        assertThat(Session.in(folder, "show", "m18-deratin").err())
                .isEqualTo("m18-deratin: there is no study of this name; did you mean m18-derating?\n"
                        + "1 error; nothing was run.\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"switch", "mount", "study", "materials"})
    void aNewFileIsInOrderAndOverwritesNothing(String kind) throws IOException {
        Session s = Session.in(folder, "new", kind, "a.yaml");
        assertThat(s)
                .isEqualTo(new Session(
                        0, "a.yaml: a " + kind + " file to begin with; see also: eddyreach check a.yaml\n", ""));
        assertThat(Session.in(folder, "check", "a.yaml"))
                .isEqualTo(new Session(0, "a.yaml: fine (" + kind + ")\n", ""));
        Path file = folder.resolve("a.yaml");
        Files.writeString(file, "mine");
        assertThat(Session.in(folder, "new", kind, "a.yaml"))
                .isEqualTo(new Session(
                        2, "", "a.yaml: is there already; new overwrites nothing\n1 error; nothing was run.\n"));
        assertThat(file).hasContent("mine");
        assertThat(Session.in(folder, "new", kind, "none/a.yaml").err())
                .startsWith("none/a.yaml: its folder does not exist\n");
    }

    @Test
    void theScriptKnowsCommandsAndOptions() {
        Session s = Session.in(folder, "completion");
        assertThat(s.code()).isZero();
        assertThat(s.err()).isEmpty();
        assertThat(s.out())
                .contains("complete -F _complete_eddyreach", " eddyreach", "ask", "--csv-decimal", "completion");
    }
}
