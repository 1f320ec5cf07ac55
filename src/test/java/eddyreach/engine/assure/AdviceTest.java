package eddyreach.engine.assure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.kinds.approach.PartQuestion;
import eddyreach.model.read.Library;
import eddyreach.model.values.SwitchModel;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What to change, and why, from computed variants. */
class AdviceTest {

    private static final Library LIBRARY = new Library(Path.of(""));

    private static TargetResult part(String switchId, Map<String, String> words) {
        return ApproachRunner.run(PartQuestion.read("question", switchId, words, List.of(), LIBRARY)
                        .withoutFieldPictures())
                .targets()
                .get(1);
    }

    private static double on(Advice advice, Change.Kind kind) {
        return advice.changes().stream()
                .filter(c -> c.kind() == kind)
                .findFirst()
                .orElseThrow()
                .on();
    }

    @Test
    void aluminiumIsHelpedBySteelFoilAndLargerSwitches() {
        SwitchModel model = LIBRARY.switchModel("m18-flush");
        TargetResult part = part("m18-flush", Map.of("material", "aluminium", "thickness", "1 mm"));
        Advice advice = part.assessment().orElseThrow().advice().orElseThrow();
        assertThat(advice.needed()).isTrue();
        assertThat(advice.otherPrinciple()).isTrue();
        assertThat(advice.changes())
                .isSortedAccordingTo(Comparator.comparingDouble(Change::gain).reversed())
                .allSatisfy(c -> assertThat(c.gain())
                        .isCloseTo(c.on() - part.distance().on(), within(1e-12))
                        .isGreaterThanOrEqualTo(Advice.WORTH * model.ratedDistance()));
        // the same outline in steel is the standard target itself
        assertThat(on(advice, Change.Kind.STEEL_FLAG)).isCloseTo(model.effectiveDistance(), within(0.05e-3));
        // each line is what asking for it gives, within what the coarse resolution costs
        TargetResult foil = part("m18-flush", Map.of("material", "aluminium", "thickness", "4 um"));
        assertThat(on(advice, Change.Kind.THICKNESS)).isCloseTo(foil.distance().on(), within(0.05e-3));
        TargetResult larger = part(
                "m30-flush", Map.of("material", "aluminium", "thickness", "1 mm", "shape", "square", "side", "18 mm"));
        assertThat(on(advice, Change.Kind.LARGER_SWITCH))
                .isCloseTo(larger.distance().on(), within(0.15e-3));
        assertThat(advice.changes()).extracting(Change::kind).doesNotContain(Change.Kind.LARGER_TARGET);

        Explanation why = part.assessment().orElseThrow().explanation().orElseThrow();
        assertThat(why.sentences())
                .anyMatch(s -> s.contains("skin-limited"))
                .anyMatch(s -> s.contains("6.6 skin depths"));
        assertThat(why.sensitivities()).hasSize(8).allMatch(s -> s.factor() > 0.3 && s.factor() < 0.5);
    }

    @Test
    void aSmallDiscIsHelpedBySize() {
        TargetResult part = part(
                "p14-reference", Map.of("material", "fe360", "thickness", "4 mm", "shape", "disc", "diameter", "8 mm"));
        Advice advice = part.assessment().orElseThrow().advice().orElseThrow();
        TargetResult standardSize = part("p14-reference", Map.of("material", "fe360", "thickness", "4 mm"));
        assertThat(on(advice, Change.Kind.STANDARD_SIZE))
                .isCloseTo(standardSize.distance().on(), within(0.05e-3));
        assertThat(on(advice, Change.Kind.LARGER_TARGET))
                .isBetween(part.distance().on(), 5.1e-3);
        assertThat(advice.otherPrinciple()).isFalse();
    }

    @Test
    void nothingIsNeededForFoilNearItsBestThickness() {
        Assessment foil = part("p14-reference", Map.of("material", "aluminium", "thickness", "8 um"))
                .assessment()
                .orElseThrow();
        assertThat(foil.advice().orElseThrow().needed()).isFalse();
        assertThat(foil.advice().orElseThrow().changes()).isEmpty();
        assertThat(foil.explanation().orElseThrow().sentences())
                .anyMatch(s -> s.contains("resistance-limited sheet"))
                .anyMatch(s -> s.contains("near the best"));
    }

    @Test
    void whatHasNoEffectGetsASteelFlag() {
        TargetResult water = part("m12-flush", Map.of("material", "water", "thickness", "5 mm"));
        Assessment a = water.assessment().orElseThrow();
        assertThat(a.assurance().anywhereOn()).isFalse();
        assertThat(a.advice().orElseThrow().changes().get(0).kind()).isEqualTo(Change.Kind.STEEL_FLAG);
    }

    @Test
    void aPartBesideTheAxisIsToldToComeBack() {
        Map<String, String> words = Map.of(
                "material", "aluminium", "shape", "cylinder", "diameter", "8 mm", "length", "12 mm", "offset", "6 mm");
        Advice advice =
                part("m18-flush", words).assessment().orElseThrow().advice().orElseThrow();
        TargetResult onAxis = part(
                "m18-flush",
                Map.of("material", "aluminium", "shape", "cylinder", "diameter", "8 mm", "length", "12 mm"));
        assertThat(on(advice, Change.Kind.ON_AXIS)).isCloseTo(onAxis.distance().on(), within(0.1e-3));
    }

    @Test
    void aSlitTubeIsToldToCloseItAndHasNoBestThickness() {
        Map<String, String> words = Map.of(
                "material",
                "brass",
                "shape",
                "tube",
                "outer",
                "20 mm",
                "inner",
                "18 mm",
                "length",
                "20 mm",
                "slit",
                "yes");
        Assessment a = part("m18-non-flush", words).assessment().orElseThrow();
        assertThat(a.advice().orElseThrow().changes())
                .extracting(Change::kind)
                .contains(Change.Kind.CLOSED_RING)
                .doesNotContain(Change.Kind.THICKNESS);
    }

    /** Zinc of 8 um lets the field through: what is said is said of the steel behind it. */
    @Test
    void aPlatedWasherIsExplainedByItsBase() {
        Map<String, String> words = Map.of(
                "material",
                "fe360",
                "shape",
                "washer",
                "outer",
                "20 mm",
                "inner",
                "10 mm",
                "thickness",
                "2 mm",
                "coating.material",
                "zinc",
                "coating.thickness",
                "8 um");
        Assessment a = part("m18-flush", words).assessment().orElseThrow();
        Explanation why = a.explanation().orElseThrow();
        assertThat(String.join(" ", why.sentences()))
                .contains("its mild steel Fe 360 is")
                .contains("It is magnetic")
                .doesNotContain("near the best")
                .doesNotContain("resistance-limited");
        assertThat(why.sensitivities()).noneMatch(s -> s.change().startsWith("thickness"));
    }
}
