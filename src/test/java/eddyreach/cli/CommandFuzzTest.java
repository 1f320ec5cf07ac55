package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.studies.Damage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Damaged files and odd arguments through the whole program: a place or a sentence, exit code 2, and nothing written. */
@Tag("long")
@Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class CommandFuzzTest {

    private static final int FILES = 200;
    private static final int LINES = 4000;
    private static final int SEED = 20260102;
    private static final long SLOWEST = 2_000_000_000L;
    private static final Pattern INTERNALS =
            Pattern.compile("Exception|Internal error|\\bat [a-z]+\\.[a-z]+\\.|\\bjava\\.|eddyreach\\.[a-z]+\\.[A-Z]");
    private static final Pattern HELP = Pattern.compile("(?s)(-[hV]|--help|--version).*");

    private static final List<String> ODD = List.of(
            "",
            " ",
            "\0",
            "\n",
            "-",
            "--",
            "---",
            "@",
            "@.",
            "@@x",
            "=",
            "-1",
            "NaN",
            "1e999",
            "10um",
            "5 mm",
            "-5 mm",
            "0 mm",
            "5 kg",
            "zinc",
            "zinc 8 um",
            "zinc 8 um 9 um",
            "p14-referenc",
            "..",
            "../..",
            "/",
            "/dev/null",
            "~",
            "*",
            "%s%n",
            "${x}",
            "\u001b[31m",
            "\ud83d\ude00",
            "\ud800",
            "x".repeat(5000),
            "models",
            "none.yaml",
            "taken",
            "png",
            "png,gif",
            "copper?");
    private static final List<String> OPTIONS = List.of(
            "--switch",
            "--material",
            "--thickness",
            "--layer",
            "--diameter",
            "--square",
            "--plate",
            "--into",
            "--formats",
            "--no-pictures",
            "--quiet",
            "--help",
            "-h",
            "-V",
            "-hV",
            "--",
            "--bogus",
            "--swich",
            "-x",
            "--into=",
            "--plate=x",
            "--switch=",
            "--formats=,");

    @TempDir
    private Path folder;

    static Stream<Path> shippedFiles() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String name : List.of("models", "studies", "shared")) {
            try (Stream<Path> list = Files.list(Path.of(name))) {
                list.filter(p -> p.toString().endsWith(".yaml")).forEach(files::add);
            }
        }
        return files.stream().sorted();
    }

    /** What {@code check} passes is not run here: whatever it refuses, the other commands must refuse as well. */
    @ParameterizedTest
    @MethodSource("shippedFiles")
    void damagedFiles(Path shipped) throws IOException {
        String kind = shipped.getName(0).toString();
        String name = kind.equals("shared") ? "shared/materials.yaml" : "x.yaml";
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Pattern placed = Pattern.compile(Pattern.quote(name)
                + ":[1-9][0-9]*:[1-9][0-9]*( [^\\n]*)?: [^\\n]+|and [0-9]+ more"
                + "|1 error\\.|[0-9]+ errors\\.|1 error; nothing was run\\.|[0-9]+ errors; nothing was run\\.");
        Damage damage = new Damage(Files.readAllBytes(shipped), SEED);
        int refused = 0;
        for (int i = 0; i < FILES; i++) {
            Files.write(file, damage.number(i));
            List<String> before = Session.files(folder);
            Session s = timed("check", kind.equals("shared") ? "m18-derating" : name);
            if (s.code() == 0) {
                assertThat(s.err()).as("%d", i).isEmpty();
            } else {
                refused++;
                assertRefused(s, placed, i);
                String[] more = switch (kind) {
                    case "models" -> new String[] {"ask", "--switch", name, "--material", "copper", "--into", "out"};
                    case "studies" -> new String[] {"run", name, "--into", "out"};
                    default -> new String[] {"run", "m18-derating", "--into", "out"};
                };
                assertRefused(timed(more), placed, i);
            }
            assertThat(Session.files(folder)).as("files after %d", i).isEqualTo(before);
        }
        assertThat(refused).isGreaterThan(FILES / 4);
    }

    private static void assertRefused(Session s, Pattern placed, int number) {
        assertThat(s.code()).as("%d: %s", number, s.err()).isEqualTo(2);
        assertThat(s.out()).as("%d", number).isEmpty();
        assertThat(s.err().lines())
                .as("%d", number)
                .hasSizeGreaterThanOrEqualTo(2)
                .allMatch(l -> placed.matcher(l).matches())
                .noneMatch(l -> INTERNALS.matcher(l).find());
    }

    private Session timed(String... args) {
        long start = System.nanoTime();
        Session s = Session.in(folder, args);
        assertThat(System.nanoTime() - start).as(String.join(" ", args)).isLessThan(SLOWEST);
        return s;
    }

    /**
     * None of these lines can start a computation: either no study and no switch that they name is there, or a switch
     * is and no material.
     */
    @Test
    void oddArguments() throws IOException {
        Files.writeString(folder.resolve("taken"), "a file");
        Files.createDirectories(folder.resolve("models"));
        Files.writeString(folder.resolve("bad.yaml"), "eddyreach: study\n");
        List<String> before = Session.files(folder);
        Random random = new Random(SEED);
        for (int i = 0; i < LINES; i++) {
            List<String> args = arguments(random);
            Session s = timed(args.toArray(String[]::new));
            String shown = i + ": " + args;
            assertThat(s.err()).as(shown).doesNotContainPattern(INTERNALS);
            if (s.code() == 0) {
                assertThat(args).as(shown).anyMatch(a -> HELP.matcher(a).matches());
                assertThat(s.err()).as(shown).isEmpty();
            } else {
                assertThat(s.code()).as(shown).isEqualTo(2);
                assertThat(s.out()).as(shown).isEmpty();
                assertThat(s.err())
                        .as(shown)
                        .matches("(?s).+\n(How it is used: eddyreach( run| ask| check)? --help|[0-9]+ errors?\\."
                                + "|[0-9]+ errors?; nothing was run\\.)\n");
            }
            assertThat(Session.files(folder)).as(shown).isEqualTo(before);
        }
    }

    private static List<String> arguments(Random random) {
        List<String> words = new ArrayList<>(ODD);
        words.add("bad.yaml");
        // no name of a study or switch together with a material
        words.addAll(random.nextBoolean() ? List.of("copper", "fe360", "fe360 1 mm") : List.of("p14-reference"));
        List<String> args = new ArrayList<>();
        args.add(List.of("run", "ask", "check", "rnu", "").get(random.nextInt(5)));
        if (args.get(0).equals("check")) {
            words.remove("p14-reference");
        }
        int count = 1 + random.nextInt(7);
        for (int i = 0; i < count; i++) {
            String option = OPTIONS.get(random.nextInt(OPTIONS.size()));
            String word = words.get(random.nextInt(words.size()));
            switch (random.nextInt(4)) {
                case 0 -> args.add(word);
                case 1 -> args.add(option);
                case 2 -> args.addAll(List.of(option, word));
                default -> args.add(option + "=" + word);
            }
        }
        return args;
    }

    @ParameterizedTest
    @MethodSource("names")
    void oddNamesOfFoldersThatAreFine(String name) throws IOException {
        Files.writeString(folder.resolve("quick.yaml"), RunCommandTest.QUICK);
        Session s = Session.in(folder, "run", "quick.yaml", "--no-pictures", "--quiet", "--into", name);
        assertThat(s).isEqualTo(new Session(0, "", ""));
        assertThat(Session.files(folder.resolve(name)))
                .containsExactly(
                        "distances.csv",
                        "impedance.csv",
                        "page.html",
                        "page.md",
                        "record.html",
                        "record.md",
                        "result.json");
    }

    static List<String> names() {
        return List.of("a b/c", "@x", "%s", "-", "x;y");
    }
}
