package eddyreach.kinds.neighbour;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.studies.StudyReader;
import eddyreach.study.ResultFiles;
import eddyreach.study.StudyResult;
import eddyreach.study.TextReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NeighbourReportTest {

    @TempDir
    private Path folder;

    private StudyResult run(String arrangement) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), """
                eddyreach: study
                name: neighbours
                kind: neighbour
                switch: m8-flush
                arrangement: %s
                spacings: {from: 8 mm, to: 20 mm, points: 11}
                """.formatted(arrangement));
        return StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")))
                .run();
    }

    @ParameterizedTest
    @ValueSource(strings = {"face to face", "side by side"})
    void textFitsItsColumnsAndLabelsAreApart(String arrangement) throws IOException {
        StudyResult result = run(arrangement);
        String text = TextReport.of(result, Optional.empty(), false);
        assertThat(text.lines()).allMatch(line -> line.length() <= TextReport.WIDTH);
        assertThat(text).contains(arrangement, "common practice", "Not for safety functions");
        for (Picture picture : result.presentation().pictures()) {
            DrawnTexts drawn = DrawnTexts.of(picture);
            assertThat(drawn.texts()).as(picture.name()).contains(picture.title());
            assertThat(drawn.faults()).as(picture.name()).isEmpty();
        }
        assertThat(ResultFiles.write(result, folder.resolve("out"), Set.of())).allMatch(Files::isRegularFile);
        assertThat(Files.readString(folder.resolve("out/result.json")))
                .contains("\"caution\"", "\"harmless_from\"", "\"arrangement\": \"" + arrangement + "\"");
        assertThat(Files.readAllLines(folder.resolve("out/beats.csv"))).hasSize(12);
    }
}
