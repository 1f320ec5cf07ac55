package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ListCommandTest {

    @TempDir
    private Path folder;

    @Test
    void everythingInTheWidthOfATerminal() {
        Session s = Session.in(folder, "list");
        assertThat(s.code()).isZero();
        assertThat(s.err()).isEmpty();
        assertThat(s.out())
                .startsWith("Switches\n")
                .containsPattern("\\n  p14-reference +M18 flush reference switch, pot core P14\\n")
                .contains("\n\nStudies\n")
                .containsPattern("\\n  m18-derating +derating of an M18 flush switch")
                .containsPattern(
                        "\\n\\nMaterials at 20 C\\n +sigma, MS/m mu_r    name\\n  copper +58.00       1.000   copper\\n");
        assertThat(s.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void oneGroupAndAFileWithErrors() throws IOException {
        Path models = Files.createDirectories(folder.resolve("models"));
        Files.writeString(models.resolve("broken.yaml"), "eddyreach: switch\n");
        assertThat(Session.in(folder, "list", "switches").out())
                .startsWith("Switches\n")
                .containsPattern("\n  broken +has errors, see: eddyreach check broken\n")
                .doesNotContain("Studies", "Materials");
        assertThat(Session.in(folder, "list", "coils"))
                .isEqualTo(
                        new Session(
                                2,
                                "",
                                "There is no list of \"coils\", only of switches, mounts, studies and materials\nHow it is used: eddyreach list --help\n"));
    }
}
