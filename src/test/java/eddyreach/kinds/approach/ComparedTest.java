package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Problem;
import eddyreach.model.yaml.SourceFile;
import eddyreach.report.page.Csv;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import eddyreach.study.TextReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One study before several switches. */
class ComparedTest {

    @TempDir
    private Path folder;

    private StudyInput read(String head, String rest) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), "eddyreach: study\nname: test\n" + head + "\n" + rest);
        return StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")));
    }

    private List<String> problems(String head, String rest) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(head, rest));
        return e.problems().stream().map(Problem::message).toList();
    }

    @Test
    void eachSwitchAsByItself() throws IOException {
        String rest = "kind: materials\nmaterials: [aluminium, fe360]\nfield pictures: no\n";
        ComparedResult all =
                (ComparedResult) read("switches: [m8-flush, m12-flush]", rest).run();
        ApproachResult one = (ApproachResult) read("switch: m12-flush", rest).run();
        assertThat(all.each()).extracting(r -> r.model().id()).containsExactly("m8-flush", "m12-flush");
        for (int i = 0; i < one.targets().size(); i++) {
            assertThat(all.each().get(1).targets().get(i).distance())
                    .isEqualTo(one.targets().get(i).distance());
        }
        assertThat(ComparedPresentation.lines(all))
                .extracting(l -> l.target().target().id() + " " + l.switchId())
                .containsExactly("fe360 m8-flush", "fe360 m12-flush", "aluminium m8-flush", "aluminium m12-flush");
        String text = TextReport.of(all, Optional.empty(), false);
        assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
        assertThat(text).startsWith("m8-flush: Yes").contains("\nSwitch: M8", "\nSwitch: M12");
        String csv = all.presentation().tables().get("comparison.csv").get().text(Csv.Decimal.POINT);
        assertThat(csv.lines()).hasSize(5);
        assertThat(all.presentation().pictures().get(0).name()).isEqualTo("comparison");
    }

    @Test
    void aListOfOneIsASwitch() throws IOException {
        assertThat(read("switches: [m8-flush]", "kind: materials\nmaterials: [aluminium]\n"))
                .isInstanceOf(ApproachInput.class);
    }

    @Test
    void whatCannotBeCompared() {
        String materials = "kind: materials\nmaterials: [aluminium]\n";
        assertThat(problems("switches: [m8-flush, m8-flush]", materials))
                .containsExactly("\"m8-flush\" stands twice in the list");
        assertThat(problems("switches: [m8-flush, m9-flush]", materials))
                .singleElement()
                .asString()
                .startsWith("m9-flush: there is no switch of this name; did you mean m8-flush?");
        assertThat(problems("switch: m8-flush\nswitches: [m12-flush]", materials))
                .containsExactly("stands beside switch; give one of the two");
        assertThat(problems("switches: [m8-flush, m12-flush]", "kind: thickness\nmaterials: [aluminium]\n"))
                .containsExactly(
                        "a study of the kind thickness is of one switch; several go with the kinds approach and"
                                + " materials");
    }
}
