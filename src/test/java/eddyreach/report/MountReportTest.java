package eddyreach.report;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.Library;
import eddyreach.model.SourceFile;
import eddyreach.model.StudyReader;
import eddyreach.study.MountResult;
import eddyreach.study.StudyResult;
import eddyreach.study.StudyRunner;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MountReportTest {

    private static final String MOUNT = """
            eddyreach: study
            name: a mount
            kind: mount
            switch: m8-flush
            mounts:
              - name: a-mount-with-a-name-as-long-as-names-can
                label: countersunk
                sunk by: 1 mm
                wall: {material: fe360, thickness: 9 mm, countersink: {diameter: 11 mm, depth: 4 mm}}
                nut: {material: brass, across corners: 15 mm, height: 3 mm}
                background: {material: aluminium, distance: 12 mm, thickness: 2 mm}
            distances: {to: 5 mm, points: 11}
            """;
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

    private static final String RECESS = """
            eddyreach: study
            name: a recess
            kind: recess
            switch: m8-non-flush
            wall: {materials: [fe360], thickness: 12 mm}
            diameters: {from: 9 mm, to: 24 mm, points: 4}
            depths: {from: 1 mm, to: 7 mm, points: 3}
            """;

    private static final Map<String, StudyResult> KNOWN = new HashMap<>();

    private StudyResult run(String text) throws IOException {
        if (!KNOWN.containsKey(text)) {
            KNOWN.put(text, compute(text));
        }
        return KNOWN.get(text);
    }

    private StudyResult compute(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), text);
        return StudyRunner.run(StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of(""))));
    }

    @ParameterizedTest
    @ValueSource(strings = {MOUNT, BACKGROUND, RECESS})
    void textFitsItsColumnsAndPicturesShowSomething(String study) throws IOException {
        StudyResult result = run(study);
        String text = TextReport.of(result, Optional.empty(), false);
        assertThat(text.lines()).allMatch(line -> line.length() <= TextReport.WIDTH);
        assertThat(text).contains("common practice", "Not for safety functions");
        for (Picture picture : Presentation.of(result).pictures()) {
            byte[] png = PictureWriter.bytes(picture, PictureWriter.Format.PNG);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
            int white = 0xffffffff;
            long ink = IntStream.range(0, image.getWidth() * image.getHeight())
                    .filter(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()) != white)
                    .count();
            assertThat(ink).as(picture.name()).isGreaterThan(10_000);
            assertThat(IntStream.range(0, image.getHeight()))
                    .as(picture.name() + ": nothing is cut off at the edge")
                    .allMatch(y -> image.getRGB(0, y) == white && image.getRGB(image.getWidth() - 1, y) == white);
        }
        List<Path> files = ResultFiles.write(result, folder.resolve("out"), Set.of());
        assertThat(files).allMatch(Files::isRegularFile);
        assertThat(Files.readString(folder.resolve("out/result.json"))).contains("\"caution\"");
    }

    @Test
    void theDrawingHasEachDimensionOnce() throws IOException {
        var result = (MountResult) run(MOUNT);
        var mount = result.cases().get(1).mount();
        assertThat(Dimension.of(mount, result.model()))
                .extracting(Dimension::text)
                .containsOnlyOnce("Ø 11", "1", "4", "9", "Ø 15", "3", "12")
                .doesNotHaveDuplicates();
        assertThat(Presentation.of(result).pictures())
                .extracting(Picture::name)
                .containsExactly(
                        "amplitude", "section-" + mount.id(), "dimensions-" + mount.id(), "field-" + mount.id());
    }
}
