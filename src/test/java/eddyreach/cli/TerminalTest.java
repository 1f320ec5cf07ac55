package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.model.yaml.InputException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TerminalTest {

    @TempDir
    private Path folder;

    @Test
    void signsAreReplacedOnlyWhereTheyAreMissing() throws IOException {
        String text = "5.00 ± 0.01 µH, 1–2 é";
        assertThat(through(text, StandardCharsets.US_ASCII)).isEqualTo("5.00 ~ 0.01 uH, 1-2 é");
        assertThat(through(text, StandardCharsets.ISO_8859_1)).isEqualTo("5.00 ± 0.01 µH, 1-2 é");
        assertThat(through(text, StandardCharsets.UTF_8)).isEqualTo(text);
    }

    private static String through(String text, java.nio.charset.Charset charset) throws IOException {
        StringWriter out = new StringWriter();
        try (PlainWriter writer = new PlainWriter(out, charset)) {
            writer.write(text);
        }
        return out.toString();
    }

    @Test
    void aPersonSeesProgressAndColours() throws IOException {
        Files.writeString(folder.resolve("quick.yaml"), RunCommandTest.QUICK);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), folder, true, true, 80);
        assertThat(Eddyreach.execute(terminal, "run", "quick.yaml", "--no-pictures"))
                .isZero();
        assertThat(out.toString()).startsWith("\u001b[1mYes: on at ");
        assertThat(err.toString())
                .startsWith("\rquick [                    ] field of p14-reference, at most ")
                .contains(" MB 0/1")
                .contains("\rquick [####################] distances 48/48")
                .endsWith(" \r")
                .doesNotContain("\n");
    }

    @Test
    void colourAndOverwritingOnlyWhereWanted() {
        assertThat(of(Map.of()).colours()).isTrue();
        assertThat(of(Map.of("NO_COLOR", "")).colours()).isTrue();
        assertThat(of(Map.of("NO_COLOR", "1")).colours()).isFalse();
        assertThat(of(Map.of("NO_COLOR", "1")).interactive()).isTrue();
        assertThat(of(Map.of("TERM", "dumb")).colours()).isFalse();
        assertThat(of(Map.of("TERM", "dumb")).interactive()).isFalse();
    }

    private Terminal of(Map<String, String> environment) {
        PrintWriter out = new PrintWriter(new StringWriter());
        return Terminal.of(out, out, folder, true, environment);
    }

    @Test
    void widthAsTheTerminalTellsIt() {
        assertThat(TerminalWidth.parse("24 40\n")).isEqualTo(40);
        assertThat(TerminalWidth.parse("0 0\n")).isEqualTo(80);
        assertThat(TerminalWidth.parse("")).isEqualTo(80);
    }

    @Test
    void anAnswerThatCannotBeWrittenIsNoSuccess() {
        Writer full = new Writer() {
            @Override
            public void write(char[] text, int offset, int length) throws IOException {
                throw new IOException("No space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(full), new PrintWriter(err), folder, false, false, 80);
        assertThat(Eddyreach.execute(terminal, "list")).isEqualTo(1);
        assertThat(err.toString()).startsWith("The answer could not be written: the output is full or closed.");
    }

    @Test
    void tooLittleMemoryIsSaidWithoutATrace() {
        StringWriter err = new StringWriter();
        Exception wrapped = new IllegalStateException(new OutOfMemoryError("Java heap space"));
        assertThat(Failures.execution(wrapped, new PrintWriter(err), false)).isEqualTo(1);
        assertThat(err.toString())
                .startsWith("This does not fit into the memory of ")
                .doesNotContain("OutOfMemoryError");
    }

    @Test
    void theRootIsAFolderLikeAnyOther() {
        Path root = folder.getRoot();
        assertThat(OutputFolder.below(root, "a")).isEqualTo(root.resolve("a"));
        assertThatThrownBy(() -> OutputFolder.below(root, "..")).isInstanceOf(InputException.class);
    }
}
