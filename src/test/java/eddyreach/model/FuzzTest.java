package eddyreach.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Damaged input ends in a model or in an InputException that names a place; nothing else may come out. */
class FuzzTest {

    private static final int MUTATIONS = 300;
    private static final Materials MATERIALS = ModelFiles.materials();
    private static final Library LIBRARY = new Library(Path.of(""));
    private static final Pattern PLACED = Pattern.compile("(?s).*x\\.yaml:[1-9][0-9]*:[1-9][0-9]*[ :].*");
    private static final Pattern INTERNALS =
            Pattern.compile("Exception|\\bjava\\b|eddyreach\\.[a-z]+\\.|\\bnull\\b|NaN");
    private static final List<String> TOKENS = List.of(
            "0",
            "-1",
            "NaN",
            ".inf",
            "1e400",
            "",
            "~",
            "[]",
            "{}",
            "[[",
            "}",
            "\"",
            "'",
            "|",
            ">",
            "&a",
            "*a",
            "!!int",
            "? ",
            ": ",
            "- ",
            "#",
            "%",
            "@",
            "`",
            "\t",
            "5,5 mm",
            "5 mm",
            "200 kHz",
            "true",
            "<<: *x",
            "---",
            "...",
            "\0",
            "\ufeff",
            "\ud83d\ude00",
            "%YAML 9.9",
            "0x10",
            "1_000",
            "\u2028",
            "copper");

    @TempDir
    private Path folder;

    static Stream<Path> shippedFiles() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String name : List.of("models", "studies", "shared")) {
            if (Files.isDirectory(Path.of(name))) {
                try (Stream<Path> list = Files.list(Path.of(name))) {
                    list.filter(p -> p.toString().endsWith(".yaml")).forEach(files::add);
                }
            }
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(2);
        return files.stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("shippedFiles")
    void damagedFiles(Path path) throws IOException {
        Consumer<SourceFile> reader = switch (path.getName(0).toString()) {
            case "shared" -> Materials::read;
            case "studies" -> s -> StudyReader.read(s, LIBRARY);
            default -> s -> SwitchReader.read(s, MATERIALS);
        };
        damage(Files.readAllBytes(path), reader);
    }

    @Test
    void damagedStudy() {
        String study = """
                eddyreach: study
                name: factors and a plated part
                note: a text
                kind: materials
                switch: p14-reference
                materials: [fe360, stainless-304, copper]
                thickness: 1 mm
                shape: disc
                diameter: 20 mm
                targets:
                  - name: plated
                    label: zinc on steel
                    shape: square
                    side: 20 mm
                    layers:
                      - {material: zinc, thickness: 8 um}
                      - {material: fe360, thickness: 3 mm}
                distances:
                  from: 0.5 mm
                  to: 10 mm
                  points: 40
                accuracy: 0.02 mm
                field pictures: false
                """;
        damage(study.getBytes(StandardCharsets.UTF_8), s -> StudyReader.read(s, LIBRARY));
    }

    private void damage(byte[] original, Consumer<SourceFile> reader) {
        Random random = new Random(20260101);
        int refused = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            byte[] damaged = switch (i % 3) {
                case 0 -> bytes(original, random);
                case 1 -> tokens(new String(original, StandardCharsets.UTF_8), random);
                default -> lines(new String(original, StandardCharsets.UTF_8), random);
            };
            SourceFile source = ModelFiles.write(folder, "x.yaml", damaged);
            try {
                reader.accept(source);
            } catch (InputException e) {
                refused++;
                assertWellTold(e, i);
            } catch (RuntimeException e) {
                throw new AssertionError("mutation " + i + ":\n" + new String(damaged, StandardCharsets.UTF_8), e);
            }
        }
        // most damage is found; what stays unseen hits comments, texts and sources
        assertThat(refused).isGreaterThan(MUTATIONS / 4);
    }

    private static void assertWellTold(InputException e, int mutation) {
        for (Problem problem : e.problems()) {
            assertThat(problem.toString()).as("mutation %d", mutation).matches(PLACED);
            // without what it quotes from the damaged file
            String words = problem.message().replaceAll("\"[^\"]*\"|^.*?: |^got .*?, needs|\\([^)]*\\)", "");
            assertThat(words).as("mutation %d: %s", mutation, problem).doesNotContainPattern(INTERNALS);
        }
    }

    private static byte[] bytes(byte[] original, Random random) {
        byte[] damaged = original.clone();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(8) == 0 ? Arrays.copyOf(damaged, random.nextInt(damaged.length)) : damaged;
    }

    private static byte[] tokens(String text, Random random) {
        String[] words = text.split("(?<=[ \n])");
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            int at = random.nextInt(words.length);
            String token = TOKENS.get(random.nextInt(TOKENS.size()));
            String end = words[at].endsWith("\n") ? "\n" : " ";
            words[at] = random.nextBoolean() ? token + end : words[at] + token + end;
        }
        return String.join("", words).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] lines(String text, Random random) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n")));
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            int at = random.nextInt(lines.size());
            int other = random.nextInt(lines.size());
            switch (random.nextInt(5)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, lines.get(other));
                case 2 -> Collections.swap(lines, at, other);
                case 3 -> lines.set(at, " ".repeat(random.nextInt(6)) + lines.get(at));
                default -> lines.set(at, lines.get(at).strip());
            }
        }
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    private void refused(String text, String message) {
        refused(text.getBytes(StandardCharsets.UTF_8), message);
    }

    private void refused(byte[] content, String message) {
        SourceFile source = ModelFiles.write(folder, "x.yaml", content);
        assertThatThrownBy(() -> SwitchReader.read(source, MATERIALS))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("x.yaml")
                .hasMessageContaining(message);
    }

    @Test
    void hostileFiles() {
        StringBuilder bomb = new StringBuilder("eddyreach: switch\na0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1));
        }
        refused(bomb.toString(), "x.yaml:2:5 a0: anchors (&) and aliases (*) are not accepted");
        refused("eddyreach: switch\ncore: &c [*c]\n", "anchors (&) and aliases (*) are not accepted");
        refused("eddyreach: switch\nname: " + "x".repeat(10_000_000), "larger than 1 MB, the most that is read");
        refused("eddyreach: switch\na: " + "[".repeat(10_000) + "]".repeat(10_000), "nested deeper than 16 levels");
        refused("eddyreach: switch\na: " + "{b: ".repeat(10_000), "nested deeper than 16 levels");
        refused("eddyreach: switch\na:\n" + "- ".repeat(10_000), "nested deeper than 16 levels");
        refused("[".repeat(500_000), "nested deeper than 16 levels");
        refused("eddyreach: switch".getBytes(StandardCharsets.UTF_16), "x.yaml:1:1: the file is in UTF-16");
        refused("eddyreach: switch\n" + "k: 1\n".repeat(20_000), "and ");
        refused("eddyreach: switch\nturns: " + "9".repeat(200_000), "unknown key");
        refused("eddyreach: switch\nname: a\n...\n---\nname: b\n", "a second document begins");
        refused("%YAML 99.9\n---\neddyreach: switch\n", "");
        refused("%YAML 1.99999999999999999\n---\neddyreach: switch\n", "");
        refused("\"\\ud800\": 1\neddyreach: switch\n", "");
        refused("\"\\U00110000\": 1\neddyreach: switch\n", "");
    }
}
