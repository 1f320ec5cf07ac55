package eddyreach.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import eddyreach.report.page.MarkdownPage;
import eddyreach.study.TextReport;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProofReportTest {

    @TempDir
    private Path folder;

    @Test
    void table() {
        assertThat(ProofReport.of(SampleProof.mixed())).isEqualTo("""
                Coils
                quantity                              published          computed deviation
                  A. Author, <b>A & B</b> | "Book" (1900), page 1 [printed]
                a quantity with a long name                1.25             1.253    0.0034 ok
                and a unit, µH
                dZ <ohm>                             3.00-4.00j        3.10-4.00j      0.10 FAIL

                Laws
                quantity                              published          computed deviation
                  energy [law]
                imbalance                             0 to 1e-6         2.000e-13         - ok

                  [printed] the number stands in the source; quoted from memory and reproduced
                  by an independent program
                  [law] follows from the equations, whatever the numbers are
                  Deviations are in the unit of the quantity; half a unit of the last printed
                  digit is allowed where the page gives no other reason.

                3 check values, 1 NOT met.
                  Coils: dZ <ohm>: expected 3.00-4.00j, computed 3.10-4.00j
                """);
        assertThat(ProofReport.of(SampleProof.good())).endsWith("\n1 check values, all met.\n");
    }

    @Test
    void linesAreNeverLonger() {
        assertThat(ProofReport.of(SampleProof.mixed()).lines()).allMatch(line -> line.length() <= TextReport.WIDTH);
    }

    @Test
    void htmlIsEscapedAndComplete() {
        String page = ProofPages.html(SampleProof.mixed());
        // apart from the looks, which stand at each element
        assertThat(page.replaceAll(" style=\"[^\"]*\"", ""))
                .startsWith("<!DOCTYPE html>\n<html lang=\"en\">")
                .endsWith("</html>\n")
                .contains(
                        "<td>A. Author, &lt;b&gt;A &amp; B&lt;/b&gt; | &quot;Book&quot; (1900), page 1 [printed]</td>")
                .contains("<tr><td>dZ &lt;ohm&gt;</td>")
                .contains("<td>3.00-4.00j</td><td>3.10-4.00j</td>")
                .contains("<td>1 % | more</td><td>FAIL</td></tr>")
                .contains("<p>3 check values, 1 NOT met.</p>")
                .doesNotContain("<b>")
                .doesNotContain("<ohm>")
                .doesNotContain("src=")
                .doesNotContain("href=");
    }

    @Test
    void markdownIsEscaped() {
        assertThat(ProofPages.markdown(SampleProof.mixed()))
                .startsWith(
                        "# Check values\n\n3 check values, 1 NOT met.\n\n## Coils\n\n| quantity | source | published |")
                .contains(
                        "\n| **dZ \\<ohm\\>** | **A. Author, \\<b\\>A \\& B\\</b\\> \\| \"Book\" (1900), page 1 \\[printed\\]**"
                                + " | **3.00-4.00j** | **3.10-4.00j** | **0.10** | **0.050** | **1 % \\| more** | **FAIL** |\n");
        assertThat(MarkdownPage.escape("a\nb*_`\\")).isEqualTo("a b\\*\\_\\`\\\\");
    }

    @Test
    void filesReplaceThoseOfAnEarlierRunAndLeaveOthersAlone() throws IOException {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        ProofPages.write(SampleProof.mixed(), folder);
        assertThat(ProofPages.write(SampleProof.good(), folder))
                .containsExactly(folder.resolve("proof.html"), folder.resolve("proof.md"));
        assertThat(Files.readString(folder.resolve("proof.html"))).isEqualTo(ProofPages.html(SampleProof.good()));
        assertThat(Files.readString(folder.resolve("proof.md"))).isEqualTo(ProofPages.markdown(SampleProof.good()));
        try (var files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()).filter(n -> !n.startsWith(".")))
                    .containsExactlyInAnyOrder("mine.txt", "proof.html", "proof.md");
        }
    }

    @Test
    void aForeignPageIsNotReplaced() throws IOException {
        Files.writeString(folder.resolve("proof.html"), "mine");
        assertThatExceptionOfType(FileSystemException.class)
                .isThrownBy(() -> ProofPages.write(SampleProof.good(), folder))
                .withMessageContaining("proof.html");
        assertThat(folder.resolve("proof.html")).hasContent("mine");
    }
}
