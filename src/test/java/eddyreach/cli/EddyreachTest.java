package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.oscillator.UnworkableException;
import eddyreach.switching.NoTrimException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EddyreachTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"", "run", "ask", "check", "list", "prove"})
    void helpFitsTheTerminalAndShowsExamples(String command) {
        Session s = Session.in(folder, (command + " --help").strip().split(" "));
        assertThat(s.code()).isZero();
        assertThat(s.err()).isEmpty();
        assertThat(s.out()).startsWith(("Usage: eddyreach " + command).strip()).contains("\nExamples:\n  eddyreach ");
        assertThat(s.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void version() {
        assertThat(Session.in(folder, "--version")).isEqualTo(new Session(0, "Eddyreach (not packaged)\n", ""));
    }

    @Test
    void wrongUsageNamesWhatIsWrongAndWhatWasMeant() {
        assertThat(Session.in(folder, "runn"))
                .isEqualTo(
                        new Session(
                                2,
                                "",
                                "Unmatched argument at index 0: 'runn'\nPerhaps meant: run\nHow it is used: eddyreach --help\n"));
        assertThat(Session.in(folder, "run"))
                .isEqualTo(new Session(
                        2, "", "Missing required parameter: 'STUDY'\nHow it is used: eddyreach run --help\n"));
        assertThat(Session.in(folder, "run", "m18-derating", "--formats", "gif"))
                .isEqualTo(new Session(
                        2,
                        "",
                        "Invalid value for option '--formats' (FORMAT): expected one of [PNG, SVG]"
                                + " (case-insensitive) but was 'gif'\nHow it is used: eddyreach run --help\n"));
        assertThat(Session.in(folder, "run", "m18-derating", "--formats", ","))
                .isEqualTo(
                        new Session(
                                2,
                                "",
                                "--formats names no format, needs png or svg or png,svg\nHow it is used: eddyreach run --help\n"));
        assertThat(Session.in(folder, "run", "m18-derating", "--formats", "svg", "--no-pictures"))
                .isEqualTo(new Session(
                        2,
                        "",
                        "--no-pictures and --formats exclude each other\nHow it is used: eddyreach run --help\n"));
    }

    /** The library would read arguments from a file named so, and fail with a stack trace at a folder. */
    @Test
    void anArgumentThatBeginsWithAnAtSignIsOnlyAName() {
        assertThat(Session.in(folder, "run", "@.").err()).isEqualTo("@.: file not found\n1 error; nothing was run.\n");
        assertThat(Session.in(folder, "@.").code()).isEqualTo(2);
    }

    @Test
    void onlyWrongInputIsCalledWrongInput() {
        StringWriter text = new StringWriter();
        PrintWriter err = new PrintWriter(text);
        assertThat(Failures.execution(new SelfCheckException("the mesh does not resolve the problem"), err, false))
                .isEqualTo(1);
        assertThat(Failures.execution(new NoTrimException("the switch cannot be trimmed"), err, false))
                .isEqualTo(1);
        assertThat(Failures.execution(new NoOscillationException("the tank does not resonate"), err, false))
                .isEqualTo(1);
        assertThat(Failures.execution(new MemoryException(3_000_000_000L, 1_000_000_000L), err, false))
                .isEqualTo(1);
        assertThat(Failures.execution(
                        new UnworkableException("the oscillation has collapsed", "loss", 3, "S", 0, 2), err, false))
                .isEqualTo(2);
        assertThat(Failures.execution(new ArithmeticException("/ by zero"), err, false))
                .isEqualTo(1);
        assertThat(Failures.execution(new IllegalArgumentException("radius"), err, false))
                .isEqualTo(1);
        assertThat(text.toString().replace(System.lineSeparator(), "\n"))
                .isEqualTo("""
                The computation failed: the mesh does not resolve the problem
                The computation failed: the switch cannot be trimmed
                The computation failed: the tank does not resonate
                The computation failed: %s
                the oscillation has collapsed; loss 3 S: must be at least 0 S and at most 2 S
                Internal error, a mistake in the program and not in the input: java.lang.ArithmeticException: / by zero
                The option --trace shows where it happened.
                Internal error, a mistake in the program and not in the input: java.lang.IllegalArgumentException: radius
                The option --trace shows where it happened.
                """.formatted(new MemoryException(3_000_000_000L, 1_000_000_000L).getMessage()));
        Failures.execution(new IllegalArgumentException("radius"), err, true);
        assertThat(text.toString()).contains("at eddyreach.cli.EddyreachTest.onlyWrongInput");
    }

    @Test
    void withoutACommandItHelpsAndWritesNothing() throws java.io.IOException {
        Session s = Session.in(folder);
        assertThat(s).isEqualTo(Session.in(folder, "--help"));
        assertThat(Session.files(folder)).isEmpty();
    }
}
