package eddyreach.studies;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.core.CurrentPicture;
import eddyreach.kinds.approach.ApproachResult;
import eddyreach.model.read.Library;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.study.StudyResult;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels of the quick shipped studies: all inside the sheet, none on another. */
class ShippedPicturesTest {

    private static final Map<String, StudyResult> RESULTS = new HashMap<>();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "m18-derating",
                "m18-foil-and-sheet",
                "odd-parts-m18",
                "m18-plating",
                "m18-pass",
                "m18-neighbours"
            })
    void noLabelIsCutOrLiesOnAnother(String id) throws Exception {
        List<Picture> pictures = run(id).presentation().pictures();
        assertThat(pictures).isNotEmpty();
        for (Picture picture : pictures) {
            DrawnTexts drawn = DrawnTexts.of(picture);
            assertThat(drawn.texts()).as(picture.name()).contains(picture.title());
            assertThat(drawn.faults()).as(picture.name()).isEmpty();
        }
    }

    /** The same of the studies of the shop floor, which take longer. */
    @ParameterizedTest
    @Tag("long")
    @ValueSource(strings = {"m18-temperature", "m18-speed", "m18-series-foil", "m18-hysteresis"})
    void noLabelOfTheLongerStudiesEither(String id) throws Exception {
        noLabelIsCutOrLiesOnAnother(id);
    }

    /** The zinc of the plated washer is thinner than its own skin depth, so the only line is the steel's, below the zinc. */
    @Test
    void skinDepthStandsInTheLayerItBelongsTo() throws Exception {
        ApproachResult result = (ApproachResult) run("odd-parts-m18");
        CurrentPicture washer = result.currents().stream()
                .filter(c -> c.id().equals("washer"))
                .findFirst()
                .orElseThrow();
        CurrentPicture.Skin zinc = skin(washer, "zinc");
        CurrentPicture.Skin steel = skin(washer, "mild steel Fe 360");
        assertThat(zinc.depth()).isGreaterThan(zinc.where().z1());
        assertThat(steel.where().z0()).isEqualTo(zinc.where().z1());
        assertThat(steel.depth()).isBetween(25e-6, 35e-6);
        assertThat(DrawnTexts.of(picture(result, "current-washer")).texts())
                .filteredOn(t -> t.startsWith("skin depth"))
                .containsExactly("skin depth " + Labels.length(steel.depth()));
    }

    /** Twelve targets need two sheets; on neither does a colour come twice, and none of the targets is left out. */
    @Test
    void linesOfManyTargetsStandOnSeveralSheets() throws Exception {
        StudyResult result = run("odd-parts-m18");
        List<String> first = legend(result, "amplitude");
        List<String> second = legend(result, "amplitude-2");
        assertThat(first).hasSizeLessThanOrEqualTo(Theme.SERIES_COUNT);
        assertThat(second).hasSizeLessThanOrEqualTo(Theme.SERIES_COUNT).contains(first.get(0));
        Set<String> all = new HashSet<>(first);
        all.addAll(second);
        assertThat(all).hasSize(((ApproachResult) result).targets().size());
    }

    private static List<String> legend(StudyResult result, String name) {
        return DrawnTexts.of(picture(result, name)).texts().stream()
                .filter(t -> t.contains(": on at "))
                .toList();
    }

    private static CurrentPicture.Skin skin(CurrentPicture current, String material) {
        return current.skins().stream()
                .filter(s -> s.material().equals(material))
                .findFirst()
                .orElseThrow();
    }

    private static Picture picture(StudyResult result, String name) {
        return result.presentation().pictures().stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Each study is run once for all tests. */
    private static StudyResult run(String id) throws Exception {
        StudyResult known = RESULTS.get(id);
        if (known == null) {
            Library library = new Library(Path.of(""));
            known = StudyReader.read(library.studyFile(id), library).run();
            RESULTS.put(id, known);
        }
        return known;
    }
}
