package eddyreach.kinds.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.read.Library;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Target;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Fonts;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter;
import eddyreach.studies.StudyReader;
import eddyreach.study.ResultJson;
import eddyreach.study.StudyResult;
import eddyreach.study.TextReport;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pictures, tables and texts of sweeps, from the shipped studies with fewer points and some that are never on or beyond the range. */
class SweepPresentationTest {

    private static final Map<String, StudyResult> RESULTS = results();

    private static SweepInput input(String id) {
        Library library = new Library(Path.of(""));
        return (SweepInput) StudyReader.read(library.studyFile(id), library);
    }

    private static Map<String, StudyResult> results() {
        SweepInput.Thickness thickness = (SweepInput.Thickness) input("m18-foil-thickness");
        SweepInput.Size size = (SweepInput.Size) input("m18-size");
        SweepInput.Conductivity map = (SweepInput.Conductivity) input("m18-conductivity-map");
        SweepInput.Layers coating = (SweepInput.Layers) input("m18-plating");
        Target.Outline endless = new Target.Outline.Endless();
        Map<String, StudyResult> all = new TreeMap<>();
        // the picture ends below the top of the curves
        all.put(
                "thickness",
                new SweepInput.Thickness(
                                thickness.header(),
                                thickness.materials(),
                                endless,
                                new ValueRange(50e-9, 5e-3, 16),
                                4.5e-3)
                        .run());
        all.put(
                "size",
                new SweepInput.Size(
                                size.header(),
                                size.materials().subList(0, 2),
                                1e-3,
                                true,
                                new ValueRange(2e-3, 30e-3, 5),
                                size.reach())
                        .run());
        all.put(
                "map",
                new SweepInput.Conductivity(
                                map.header(),
                                map.materials(),
                                endless,
                                10e-6,
                                new ValueRange(0.05e6, 60e6, 9),
                                new ValueRange(1, 100, 5),
                                map.reach())
                        .run());
        all.put(
                "coating",
                new SweepInput.Layers(
                                coating.header(),
                                coating.base(),
                                coating.coatings(),
                                endless,
                                new ValueRange(0, 50e-6, 8),
                                coating.reach())
                        .run());
        return all;
    }

    static Stream<Picture> pictures() {
        return RESULTS.values().stream().flatMap(r -> r.presentation().pictures().stream());
    }

    static Stream<String> kinds() {
        return RESULTS.keySet().stream();
    }

    @Test
    void everyPictureIsThere() {
        assertThat(pictures().map(Picture::name))
                .containsExactlyInAnyOrder(
                        "thickness-on", "thickness-off", "size-on", "size-share", "map", "layers-share", "layers-on");
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void labelsAreInsideAndApartAndFilesRepeat(Picture picture) {
        byte[] png = PictureWriter.bytes(picture, PictureWriter.Format.PNG);
        DrawnTexts drawn = DrawnTexts.of(picture);
        assertThat(drawn.texts()).contains(picture.title());
        assertThat(drawn.faults()).isEmpty();
        String svg = new String(PictureWriter.bytes(picture, PictureWriter.Format.SVG), StandardCharsets.UTF_8)
                .replaceAll("base64,[^\"]*", "");
        assertThat(svg).contains("<path").doesNotContain("NaN").doesNotContain("Infinity");
        assertThat(PictureWriter.bytes(picture, PictureWriter.Format.PNG)).isEqualTo(png);
        assertThat(Fonts.get().regular().canDisplayUpTo(picture.title() + picture.subtitle()))
                .isEqualTo(-1);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void textIsShortAndFitsEightyColumns(String kind) {
        String text = TextReport.of(RESULTS.get(kind), Optional.empty(), false);
        List<String> lines = text.lines().toList();
        assertThat(lines)
                .hasSizeLessThan(80)
                .allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
        assertThat(text).contains("±").doesNotContain("NaN").doesNotContain("Infinity");
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void tablesHaveOneRowPerPointAndTheDocumentHoldsNoNonsense(String kind) {
        StudyResult result = RESULTS.get(kind);
        result.presentation().tables().forEach((name, table) -> {
            List<String> rows = table.get().text().lines().toList();
            int columns = rows.get(0).split(",", -1).length;
            assertThat(rows)
                    .as(name)
                    .hasSizeGreaterThan(10)
                    .allSatisfy(r -> assertThat(r.split(",", -1)).hasSize(columns));
            assertThat(rows.get(0)).contains("on_mm,on_error_mm,off_mm,off_error_mm");
        });
        String json = ResultJson.of(result, List.of());
        assertThat(json).contains("\"on_error_m\"").doesNotContain("NaN").doesNotContain("Infinity");
    }

    @Test
    void whatIsNeverOnIsSaidAndAShortPictureCutsOffNoDistance() {
        String csv = RESULTS.get("thickness")
                .presentation()
                .tables()
                .get("thickness.csv")
                .get()
                .text();
        assertThat(csv.lines())
                .anySatisfy(l -> assertThat(l).startsWith("aluminium,0.05,never on,,,,,"))
                .noneSatisfy(l -> assertThat(l).contains("beyond range"));
        assertThat(RESULTS.get("map").presentation().pictures().get(0).subtitle())
                .contains("blank: no on distance");
    }

    /** The map of this test ends at a permeability of 100, steel's is 150. */
    @Test
    void theMapSaysWhatLiesOutsideIt() {
        ConductivityResult result = (ConductivityResult) RESULTS.get("map");
        assertThat(SweepWords.mappedRange(result)).endsWith(" Outside the map: mild steel Fe 360.");
        assertThat(result.presentation().pictures().get(0).subtitle())
                .endsWith(" · Outside the map: mild steel Fe 360.");
    }
}
