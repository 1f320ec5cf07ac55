package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    @TempDir
    private Path folder;

    @Test
    void everyKindOfFile() throws IOException {
        Files.writeString(folder.resolve("mine.yaml"), RunCommandTest.QUICK);
        assertThat(Session.in(
                        folder,
                        "check",
                        "p14-reference",
                        "m18-derating",
                        "shared/materials.yaml",
                        "models/p14-reference.yaml",
                        "mine.yaml"))
                .isEqualTo(new Session(0, """
                        models/p14-reference.yaml: fine (switch)
                        studies/m18-derating.yaml: fine (study)
                        shared/materials.yaml: fine (materials)
                        models/p14-reference.yaml: fine (switch)
                        mine.yaml: fine (study)
                        """, ""));
        assertThat(Session.files(folder)).containsExactly("mine.yaml");
    }

    @Test
    void allErrorsOfAllFiles() throws IOException {
        String reference = Files.readString(Path.of("models/p14-reference.yaml"));
        Files.writeString(
                folder.resolve("bad.yaml"),
                reference
                        .replace("turns: 80", "turns: 0")
                        .replace("200 kHz", "200 kg")
                        .replace("flush\n", "flash\n"));
        Files.writeString(folder.resolve("kind.yaml"), "eddyreach: switches\n");
        Files.writeString(folder.resolve("list.yaml"), "- a\n");
        assertThat(Session.in(
                        folder,
                        "check",
                        "bad.yaml",
                        "m18-derating",
                        "kind.yaml",
                        "list.yaml",
                        "gone.yaml",
                        "m18-deratin"))
                .isEqualTo(new Session(2, "studies/m18-derating.yaml: fine (study)\n", """
                        bad.yaml:%d:11 mounting: got "flash", needs flush or non-flush
                        bad.yaml:%d:12 frequency: 200 kg: unknown unit "kg", needs a frequency such as 200 kHz
                        bad.yaml:%d:10 winding.turns: got 0, needs a whole number from 1 to 5000
                        kind.yaml:1:12 eddyreach: got a file of kind "switches", needs materials, mount, study or switch
                        list.yaml:1:1: the key "eddyreach" that tells the kind of file is missing, needs materials, mount, study or switch
                        gone.yaml: file not found
                        m18-deratin: there is no study of this name; did you mean m18-derating?
                        7 errors.
                        """.formatted(
                        line(reference, "mounting:"), line(reference, "frequency:"), line(reference, "  turns:"))));
    }

    private static int line(String text, String start) {
        return 1
                + text.lines()
                        .toList()
                        .indexOf(text.lines()
                                .filter(l -> l.startsWith(start))
                                .findFirst()
                                .orElseThrow());
    }
}
