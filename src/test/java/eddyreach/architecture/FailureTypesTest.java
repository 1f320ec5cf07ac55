package eddyreach.architecture;

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

/** Failures have types: what may become a note, and what ends the run. */
class FailureTypesTest {

    private static final Pattern CATCH = Pattern.compile("catch \\(([A-Za-z| ]+) \\w+\\) \\{\\s*([^;]*)");

    private static final Pattern PLAIN = Pattern.compile("throw new (?:Arithmetic|Runtime)Exception\\(");

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(p -> p.toString().endsWith(".java")).toList();
        }
    }

    /** A failed self-check or too little memory is caught only to say more about it. */
    @Test
    void onlyPropertiesOfTheSwitchBecomeNotes() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Path file : sources()) {
            Matcher m = CATCH.matcher(Files.readString(file));
            while (m.find()) {
                String types = m.group(1);
                boolean said = m.group(2).startsWith("throw new SelfCheckException");
                if (types.matches(".*\\b(SelfCheck|SingularMatrix|Memory)Exception.*") && !said
                        || types.matches(".*\\b(Arithmetic|Runtime)Exception.*")) {
                    wrong.add(file + ": " + types);
                }
                if (types.equals("NoTrimException | NoOscillationException")) {
                    notes.add(file.getFileName().toString());
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(notes).containsExactlyInAnyOrder("Assessor.java", "MountedAssurer.java", "TrialSwitches.java");
    }

    /** A plain one is shown as a mistake in the program, so nobody throws it on purpose. */
    @Test
    void nobodyThrowsAPlainOne() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : sources()) {
            if (PLAIN.matcher(Files.readString(file)).find()) {
                wrong.add(file.toString());
            }
        }
        assertThat(wrong).isEmpty();
    }
}
