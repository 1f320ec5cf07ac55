package eddyreach.model.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.model.read.ModelFiles;
import eddyreach.units.Dimension;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NodeTest {

    @TempDir
    private Path folder;

    private String failure(byte[] content, Consumer<Node> binding) {
        SourceFile source = ModelFiles.write(folder, "x.yaml", content);
        InputException e = catchThrowableOfType(InputException.class, () -> {
            Problems problems = new Problems();
            Node root = YamlTree.open(source, "study", problems);
            binding.accept(root);
            root.finish();
            problems.throwIfAny();
        });
        return e == null ? "" : ModelFiles.message(e, folder);
    }

    private String failure(String text, Consumer<Node> binding) {
        return failure(text.getBytes(StandardCharsets.UTF_8), binding);
    }

    private static void bindAll(Node root) {
        root.text("name");
        root.quantity("frequency", Dimension.FREQUENCY, 1e3, 1e7);
        root.quantity("size", Dimension.LENGTH, 0, 0.1, 0);
        root.integer("points", 2, 100, 10);
        root.flag("pictures", true);
        root.optionalChoice("kind", Map.of("near", 1, "far", 2));
        root.optionalMap("group").ifPresent(g -> g.text("inner"));
        root.optionalList("items").forEach(Node::text);
    }

    @Test
    void everyErrorIsToldAtOnceWithItsPlace() {
        String text = """
                eddyreach: study
                name: [a, b]
                frequncy: 200 kHz
                size: -3 mm
                points: 2.5
                pictures: true
                kind: middle
                group:
                  inner: x
                  innner: y
                items: {}
                size: 4 mm
                zzz: 1
                """;
        assertThat(failure(text, NodeTest::bindAll)).isEqualTo("""
                        x.yaml:1:1 frequency: missing, needs a frequency such as 200 kHz
                        x.yaml:2:7 name: got a list, needs a text
                        x.yaml:3:1 frequncy: unknown key, did you mean "frequency"?
                        x.yaml:4:7 size: -3 mm is out of range, needs 0 mm to 100 mm
                        x.yaml:5:9 points: got 2.5, needs a whole number from 2 to 100
                        x.yaml:6:11 pictures: got "true", needs no or yes
                        x.yaml:7:7 kind: got "middle", needs far or near
                        x.yaml:10:3 group.innner: unknown key, did you mean "inner"?
                        x.yaml:11:8 items: got a group of keys, needs a list (lines that begin with "- ")
                        x.yaml:12:1 size: the key stands twice, first in line 4
                        x.yaml:13:1 zzz: unknown key, known here: eddyreach, name, frequency, size, points, pictures,\
                         kind, group, items""");
    }

    static Stream<String[]> single() {
        return Stream.of(
                new String[] {
                    "frequency: 0.6 mm",
                    "x.yaml:3:12 frequency: got a length (0.6 mm), needs a frequency such as 200 kHz"
                },
                new String[] {"frequency: 5,5 kHz", "x.yaml:3:12 frequency: 5,5 kHz: decimal comma, write 5.5 kHz"},
                new String[] {"frequency: .nan", "x.yaml:3:12 frequency: .nan: not a finite number"},
                new String[] {"frequency: -.inf", "x.yaml:3:12 frequency: -.inf: not a finite number"},
                new String[] {
                    "frequency: 500 Hz", "x.yaml:3:12 frequency: 500 Hz is out of range, needs 1 kHz to 10 MHz"
                },
                new String[] {"frequency: 200", "x.yaml:3:12 frequency: 200: no unit, needs a frequency such as 200 kHz"
                },
                new String[] {"frequency:", "x.yaml:3:11 frequency: no value, needs a frequency such as 200 kHz"},
                new String[] {"frequency: ~", "x.yaml:3:12 frequency: no value, needs a frequency such as 200 kHz"},
                new String[] {
                    "frequency: {a: 1}", "x.yaml:3:12 frequency: got a group of keys, needs a frequency such as 200 kHz"
                },
                new String[] {
                    "frequency: &f 1 MHz",
                    "x.yaml:3:12 frequency: anchors (&) and aliases (*) are not accepted, write the value out"
                },
                new String[] {"frequency: !!str 1 MHz", "x.yaml:3:12 frequency: tags (!) are not accepted, leave it out"
                },
                new String[] {
                    "frequency: 1 MHz\n? [a, b]\n: c", "x.yaml:4:3: a key must be a word, not a list or a group of keys"
                },
                new String[] {
                    "frequency: 1 MHz\nitems: []",
                    "x.yaml:4:8 items: the list is empty; give an entry or leave the key out"
                },
                new String[] {"frequency: 1 MHz\nitems: [a, [b]]", "x.yaml:4:12 items[2]: got a list, needs a text"},
                new String[] {"frequency: 1 MHz\ngroup: a", "x.yaml:4:8 group: got \"a\", needs a group of keys"},
                new String[] {
                    "frequency: 1 MHz\nkind: near: far",
                    "x.yaml:4:11: a second \": \" in one line, or wrong indentation; put a text that holds \": \" in quotes"
                },
                new String[] {"frequency: 1 MHz\ngroup:\n\tinner: x", "x.yaml:5:1: a tab in the indentation, use spaces"
                },
                new String[] {"frequency: 1 MHz\n---\nx: y", "x.yaml:4:1: a second document begins, a file holds one"},
                new String[] {
                    "frequency: 1 MHz\n  bad: y",
                    "x.yaml:4:6: a second \": \" in one line, or wrong indentation; put a text that holds \": \" in quotes"
                });
    }

    @ParameterizedTest
    @MethodSource("single")
    void oneError(String line, String message) {
        assertThat(failure("eddyreach: study\nname: x\n" + line + "\n", NodeTest::bindAll))
                .isEqualTo(message);
    }

    @Test
    void wholeFile() {
        assertThat(failure("", NodeTest::bindAll)).isEqualTo("x.yaml:1:1: the file is empty");
        assertThat(failure("# only a comment\n", NodeTest::bindAll)).isEqualTo("x.yaml:1:1: the file is empty");
        assertThat(failure("just words", NodeTest::bindAll))
                .isEqualTo("x.yaml:1:1: holds no keys, needs \"eddyreach: study\" and what belongs to it");
        assertThat(failure("name: x", NodeTest::bindAll))
                .isEqualTo("x.yaml:1:1: the key \"eddyreach: study\" that tells the kind of file is missing");
        assertThat(failure("eddyreach: switch", NodeTest::bindAll))
                .isEqualTo("x.yaml:1:12 eddyreach: got a file of kind \"switch\", needs study");
    }

    @Test
    void encodings() {
        String good = "eddyreach: study\nname: x\nfrequency: 1 MHz\n";
        assertThat(failure("\ufeff" + good, NodeTest::bindAll)).isEmpty();
        assertThat(failure(good.replace("\n", "\r\n"), NodeTest::bindAll)).isEmpty();
        assertThat(failure(good.getBytes(StandardCharsets.UTF_16), NodeTest::bindAll))
                .isEqualTo("x.yaml:1:1: the file is in UTF-16, save it as UTF-8");
        assertThat(failure(good.getBytes(StandardCharsets.UTF_16LE), NodeTest::bindAll))
                .isEqualTo("x.yaml:1:2: a zero byte: this is no text in UTF-8");
        assertThat(failure(good.getBytes(Charset.forName("UTF-32")), NodeTest::bindAll))
                .isEqualTo("x.yaml:1:1: a zero byte: this is no text in UTF-8");
        assertThat(failure((good + "note: \u00e4").getBytes(StandardCharsets.ISO_8859_1), NodeTest::bindAll))
                .isEqualTo("x.yaml:4:7: the file is not in UTF-8 from here on, save it as UTF-8");
        assertThat(failure(good + "no\u0007te: x", NodeTest::bindAll))
                .isEqualTo("x.yaml:4:3: the character U+0007 is not allowed in a text file");
    }
}
