package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(err), folder, true);
        assertThat(Eddyreach.execute(terminal, "run", "quick.yaml", "--no-pictures"))
                .isZero();
        assertThat(out.toString()).startsWith("\u001b[1mYes: on at ");
        assertThat(err.toString())
                .startsWith("\rquick [                    ] field of the switch, at most ")
                .contains(" MB 0/1")
                .contains("\rquick [####################] targets 2/2")
                .endsWith(" \r")
                .doesNotContain("\n");
    }
}
