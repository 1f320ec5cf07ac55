package eddyreach.kinds.mount;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.kinds.recess.SmallRecess;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter;
import eddyreach.studies.StudyReader;
import eddyreach.study.ResultFiles;
import eddyreach.study.StudyResult;
import eddyreach.study.TextReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MountReportTest {

    private static final String BACKGROUND = """
            eddyreach: study
            name: a background
            kind: background
            switch: m8-flush
            background: {material: aluminium, thickness: 2 mm}
            distances: {to: 8 mm, points: 11}
            """;

    @TempDir
    private Path folder;

    private StudyResult background() throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), BACKGROUND);
        return StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")))
                .run();
    }

    private StudyResult result(String kind) throws IOException {
        return switch (kind) {
            case "mount" -> SampleMounts.result();
            case "recess" -> SmallRecess.get().result();
            default -> background();
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"mount", "background", "recess"})
    void textFitsItsColumnsAndLabelsAreApart(String kind) throws IOException {
        StudyResult result = result(kind);
        String text = TextReport.of(result, Optional.empty(), false);
        assertThat(text.lines()).allMatch(line -> line.length() <= TextReport.WIDTH);
        assertThat(text).contains("common practice", "Not for safety functions");
        for (Picture picture : result.presentation().pictures()) {
            DrawnTexts drawn = DrawnTexts.of(picture);
            assertThat(drawn.texts()).as(picture.name()).contains(picture.title());
            assertThat(drawn.faults()).as(picture.name()).isEmpty();
        }
        List<Path> files = ResultFiles.write(
                result, folder.resolve("out"), kind.equals("mount") ? Set.of(PictureWriter.Format.PNG) : Set.of());
        assertThat(files).allMatch(Files::isRegularFile);
        if (kind.equals("mount")) {
            assertThat(files).contains(folder.resolve("out/section-odd.dxf"), folder.resolve("out/field-odd.png"));
        }
        assertThat(Files.readString(folder.resolve("out/result.json"))).contains("\"caution\"");
    }

    @Test
    void theDrawingHasEachDimensionOnce() throws IOException {
        var result = SampleMounts.result();
        var mount = result.cases().get(1).mount();
        assertThat(MountDimension.of(mount, result.model()))
                .extracting(MountDimension::text)
                .containsOnlyOnce("Ø 11", "1", "4", "9", "Ø 15", "3", "12")
                .doesNotHaveDuplicates();
        assertThat(result.presentation().pictures())
                .extracting(Picture::name)
                .containsExactly(
                        "amplitude",
                        "section-" + mount.id(),
                        "dimensions-" + mount.id(),
                        "section-odd",
                        "section-bracket",
                        "dimensions-bracket",
                        "field-" + mount.id(),
                        "field-odd",
                        "field-bracket");
    }
}
