package eddyreach.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.read.MountReader;
import eddyreach.model.read.SwitchReader;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Problem;
import eddyreach.model.yaml.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Damaged input ends in a model or in an InputException that names a place; nothing else may come out. */
class FuzzTest {

    private static final int MUTATIONS = 240;
    private static final int MANY = 20_000;
    private static final int SEED = 20260101;
    private static final long SLOWEST = 2_000_000_000L;
    private static final Materials MATERIALS = ModelFiles.materials();
    private static final Library LIBRARY = new Library(Path.of(""));
    private static final Pattern PLACED = Pattern.compile("(?s).*x\\.yaml:[1-9][0-9]*:[1-9][0-9]*[ :].*");
    private static final Pattern INTERNALS =
            Pattern.compile("Exception|\\bjava\\b|eddyreach\\.[a-z]+\\.|\\bnull\\b|NaN");

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
        damage(Files.readAllBytes(path), reader(path), MUTATIONS);
    }

    @Tag("long")
    @Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    @ParameterizedTest
    @MethodSource("shippedFiles")
    void filesDamagedInManyWays(Path path) throws IOException {
        damage(Files.readAllBytes(path), reader(path), MANY);
    }

    private static Consumer<SourceFile> reader(Path path) {
        return switch (path.getName(0).toString()) {
            case "shared" -> Materials::read;
            case "studies" -> s -> StudyReader.read(s, LIBRARY);
            default ->
                LIBRARY.mounts().contains(new SourceFile.OnDisk(path).id())
                        ? s -> MountReader.read(s, MATERIALS, Optional.of(LIBRARY.switchModel("m18-flush")))
                        : s -> SwitchReader.read(s, MATERIALS);
        };
    }

    @Test
    void damagedStudy() throws IOException {
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
                field pictures: no
                """;
        damage(study.getBytes(StandardCharsets.UTF_8), s -> StudyReader.read(s, LIBRARY), MUTATIONS);
    }

    private void damage(byte[] original, Consumer<SourceFile> reader, int count) throws IOException {
        Damage damage = new Damage(original, SEED);
        Map<Thread, Path> folders = new ConcurrentHashMap<>();
        // most damage is found; what stays unseen hits comments, texts and sources
        assertThat(IntStream.range(0, count)
                        .parallel()
                        .filter(i -> refused(damage, i, folders, reader))
                        .count())
                .isGreaterThan(count / 4);
        for (Path own : folders.values()) {
            try (Stream<Path> files = Files.list(own)) {
                assertThat(files).as("nothing is written by a reader").containsExactly(own.resolve("x.yaml"));
            }
        }
    }

    private boolean refused(Damage damage, int number, Map<Thread, Path> folders, Consumer<SourceFile> reader) {
        byte[] damaged = damage.number(number);
        SourceFile source =
                ModelFiles.write(folders.computeIfAbsent(Thread.currentThread(), t -> newFolder()), "x.yaml", damaged);
        long start = System.nanoTime();
        try {
            reader.accept(source);
            return false;
        } catch (InputException e) {
            assertWellTold(e, number);
            return true;
        } catch (RuntimeException e) {
            throw new AssertionError("mutation " + number + ":\n" + new String(damaged, StandardCharsets.UTF_8), e);
        } finally {
            assertThat(System.nanoTime() - start)
                    .as("time of mutation %d, ns", number)
                    .isLessThan(SLOWEST);
        }
    }

    private Path newFolder() {
        try {
            return Files.createTempDirectory(folder, "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertWellTold(InputException e, int mutation) {
        for (Problem problem : e.problems()) {
            if (!PLACED.matcher(problem.toString()).matches()) {
                throw new AssertionError("mutation " + mutation + " has no place: " + problem);
            }
            // without what it quotes from the damaged file
            String words = problem.message().replaceAll("\"[^\"]*\"|^.*?: |^got .*?, needs|\\([^)]*\\)", "");
            assertThat(words).as("mutation %d: %s", mutation, problem).doesNotContainPattern(INTERNALS);
        }
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
        refused("eddyreach: switch\ncore: {material: \"\\u2028\"}\n", "core.material: the text is empty");
        refused("eddyreach: switch\nturns: " + "9".repeat(200_000), "unknown key");
        refused("eddyreach: switch\nname: a\n...\n---\nname: b\n", "a second document begins");
        refused("%YAML 99.9\n---\neddyreach: switch\n", "");
        refused("%YAML 1.99999999999999999\n---\neddyreach: switch\n", "");
        refused("\"\\ud800\": 1\neddyreach: switch\n", "");
        refused("\"\\U00110000\": 1\neddyreach: switch\n", "");
    }
}
