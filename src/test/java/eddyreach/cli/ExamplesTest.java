package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What README and the help show as examples can be typed as it stands. */
class ExamplesTest {

    /** A line may go on after a backslash, which a session shows as a stroke. */
    private static final Pattern COMMAND = Pattern.compile("(?m)^ {2,4}(eddyreach (?:.*[\\\\/]\\n)*.*)$");

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final List<String> COMMANDS =
            List.of("run", "ask", "check", "list", "show", "new", "prove", "completion");
    private static final String IN_THE_WAY = "in-the-way";

    @TempDir
    private Path folder;

    static Stream<String> readme() throws IOException {
        return found(Files.readString(Path.of("README.md"))).stream();
    }

    static Stream<String> help() {
        Path here = Path.of("target");
        return Stream.concat(
                        Stream.of(Session.in(here, "--help")),
                        COMMANDS.stream().map(c -> Session.in(here, c, "--help")))
                .flatMap(s -> found(s.out().substring(s.out().indexOf("Examples:"))).stream())
                .distinct();
    }

    private static List<String> found(String text) {
        return COMMAND.matcher(text).results().map(m -> m.group(1)).toList();
    }

    @Test
    void thereAreExamplesOfEveryCommand() throws IOException {
        assertThat(readme()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(help().map(line -> line.split(" ")[1]).distinct()).containsExactlyInAnyOrderElementsOf(COMMANDS);
    }

    @ParameterizedTest
    @MethodSource({"readme", "help"})
    void anExampleCanBeTyped(String line) throws IOException {
        List<String> words = words(line);
        String command = words.get(0);
        if (!command.equals("new")) {
            for (String kind : List.of("study", "switch")) {
                assertThat(Session.in(folder, "new", kind, "my-" + kind + ".yaml")
                                .code())
                        .isZero();
            }
        }
        if (List.of("run", "ask", "prove").contains(command)) {
            readsItsInputs(words);
        } else {
            Session s = Session.in(folder, words.toArray(String[]::new));
            assertThat(s.err()).isEmpty();
            assertThat(s.code()).isZero();
        }
    }

    /** A folder that cannot be made is found after everything is read, and before anything is computed. */
    private void readsItsInputs(List<String> words) throws IOException {
        Files.createFile(folder.resolve(IN_THE_WAY));
        int into = words.indexOf("--into");
        if (into < 0) {
            words.addAll(List.of("--into", IN_THE_WAY));
        } else {
            words.set(into + 1, IN_THE_WAY);
        }
        Session s = Session.in(folder, words.toArray(String[]::new));
        assertThat(s.err()).endsWith(IN_THE_WAY + ": a file of this name is in the way\n");
        assertThat(s.err().lines()).hasSize(1);
        assertThat(s.code()).isEqualTo(ExitCode.FAILED);
    }

    /** The first question of README is short enough to be answered. */
    @Test
    void theFirstQuestionIsAnswered() throws IOException {
        List<String> words = words(
                readme().filter(l -> l.startsWith("eddyreach ask")).findFirst().orElseThrow());
        Session s = Session.in(folder, words.toArray(String[]::new));
        assertThat(s.err()).isEmpty();
        assertThat(s.code()).isZero();
        // as README shows it below the question
        assertThat(s.out()).contains("5.44 ± 0.01");
        assertThat(Files.readString(Path.of("README.md"))).contains("5.44 ± 0.01");
    }

    /** What a shell makes of a line, without the program's name and without what it does with the output. */
    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher m = WORD.matcher(line.replaceAll("[\\\\/]\n", " ").replaceFirst(" > .*", ""));
        while (m.find()) {
            words.add(m.group(1) != null ? m.group(1) : m.group(2));
        }
        words.remove(0);
        return words;
    }
}
