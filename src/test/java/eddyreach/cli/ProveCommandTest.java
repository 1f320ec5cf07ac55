package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.proof.ProofResult;
import eddyreach.proof.SampleProof;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ProveCommandTest {

    @TempDir
    private Path folder;

    @Test
    void everythingIsMetAndFitsTheTerminal() throws IOException {
        Session s = Session.in(folder, "prove");
        assertThat(s.err()).isEmpty();
        assertThat(s.out())
                .startsWith("Special functions\n")
                .contains(" check values, all met.\nPages: results/proof/proof.html, proof.md\n");
        assertThat(s.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(s.code()).isZero();
        assertThat(Session.files(folder))
                .containsExactly("results", "results/proof", "results/proof/proof.html", "results/proof/proof.md");
    }

    @Test
    void aValueThatIsNotMetIsAFailure() throws IOException {
        assertThat(run(SampleProof.mixed())).isEqualTo(1);
        assertThat(Files.readString(folder.resolve("here/proof.md"))).contains("NOT met");
        assertThat(run(SampleProof.good())).isZero();
        assertThat(Files.readString(folder.resolve("here/proof.md"))).contains("all met");
    }

    private int run(ProofResult result) {
        Terminal terminal = new Terminal(
                new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), folder, false, false, 80);
        return new CommandLine(new ProveCommand(terminal, progress -> result)).execute("--into", "here");
    }

    @Test
    void whatCannotBeWrittenIsToldBeforeAnythingIsComputed() throws IOException {
        Files.writeString(folder.resolve("taken"), "a file");
        assertThat(Session.in(folder, "prove", "--into", "taken"))
                .isEqualTo(new Session(1, "", "Cannot read or write: taken: a file of this name is in the way\n"));
        assertThat(Session.in(folder, "prove", "--into", " "))
                .isEqualTo(new Session(2, "", "--into: the name of the folder is empty\n1 error; nothing was run.\n"));
        assertThat(Session.in(folder, "prove", "more"))
                .isEqualTo(new Session(
                        2, "", "Unmatched argument at index 1: 'more'\nHow it is used: eddyreach prove --help\n"));
    }
}
