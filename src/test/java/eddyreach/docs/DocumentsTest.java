package eddyreach.docs;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.FileCheck;
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

/** README, DEVELOPERS and the pages of src/site: links lead somewhere, files shown are in order, the reference of keys follows the schemas. */
class DocumentsTest {

    private static final Path SITE = Path.of("src/site/markdown");
    private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");
    private static final Pattern BLOCK = Pattern.compile("(?s)```yaml\\n(eddyreach: .*?)```");

    /** bytes */
    private static final int LARGEST = 12 * 1024;

    @TempDir
    private Path folder;

    private static List<Path> pages() throws IOException {
        try (Stream<Path> site = Files.walk(SITE)) {
            return Stream.concat(
                            Stream.of(
                                    Path.of("README.md"), Path.of("DEVELOPERS.md"), Path.of("src/changes/CHANGES.md")),
                            site.filter(p -> p.toString().endsWith(".md")).sorted())
                    .toList();
        }
    }

    @Test
    void linksLeadSomewhere() throws IOException {
        List<String> broken = new ArrayList<>();
        int links = 0;
        for (Path page : pages()) {
            Matcher m = LINK.matcher(Files.readString(page));
            while (m.find()) {
                links++;
                String[] parts = m.group(1).split("#", 2);
                Path to = parts[0].isEmpty()
                        ? page
                        : (page.getParent() == null ? Path.of("") : page.getParent()).resolve(parts[0]);
                if (!Files.exists(to) || parts.length == 2 && !anchors(to).contains(parts[1])) {
                    broken.add(page + ": " + m.group(1));
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(links).isGreaterThan(20);
    }

    private static List<String> anchors(Path page) throws IOException {
        Matcher m = HEADING.matcher(Files.readString(page));
        List<String> found = new ArrayList<>();
        while (m.find()) {
            found.add(m.group(1).toLowerCase().replaceAll("[^a-z0-9 _-]", "").replace(' ', '-'));
        }
        return found;
    }

    /** Whole files shown in the pages can be read as they stand; {@code my-...} names stand for the reader's own. */
    @Test
    void filesShownAreInOrder() throws IOException {
        List<String> wrong = new ArrayList<>();
        int blocks = 0;
        Library library = new Library(Path.of(""));
        for (Path page : pages()) {
            Matcher m = BLOCK.matcher(Files.readString(page));
            while (m.find()) {
                Path file = folder.resolve("block-" + blocks++ + ".yaml");
                Files.writeString(file, m.group(1));
                try {
                    FileCheck.check(new SourceFile.OnDisk(file), library);
                } catch (eddyreach.model.yaml.InputException e) {
                    e.problems().forEach(p -> wrong.add(page + ": " + p));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(blocks).isGreaterThan(10);
    }

    /** To write it anew: {@code mvn -q test -Dtest=DocumentsTest -Drewrite=true}. */
    @Test
    void referenceFollowsTheSchemas() throws IOException {
        String text = FileReference.text();
        if (Boolean.getBoolean("rewrite")) {
            Files.writeString(FileReference.PAGE, text);
        }
        assertThat(Files.readString(FileReference.PAGE)).isEqualTo(text);
    }

    @Test
    void theFirstPagesStayShort() throws IOException {
        for (String page : List.of("README.md", "DEVELOPERS.md")) {
            assertThat(Files.size(Path.of(page))).as(page).isLessThanOrEqualTo(LARGEST);
        }
    }

    /** Each kind of study has its page. */
    @Test
    void eachKindHasItsPage() {
        eddyreach.studies.StudyKinds.all()
                .forEach(k ->
                        assertThat(SITE.resolve("kinds/" + k.label() + ".md")).exists());
    }
}
