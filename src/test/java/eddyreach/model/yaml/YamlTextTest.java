package eddyreach.model.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.model.read.ModelFiles;
import eddyreach.units.Dimension;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text that is no YAML, or YAML that is more than a file of this program holds; each with its place. */
class YamlTextTest {

    @TempDir
    private Path folder;

    private String failure(String text) {
        return failure(text.getBytes(StandardCharsets.UTF_8));
    }

    private String failure(byte[] content) {
        InputException e = catchThrowableOfType(InputException.class, () -> {
            Problems problems = new Problems();
            Node root = YamlTree.open(ModelFiles.write(folder, "x.yaml", content), "study", problems);
            root.text("name", "");
            root.note("note");
            root.integer("points", 2, 100, 10);
            root.optionalList("list").forEach(Node::text);
            root.finish();
            problems.throwIfAny();
        });
        return e == null ? "" : ModelFiles.message(e, folder);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "list: [a, b | x.yaml:2:12: not valid YAML (expected ',' or ']', but got <stream end...)",
                "- a | x.yaml:2:1: the indentation or a bracket does not fit to the lines before",
                "name: \"a | x.yaml:2:9: the file ends within a quoted text",
                "name: a;key | x.yaml:3:4: a key without a colon and a value",
                "name: \"\\q\" | x.yaml:2:9: not valid YAML (found unknown escape character q(113))",
                "name: \"\\UFFFFFFFF\" | x.yaml:1:1: an escape such as \\UFFFFFFFF stands for no character; the last is \\U0010FFFF",
                "name: a;---;name: b | x.yaml:3:1: a second document begins, a file holds one",
                "list: !!seq [a] | x.yaml:2:7 list: tags (!) are not accepted, leave it out",
                "list: [&a b, c] | x.yaml:2:8 list[1]: anchors (&) and aliases (*) are not accepted, write the value out",
                "list: [*a, c] | x.yaml:2:8 list[1]: anchors (&) and aliases (*) are not accepted, write the value out",
                "&k name: a | x.yaml:2:1: anchors (&) and aliases (*) are not accepted, write the value out",
                "points: 1 | x.yaml:2:9 points: got 1, needs a whole number from 2 to 100",
                "points: 101 | x.yaml:2:9 points: got 101, needs a whole number from 2 to 100",
                "points: [2] | x.yaml:2:9 points: got a list, needs a whole number from 2 to 100",
                "points: 1234567890 | x.yaml:2:9 points: got 1234567890, needs a whole number from 2 to 100",
                "name: '' | x.yaml:2:7 name: the text is empty",
                "list: [' '] | x.yaml:2:8 list[1]: the text is empty",
                "name: \"a\\nb\" | x.yaml:2:7 name: needs one line of at most 120 characters",
                "name: \"a\\ab\" | x.yaml:2:7 name: holds the control character U+0007, leave it out",
                "note: \"a\\ab\" | x.yaml:2:7 note: holds the control character U+0007, leave it out",
                "note: [a] | x.yaml:2:7 note: got a list, needs a text",
            })
    void whatIsWrongAndWhere(String lines, String message) {
        assertThat(failure("eddyreach: study\n" + lines.replace(";", "\n"))).isEqualTo(message);
    }

    @Test
    void justPossible() {
        assertThat(failure("eddyreach: study\npoints: 2\n")).isEmpty();
        assertThat(failure("eddyreach: study\npoints: 100\n")).isEmpty();
        assertThat(failure("eddyreach: study\nname: " + "a".repeat(120) + "\n")).isEmpty();
        assertThat(failure("eddyreach: study\nname: " + "a".repeat(121) + "\n"))
                .isEqualTo("x.yaml:2:7 name: needs one line of at most 120 characters");
        assertThat(failure("eddyreach: study\nnote: " + "a".repeat(4000) + "\n"))
                .isEmpty();
        assertThat(failure("eddyreach: study\nnote: " + "a".repeat(4001) + "\n"))
                .isEqualTo("x.yaml:2:7 note: longer than 4000 characters");
    }

    @Test
    void nestedNoDeeperThanSixteenLevels() {
        Problems problems = new Problems();
        YamlTree.read(ModelFiles.write(folder, "d.yaml", "a: " + "[".repeat(15) + "b" + "]".repeat(15)), problems);
        problems.throwIfAny();
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> YamlTree.read(
                        ModelFiles.write(folder, "d.yaml", "a: " + "[".repeat(17) + "b" + "]".repeat(17)),
                        new Problems()));
        assertThat(ModelFiles.message(e, folder)).contains("nested deeper than 16 levels");
        e = catchThrowableOfType(
                InputException.class,
                () -> YamlTree.read(
                        ModelFiles.write(folder, "d.yaml", "{a: ".repeat(18) + "b" + "}".repeat(18)), new Problems()));
        assertThat(ModelFiles.message(e, folder)).contains("nested deeper than 16 levels");
    }

    @Test
    void charactersThatNoTextHolds() {
        String good = "eddyreach: study\nname: x\n";
        assertThat(failure(good + "# a\u0085b\n")).as("next line").isEmpty();
        assertThat(failure(good + "note: a\tb")).isEmpty();
        assertThat(failure(good + "note: a\u001fb"))
                .isEqualTo("x.yaml:3:8: the character U+001F is not allowed in a text file");
        assertThat(failure(good + "note: a\u007fb"))
                .isEqualTo("x.yaml:3:8: the character U+007F is not allowed in a text file");
        assertThat(failure(good + "note: a\u009fb"))
                .isEqualTo("x.yaml:3:8: the character U+009F is not allowed in a text file");
        assertThat(failure(good + "note: a\u00a0b"))
                .as("a space that does not break")
                .isEmpty();
        assertThat(failure(good + "note: a\ufeffb"))
                .isEqualTo("x.yaml:3:8: the character U+FEFF is not allowed in a text file");
        assertThat(failure(good.replace("\n", "\r\n") + "no\u0007"))
                .as("a line ends once")
                .startsWith("x.yaml:3:3:");
        assertThat(failure(good.replace("\n", "\r") + "no\u0007")).startsWith("x.yaml:3:3:");
        assertThat(failure(good + "n\ud83d\ude00\u0007"))
                .as("a character of two halves counts once")
                .startsWith("x.yaml:3:3:");
        assertThat(failure(new byte[] {(byte) 0xff}))
                .isEqualTo("x.yaml:1:1: the file is not in UTF-8 from here on, save it as UTF-8");
        assertThat(failure(new byte[] {(byte) 0xff, (byte) 0xfe}))
                .isEqualTo("x.yaml:1:1: the file is in UTF-16, save it as UTF-8");
        assertThat(failure("\u2028\u2028")).isEqualTo("x.yaml:1:1: no content; line breaks are U+2028");
        assertThat(failure("\u2029")).isEqualTo("x.yaml:1:1: no content; line breaks are U+2028");
    }

    @Test
    void problemsOfSeveralFilesStayTogether() {
        Problems problems = new Problems();
        assertThat(problems.isEmpty()).isTrue();
        problems.add(new Problem("b.yaml", 3, 1, "", "third"));
        problems.add(new Problem("a.yaml", 9, 1, "", "last"));
        problems.add(new Problem("b.yaml", 2, 7, "", "second"));
        problems.add(new Problem("b.yaml", 2, 1, "", "first"));
        problems.add(new Problem("b.yaml", 2, 1, "", "first"));
        assertThat(problems.isEmpty()).isFalse();
        assertThat(problems.exception().problems())
                .extracting(Problem::message)
                .containsExactly("first", "second", "third", "last");
        Problems one = new Problems();
        one.add(new Problem("a.yaml", 3, 1, "", "later"));
        one.add(new Problem("a.yaml", 2, 7, "", "second"));
        one.add(new Problem("a.yaml", 2, 1, "", "first"));
        assertThat(one.exception().problems()).extracting(Problem::message).containsExactly("first", "second", "later");
        Problems more = new Problems();
        more.addAll(one.exception());
        assertThat(more.exception().problems()).hasSize(3);
    }

    @Test
    void whatANodeTellsOfItself() {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(
                        folder,
                        "n.yaml",
                        "eddyreach: study\ngroup: {a: 1 mm, b: 5}\nnote: |\n  two\n  lines\nflag: yes\nempty:\n"),
                "study",
                problems);
        Node group = root.map("group").orElseThrow();
        assertThat(group.key()).isEqualTo("group");
        assertThat(group.child("a").orElseThrow().key()).isEqualTo("group.a");
        assertThat(root.file()).endsWith("n.yaml");
        assertThat(group.quantity("a", Dimension.LENGTH, 0, 1)).isEqualTo(1e-3);
        assertThat(group.integer("b", 0, 9)).isEqualTo(5);
        assertThat(group.integer("c", 0, 9, 7)).isEqualTo(7);
        assertThat(group.quantity("c", Dimension.LENGTH, 0, 1, 0.5)).isEqualTo(0.5);
        assertThat(root.note("note")).isEqualTo("two\nlines");
        assertThat(root.note("none")).isEmpty();
        assertThat(root.flag("flag", false)).isTrue();
        assertThat(root.flag("other", true)).isTrue();
        assertThat(root.has("empty")).isFalse();
        assertThat(root.has("flag")).isTrue();
        assertThat(root.text("other", "else")).isEqualTo("else");
        assertThat(root.members().keySet()).containsExactly("group");
        assertThat(problems.exception().problems())
                .as("members are groups; the others are told")
                .isNotEmpty();
        assertThat(List.of(group.isMap(), group.child("a").orElseThrow().isMap()))
                .containsExactly(true, false);
    }
}
